/**
 * No sentence of the program is signed: every text of a job's or a station's entries is a code of a closed list, has a form of
 * its own, is somebody's personal text (and concealed), or is named here with the reason why it is free. A new text fails this
 * until it is one of these.
 */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { stationEventSchema } from '../../../src/evidence/station-event.ts';
import { jobEventSchema } from '../../../src/job/event.ts';
import { packageIndexSchema } from '../../../src/package/format.ts';
import { personal, personalKindOf } from '../../../src/personal.ts';
import { summarySchema } from '../../../src/rules/summary.ts';

type Schema = z.core.$ZodType;

/** Names of the members on the way to each free text. */
function freeTexts(schema: Schema, at: string): readonly string[] {
  if (personalKindOf(schema) !== null) return [];
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case 'string':
      return hasForm(def) ? [] : [at];
    case 'object':
      return Object.entries(def.shape).flatMap(([name, member]) => freeTexts(member, `${at}.${name}`));
    case 'array':
      return freeTexts(def.element, `${at}[]`);
    case 'record':
      return [...freeTexts(def.keyType, `${at}{}`), ...freeTexts(def.valueType, `${at}{}`)];
    case 'optional':
    case 'nullable':
    case 'readonly':
      return freeTexts(def.innerType, at);
    case 'union':
      return def.options.flatMap((option) => freeTexts(option, `${at}${typeOf(option)}`));
    case 'number':
    case 'boolean':
    case 'literal':
    case 'enum':
      return [];
    default:
      throw new Error(`nobody looks for texts in ${def.type}`);
  }
}

/** A regular expression or a format of its own; a length alone is none. */
const hasForm = (def: z.core.$ZodStringDef): boolean =>
  'format' in def || (def.checks ?? []).some(({ _zod }) => _zod.def.check === 'string_format');

/** `<pull-placed>` for an event of that type. */
function typeOf(option: Schema): string {
  const [type] = [...(option._zod.propValues?.['type'] ?? [])];
  return type === undefined ? '' : `<${String(type)}>`;
}

/** What is found in `schema` that no entry of `allowed` names by its end, and what an entry of it names in vain. */
function compared(schema: Schema, allowed: Readonly<Record<string, string>>) {
  const found = [...new Set(freeTexts(schema, ''))];
  const names = Object.keys(allowed);
  const by = (text: string, name: string) => text === name || text.endsWith(name);
  return {
    unnamed: found.filter((text) => !names.some((name) => by(text, name))),
    unused: names.filter((name) => !found.some((text) => by(text, name))),
  };
}

const SHOP_NAMES = 'the name that the shop gave it; never compared with a text of the program';
const PRINTED = 'a figure as its source prints it, parsed by src/quantity; the text is that of the source';
const DEVICE = 'as the device reports it';
const LABORATORY = 'as on the certificate';
const SHOP_WORDS =
  "the shop's own words, frozen with the job; printed, never compared with a text of the program";
const SOFTWARE = 'name and version of software';

const INSTRUMENT = {
  '.maker': DEVICE,
  '.model': DEVICE,
  '.serial': DEVICE,
  '.basis': SHOP_WORDS,
  'certificate.number': LABORATORY,
  'certificate.laboratory': LABORATORY,
  'certificate.serial': LABORATORY,
};
const SPECIFICATION = {
  '.torque': PRINTED,
  '.tightenFirst': PRINTED,
  '.angle': PRINTED,
  '.turn': PRINTED,
  '.gap': PRINTED,
  '.wires.go': PRINTED,
  '.wires.noGo': PRINTED,
  '.wires.within': PRINTED,
  '.serviceLimit': PRINTED,
  '.bendMost': PRINTED,
  '.source.title': 'title of the document',
  '.source.edition': 'edition of the document',
};

const IN_A_JOB = {
  ...INSTRUMENT,
  ...SPECIFICATION,
  '.engine.description': SHOP_WORDS,
  '.part': 'part number',
  '.alsoParts[]': 'part number',
  '.heatRange': 'as the plug maker writes it',
  '.lot': 'lot number',
  '<job-opened>.basis.notes[].title': 'title of the document',
  '.rules': 'name and edition of the rules',
  '[].text': SHOP_WORDS,
  '[].reason': SHOP_WORDS,
  '.tool': SHOP_NAMES,
  '.program': SOFTWARE,
  '.platform': SOFTWARE,
  '.driver': 'name of a driver',
  '.firmware': DEVICE,
  '.address': DEVICE,
  '.shop.name': SHOP_NAMES,
  '.shop.address[]': SHOP_NAMES,
  '<raw-value>.source': 'the characteristic that the bytes came from',
};

const IN_A_STATION = {
  ...INSTRUMENT,
  ...SPECIFICATION,
  '.station': SHOP_NAMES,
  '.tool': SHOP_NAMES,
  '.job': SHOP_NAMES,
  '.redoneIn': SHOP_NAMES,
  '.parts[]': SHOP_NAMES,
  '.key.x': 'a key, parsed as one',
  '.kid': 'thumbprint of a key',
  '.statement': 'a statement that the old key signed',
  'asFound.number': LABORATORY,
  'asFound.laboratory': LABORATORY,
  'asFound.serial': LABORATORY,
  '.asFound': LABORATORY,
  '.lastGood.number': LABORATORY,
  '.certificate': LABORATORY,
};

const IN_AN_INDEX = {
  '.program': SOFTWARE,
  '.station': SHOP_NAMES,
  '.claim': SHOP_NAMES,
  '.asked{}': 'what was asked for, by name of an option',
  '.job': SHOP_NAMES,
  '.assessment': 'number of an impact assessment',
};

const CLEAN = { unnamed: [], unused: [] };

describe('a text that is signed is a code, has a form, is concealed, or is here with a reason', () => {
  it.each<[string, Schema, Readonly<Record<string, string>>]>([
    ['in the entries of a job', jobEventSchema, IN_A_JOB],
    ['in the entries of a station', stationEventSchema, IN_A_STATION],
    ['in the summary of a record', summarySchema, { '.turn': PRINTED }],
    ['in the index of a package', packageIndexSchema, IN_AN_INDEX],
  ])('%s', (_where, schema, allowed) => {
    expect(compared(schema, allowed)).toEqual(CLEAN);
  });

  it('or it is found: a new free text, and a name in vain', () => {
    const free = z.discriminatedUnion('type', [
      z.strictObject({
        type: z.literal('x'),
        code: z.enum(['a']),
        day: z.iso.date(),
        person: personal('note', z.string()),
        because: z.array(z.string().max(9)).exactOptional(),
      }),
    ]);
    expect(compared(free, { '.day': 'it has a form' })).toEqual({
      unnamed: ['<x>.because[]'],
      unused: ['.day'],
    });
  });
});
