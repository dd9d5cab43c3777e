/** Every leaf of a value that a schema describes, with other values that the schema would take in its place. */
import type { z } from 'zod';
import { personalKindOf } from '../../src/personal.ts';

type Path = readonly (string | number)[];

export interface Leaf {
  readonly path: Path;
  /** The same with `[]` for a place in a list, and the name of the event in front. */
  readonly name: string;
  readonly others: readonly unknown[];
}

/** Stands for a member that is left out. */
export const LEFT_OUT = Symbol('left out');

export function leavesOf(schema: z.core.$ZodType, value: unknown, path: Path = [], name = ''): Leaf[] {
  if (personalKindOf(schema) !== null) return [];
  const { def } = (schema as z.core.$ZodTypes)._zod;
  const leaf = (...others: unknown[]): Leaf[] => [{ path, name, others }];
  switch (def.type) {
    case 'object':
      return Object.entries(def.shape).flatMap(([member, of]) => {
        const inside: unknown = Object(value)[member];
        if (inside === undefined) return [];
        const [at, called] = [[...path, member], `${name}.${member}`];
        const gone = of._zod.def.type === 'optional' ? [{ path: at, name: called, others: [LEFT_OUT] }] : [];
        return [...gone, ...leavesOf(of, inside, at, called)];
      });
    case 'array': {
      const list: readonly unknown[] = Array.isArray(value) ? value : [];
      const shorter = list.length === 0 ? [] : leaf(list.slice(0, -1));
      return [...shorter, ...list.flatMap((one, i) => leavesOf(def.element, one, [...path, i], `${name}[]`))];
    }
    case 'optional':
    case 'readonly':
      return leavesOf(def.innerType, value, path, name);
    case 'nullable':
      return value === null ? [] : [...leaf(null), ...leavesOf(def.innerType, value, path, name)];
    case 'union': {
      const option = def.options.find((one) => (one as z.ZodType).safeParse(value).success);
      return option === undefined ? [] : leavesOf(option, value, path, name);
    }
    case 'enum':
      return leaf(
        ...Object.values(def.entries)
          .filter((one) => one !== value)
          .slice(0, 2),
      );
    case 'boolean':
      return leaf(value !== true);
    case 'number':
      return leaf(Number(value) + 1, Number(value) - 1);
    case 'string':
      return leaf(otherText(String(value)));
    case 'literal':
      return [];
    default:
      throw new Error(`no other value of ${def.type} is known here`);
  }
}

/** A day or a moment a little later; any other text with a letter more. */
function otherText(text: string): string {
  if (/^\d{4}-\d\d-\d\d$/.test(text))
    return new Date(Date.parse(text) + 86_400_000).toISOString().slice(0, 10);
  if (/^\d{4}-\d\d-\d\dT/.test(text)) return new Date(Date.parse(text) + 1).toISOString();
  return `${text}x`;
}

/** A deep copy with one leaf changed. */
export function withLeaf<T>(value: T, path: Path, other: unknown): T {
  const [first, ...rest] = path;
  if (first === undefined) return other as T;
  const copy: Record<string | number, unknown> = Object(
    Array.isArray(value) ? [...value] : { ...Object(value) },
  );
  if (rest.length === 0 && other === LEFT_OUT) delete copy[first];
  else copy[first] = withLeaf(copy[first], rest, other);
  return copy as T;
}
