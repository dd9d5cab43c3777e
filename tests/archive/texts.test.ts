import { describe, expect, it } from 'vitest';
import { entriesText, type ShippedEntry } from '../../src/archive/bundle.ts';
import { bundleWithout, keptFault } from '../../src/archive/kept-log.ts';
import { disclosesItsOwn, forgottenBy, withoutTexts } from '../../src/archive/texts.ts';
import { digestOf, disclosureOf } from '../../src/evidence/disclosures.ts';
import { leafHash } from '../../src/evidence/merkle.ts';

const SALT = 'c2FsdHNhbHRzYWx0c2FsdA';
const plate = disclosureOf(SALT, 'ZZ-TE 100');
const driver = disclosureOf(SALT, 'A. Driver');
const stranger = disclosureOf(SALT, 'somebody else');
const sd = (disclosure: string) => `{"_sd":["${digestOf(disclosure)}"]}`;
const entry = (disclosures: readonly string[]): ShippedEntry => ({
  body: `{"event":{"plate":${sd(plate)},"person":${sd(driver)}},"stream":"job:J-1"}`,
  disclosures,
});
const forgetting = (texts: string, stream = 'station'): ShippedEntry => ({
  body: `{"event":{"texts":${texts},"type":"texts-forgotten"},"stream":"${stream}"}`,
  disclosures: [],
});

describe('the texts that come with an entry', () => {
  it.each<[string, readonly string[], boolean]>([
    ['all of them', [plate, driver], true],
    ['some of them, in any order', [driver], true],
    ['none', [], true],
    ['one twice', [plate, plate], false],
    ['one of another entry', [plate, stranger], false],
  ])('are its own: %s', (_name, disclosures, own) => {
    expect(disclosesItsOwn(entry(disclosures))).toBe(own);
  });

  it('a text that only looks like a concealed one is none', () => {
    const body = JSON.stringify({ event: { note: sd(plate) } });
    expect(disclosesItsOwn({ body, disclosures: [plate] })).toBe(false);
  });
});

describe('what a log has forgotten', () => {
  it('is named by entries of the station, for entries before them', () => {
    const texts = '[{"entry":3,"kind":"person","text":1},{"entry":9,"kind":"plate","text":0}]';
    expect(forgottenBy(forgetting(texts), 8)).toEqual([{ index: 2, text: 1 }]);
  });

  it.each([
    ['an entry of a job', forgetting('[{"entry":3,"kind":"person","text":1}]', 'job:J-1')],
    ['a text that speaks of it', { body: '{"note":"\\"texts-forgotten\\""}', disclosures: [] }],
    ['what is no list', forgetting('"all"')],
  ])('%s forgets nothing', (_name, other) => {
    expect(forgottenBy(other, 100)).toEqual([]);
  });

  it('goes, and the rest of the entry stays with all of its hashes', () => {
    expect(withoutTexts(entry([plate, driver]), new Set([1]))).toEqual(entry([plate]));
    expect(withoutTexts(entry([driver]), new Set([1, 7]))).toEqual(entry([]));
    const entries = [entry([plate, driver]), entry([driver])];
    const bundle = {
      number: 2,
      hashes: entries.map(({ body }) => leafHash(Buffer.from(body))),
      text: entriesText(entries),
    };
    const places = [
      { index: 512, text: 0 },
      { index: 513, text: 1 },
    ];
    const left = bundleWithout(bundle, places);
    expect(left).toEqual({ ...bundle, text: entriesText([entry([driver]), entry([])]) });
    expect(keptFault(left)).toBeNull();
  });

  it('a text that is put beside a kept entry later is found', () => {
    const hashes = [leafHash(Buffer.from(entry([]).body))];
    expect(keptFault({ number: 0, hashes, text: entriesText([entry([stranger])]) })).toBe(0);
  });
});
