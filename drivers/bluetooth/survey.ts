import { type Observable, Subscription } from 'rxjs';
import { type Problem, ProblemError } from '../../src/problem.ts';
import type { ToolDescription } from '../../src/reading.ts';
import { err, ok, orThrow, type Result } from '../../src/result.ts';
import { w } from '../../src/words/catalogue.ts';
import type { After } from '../after.ts';
import { SERVICE } from '../imds/numbers.ts';
import type { Link, Radio, Sighting } from '../radio/radio.ts';
import { nameOf, sameAddress } from './adopted.ts';
import { readInformation } from './information.ts';
import { kindOf } from './kind.ts';
import { OptionalReader } from './optional.ts';

// Looking around before any tool is adopted: who is there, and what a device says of itself.

/** A device in reach, its name fit for the screen. */
export interface Candidate {
  readonly address: string;
  readonly name: string;
  readonly kind: string;
  /** dBm, the strongest that was heard; undefined where the adapter does not measure it. */
  readonly rssi?: number;
  readonly services: readonly string[];
  /** False where it changes its address and so can never be found again by it. */
  readonly lasting?: boolean;
}

/** More than anybody reads; on a street there is no end to them. */
const MOST = 200;

/** All devices that are heard within `ms`, the strongest first. */
export function candidates(sightings$: Observable<Sighting>, ms: number, after: After): Promise<Candidate[]> {
  return new Promise((resolve) => {
    const byAddress = new Map<string, Candidate>();
    const listening = new Subscription();
    const finish = () => {
      listening.unsubscribe();
      resolve([...byAddress.values()].toSorted((a, b) => (b.rssi ?? -128) - (a.rssi ?? -128)));
    };
    listening.add(after(ms * 1_000, finish));
    listening.add(
      sightings$.subscribe({
        next: (sighting) => {
          const before = byAddress.get(sighting.address);
          if (before !== undefined || byAddress.size < MOST)
            byAddress.set(sighting.address, merged(before, sighting));
        },
        complete: finish,
      }),
    );
  });
}

/** Parts of what a device advertises may come one after the other. */
function merged(before: Candidate | undefined, sighting: Sighting): Candidate {
  const services = [...new Set([...(before?.services ?? []), ...sighting.services])];
  const kind = kindOf({ ...sighting, services });
  const rssi = Math.max(sighting.rssi ?? -128, before?.rssi ?? -128);
  return {
    address: sighting.address,
    name: nameOf(sighting) || (before?.name ?? ''),
    kind: kind === 'unknown' ? (before?.kind ?? kind) : kind,
    services,
    ...(rssi > -128 && { rssi }),
    ...(sighting.lasting !== undefined && { lasting: sighting.lasting }),
  };
}

/** Waits up to `ms` for a device to be heard. */
export function heard(
  radio: Radio,
  address: string,
  ms: number,
  after: After,
): Promise<Result<Candidate, Problem>> {
  return new Promise((resolve) => {
    const listening = new Subscription();
    const finish = (outcome: Result<Candidate, Problem>) => {
      listening.unsubscribe();
      resolve(outcome);
    };
    listening.add(after(ms * 1_000, () => finish(err(notHeard(address, ms)))));
    listening.add(
      radio.scan(undefined, address).subscribe((sighting) => {
        if (sameAddress(sighting.address, address)) finish(ok(merged(undefined, sighting)));
      }),
    );
  });
}

const CONNECT_MS = 5_000;

/** Connects to a device that has just been heard, does `visit` on the link, and leaves again. */
export async function visit<T>(
  radio: Radio,
  address: string,
  work: (link: Link) => Promise<T>,
): Promise<Result<T, Problem>> {
  const connected = await radio.connect(address, CONNECT_MS, new AbortController().signal);
  if (!connected.ok) return connected;
  try {
    return ok(await work(connected.value));
  } catch (error) {
    if (error instanceof ProblemError) return err(error.problem);
    throw error;
  } finally {
    await connected.value.close();
  }
}

/** What Device Information and Battery say. Throws link problems. */
export async function introduce(
  link: Link,
): Promise<Pick<ToolDescription, 'maker' | 'model' | 'serial' | 'firmware' | 'batteryPercent' | 'link'>> {
  const characteristics = orThrow(await link.discover([SERVICE.deviceInformation, SERVICE.battery]));
  return readInformation(link, characteristics, new OptionalReader(link));
}

function notHeard(address: string, ms: number): Problem {
  return {
    code: 'device-not-heard',
    where: address,
    message: w`nothing heard from ${address} within ${ms / 1_000} s`,
    next: w`Switch the tool on, bring it closer and disconnect phones and other programs from it.`,
  };
}
