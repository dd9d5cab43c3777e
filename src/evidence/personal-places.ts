/** Where in a value the personal texts stand, as its schema marks them. */
import type { z } from 'zod';
import { type PersonalKind, personalKindOf } from '../personal.ts';
import type { JsonValue } from './canonical.ts';

/** A way into a value: names of members and numbers of elements. */
export type Place = readonly (string | number)[];

export interface PersonalPlace {
  readonly place: Place;
  readonly kind: PersonalKind;
  readonly text: string;
}

/** What is personal in values of one schema; null where nothing is. */
type Plan =
  | null
  | { readonly is: 'personal'; readonly kind: PersonalKind; readonly except: ReadonlySet<string> }
  | { readonly is: 'object'; readonly members: ReadonlyMap<string, Plan> }
  | { readonly is: 'array'; readonly element: Plan }
  | { readonly is: 'choice'; readonly by: string; readonly options: ReadonlyMap<unknown, Plan> };

type Schema = z.core.$ZodType;

const plans = new WeakMap<Schema, { readonly plan: Plan }>();

function planOf(schema: Schema): Plan {
  const kept = plans.get(schema);
  if (kept !== undefined) return kept.plan;
  const plan = newPlan(schema);
  plans.set(schema, { plan });
  return plan;
}

function newPlan(schema: Schema): Plan {
  const kind = personalKindOf(schema);
  if (kind !== null) return { is: 'personal', kind, except: new Set() };
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case 'object': {
      const members = Object.entries(def.shape).map(([name, member]) => [name, planOf(member)] as const);
      const own = members.filter(([, plan]) => plan !== null).sort(([a], [b]) => (a < b ? -1 : 1));
      return own.length === 0 ? null : { is: 'object', members: new Map(own) };
    }
    case 'array': {
      const element = planOf(def.element);
      return element === null ? null : { is: 'array', element };
    }
    case 'optional':
    case 'nullable':
    case 'readonly':
      return planOf(def.innerType);
    case 'union':
      return planOfUnion(def);
    case 'string':
    case 'number':
    case 'boolean':
    case 'literal':
    case 'enum':
      return null;
    default:
      throw new Error(`nobody looks for personal text in ${def.type}`);
  }
}

function planOfUnion(def: z.core.$ZodUnionDef | z.core.$ZodDiscriminatedUnionDef): Plan {
  if ('discriminator' in def) {
    const by = def.discriminator;
    const options = def.options.flatMap((option) =>
      [...(option._zod.propValues?.[by] ?? [])].map((value) => [value, planOf(option)] as const),
    );
    return options.every(([, plan]) => plan === null)
      ? null
      : { is: 'choice', by, options: new Map(options) };
  }
  const own = def.options.map(planOf).filter((plan) => plan !== null);
  const [only] = own;
  if (only === undefined) return null;
  const literals = def.options.flatMap((option) => [...(option._zod.values ?? [])]);
  // Anything else could not be told apart in what is signed.
  if (own.length > 1 || only.is !== 'personal' || literals.length + 1 < def.options.length)
    throw new Error('a union may hold one personal text beside fixed words, and no more');
  return { ...only, except: new Set(literals.map(String)) };
}

/** All personal texts of a value that its schema accepts, in the order of its canonical JSON. */
export function personalPlaces(schema: Schema, value: unknown): readonly PersonalPlace[] {
  const found: PersonalPlace[] = [];
  walk(planOf(schema), value, [], found);
  return found;
}

/** `way` leads to the value; it is the same list throughout, and as it was when this is done. */
function walk(plan: Plan, value: unknown, way: (string | number)[], found: PersonalPlace[]): void {
  if (plan === null || value === undefined || value === null) return;
  if (plan.is === 'personal') {
    if (typeof value === 'string' && !plan.except.has(value))
      found.push({ place: [...way], kind: plan.kind, text: value });
  } else if (plan.is === 'array') {
    if (Array.isArray(value))
      for (const [i, item] of value.entries()) walkInto(i, plan.element, item, way, found);
  } else if (isObject(value)) {
    if (plan.is === 'choice') walk(plan.options.get(value[plan.by]) ?? null, value, way, found);
    else for (const [name, member] of plan.members) walkInto(name, member, value[name], way, found);
  }
}

function walkInto(
  step: string | number,
  plan: Plan,
  value: unknown,
  way: (string | number)[],
  found: PersonalPlace[],
): void {
  way.push(step);
  walk(plan, value, way, found);
  way.pop();
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Something to be put in the place of what stands there. */
export interface Replacement {
  readonly place: Place;
  readonly by: JsonValue;
}

/** The value with what stands at some places replaced; what is on the way is copied once, nothing is changed. */
export function replacedAt(value: unknown, replacements: readonly Replacement[]): unknown {
  const [first] = replacements;
  if (first === undefined) return value;
  if (first.place.length === 0) return first.by;
  const inside = new Map<string | number, Replacement[]>();
  for (const { place, by } of replacements) {
    const [step = '', ...rest] = place;
    const some = inside.get(step) ?? [];
    some.push({ place: rest, by });
    inside.set(step, some);
  }
  const part = (step: string | number, item: unknown) => replacedAt(item, inside.get(step) ?? []);
  if (Array.isArray(value)) return value.map((item: unknown, i) => part(i, item));
  if (!isObject(value)) throw new Error(`there is no ${first.place.join('.')} to replace`);
  return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, part(name, item)]));
}
