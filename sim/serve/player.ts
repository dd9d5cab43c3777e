import type { SerialProfile } from '../../drivers/profile/schema.ts';
import { Sender } from '../devices/device.ts';
import { Random } from '../random.ts';
import type { Scheduler } from '../scheduler.ts';
import { shapeOf } from './pull-shape.ts';
import type { Scenario, ScenarioStep } from './scenario.ts';

/** The end of a line at which a simulated tool is. */
export interface Port {
  readonly send: (bytes: Uint8Array) => void;
  /** Calls `listener` with what the station writes. */
  readonly heard: (listener: (bytes: Uint8Array) => void) => void;
  readonly unplug: () => Promise<void>;
  readonly plug: () => Promise<void>;
}

/** A tool of a scenario at its port. */
export interface Served {
  readonly id: string;
  readonly profile: SerialProfile;
  readonly port: Port;
  readonly noiseNm: number;
}

/** How often a tool sends whose profile does not say it. */
const USUAL_MS = 20;
/** From the end of a pull until the next step: a hand that rests. */
const REST_MS = 700;

/** Plays a scenario on these ports. `say` hears each step; resolves when all is played, or `stop` was called. */
export function play(
  { seed, steps, times }: Pick<Scenario, 'seed' | 'steps' | 'times'>,
  served: readonly Served[],
  scheduler: Scheduler,
  say: (step: ScenarioStep) => void = () => {},
): { readonly done: Promise<void>; readonly stop: () => void } {
  let isStopped = false;
  let wake = () => {};
  const pause = (ms: number) =>
    new Promise<void>((resolve) => {
      if (isStopped) return resolve();
      const cancel = scheduler.after(ms * 1_000, resolve);
      wake = () => {
        cancel();
        resolve();
      };
    });
  const random = new Random(seed);
  const tools = new Map(served.map((one) => [one.id, new ServedTool(one, scheduler, random.fork(one.id))]));
  const stepped = async (step: ScenarioStep): Promise<void> => {
    if (step.do === 'wait') return pause(step.ms);
    const tool = tools.get(step.tool);
    if (tool === undefined) throw new Error(`a checked scenario lacks the tool ${step.tool}`);
    switch (step.do) {
      case 'pull':
        return pause(tool.pull(step) + REST_MS);
      case 'measure':
        return tool.measure(step.gapMm);
      case 'no-value':
        return tool.noValue();
      case 'bytes':
        return tool.send(Buffer.from(step.hex, 'hex'));
      case 'silence':
        tool.isSilent = true;
        await pause(step.ms);
        tool.isSilent = false;
        return;
      case 'unplug':
        await tool.unplug();
        await pause(step.ms);
        return tool.plug();
    }
  };
  const all = async () => {
    for (let time = 0; time < times; time++)
      for (const step of steps) {
        if (isStopped) return;
        say(step);
        await stepped(step);
      }
  };
  const end = () => {
    for (const tool of tools.values()) tool.end();
  };
  return {
    done: all().finally(end),
    stop() {
      isStopped = true;
      wake();
    },
  };
}

class ServedTool {
  isSilent = false;
  readonly #served: Served;
  readonly #scheduler: Scheduler;
  readonly #random: Random;
  readonly #sender: Sender;
  #cancel = () => {};
  #isOut = false;
  #pull: { readonly sinceUs: number; readonly shape: ReturnType<typeof shapeOf> } | null = null;
  #turnedDeg = 0;
  #gapM: number | null = null;

  constructor(served: Served, scheduler: Scheduler, random: Random) {
    this.#served = served;
    this.#scheduler = scheduler;
    this.#random = random;
    this.#sender = new Sender(served.profile);
    const { by } = served.profile.link;
    if (by.how === 'ask') served.port.heard((bytes) => this.#answer(bytes, by.hex));
    else if (served.profile.quantity === 'torque' && !this.#sendsPeaks()) this.#regularly();
  }

  /** One figure a pull, at its end, as some wrenches do. */
  #sendsPeaks(): boolean {
    const { link, samplingFunction } = this.#served.profile;
    return link.by.how === 'sent' && samplingFunction === 'maximum';
  }

  /** How long it takes. */
  pull(step: Extract<ScenarioStep, { do: 'pull' }>): number {
    const shape = shapeOf(step);
    if (this.#sendsPeaks()) {
      const sent = () => this.send(this.#sender.frame([{ si: step.peakNm }]));
      this.#cancel = this.#scheduler.after(shape.lastsMs * 1_000, sent);
      return shape.lastsMs;
    }
    this.#pull = { sinceUs: this.#scheduler.nowUs(), shape };
    return shape.lastsMs;
  }

  measure(gapMm: number): void {
    this.#gapM = gapMm / 1_000;
    if (this.#served.profile.link.by.how !== 'ask') this.send(this.#sender.frame([{ si: this.#gapM }]));
  }

  noValue(): void {
    this.#gapM = null;
    this.send(this.#sender.frame([{ si: null }]));
  }

  send(bytes: Uint8Array): void {
    if (!this.isSilent && !this.#isOut) this.#served.port.send(bytes);
  }

  async unplug(): Promise<void> {
    this.#isOut = true;
    await this.#served.port.unplug();
  }

  async plug(): Promise<void> {
    await this.#served.port.plug();
    this.#isOut = false;
  }

  end(): void {
    this.#cancel();
  }

  #regularly(): void {
    const everyMs = this.#served.profile.updateIntervalMs || USUAL_MS;
    this.#cancel = this.#scheduler.after(everyMs * 1_000, () => {
      this.send(this.#sender.frame([this.#torqueNow()]));
      this.#regularly();
    });
  }

  #answer(bytes: Uint8Array, request: string): void {
    if (!Buffer.from(bytes).toString('hex').includes(request)) return;
    this.send(
      this.#sender.frame([
        this.#served.profile.quantity === 'torque' ? this.#torqueNow() : { si: this.#gapM },
      ]),
    );
  }

  #torqueNow() {
    const noise = this.#random.normal() * this.#served.noiseNm;
    const pull = this.#pull;
    if (pull === null) return { si: noise, angleDeg: this.#turnedDeg };
    const atMs = (this.#scheduler.nowUs() - pull.sinceUs) / 1_000;
    const { nm, deg } = pull.shape.at(atMs);
    const angleDeg = this.#turnedDeg + deg;
    if (atMs >= pull.shape.lastsMs) {
      this.#pull = null;
      this.#turnedDeg = angleDeg;
    }
    return { si: nm + noise, angleDeg };
  }
}
