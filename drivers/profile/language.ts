import type { Problem } from '../../src/problem.ts';
import type { ToolDescription } from '../../src/reading.ts';
import { err, ok, orThrow, type Result } from '../../src/result.ts';
import { readInformation } from '../bluetooth/information.ts';
import type { Language, Opened, Opening, Unfit } from '../bluetooth/language.ts';
import { OptionalReader, pick } from '../bluetooth/optional.ts';
import type { RemoteCharacteristic } from '../radio/radio.ts';
import { scaleOfProfile } from './packet.ts';
import type { Profile } from './schema.ts';
import { PacketStream } from './stream.ts';

/** The language of a device that a profile describes. */
export function described(profile: Profile): Language {
  const endpoints = [profile.readings, ...(profile.start ?? []), ...memoryEndpoints(profile)];
  return {
    driver: 'profile',
    quantity: profile.quantity,
    advertised: profile.advertised,
    services: [...new Set(endpoints.map(({ service }) => service))],
    open: (on) => open(profile, on),
  };
}

const memoryEndpoints = ({ memory }: Profile) => (memory === undefined ? [] : [memory, memory.request]);

async function open(profile: Profile, on: Opening): Promise<Result<Opened, Unfit>> {
  const { link, characteristics, put, clock } = on;
  const { readings, start = [] } = profile;
  const endpoints = [readings, ...start, ...memoryEndpoints(profile)];
  const missing = endpoints.find((endpoint) => at(characteristics, endpoint) === undefined);
  if (missing !== undefined) return err(notThere(link.address, missing.characteristic, profile));
  const reader = new OptionalReader(link);
  const description = { ...aboutOf(profile), ...(await readInformation(link, characteristics, reader)) };
  for (const { source, hex } of reader.unread) put({ kind: 'raw', atUs: clock.nowUs(), source, hex });
  const stream = new PacketStream(profile, put);
  // The memory first: what it holds was taken before anything that comes now.
  await fetchMemory(profile, on, stream);
  const source = at(characteristics, readings);
  if (source === undefined) return err(notThere(link.address, readings.characteristic, profile));
  if (readings.by.how === 'notify')
    orThrow(await link.subscribe(source, (bytes) => stream.take(bytes, clock.nowUs())));
  for (const { hex, ...endpoint } of start) {
    const target = at(characteristics, endpoint);
    if (target !== undefined) orThrow(await link.write(target, Buffer.from(hex, 'hex')));
  }
  const { by } = readings;
  if (by.how === 'notify') return ok({ description });
  return ok({ description, later: () => poll(on, source, by.everyMs, stream) });
}

async function fetchMemory(profile: Profile, on: Opening, stream: PacketStream): Promise<void> {
  const { memory } = profile;
  if (memory === undefined) return;
  const source = at(on.characteristics, memory);
  const target = at(on.characteristics, memory.request);
  if (source === undefined || target === undefined) return;
  orThrow(await on.link.subscribe(source, (bytes) => stream.take(bytes, on.clock.nowUs(), 'stored')));
  orThrow(await on.link.write(target, Buffer.from(memory.request.hex, 'hex')));
}

/** Reads again and again until a read fails, which is when the link is gone or of no more use. */
async function poll(on: Opening, source: RemoteCharacteristic, everyMs: number, stream: PacketStream) {
  for (;;) {
    const bytes = await on.link.read(source);
    if (!bytes.ok) return;
    if (bytes.value.length > 0) stream.take(bytes.value, on.clock.nowUs());
    await new Promise<void>((resolve) => void on.after(everyMs * 1_000, resolve));
  }
}

function at(
  characteristics: readonly RemoteCharacteristic[],
  { service, characteristic }: { readonly service: string; readonly characteristic: string },
) {
  return pick(characteristics, service, characteristic);
}

/** What the profile itself says of the tool. */
export function aboutOf(profile: Profile): Omit<ToolDescription, 'link'> {
  const { exponent, resolutionCounts } = scaleOfProfile(profile);
  return {
    quantity: profile.quantity,
    unit: profile.quantity === 'torque' ? 'N.m' : 'm',
    exponent,
    resolutionCounts,
    samplingFunction: profile.samplingFunction,
    ...(profile.updateIntervalMs !== undefined && { updateIntervalMs: profile.updateIntervalMs }),
    ...(profile.bandwidthHz !== undefined && { bandwidthHz: profile.bandwidthHz }),
  };
}

function notThere(address: string, characteristic: string, { title }: Profile): Unfit {
  const problem: Problem = {
    code: 'tool-not-as-described',
    where: address,
    message: `the device at ${address} has no characteristic ${characteristic}, which the profile "${title}" names`,
    next: 'Choose the profile of this device, or correct it by the published documentation.',
  };
  return { reason: 'not-as-described', problem };
}
