/**
 * What RFC 9901 asks a verifier to refuse, and what this program refuses beyond that, each at its own reader: libraries let
 * much of it through.
 */
import { describe, expect, it } from 'vitest';
import { canonical, type JsonValue } from '../../src/evidence/canonical.ts';
import { concealedValue, digestOf, disclosureOf, revealed } from '../../src/evidence/disclosures.ts';
import { disclosuresIn, withDisclosures } from '../../src/evidence/jws.ts';
import { toBase64url } from '../../src/evidence/platform/bytes.ts';
import { openRecord } from '../../src/evidence/record.ts';
import { WITHHELD } from '../../src/personal.ts';
import { salts } from './entries.ts';
import { fileOf, judged, jwsOf, recordOf, signedAnew, signedTextOf } from './forge.ts';
import { logOf, seal, station, technician, wholeJob } from './sample-job.ts';

const salt = salts();
const plate = disclosureOf(salt(), 'EX 100');
const name = disclosureOf(salt(), 'A. Example');
const signed = {
  n: 1,
  technician: { _sd: [digestOf(name)] },
  vehicle: { plate: { _sd: [digestOf(plate)] } },
};

const of = (list: unknown) => toBase64url(canonical(list));
/** A disclosure of any form, with content that it would belong to. */
const alone = (disclosure: string): readonly [JsonValue, readonly string[]] => [
  { plate: { _sd: [digestOf(disclosure)] } },
  [disclosure],
];
const read = (value: JsonValue, disclosures: readonly string[]) => revealed(value, disclosures, 'content');

describe('texts that are disclosed', () => {
  it('are back in their places, and those that are not are seen to be withheld', () => {
    expect(read(signed, [name, plate])).toMatchObject({
      ok: true,
      value: { value: { n: 1, technician: 'A. Example', vehicle: { plate: 'EX 100' } } },
    });
    expect(read(signed, [plate])).toMatchObject({
      ok: true,
      value: { value: { n: 1, technician: WITHHELD, vehicle: { plate: 'EX 100' } } },
    });
    expect(read(signed, [])).toMatchObject({
      ok: true,
      value: { value: { technician: WITHHELD, vehicle: { plate: WITHHELD } } },
    });
  });

  it('are signed alike whether they are disclosed or not', () => {
    for (const some of [[name, plate], [plate], [name], []]) {
      const back = read(signed, some);
      if (!back.ok) throw new Error(back.error.message);
      const { value, concealed } = back.value;
      const textAt = (place: readonly (string | number)[]) =>
        String(place.reduce<unknown>((at, step) => Reflect.get(Object(at), step), value));
      expect(concealedValue(value, concealed, textAt)).toEqual(signed);
    }
  });

  it('may be any text, the sign for withheld text among them', () => {
    for (const text of [
      '',
      '"',
      '\u0000',
      '😀',
      '{"_sd":["x"]}',
      WITHHELD,
      'x'.repeat(1000),
      '漢'.repeat(1000),
    ])
      expect(read(...alone(disclosureOf(salt(), text)))).toMatchObject({
        ok: true,
        value: { value: { plate: text } },
      });
  });
});

describe('refused', () => {
  const again = { _sd: [digestOf(plate)] };
  const cases: readonly (readonly [string, JsonValue, readonly string[], RegExp])[] = [
    ['a digest twice, at another level', { ...signed, again }, [name, plate], /this digest is there twice/],
    ['a digest twice, disclosed or not', { ...signed, again }, [], /this digest is there twice/],
    [
      'a digest twice in one list',
      { plate: { _sd: [digestOf(plate), digestOf(plate)] } },
      [plate],
      /one digest/,
    ],
    [
      'two digests in one place',
      { plate: { _sd: [digestOf(plate), digestOf(name)] } },
      [plate, name],
      /one digest/,
    ],
    ['no digest', { plate: { _sd: [] } }, [], /one digest/],
    ['digests that are no list', { plate: { _sd: digestOf(plate) } }, [plate], /one digest/],
    ['a digest of another length', { plate: { _sd: ['AAAA'] } }, [], /one digest/],
    ['a digest in hexadecimal', { plate: { _sd: ['a'.repeat(64)] } }, [], /one digest/],
    ['a digest that is a number', { plate: { _sd: [7] } }, [], /one digest/],
    [
      'a name in the open beside the digest',
      { plate: { _sd: [digestOf(plate)], value: 'XX 1' } },
      [plate],
      /alone/,
    ],
    [
      'a disclosure that nothing refers to',
      signed,
      [name, plate, disclosureOf(salt(), 'EX 100')],
      /belongs to nothing/,
    ],
    ['a disclosure twice', signed, [name, plate, plate], /there twice/],
    [
      'a disclosure with another salt',
      signed,
      [disclosureOf(salt(), 'A. Example'), plate],
      /belongs to nothing/,
    ],
    [
      'a disclosure with another text',
      signed,
      [disclosureOf(salt(), 'B. Example'), plate],
      /belongs to nothing/,
    ],
    ['a hidden element of a list', { list: [{ '...': digestOf(plate) }] }, [plate], /element of a list/],
    [
      'a hidden element with a key more',
      { list: [{ '...': digestOf(plate), n: 1 }] },
      [plate],
      /element of a list/,
    ],
    ['a list of two', ...alone(of([salt(), 'EX 100'])), /list of three/],
    ['a list of four', ...alone(of([salt(), 'value', 'EX 100', 1])), /list of three/],
    ['an object', ...alone(of({ salt: salt(), name: 'value', text: 'x' })), /list of three/],
    ['the name _sd', ...alone(of([salt(), '_sd', ['x']])), /the name "value"/],
    ['the name ...', ...alone(of([salt(), '...', 'x'])), /the name "value"/],
    ['any other name', ...alone(of([salt(), 'result', 'OK'])), /the name "value"/],
    ['no text but a number', ...alone(of([salt(), 'value', 7])), /expected text/],
    ['no text but an object with a digest', ...alone(of([salt(), 'value', again])), /expected text/],
    ['a salt that is a number', ...alone(of([12345678901234, 'value', 'x'])), /128 bits/],
    ['a salt that is too short', ...alone(of(['AAAAAAAAAAAAAAAAAAAAA', 'value', 'x'])), /128 bits/],
    ['a salt that is no base64url', ...alone(of(['?'.repeat(22), 'value', 'x'])), /128 bits/],
    ['spaces', ...alone(toBase64url(`["${salt()}", "value", "x"]`)), /canonical/],
    ['an escape that needs none', ...alone(toBase64url(`["${salt()}","value","\\u0078"]`)), /canonical/],
    ['two texts', ...alone(toBase64url(`["${salt()}","value","x"][]`)), /JSON/],
    ['half a surrogate pair', ...alone(toBase64url(`["${salt()}","value","\\ud800"]`)), /JSON/],
    ['a name twice', ...alone(toBase64url(`["${salt()}","value",{"a":1,"a":2}]`)), /JSON/],
    ['no UTF-8', ...alone(toBase64url(Buffer.from([0x5b, 0xff, 0x5d]))), /JSON/],
    ['padded base64', ...alone(`${disclosureOf(salt(), 'x')}=`), /JSON/],
    [
      'another end of base64',
      ...alone(`${disclosureOf(salt(), 'xy').slice(0, -1)}R`),
      /JSON|canonical|three/,
    ],
    ['nothing', ...alone(''), /JSON/],
    ['brackets without end', ...alone(toBase64url('['.repeat(3000))), /JSON/],
    ['more than a text is long', ...alone(disclosureOf(salt(), 'x'.repeat(5000))), /longer than/],
    ['more than a file has', signed, Array.from({ length: 200_001 }, () => plate), /more than any file/],
  ];
  it.each(cases)('%s', (_what, value, disclosures, why) => {
    const back = read(value, disclosures);
    expect(back).toMatchObject({
      ok: false,
      error: { code: 'disclosure', message: expect.stringMatching(why) },
    });
  });

  it('with the place, in the content or in the list of disclosures', () => {
    expect(read({ vehicle: { plate: again, vin: again } }, [])).toMatchObject({
      ok: false,
      error: { where: 'content: vehicle.vin' },
    });
    expect(read({ people: [again, again] }, [])).toMatchObject({
      ok: false,
      error: { where: 'content: people[1]' },
    });
    expect(read(signed, [name, plate, disclosureOf(salt(), 'x')])).toMatchObject({
      ok: false,
      error: { where: 'content: disclosures[2]' },
    });
  });
});

describe('a record', () => {
  const bytes = seal(logOf(wholeJob()));
  const jws = jwsOf(bytes);
  const record = recordOf(bytes);
  const with_ = (disclosures: readonly string[]) => fileOf(withDisclosures(jws, disclosures));
  const all = disclosuresIn(jws);

  it('verifies with all of its disclosures, with some and with none, alike but for what is withheld', () => {
    expect(all.length).toBeGreaterThan(3);
    for (const some of [all, ...all.map((_, i) => all.filter((_one, j) => j !== i)), []])
      expect(judged(with_(some))).toEqual({ verdict: 'authentic', failed: [], why: '' });
  });

  it('has the same content signed whatever is disclosed', () => {
    expect(signedTextOf(recordOf(with_([])))).toBe(signedTextOf(record));
  });

  it('takes no disclosure of another record', () => {
    const [foreign = ''] = disclosuresIn(jwsOf(seal(logOf(wholeJob('WO-2'), 'job:WO-2')))).slice(-1);
    const stranger = disclosureOf(salt(), 'EX 100');
    expect(all).not.toContain(stranger);
    for (const one of [stranger, ...(all.includes(foreign) ? [] : [foreign])])
      expect(judged(with_([...all, one])).why).toContain('belongs to nothing in the content');
  });

  it('has its disclosures with the first signature, and nowhere else', () => {
    const [first, second] = jws.signatures;
    const moved = {
      ...jws,
      signatures: [
        { ...first, header: undefined },
        { ...second, header: first?.header },
      ],
    };
    const file = fileOf(JSON.parse(JSON.stringify(moved)));
    expect(judged(file)).toMatchObject({ verdict: 'rejected' });
    expect(judged(file).why).toContain('first signature alone');
  });

  it.each([
    ['sha-256-32', { _sd_alg: 'sha-256-32' }],
    ['sha-512', { _sd_alg: 'sha-512' }],
    ['a number', { _sd_alg: 256 }],
    ['nothing', { _sd_alg: null }],
  ])('is not read under the hash %s', (_what, change) => {
    const { _sd_alg, ...rest } = record;
    const file = signedAnew({ ...rest, ...change } as unknown as typeof record, station, technician);
    const opened = openRecord(file);
    expect(opened).toMatchObject({ ok: false, error: { kind: 'damaged', problem: { code: 'record-form' } } });
    expect(judged(file).why).toContain('_sd_alg');
  });
});
