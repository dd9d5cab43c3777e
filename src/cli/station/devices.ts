import { open, rm } from 'node:fs/promises';
import { merge } from 'rxjs';
import { realAfter } from '../../../drivers/after.ts';
import { type Candidate, candidates, heard, introduce, visit } from '../../../drivers/bluetooth/survey.ts';
import { addressSchema } from '../../../drivers/config.ts';
import { SERVICE } from '../../../drivers/imds/numbers.ts';
import { bluetoothProfile, readProfile } from '../../../drivers/profile/file.ts';
import { openRadio } from '../../../drivers/radio/open.ts';
import type { Link, Radio } from '../../../drivers/radio/radio.ts';
import { captureWriter } from '../../../drivers/replay/capture-writer.ts';
import { openSerial } from '../../../drivers/serial/open.ts';
import { fileProblem } from '../../files/file-problem.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { printJson, reasonOf } from '../answers/answer.ts';
import { type DeviceAnswer, deviceOf, type ScanAnswer } from '../answers/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { adoptInto } from './adopt.ts';
import { clock } from './clock.ts';
import { readStationFile } from './station-file.ts';
import { dashed } from './teach-live.ts';

const HEARD_MS = 10_000;

const say = (line: string) => void process.stdout.write(`${line}\n`);

export interface ScanOptions {
  readonly seconds: number;
  readonly all?: true;
  readonly profile: readonly string[];
  readonly serial: boolean;
  readonly json?: true;
}

/** Shows what is on the air: measuring tools, with their serial numbers. */
export async function scan({ seconds, all, profile, serial, json }: ScanOptions): Promise<ExitCode> {
  const profiles = await Promise.all(
    profile.map(async (file) => orThrow(bluetoothProfile(orThrow(await readProfile(file)), file))),
  );
  const services = [SERVICE.industrialMeasurement, ...profiles.map(({ link }) => link.advertised)];
  return withRadio(async (radio) => {
    const sightings$ = all === true ? radio.scan() : merge(...services.map((service) => radio.scan(service)));
    const devices = await candidates(sightings$, seconds * 1_000, realAfter);
    if (json === true) {
      printJson({
        form: 'plugmark/devices-scan/1',
        devices: await devicesOf(radio, devices, serial),
      } satisfies ScanAnswer);
      return EXIT.done;
    }
    if (devices.length === 0) say(w`No measuring tool heard. Switch it on, or list every device with --all.`);
    else say(row([w`address`, w`signal`, w`kind`, w`name`, serial ? w`serial number` : '']));
    for (const candidate of devices) {
      say(row(candidateCells(candidate, serial ? await serialOf(radio, candidate) : '')));
      // Of a device that nobody knows, a profile needs them.
      if (all === true)
        for (const service of candidate.services) say(`  ${w`advertises ${dashed(service)}`}`);
    }
    return EXIT.done;
  });
}

async function devicesOf(radio: Radio, found: readonly Candidate[], serial: boolean) {
  const devices: DeviceAnswer[] = [];
  for (const candidate of found) {
    const about = serial ? await visit(radio, candidate.address, introduce) : null;
    devices.push(
      deviceOf(candidate, {
        serial: about?.ok === true ? (about.value.serial ?? null) : null,
        noSerial: about?.ok === false ? reasonOf(about.error) : null,
      }),
    );
  }
  return devices;
}

const WIDTHS = [18, 8, 22, 24];
const row = (cells: readonly string[]) =>
  cells
    .map((cell, i) => safeLine(cell).padEnd(WIDTHS[i] ?? 0))
    .join(' ')
    .trimEnd();

const candidateCells = ({ address, rssi, kind, name }: Candidate, serial: string) => [
  address,
  rssi === undefined ? w`unknown` : `${rssi} dBm`,
  kind,
  name === '' ? w`(no name)` : name,
  serial,
];

async function serialOf(radio: Radio, { address }: Candidate): Promise<string> {
  const about = await visit(radio, address, introduce);
  if (!about.ok) return w`not read: ${about.error.message}`;
  return about.value.serial ?? w`(none)`;
}

export interface AdoptOptions {
  readonly tool: string;
  readonly station: string;
  readonly profile?: string;
}

/** Makes a device in reach the tool of the station, by its serial number and its address. */
export async function adopt(address: string, options: AdoptOptions): Promise<ExitCode> {
  await readStationFile(options.station); // a fault in it shows before anything is asked of the air
  return withRadio(async (radio) => {
    const candidate = orThrow(await heard(radio, address, HEARD_MS, realAfter));
    const about = orThrow(await visit(radio, candidate.address, introduce));
    await adoptInto(options.station, options, candidate, about.serial);
    say(w`Adopted as ${options.tool}: ${about.serial ?? '-'} at ${candidate.address} (${candidate.kind}).`);
    say(
      about.link.encrypted === true
        ? w`The link is encrypted but not authenticated (Just Works). The key is not kept.`
        : w`The link is not encrypted and not authenticated. Every record states this.`,
    );
    return EXIT.done;
  });
}

export interface RecordOptions {
  readonly out: string;
  readonly seconds: number;
  /** Of a serial port. */
  readonly baud: number;
}

/** Writes down all that a device sends, byte by byte, until the time is over or somebody stops it. */
export async function record(address: string, { out, seconds, baud }: RecordOptions): Promise<ExitCode> {
  const file = await open(out, 'wx').catch((cause: unknown) => {
    const problem = fileProblem(cause, out);
    throw problem === null ? cause : new ProblemError({ ...problem, code: 'file-not-written' }, { cause });
  });
  const lines = file.createWriteStream();
  let isWritten = false;
  try {
    if (!addressSchema.safeParse(address).success) {
      const packets = await recordPort(address, baud, seconds, (line) => void lines.write(line));
      isWritten = true;
      say(`${packets} pieces of ${address} are in ${out}.`);
      return EXIT.done;
    }
    return await withRadio(async (radio) => {
      const candidate = orThrow(await heard(radio, address, HEARD_MS, realAfter));
      const packets = orThrow(
        await visit(radio, candidate.address, (link) =>
          capture(link, candidate, seconds, (line) => void lines.write(line)),
        ),
      );
      isWritten = true;
      say(w`${packets} packets of ${candidate.address} are in ${out}.`);
      return EXIT.done;
    });
  } finally {
    await new Promise((written) => lines.end(written));
    // What was broken off is no capture, and must not be in the way of the next attempt.
    if (!isWritten) await rm(out, { force: true });
  }
}

/** What comes at a serial port, in the pieces in which it came. */
async function recordPort(
  path: string,
  baud: number,
  seconds: number,
  write: (line: string) => void,
): Promise<number> {
  const port = orThrow(await openSerial(path, { baud, dataBits: 8, parity: 'none', stopBits: 1 }));
  try {
    const writer = captureWriter({ address: path.slice(-64), characteristics: [] }, write);
    const startUs = clock.nowUs();
    port.listen((bytes) => writer.packet(null, bytes, clock.nowUs() - startUs));
    say(`listening at ${path}, ${baud} baud`);
    await stopped(port, seconds);
    return writer.end();
  } finally {
    await port.close();
  }
}

async function capture(
  link: Link,
  { name }: Candidate,
  seconds: number,
  write: (text: string) => void,
): Promise<number> {
  const characteristics = orThrow(await link.discover([]));
  const startUs = clock.nowUs();
  const writer = captureWriter(
    { address: link.address, ...(name !== '' && { name }), characteristics },
    write,
  );
  for (const characteristic of characteristics) {
    if (!characteristic.properties.some((property) => property === 'notify' || property === 'indicate'))
      continue;
    orThrow(
      await link.subscribe(characteristic, (bytes) =>
        writer.packet(characteristic, bytes, clock.nowUs() - startUs),
      ),
    );
    say(w`listening to ${characteristic.uuid} of service ${characteristic.service}`);
  }
  await stopped(link, seconds);
  return writer.end();
}

/** The time is over, the device is gone, or somebody pressed Ctrl-C. */
function stopped(link: Pick<Link, 'down'>, seconds: number): Promise<unknown> {
  const interrupted = new Promise<void>((resolve) => void process.once('SIGINT', resolve));
  let cancel = () => {};
  const over = new Promise<void>((resolve) => {
    cancel = realAfter(seconds * 1_000_000, resolve);
  });
  return Promise.race([interrupted, over, link.down]).finally(cancel);
}

async function withRadio(work: (radio: Radio) => Promise<ExitCode>): Promise<ExitCode> {
  const radio = orThrow(await openRadio());
  try {
    return await work(radio);
  } finally {
    await radio.close();
  }
}
