/** Values that a schema describes, drawn by chance; each personal text of them says what it is and is there once. */
import type { z } from 'zod';
import type { Random } from '../../sim/random.ts';
import { type PersonalKind, personalKindOf } from '../../src/personal.ts';

export interface Sample {
  readonly value: unknown;
  readonly texts: readonly { readonly kind: PersonalKind; readonly text: string }[];
}

export function sampled(schema: z.core.$ZodType, random: Random): Sample {
  const texts: { kind: PersonalKind; text: string }[] = [];
  const below = (limit: number) => Math.floor(random.uniform(0, limit));
  const pick = <T>(all: readonly T[]): T => {
    const one = all[below(all.length)];
    if (one === undefined) throw new Error('nothing to pick from');
    return one;
  };
  const of = (one: z.core.$ZodType): unknown => {
    const kind = personalKindOf(one);
    if (kind !== null) {
      const text = `«${kind} ${texts.length}»`;
      texts.push({ kind, text });
      return text;
    }
    const { def } = (one as z.core.$ZodTypes)._zod;
    switch (def.type) {
      case 'object': {
        const members = Object.entries(def.shape).map(([name, member]) => [name, of(member)] as const);
        return Object.fromEntries(members.filter(([, value]) => value !== undefined));
      }
      case 'array':
        return Array.from({ length: below(4) }, () => of(def.element));
      case 'optional':
        return random.chance(0.7) ? of(def.innerType) : undefined;
      case 'readonly':
        return of(def.innerType);
      case 'nullable':
        return random.chance(0.7) ? of(def.innerType) : null;
      case 'union':
        return of(pick(def.options));
      case 'enum':
        return pick(Object.values(def.entries));
      case 'literal':
        return pick(def.values);
      case 'string':
        return pick(['', 'plain', '{"_sd":1}', '"']);
      case 'number':
        return below(100) / 4;
      case 'boolean':
        return random.chance(0.5);
      default:
        throw new Error(`no value of ${def.type} is drawn here`);
    }
  };
  return { value: of(schema), texts };
}
