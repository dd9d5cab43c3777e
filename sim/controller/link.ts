/**
 * The air between a central and one peripheral: what either side sends is carried at the next connection event, in
 * order, or lost with the link. So a notification arrives up to one connection interval after it was made.
 */
import { type Scheduler, taskGroup, untilNext } from '../scheduler.ts';

interface Packet {
  readonly arrived: () => void;
  readonly lost: (() => void) | undefined;
}

const US_PER_INTERVAL_UNIT = 1_250;

export interface Link {
  /** Runs `arrived` at the next connection event; `lost` instead, if the link ends before or has ended. */
  readonly carry: (arrived: () => void, lost?: () => void) => void;
  /** From the next packet on, connection events come at this interval (units of 1.25 ms). */
  readonly setInterval: (interval: number) => void;
  /** Nothing is carried from now on and what is under way is lost. */
  readonly end: () => void;
}

export function createLink(scheduler: Scheduler, firstInterval: number): Link {
  const tasks = taskGroup(scheduler);
  const underWay: Packet[] = [];
  let originUs = tasks.nowUs();
  let intervalUs = firstInterval * US_PER_INTERVAL_UNIT;
  let lastDueUs = originUs;
  let ended = false;

  return {
    carry: (arrived, lost) => {
      if (ended) {
        lost?.();
        return;
      }
      underWay.push({ arrived, lost });
      const nowUs = tasks.nowUs();
      // WHY the maximum, and the oldest packet instead of this one: after a change to a shorter interval, or when the
      // clock moves on within this call, a packet must not overtake one already under way.
      lastDueUs = Math.max(lastDueUs, nowUs + untilNext(nowUs, originUs, intervalUs));
      tasks.after(lastDueUs - nowUs, () => underWay.shift()?.arrived());
    },
    setInterval: (interval) => {
      originUs = tasks.nowUs();
      intervalUs = interval * US_PER_INTERVAL_UNIT;
    },
    end: () => {
      ended = true;
      tasks.cancelAll();
      for (const packet of underWay.splice(0)) packet.lost?.();
    },
  };
}
