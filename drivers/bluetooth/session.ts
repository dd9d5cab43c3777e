import { type Problem, ProblemError } from '../../src/problem.ts';
import type { DeviceRefusal, ToolDescription } from '../../src/reading.ts';
import { orThrow } from '../../src/result.ts';
import { type After, within } from '../after.ts';
import type { Clock } from '../driver.ts';
import { CHARACTERISTIC, SERVICE } from '../imds/numbers.ts';
import type { Link, RemoteCharacteristic } from '../radio/radio.ts';
import { linkTimeout } from '../radio/step.ts';
import { type Adopted, notAsked, otherSerial } from './adopted.ts';
import type { Arrival } from './counter.ts';
import { Inbox } from './inbox.ts';
import { readSerial } from './information.ts';
import type { Language } from './language.ts';
import { pick } from './optional.ts';

export interface SessionOrder {
  readonly link: Link;
  readonly language: Language;
  readonly adopted: Adopted;
  readonly clock: Clock;
  readonly after: After;
  /** For all of it; each step has its own time-out as well. */
  readonly timeoutMs: number;
}

/** A tool that has been described and sends its readings. */
export interface Session {
  readonly link: Link;
  readonly description: ToolDescription;
  /** Hands over what came in so far, then everything as it comes; to be called once. */
  readonly listen: (listener: (arrival: Arrival) => void) => void;
  /** Read now and then on a link that is silent: whether anybody is there. */
  readonly probe: RemoteCharacteristic;
}

/** `refused`: it is not the tool that was adopted, or cannot be used. `failed`: it may work the next time. */
export type Outcome =
  | { readonly kind: 'session'; readonly session: Session }
  | { readonly kind: 'refused'; readonly problem: Problem; readonly refusal: DeviceRefusal }
  | { readonly kind: 'failed'; readonly problem: Problem };

/** Finds out what is at the other end of a new link and subscribes to its readings; leaves the link as it is. */
export async function openSession(order: SessionOrder): Promise<Outcome> {
  try {
    const outcome = await within(order.after, overLink(order), order.timeoutMs);
    return outcome?.value ?? failed(linkTimeout('being asked what it is', order.timeoutMs));
  } catch (error) {
    if (error instanceof ProblemError) return failed(error.problem);
    throw error;
  }
}

const failed = (problem: Problem): Outcome => ({ kind: 'failed', problem });

async function overLink({ link, language, adopted, clock, after }: SessionOrder): Promise<Outcome> {
  const services = new Set([...language.services, SERVICE.deviceInformation, SERVICE.battery]);
  const characteristics = orThrow(await link.discover([...services]));
  const probe = pick(characteristics, SERVICE.deviceInformation, CHARACTERISTIC.serial);
  const serial = await readSerial(link, characteristics);
  const { address } = adopted;
  const refused = (problem: Problem, why: Omit<DeviceRefusal, 'address'>): Outcome => ({
    kind: 'refused',
    problem,
    refusal: { address, ...why },
  });
  if (probe === undefined || serial !== adopted.serial)
    return refused(otherSerial(adopted, serial), {
      reason: 'other-serial',
      ...(serial === undefined ? {} : { serial }),
    });
  const inbox = new Inbox();
  const opened = await language.open({
    link,
    characteristics,
    clock,
    after,
    put: (arrival) => inbox.put(arrival),
  });
  if (!opened.ok) return refused(opened.error.problem, { reason: opened.error.reason });
  if (link.bonded && !link.encrypted()) return refused(notAsked(adopted), { reason: 'not-encrypted' });
  orThrow(link.keepBond());
  const { description, later } = opened.value;
  return {
    kind: 'session',
    session: {
      link,
      description,
      probe,
      listen: (listener) => {
        inbox.open(listener);
        void later?.();
      },
    },
  };
}
