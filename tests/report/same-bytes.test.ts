/** A paper is the same bytes wherever it is drawn: other locale, time zone, umask and process. */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { OTHER_SCRIPTS, pdfOf } from './fixtures.ts';

const DRAW = `
process.umask(Number(process.env.MASK));
const { pdfOf, OTHER_SCRIPTS } = await import(${JSON.stringify(new URL('./fixtures.ts', import.meta.url).href)});
const { createHash } = await import('node:crypto');
console.log(createHash('sha256').update((await pdfOf(OTHER_SCRIPTS)).pdf).digest('hex'));
`;

test.each([
  { LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8', TZ: 'Pacific/Apia', MASK: '63' },
  { LANG: 'C', LC_ALL: 'C', TZ: 'America/St_Johns', MASK: '0' },
])(
  'in another process with $LANG, $TZ and umask $MASK',
  async (env) => {
    const here = createHash('sha256')
      .update((await pdfOf(OTHER_SCRIPTS)).pdf)
      .digest('hex');
    const { stdout, stderr } = spawnSync(
      process.execPath,
      ['--import', 'tsx', '--input-type=module', '--eval', DRAW],
      { encoding: 'utf8', env: { ...process.env, ...env } },
    );
    expect(stdout.trim(), stderr).toBe(here);
  },
  60_000,
);
