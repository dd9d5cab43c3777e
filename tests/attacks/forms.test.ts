/** Files that could be read in two ways: another writing, another number, another text beside what is signed. */
import { execFileSync } from 'node:child_process';
import { symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { verify } from '../../src/cli/evidence/verify.ts';
import { disclosureOf } from '../../src/evidence/disclosures.ts';
import { addSignature, disclosuresIn, type Jws, withDisclosures } from '../../src/evidence/jws.ts';
import { toBase64url } from '../../src/evidence/platform/bytes.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { said } from '../cli/answers.ts';
import { folder, run } from '../cli/program.ts';
import { fileOf, jwsOf } from '../evidence/forge.ts';
import {
  AT,
  logOf,
  seal,
  station,
  stationEvents,
  technician,
  trusting,
  wholeJob,
} from '../evidence/sample-job.ts';

const honest = seal(logOf(wholeJob()));
const jws = jwsOf(honest);
const text = Buffer.from(jws.payload, 'base64url').toString();

/** What the station and the technician sign, whatever it is. */
function signed(content: string): Buffer {
  const unsigned: Jws = { payload: toBase64url(Buffer.from(content)), signatures: [] };
  return fileOf(withDisclosures([station, technician].reduce(addSignature, unsigned), disclosuresIn(jws)));
}
const verdictOf = (file: Uint8Array) => {
  const { verdict, checks } = verifyRecord(file, trusting(station), null, AT);
  return { verdict, why: checks[0]?.detail ?? '' };
};
const replaced = (from: string, to: string) => {
  expect(text).toContain(from);
  return signed(text.replace(from, to));
};
const NAME = '"station":"bay 1"';

describe('the holder of the key signs a content that programs read differently', () => {
  it('as it is, it is authentic: what follows is no fault of the signing', () =>
    expect(verdictOf(signed(text)).verdict).toBe('authentic'));

  it.each([
    ['a name twice', '"job":"WO-1"', '"job":"WO-1","job":"WO-2"', 'stands twice'],
    ['minus zero', '"monoUs":0', '"monoUs":-0', '-0 would be read as 0'],
    ['a number beyond all doubles', '"monoUs":0', '"monoUs":1e400', 'too large'],
    ['a number that doubles round', '"monoUs":0', '"monoUs":9007199254740993', 'exactly'],
    ['a whole number with a point', '"monoUs":0', '"monoUs":0.0', 'not canonical'],
    ['half a surrogate pair', NAME, '"station":"bay \\ud800"', 'surrogate'],
    ['an escape for a letter', NAME, '"station":"b\\u0061y 1"', 'not canonical'],
    ['an escape for a line separator', NAME, '"station":"bay\\u20281"', 'not canonical'],
    ['a member __proto__', '"job":"WO-1"', '"__proto__":{},"job":"WO-1"', '__proto__'],
    [
      'a list that is nested a hundred thousand deep',
      '"job":"WO-1"',
      `"a":${'['.repeat(1e5)}${']'.repeat(1e5)},"job":"WO-1"`,
      'deeper than',
    ],
    ['space between members', '"job":"WO-1"', ' "job":"WO-1"', 'not canonical'],
  ])('%s is refused', (_what, from, to, why) => {
    const { verdict, why: told } = verdictOf(replaced(from, to));
    expect(verdict).toBe('rejected');
    expect(told).toContain(why);
  });

  it('a line separator as it stands is one character, and ends no line', async () => {
    const name = 'bay\u2028 [ok]   signatures';
    const named = stationEvents.map((event) =>
      event.type === 'station-set-up' ? { ...event, station: name } : event,
    );
    const file = join(folder(), 'J.record.json');
    writeFileSync(file, seal(logOf(wholeJob(), 'job:WO-1', named)));
    const { text: lines } = await said(() => verify(file, {}));
    expect(lines).not.toContain('\u2028');
    expect(lines.match(/^ *\[.{2,4}\] +signatures/gm)).toHaveLength(1);
  });
});

describe('whoever hands a record on writes it in another way', () => {
  it.each([
    ['a line more at its end', Buffer.concat([honest, Buffer.from('\n')])],
    ['a byte order mark', Buffer.concat([Buffer.from('\ufeff'), honest])],
    ['no line feed', honest.subarray(0, -1)],
    [
      'its members in another order',
      Buffer.from(`${JSON.stringify({ signatures: jws.signatures, payload: jws.payload })}\n`),
    ],
    ['a member more', Buffer.from(honest.toString().replace('{"payload"', '{"a":1,"payload"'))],
    [
      'its payload twice',
      Buffer.from(honest.toString().replace('{"payload"', `{"payload":"${jws.payload}","payload"`)),
    ],
    ['padded base64', Buffer.from(honest.toString().replace(jws.payload, `${jws.payload}=`))],
  ])('with %s it is no authentic record', (_what, file) =>
    expect(['rejected', 'unreadable']).toContain(verdictOf(file).verdict),
  );
});

describe('whoever hands a record on gives other texts with it', () => {
  const disclosures = disclosuresIn(jws);
  const withTexts = (some: readonly string[]) => verdictOf(fileOf(withDisclosures(jws, some)));
  const parts = (disclosure = ''): readonly [salt: string, name: string, text: string] =>
    JSON.parse(Buffer.from(disclosure, 'base64url').toString());
  const [own = '', second = ''] = disclosures;
  const otherSalt = 'z'.repeat(21).concat('w');

  it.each<[string, readonly string[], string]>([
    [
      'another text under its salt',
      [disclosureOf(parts(own)[0], 'EX 999'), ...disclosures.slice(1)],
      'belongs to nothing',
    ],
    [
      'its text under another salt',
      [disclosureOf(otherSalt, parts(own)[2]), ...disclosures.slice(1)],
      'belongs to nothing',
    ],
    [
      'the text of one place under the salt of another',
      [disclosureOf(parts(second)[0], `${parts(own)[2]} `), ...disclosures.slice(1)],
      'belongs to nothing',
    ],
    [
      'one more, of another record',
      [...disclosures, disclosureOf(otherSalt, 'A. Example')],
      'belongs to nothing',
    ],
    ['one twice', [own, ...disclosures], 'there twice'],
    [
      'one in another writing',
      [
        toBase64url(Buffer.from(Buffer.from(own, 'base64url').toString().replace('value', 'v\\u0061lue'))),
        ...disclosures.slice(1),
      ],
      'canonical writing',
    ],
    [
      'one that is a number',
      [toBase64url(Buffer.from('["AAAAAAAAAAAAAAAAAAAAAA","value",1]')), ...disclosures.slice(1)],
      'expected text',
    ],
    [
      'one nested a hundred thousand deep',
      [toBase64url(Buffer.from(`${'['.repeat(3000)}`)), ...disclosures.slice(1)],
      'strict base64url',
    ],
  ])('%s is refused', (_what, some, why) => {
    const { verdict, why: told } = withTexts(some);
    expect(verdict).toBe('rejected');
    expect(told).toContain(why);
  });

  it('texts that are left out are withheld and counted, and nothing else changes', () => {
    const { verdict, withheld } = verifyRecord(fileOf(withDisclosures(jws, [])), trusting(station), null, AT);
    expect(verdict).toBe('authentic');
    expect(withheld.reduce((sum, { count }) => sum + count, 0)).toBe(disclosures.length);
  });
});

describe('what has no end where a file is read', () => {
  it('a pipe beside a record, under the name of a proof or of a note of witnesses, keeps nobody waiting', async () => {
    const at = folder();
    const file = join(at, 'J.record.json');
    writeFileSync(file, honest);
    writeFileSync(join(at, 'policy'), 'quorum none\n');
    for (const name of ['proof', 'witnessed']) execFileSync('mkfifo', [`${file}.${name}`]);
    writeFileSync(join(at, 'trust.json'), JSON.stringify(trusting(station)));
    const { value } = await said(() =>
      verify(file, { trust: join(at, 'trust.json'), policy: join(at, 'policy') }),
    );
    expect(value).toBe(0);
  });

  it('a pipe and a device among the records of a folder are named, and the others verified', async () => {
    const at = folder();
    writeFileSync(join(at, 'a.record.json'), honest);
    execFileSync('mkfifo', [join(at, 'b.record.json')]);
    symlinkSync('/dev/zero', join(at, 'c.record.json'));
    const ended = await run(['verify', at], { cwd: at });
    expect(ended.code).toBe(2);
    expect(ended.stdout.match(/UNREADABLE .*no plain file/g)).toHaveLength(2);
  });
});
