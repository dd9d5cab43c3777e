/** Which part goes into which cylinder: one for all, any of several, or each into its own. */
import type { Problem } from '../problem.ts';
import { w } from '../words/catalogue.ts';
import type { Plug } from './specification.ts';

/** The parts that may go into a cylinder. */
export function partsFor({ part, alsoParts = [], parts = [] }: Plug, cylinder: number): readonly string[] {
  const own = parts.find(({ cylinders }) => cylinders.includes(cylinder));
  return own === undefined ? [part, ...alsoParts] : [own.part];
}

/** The engine has two different plugs, each with its own places: mixed up, they fit and are wrong. */
export const hasOwnParts = ({ parts }: Plug): boolean => parts !== undefined;

/** Problem `plug-parts-not-one`: not every cylinder has one part, or a part is none of the order's. */
export function partsProblem(plug: Plug, cylinders: readonly number[]): Problem | null {
  const { part, alsoParts = [], parts } = plug;
  if (parts === undefined) return null;
  const named = parts.flatMap((one) => one.cylinders).sort((a, b) => a - b);
  const all = [...cylinders].sort((a, b) => a - b);
  const unknown = parts.find((one) => ![part, ...alsoParts].includes(one.part));
  if (named.join() === all.join() && unknown === undefined) return null;
  return {
    code: 'plug-parts-not-one',
    where: 'plug.parts',
    message:
      unknown === undefined
        ? w`not every cylinder has exactly one part; named are ${named.join(', ')}`
        : w`${unknown.part} is neither the part of the order nor one of the others`,
    next: w`Name every cylinder once, with "part" or one of "alsoParts".`,
  };
}
