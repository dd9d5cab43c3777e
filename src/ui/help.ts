import { PLUG_KEYS } from './gap-keys.ts';
import type { Line } from './line.ts';
import { ANSWERS } from './words.ts';

const KEYS: readonly (readonly [string, string])[] = [
  ['left, right', 'cylinder of the next pull, along the service order'],
  ['up, down', 'cylinder of the next gap reading'],
  ...Object.values(ANSWERS).map(({ key, long }) => [key, long] as const),
  ...PLUG_KEYS,
  ['s', 'sign and finish, once every cylinder is proven'],
  ['?', 'this list on and off'],
  ['q, Ctrl-C', 'leave; nothing is lost, the job can be taken up again'],
];

/** Every key and what it does. */
export const helpLines = (): Line[] =>
  KEYS.map(([key, what]) => [{ text: ` ${key.padEnd(12)}`, bold: true }, { text: what }]);
