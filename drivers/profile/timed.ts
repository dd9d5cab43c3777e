import type { After } from '../after.ts';
import type { Clock } from '../driver.ts';

/** Takes bytes, and may wait for a pause. */
export interface Pausing {
  take(bytes: Uint8Array, atUs: number): void;
  pause(): void;
  readonly pauseUs: number | undefined;
}

/** Takes bytes as they come, stamped in the turn in which they came, and tells the stream when a pause is over. */
export function paused(
  stream: Pausing,
  clock: Clock,
  after: After,
  down: Promise<unknown>,
): (bytes: Uint8Array) => void {
  let cancel = () => {};
  const wait = () => {
    cancel();
    const { pauseUs } = stream;
    cancel = pauseUs === undefined ? () => {} : after(pauseUs, () => stream.pause());
  };
  wait();
  void down.then(() => {
    cancel();
    stream.pause();
  });
  return (bytes) => {
    stream.take(bytes, clock.nowUs());
    wait();
  };
}

/** Does it at once and every `everyMs` after the last time, until `down` settles. Never rejects. */
export async function regularly(
  everyMs: number,
  after: After,
  down: Promise<unknown>,
  work: () => Promise<void>,
): Promise<void> {
  let isDown = false;
  let wake = () => {};
  void down.then(() => {
    isDown = true;
    wake();
  });
  while (!isDown) {
    await work();
    await new Promise<void>((resolve) => {
      wake = resolve;
      if (isDown) resolve();
      else {
        const cancel = after(everyMs * 1_000, resolve);
        wake = () => {
          cancel();
          resolve();
        };
      }
    });
  }
}
