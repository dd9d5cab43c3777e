import { sameAddress } from '../../../drivers/bluetooth/adopted.ts';
import type { Candidate } from '../../../drivers/bluetooth/survey.ts';
import { writeWhole } from '../../files/output.ts';
import type { Problem } from '../../problem.ts';
import type { ProblemCode } from '../../problem-code.ts';
import { err, ok, orThrow, type Result } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { readJson } from './json-file.ts';
import { type StationFile, stationFileSchema } from './station-file.ts';

interface Wanted {
  readonly tool: string;
  /** Path as the station file is to name it; left out: the Bluetooth SIG's own service. */
  readonly profile?: string;
}

/**
 * The station file with the device as its tool. Refused: a device that cannot be found again, one without a serial
 * number, a serial number, address or name that the station knows from another tool.
 */
export function adoption(
  station: StationFile,
  { tool: id, profile }: Wanted,
  { address, name, lasting }: Candidate,
  serial: string | undefined,
): Result<StationFile, Problem> {
  const refuse = (code: ProblemCode, message: string, next: string) =>
    err({ code, where: address, message, next });
  const entry = station.tools.find((tool) => tool.id === id);
  if (entry === undefined)
    return refuse(
      'tool-unknown',
      w`the station file has no tool "${id}"`,
      w`Add it first, or name one of: ${station.tools.map((tool) => tool.id).join(', ')}.`,
    );
  if (lasting === false)
    return refuse(
      'address-changes',
      w`the device at ${address} uses a changing address and was not heard again`,
      w`Switch off the privacy setting of the tool. This station cannot resolve such addresses.`,
    );
  if (serial === undefined)
    return refuse(
      'serial-missing',
      w`the device at ${address} gives no serial number before pairing, so this station cannot tell it from another one`,
      w`Use a tool that gives a serial number in its Device Information.`,
    );
  if (entry.serial !== undefined && entry.serial !== serial)
    return refuse(
      'tool-other-serial',
      w`the device at ${address} has serial number ${serial}, but the station file says ${entry.serial} for ${id}`,
      w`Adopt the right one, or correct the instrument with the data of its certificate.`,
    );
  const addressOf = ({ driver }: StationFile['tools'][number]) =>
    'address' in driver ? driver.address : undefined;
  const elsewhere = addressOf(entry);
  if (elsewhere !== undefined && entry.serial === serial && !sameAddress(elsewhere, address))
    return refuse(
      'serial-elsewhere',
      w`serial number ${serial} is adopted at ${elsewhere} but answers from ${address}`,
      w`Check which of the two is the tool. If it has a new radio, delete "address" of ${id} in the station file.`,
    );
  for (const other of station.tools.filter((tool) => tool.id !== id)) {
    if (other.serial === serial || sameAddress(addressOf(other) ?? '', address))
      return refuse(
        'already-adopted',
        w`serial number ${serial} at ${address} is ${other.id} of this station already`,
        w`Choose another device.`,
      );
    if (name !== '' && 'name' in other.driver && other.driver.name === name)
      return refuse(
        'name-taken',
        w`the device has the name "${name}", like the tool ${other.id}`,
        w`Rename one of the two in its own settings.`,
      );
  }
  const driver = {
    ...(profile === undefined ? { use: 'imds' as const } : { use: 'profile' as const, profile }),
    address,
    ...(name !== '' && { name }),
  };
  const tools = station.tools.map((tool) => (tool.id === id ? { ...tool, serial, driver } : tool));
  return ok({ ...station, tools });
}

/** {@link adoption} on the file itself, which then appears whole or not at all. */
export async function adoptInto(
  file: string,
  wanted: Wanted,
  candidate: Candidate,
  serial: string | undefined,
): Promise<void> {
  const station = await readJson(file, stationFileSchema, w`station file`, '"plugmark manual station-file"');
  const changed = orThrow(adoption(station, wanted, candidate, serial));
  writeWhole(file, `${JSON.stringify(changed, null, 2)}\n`);
}
