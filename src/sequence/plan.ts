/**
 * The plan of a job: which plug positions there are and in which order they come. The maker's numbering is typed with
 * the job and never inferred. On an engine with two plugs a cylinder each plug has a number of its own in banks and
 * service order, and `plugs` says to which cylinder the numbers belong.
 */
import { w } from '../words/catalogue.ts';

/** The plugs of one cylinder by their numbers in the plan; the first is its plug 1. */
export interface PlugsOfCylinder {
  readonly cylinder: number;
  readonly plugs: readonly number[];
}

/** The part of a work order's engine that says where a plug is. */
export interface Numbering {
  readonly banks: readonly (readonly number[])[];
  readonly serviceOrder: readonly number[];
  readonly plugs?: readonly PlugsOfCylinder[];
  readonly firingOrder?: readonly number[];
}

/** How a position is called: `cylinder 5`, or `cylinder 3, plug 2 (no. 11)` where a cylinder has several. */
export function called({ plugs }: Pick<Numbering, 'plugs'>, position: number): string {
  const of = plugs?.find((one) => one.plugs.includes(position));
  if (of === undefined) return w`cylinder ${position}`;
  if (of.plugs.length === 1) return w`cylinder ${of.cylinder}`;
  return w`cylinder ${of.cylinder}, plug ${of.plugs.indexOf(position) + 1} (no. ${position})`;
}

/** What is wrong with a numbering, and with which of its lists; null for nothing. */
export function misnumbered(
  engine: Numbering,
): { readonly field: keyof Numbering; readonly message: string } | null {
  const { banks, serviceOrder, plugs, firingOrder } = engine;
  const numbers = banks.flat();
  const listed = inOrder(numbers).join(', ');
  if (new Set(numbers).size !== numbers.length)
    return { field: 'banks', message: w`a cylinder number stands twice; expected each once` };
  if (!same(serviceOrder, numbers))
    return { field: 'serviceOrder', message: w`expected every cylinder of banks exactly once (${listed})` };
  if (
    plugs !== undefined &&
    !same(
      plugs.flatMap((one) => one.plugs),
      numbers,
    )
  )
    return { field: 'plugs', message: w`expected every number of banks at exactly one cylinder (${listed})` };
  const cylinders = plugs?.map(({ cylinder }) => cylinder) ?? numbers;
  if (new Set(cylinders).size !== cylinders.length)
    return { field: 'plugs', message: w`a cylinder stands twice; expected each once` };
  if (firingOrder === undefined) return null;
  if (!same(firingOrder, cylinders))
    return {
      field: 'firingOrder',
      message: w`expected every cylinder once (${inOrder(cylinders).join(', ')})`,
    };
  if (firingOrder[0] !== Math.min(...cylinders))
    return { field: 'firingOrder', message: w`a firing order starts with the first cylinder` };
  return null;
}

const inOrder = (list: readonly number[]) => [...list].sort((a, b) => a - b);
const same = (a: readonly number[], b: readonly number[]) => inOrder(a).join() === inOrder(b).join();
