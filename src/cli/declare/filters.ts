/** By what jobs and attempts are asked for: one list for `ask`, `package`, `capability` and `delivered`. */
import type { Command } from 'commander';

const FILTERS = [
  ['vin', '<vin>', 'of this vehicle; capitals, spaces and hyphens make no difference here and below'],
  ['plate', '<plate>', 'of the vehicle with this plate'],
  ['fleet', '<number>', 'of the vehicle with this fleet number'],
  ['part', '<part>', 'plugs of this part number'],
  ['lot', '<lot>', 'plugs of this lot'],
  ['technician', '<person>', 'in which this person worked'],
  ['tool', '<tool>', 'with this tool, by its name or its serial number'],
  ['from', '<date>', 'on this day (UTC) or later'],
  ['to', '<date>', 'on this day (UTC) or earlier'],
] as const;
type Name = (typeof FILTERS)[number][0];

/** What was named; all of it must hold. */
export type Asked = { readonly [N in Name]?: string };

export function asked(command: Command): Command {
  for (const [name, value, description] of FILTERS) command.option(`--${name} ${value}`, description);
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
