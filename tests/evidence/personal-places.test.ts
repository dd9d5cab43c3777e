/** What is personal in the entries of a log, and that what is signed holds none of it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { Random } from '../../sim/random.ts';
import { schemaOf } from '../../src/cli/help/schema.ts';
import { canonical, type JsonValue } from '../../src/evidence/canonical.ts';
import {
  type Concealed,
  concealedValue,
  digestOf,
  disclosureOf,
  revealed,
} from '../../src/evidence/disclosures.ts';
import { readEntry, signedEntry } from '../../src/evidence/entry.ts';
import { jobEntrySchema, stationEntrySchema } from '../../src/evidence/log.ts';
import { type Place, personalPlaces, replacedAt } from '../../src/evidence/personal-places.ts';
import { personal, personalKindOf } from '../../src/personal.ts';
import { jobEntry, salts, stationEntry } from './entries.ts';
import { logOf, opening, stationEvents, wholeJob } from './sample-job.ts';
import { sampled } from './sampled.ts';

const textAt = (value: unknown) => (place: Place) =>
  String(place.reduce<unknown>((at, step) => Reflect.get(Object(at), step), value));

/** Of each event, the places of digests in its published JSON Schema, lists as []. */
function placesOf(form: 'log-entry' | 'station-entry'): Record<string, string[]> {
  const places: Record<string, string[]> = {};
  const walk = (node: unknown, place: string, into: string[]): void => {
    if (typeof node !== 'object' || node === null) return;
    const { properties, items, anyOf, oneOf } = node as Record<string, unknown>;
    if (properties !== undefined && '_sd' in Object(properties)) into.push(place);
    else for (const [name, part] of Object.entries(Object(properties))) walk(part, `${place}.${name}`, into);
    walk(items, `${place}[]`, into);
    for (const one of [anyOf, oneOf].flat()) walk(one, place, into);
  };
  const { properties } = schemaOf(form);
  for (const event of Object(properties).event.oneOf) {
    const into: string[] = [];
    walk(event, '', into);
    places[event.properties.type.const] = into.map((place) => place.slice(1));
  }
  return places;
}

describe('what is personal', () => {
  it('of what happens in a job', () => {
    const some = Object.entries(placesOf('log-entry')).filter(([, places]) => places.length > 0);
    expect(Object.fromEntries(some)).toEqual({
      'job-opened': [
        'order.technician',
        'order.vehicle.vin',
        'order.vehicle.plate',
        'order.vehicle.description',
        'order.vehicle.fleet',
        'order.customer',
        'order.complaint',
        'order.specification.reduction.setBy',
        'order.specification.singleFigure.setBy',
        'order.specification.checkedBy',
        'toolsOf[].technician',
      ],
      'technician-at-work': ['person'],
      'instrument-overridden': ['by', 'reason'],
      'pull-given': ['why'],
      'cylinder-left-out': ['why'],
      'cylinder-restarted': ['why'],
      'steps-attested': ['steps[].why'],
      'taken-back': ['why'],
      'old-plugs-read': ['note'],
      'fitted-by-angle': ['why'],
      'gap-kept': ['by', 'reason'],
      'pull-accepted': ['by', 'reason'],
      'job-handed-over': ['to'],
      'job-voided': ['by', 'reason'],
    });
  });

  it('of what happens to the station', () => {
    const some = Object.entries(placesOf('station-entry')).filter(([, places]) => places.length > 0);
    expect(Object.fromEntries(some)).toEqual({
      'key-replaced': ['because'],
      'key-revoked': ['because'],
      'person-recorded': ['person'],
      'specification-recorded': [
        'specification.reduction.setBy',
        'specification.singleFigure.setBy',
        'specification.checkedBy',
      ],
      'assessment-made': ['items[].vin', 'items[].plate', 'items[].fleet'],
      'item-decided': ['because'],
      'assessment-closed': ['because'],
      'entries-lost': ['because'],
      'texts-forgotten': ['because'],
      'gauge-study-started': ['appraisers[]'],
      'gauge-study-dropped': ['because'],
      'gauge-study-finished': ['appraisers[]'],
    });
  });

  it('is who made an entry, unless it was the program or the technician of the job', () => {
    const by = (name: string) =>
      personalPlaces(jobEntrySchema, jobEntry({ type: 'windows-confirmed' }, { by: name }));
    expect(by('Foreman One')).toEqual([{ place: ['by'], kind: 'person', text: 'Foreman One' }]);
    expect(by('station')).toEqual([]);
    expect(by('technician')).toEqual([]);
  });
});

describe('a mark', () => {
  const marked = personal('plate', z.string().max(20));
  it.each([
    ['described', marked.describe('Its plate.')],
    ['described twice', marked.describe('Its plate.').describe('Number plate.')],
    ['narrowed', marked.min(1)],
    ['refined', marked.refine((text) => text !== '')],
  ])('stays on a schema that is %s later', (_what, schema) => {
    expect(personalKindOf(schema)).toBe('plate');
    expect(personalPlaces(z.strictObject({ one: schema.nullable() }), { one: 'EX 100' })).toEqual([
      { place: ['one'], kind: 'plate', text: 'EX 100' },
    ]);
  });

  it('is not on the schema that it was made of', () => {
    const name = z.string();
    personal('person', name);
    expect(personalKindOf(name)).toBeNull();
  });

  it('in a kind of schema that nobody looks into is a fault of the program', () => {
    const names = z.strictObject({ by: z.record(z.string(), marked) });
    expect(() => personalPlaces(names, { by: { a: 'x' } })).toThrow(
      'nobody looks for personal text in record',
    );
  });

  it('among several kinds of text in one place would be lost, and is a fault of the program', () => {
    const one = z.strictObject({ text: z.union([marked, personal('vin', z.string())]) });
    expect(() => personalPlaces(one, { text: 'x' })).toThrow('a union may hold one personal text');
    const open = z.strictObject({ text: z.union([marked, z.string()]) });
    expect(() => personalPlaces(open, { text: 'x' })).toThrow('a union may hold one personal text');
  });
});

describe.each([
  ['a job', jobEntrySchema],
  ['the station', stationEntrySchema],
])('any entry of %s', (_what, schema) => {
  const seeds = fc.integer({ min: 0 });

  it('shows all of its personal texts, each with its kind, in the order of its canonical JSON', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { value, texts } = sampled(schema, new Random(seed));
        const places = personalPlaces(schema, value);
        const byText = (a: { text: string }, b: { text: string }) => (a.text < b.text ? -1 : 1);
        expect(places.map(({ kind, text }) => ({ kind, text })).sort(byText)).toEqual(
          [...texts].sort(byText),
        );
        const written = canonical(value);
        const at = places.map(({ text }) => written.indexOf(text));
        expect(at).toEqual([...at].sort((a, b) => a - b));
        for (const { place, text } of places) expect(textAt(value)(place)).toBe(text);
      }),
    );
  });

  it('is signed without any of them, and is the same again once they are disclosed', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { value, texts } = sampled(schema, new Random(seed));
        const salt = salts();
        const concealed: Concealed[] = personalPlaces(schema, value).map(({ place }) => ({
          place,
          salt: salt(),
        }));
        const signed = canonical(concealedValue(value, concealed, textAt(value)));
        for (const { text } of texts) expect(signed).not.toContain(text);
        const disclosures = concealed.map((one) =>
          disclosureOf('salt' in one ? one.salt : '', textAt(value)(one.place)),
        );
        const back = revealed(JSON.parse(signed), disclosures, 'entry');
        if (!back.ok) throw new Error(back.error.message);
        expect(back.value.value).toEqual(JSON.parse(canonical(value)));
        expect(back.value.concealed).toEqual(concealed);
      }),
    );
  });
});

describe('an entry is refused, with its place,', () => {
  const { entries, station } = logOf(wholeJob());
  const [opened] = entries;
  const placed = entries.find(({ event }) => event.type === 'pull-placed');
  if (opened === undefined || placed === undefined) throw new Error('no job');
  const salt = salts();
  const hidden = (text: string) => {
    const disclosure = disclosureOf(salt(), text);
    return { disclosure, by: { _sd: [digestOf(disclosure)] } };
  };
  const read = (value: unknown, disclosures: readonly string[]) =>
    readEntry(value as JsonValue, disclosures, 'entry');

  it.each([
    ['its verdict', ['event', 'judgement', 'result'], 'OK'],
    ['its kind', ['event', 'type'], 'pull-placed'],
    ['its reason, which the program gave', ['event', 'because'], 'rose in 400 ms'],
    ['its time', ['at'], '2026-03-02T09:30:00.000Z'],
    ['its salt', ['salt'], 'AAAAAAAAAAAAAAAAAAAAAA'],
    ['that the program made it', ['by'], 'station'],
  ])('that conceals %s', (_what, place, text) => {
    const { disclosure, by } = hidden(text);
    const value = replacedAt(signedEntry(placed), [{ place, by }]);
    const withText = read(value, [disclosure]);
    expect(withText.ok ? null : withText.error.code).toMatch(/^(disclosure|entry-form)$/);
    expect(withText.ok ? '' : withText.error.where).toContain(place[0]);
    if (place[0] === 'by') return;
    // Withheld, it is not even of the right form, or concealed where nothing may be.
    const without = read(value, []);
    expect(without.ok ? null : without.error.code).toMatch(/^(disclosure|entry-form)$/);
  });

  it.each([
    ['a plate', ['event', 'order', 'vehicle', 'plate'], 'EX 100'],
    ['a name', ['event', 'order', 'technician'], 'A. Example'],
  ])('that shows %s in the open', (_what, place, by) => {
    const back = read(replacedAt(signedEntry(opened), [{ place, by }]), []);
    expect(back).toEqual({
      ok: false,
      error: expect.objectContaining({
        code: 'disclosure',
        where: `entry: ${place.join('.')}`,
        message: 'personal text has to be concealed here',
      }),
    });
  });

  it('but not where it is as it was written', () => {
    for (const entry of [...station, ...entries])
      expect(read(signedEntry(entry), [])).toMatchObject({ ok: true, value: { seq: entry.seq } });
  });
});

it('the entries of the tests are made as the log makes them', () => {
  const one = jobEntry(opening());
  expect(one.concealed).toHaveLength(3);
  const [person] = stationEvents.filter(({ type }) => type === 'person-recorded');
  if (person === undefined) throw new Error('nobody was recorded');
  expect(stationEntry(person).concealed).toMatchObject([{ place: ['event', 'person'] }]);
});
