/**
 * `npm run golden`: seals the artefacts of the open edition of the rules into tests/golden/edition-N. They are written once:
 * a folder that is there is never touched again, whatever becomes of the program.
 */
import { appendFileSync, cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { jsonText } from '../../src/cli/terminal/json-text.ts';
import { OPEN_EDITION } from '../../src/job/rules.ts';
import { writeArtefacts } from './artefacts.ts';
import { DIST, expectedIn, GOLDEN, SUMS, sumsOf, verdictsOf } from './verdicts.ts';

const MOST_BYTES = 1_500_000;
const made = mkdtempSync(join(tmpdir(), 'plugmark-golden-'));
const edition = join(GOLDEN, `edition-${OPEN_EDITION}`);
if (existsSync(edition)) refuse(`edition ${OPEN_EDITION} is sealed already: ${edition}`);

const total = await writeArtefacts(made);
if (total > MOST_BYTES) refuse(`${total} bytes; an edition may take ${MOST_BYTES}`);
// Put in its place only when the built program gives every one of them its verdict.
const expected = expectedIn(made);
const others = verdictsOf(DIST, made, expected).filter((one, i) => !isDeepStrictEqual(one, expected[i]));
if (others.length > 0) refuse(`the program says otherwise:\n${jsonText(others)}`);
cpSync(made, edition, { recursive: true });
appendFileSync(SUMS, `${sumsOf(edition).join('\n')}\n`);
rmSync(made, { recursive: true });
process.stdout.write(`${edition}: ${total} bytes, ${expected.length} verdicts.\n`);

function refuse(why: string): never {
  rmSync(made, { recursive: true, force: true });
  process.stderr.write(`golden: ${why}\n`);
  process.exit(2);
}
