/** By what jobs and attempts are asked for: one list for `ask`, `package`, `capability` and `delivered`. */

import type { Command } from 'commander';
import { phrases } from '../../words/catalogue.ts';

const FILTERS = [
  ['vin', '<vin>'],
  ['plate', '<plate>'],
  ['fleet', '<number>'],
  ['part', '<part>'],
  ['lot', '<lot>'],
  ['technician', '<person>'],
  ['tool', '<tool>'],
  ['from', '<date>'],
  ['to', '<date>'],
] as const;
const WORDS: Readonly<Record<Name, string>> = phrases({
  vin: 'of this vehicle; capitals, spaces and hyphens make no difference here and below',
  plate: 'of the vehicle with this plate',
  fleet: 'of the vehicle with this fleet number',
  part: 'plugs of this part number',
  lot: 'plugs of this lot',
  technician: 'in which this person worked',
  tool: 'with this tool, by its name or its serial number',
  from: 'on this day (UTC) or later',
  to: 'on this day (UTC) or earlier',
});
type Name = (typeof FILTERS)[number][0];

/** What was named; all of it must hold. */
export type Asked = { readonly [N in Name]?: string };

export function asked(command: Command): Command {
  for (const [name, value] of FILTERS) command.option(`--${name} ${value}`, WORDS[name]);
  return command;
}

/** The filters among the options of a command. */
export function askedIn(options: Asked): Asked {
  const named: { [N in Name]?: string } = {};
  for (const [name] of FILTERS) {
    const value = options[name];
    if (value !== undefined) named[name] = value;
  }
  return named;
}
