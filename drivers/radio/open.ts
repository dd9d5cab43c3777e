import type { Problem } from '../../src/problem.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { type After, realAfter, within } from '../after.ts';
import { AIR, socketOnAir } from './air.ts';
import type { Bonds } from './bonds.ts';
import { loadNoble, type NobleOptions } from './load.ts';
import type { Noble } from './noble.ts';
import { NobleRadio } from './noble-radio.ts';
import { problemFromError, problemFromState, radioProblem } from './problems.ts';
import type { Radio } from './radio.ts';
import { type TamedNoble, tame } from './tame.ts';

// radio/ is the only place that knows noble: it loads it when a radio is wanted, mends what has to be mended, and
// shows the rest of the station nothing but the port in radio.ts.

/** noble says nothing at all when no adapter is there. */
const STATE_TIMEOUT_MS = 5_000;

export interface RadioOptions extends NobleOptions {
  /** Left out: real time. */
  readonly after?: After;
  /** Left out: nothing is kept of devices that pair. */
  readonly bonds?: Bonds;
}

/**
 * Opens the adapter of this machine, or a simulated controller where there is one, and waits until it is on.
 * The problem says in one sentence why there is none; nothing stays behind then.
 */
export async function openRadio(given: RadioOptions = {}): Promise<Result<Radio, Problem>> {
  const simulated = given.socket === undefined ? await simulatedAir() : ok({});
  if (!simulated.ok) return simulated;
  const options = { ...given, ...simulated.value };
  const { after = realAfter } = options;
  const start = () => startNoble(options, after);
  const first = await start();
  return first.ok
    ? ok(new NobleRadio(first.value, start, { after, simulated: options.socket !== undefined }))
    : first;
}

/** What another program simulates, where the environment names it. */
async function simulatedAir(): Promise<Result<Pick<RadioOptions, 'socket'>, Problem>> {
  const path = process.env[AIR];
  if (path === undefined || path === '') return ok({});
  try {
    return ok({ socket: await socketOnAir(path) });
  } catch (error) {
    return err({
      code: 'radio-failed',
      where: `${AIR}=${path}`,
      message: `no simulated devices are there: ${error instanceof Error ? error.message : String(error)}`,
      next: `Start them with "plugmark sim serve", or take ${AIR} out of the environment.`,
    });
  }
}

/** A fresh noble that is powered on, or what is in its way. */
async function startNoble(options: RadioOptions, after: After): Promise<Result<TamedNoble, Problem>> {
  let tamed: TamedNoble;
  try {
    tamed = tame(loadNoble(options), after, options.bonds);
  } catch (error) {
    return err(problemFromError(error));
  }
  const state = await within(after, firstState(tamed.noble), STATE_TIMEOUT_MS);
  if (state?.value === 'poweredOn') return ok(tamed);
  tamed.release();
  return err(state === undefined ? radioProblem('radio-no-adapter') : problemFromState(state.value));
}

/** Some states are there before anybody can listen. */
function firstState(noble: Noble): Promise<string> {
  if (noble._state !== 'unknown') return Promise.resolve(noble._state);
  return new Promise((resolve) => noble.once('stateChange', resolve));
}
