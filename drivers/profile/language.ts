import type { Problem } from '../../src/problem.ts';
import type { AngleDescription, ToolDescription } from '../../src/reading.ts';
import { err, ok, orThrow, type Result } from '../../src/result.ts';
import { w } from '../../src/words/catalogue.ts';
import { readInformation } from '../bluetooth/information.ts';
import type { Language, Opened, Opening, Unfit } from '../bluetooth/language.ts';
import { OptionalReader, pick } from '../bluetooth/optional.ts';
import type { RemoteCharacteristic } from '../radio/radio.ts';
import { valueScaling } from './decoder.ts';
import { scalingOf } from './figure.ts';
import { driverBy } from './name.ts';
import type { BluetoothProfile, Profile } from './schema.ts';
import { FrameStream } from './stream.ts';
import { paused, regularly } from './timed.ts';

interface Endpoint {
  readonly service: string;
  readonly characteristic: string;
}

/** The language of a Bluetooth device that a profile describes. */
export function described(profile: BluetoothProfile): Language {
  return {
    driver: driverBy('profile', profile),
    quantity: profile.quantity,
    advertised: profile.link.advertised,
    services: [...new Set(endpointsOf(profile).map(({ service }) => service))],
    open: (on) => open(profile, on),
  };
}

function endpointsOf({ link }: BluetoothProfile): readonly Endpoint[] {
  const { by, start = [], keepAlive, memory } = link;
  return [
    link,
    ...start,
    ...(by.how === 'ask' ? [by.request] : []),
    ...(keepAlive === undefined ? [] : [keepAlive]),
    ...(memory === undefined ? [] : [memory, memory.request]),
  ];
}

async function open(profile: BluetoothProfile, on: Opening): Promise<Result<Opened, Unfit>> {
  const { link, characteristics, put, clock } = on;
  const missing = endpointsOf(profile).find((endpoint) => at(on, endpoint) === undefined);
  if (missing !== undefined) return err(notThere(link.address, missing.characteristic, profile));
  const reader = new OptionalReader(link);
  const description = { ...aboutOf(profile), ...(await readInformation(link, characteristics, reader)) };
  for (const { source, hex } of reader.unread) put({ kind: 'raw', atUs: clock.nowUs(), source, hex });
  // The memory first: what it holds was taken before anything that comes now.
  await fetchMemory(profile, on);
  const take = streamOf(profile, on, 'value', profile.link.characteristic);
  const source = there(on, profile.link);
  if (profile.link.by.how !== 'poll') orThrow(await link.subscribe(source, take));
  for (const { hex, ...endpoint } of profile.link.start ?? [])
    orThrow(await link.write(there(on, endpoint), Buffer.from(hex, 'hex')));
  return ok({ description, later: () => goOn(profile, on, source, take) });
}

/** What comes in, as frames; what stays unfinished is told when the pause is over, or the link. */
function streamOf(profile: Profile, on: Opening, kind: 'value' | 'stored', source: string) {
  const stream = new FrameStream(profile, on.put, { kind, source, openedUs: on.clock.nowUs() });
  return paused(stream, on.clock, on.after, on.link.down);
}

async function fetchMemory(profile: BluetoothProfile, on: Opening): Promise<void> {
  const { memory } = profile.link;
  if (memory === undefined) return;
  const take = streamOf(profile, on, 'stored', memory.characteristic);
  orThrow(await on.link.subscribe(there(on, memory), take));
  orThrow(await on.link.write(there(on, memory.request), Buffer.from(memory.request.hex, 'hex')));
}

/** Reads, asks and keeps alive until the link is down. A refusal of the device is no end: it may take the next one. */
async function goOn(
  { link: { by, keepAlive } }: BluetoothProfile,
  on: Opening,
  source: RemoteCharacteristic,
  take: (bytes: Uint8Array) => void,
): Promise<void> {
  const { link, after } = on;
  const write = async (endpoint: Endpoint & { readonly hex: string }) => {
    await link.write(there(on, endpoint), Buffer.from(endpoint.hex, 'hex'));
  };
  const read = async () => {
    const bytes = await link.read(source);
    if (bytes.ok && bytes.value.length > 0) take(bytes.value);
  };
  await Promise.all([
    by.how === 'poll' && regularly(by.everyMs, after, link.down, read),
    by.how === 'ask' && regularly(by.everyMs, after, link.down, () => write(by.request)),
    keepAlive !== undefined && regularly(keepAlive.everyMs, after, link.down, () => write(keepAlive)),
  ]);
}

const at = ({ characteristics }: Opening, { service, characteristic }: Endpoint) =>
  pick(characteristics, service, characteristic);

function there(on: Opening, endpoint: Endpoint): RemoteCharacteristic {
  const found = at(on, endpoint);
  if (found === undefined) throw new Error(`${endpoint.characteristic} was there`);
  return found;
}

/** What the profile itself says of the tool. */
export function aboutOf(profile: Profile): Omit<ToolDescription, 'link'> {
  const { exponent, resolutionCounts } = valueScaling(profile.layout);
  const angle = angleOf(profile);
  return {
    quantity: profile.quantity,
    unit: profile.quantity === 'torque' ? 'N.m' : 'm',
    exponent,
    resolutionCounts,
    samplingFunction: profile.samplingFunction,
    ...(profile.updateIntervalMs !== undefined && { updateIntervalMs: profile.updateIntervalMs }),
    ...(profile.bandwidthHz !== undefined && { bandwidthHz: profile.bandwidthHz }),
    ...(angle !== undefined && { angle }),
  };
}

function angleOf({ layout }: Profile): AngleDescription | undefined {
  const scaling = scalingOf(layout, 'angle');
  return scaling && { exponent: scaling.exponent, resolutionCounts: scaling.resolutionCounts };
}

function notThere(address: string, characteristic: string, { title }: Profile): Unfit {
  const problem: Problem = {
    code: 'tool-not-as-described',
    where: address,
    message: w`the device at ${address} has no characteristic ${characteristic}, which the profile "${title}" names`,
    next: w`Choose the profile of this device, or correct it by the published documentation.`,
  };
  return { reason: 'not-as-described', problem };
}
