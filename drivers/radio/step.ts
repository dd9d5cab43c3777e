import type { Problem } from '../../src/problem.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { type After, within } from '../after.ts';

/**
 * One step on a link. noble's promises stay pending for ever when the link goes down or the device answers with an
 * error, so each is raced with a clock and with `ended`, the problem of a link that is of no more use. `name` completes
 * "The tool did not answer while …".
 */
export async function linkStep<T>(
  after: After,
  name: string,
  timeoutMs: number,
  ended: Promise<Problem>,
  start: () => Promise<T>,
): Promise<Result<T, Problem>> {
  try {
    const outcome = await within(
      after,
      Promise.race([start().then((value) => ok(value)), ended.then((problem) => err(problem))]),
      timeoutMs,
    );
    return outcome?.value ?? err(linkTimeout(name, timeoutMs));
  } catch (error) {
    return err(linkFailed(name, error));
  }
}

export function linkLost(name: string, reason: string): Problem {
  return {
    code: 'link-lost',
    message: `the link went down while ${name}: ${reason}`,
    next: 'Bring the tool closer and see that it is switched on.',
  };
}

export function linkTimeout(name: string, timeoutMs: number): Problem {
  return {
    code: 'link-timeout',
    message: `the tool did not answer within ${timeoutMs / 1000} s while ${name}`,
    next: 'Switch the tool off and on; if it asks to be paired, pair it with this machine first.',
  };
}

function linkFailed(name: string, error: unknown): Problem {
  return {
    code: 'link-failed',
    message: `Bluetooth failed while ${name}: ${error instanceof Error ? error.message : String(error)}`,
    next: 'Switch the tool off and on; if it stays, restart plugmark.',
  };
}
