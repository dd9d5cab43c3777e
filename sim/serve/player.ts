import type { Layout } from '../../drivers/profile/layout-schema.ts';
import type { Profile } from '../../drivers/profile/schema.ts';
import { type Seen, Sender } from '../devices/device.ts';
import type { Emission } from '../physics/bench.ts';
import { COUNTS_PER_MM } from '../physics/gauge.ts';
import { DEG_EXPONENT } from '../physics/gyroscope.ts';
import { NM_PER_COUNT } from '../physics/sensor.ts';
import { Random } from '../random.ts';
import type { Scheduler } from '../scheduler.ts';
import { Hands } from './hands.ts';
import { shapeOf } from './pull-shape.ts';
import type { Scenario, ScenarioStep } from './scenario.ts';

/** The end of a line, or of a link, at which a simulated tool is. */
export interface Port {
  readonly send: (bytes: Uint8Array) => void;
  /** Calls `listener` with what the station writes; where it reads, with nothing. */
  readonly heard: (listener: (bytes: Uint8Array) => void) => void;
  readonly unplug: () => Promise<void>;
  readonly plug: () => Promise<void>;
}

/** A tool of a scenario at its port. */
export interface Served {
  readonly id: string;
  readonly profile: Profile;
  readonly port: Port;
  readonly noiseNm: number;
}

/** How often a tool sends whose profile does not say it. */
const USUAL_MS = 20;
const MOST_LATE_US = 2_000_000;
/** From the end of a pull until the next step: a hand that rests. */
const REST_MS = 700;

/** A scenario, or steps that are made as they come. */
type Played = Pick<Scenario, 'seed' | 'times' | 'engine'> & { readonly steps: Iterable<ScenarioStep> };

/** Plays a scenario on these ports. `say` hears each step; resolves when all is played, or `stop` was called. */
export function play(
  { seed, steps, times, engine }: Played,
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
  const hands = engine === undefined ? null : new Hands(engine, seed);
  const felt = (emission: Readonly<Emission>) => {
    if (emission.kind === 'gap') tools.get(engine?.gauge ?? '')?.measure(emission.counts / COUNTS_PER_MM);
    else tools.get(engine?.wrench ?? '')?.feel(emission);
  };
  const stepped = async (step: ScenarioStep): Promise<void> => {
    if (step.do === 'wait') return pause(step.ms);
    if (step.do === 'hands') return hands?.move(step.move, scheduler, pause, felt);
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

/** How many samples a frame has. */
function samplesIn({ fields }: Layout): number {
  const samples = fields.find(({ is }) => is === 'samples');
  return samples?.is === 'samples' && samples.count !== 'rest' ? samples.count : 1;
}

class ServedTool {
  isSilent = false;
  readonly #served: Served;
  readonly #scheduler: Scheduler;
  readonly #random: Random;
  readonly #sender: Sender;
  #dueUs: number;
  /** Samples that wait for the others of their frame. */
  readonly #waiting: Seen[] = [];
  #cancel = () => {};
  #isOut = false;
  #pull: { readonly sinceUs: number; readonly shape: ReturnType<typeof shapeOf> } | null = null;
  #felt: { readonly si: number; readonly angleDeg: number } | null = null;
  #turnedDeg = 0;
  #gapM: number | null = null;

  constructor(served: Served, scheduler: Scheduler, random: Random) {
    this.#served = served;
    this.#scheduler = scheduler;
    this.#random = random;
    this.#sender = new Sender(served.profile);
    this.#dueUs = scheduler.nowUs();
    const { by } = served.profile.link;
    const request = by.how !== 'ask' ? null : 'hex' in by ? by.hex : by.request.hex;
    if (request !== null) served.port.heard((bytes) => this.#answer(bytes, request));
    else if (by.how === 'poll') served.port.heard(() => this.#answer(null, ''));
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

  /** What the simulated hands do to it. */
  feel({ counts, angleCounts }: Readonly<Emission>): void {
    this.#felt = { si: counts * NM_PER_COUNT, angleDeg: angleCounts * 10 ** DEG_EXPONENT };
  }

  measure(gapMm: number): void {
    this.#gapM = gapMm / 1_000;
    const { how } = this.#served.profile.link.by;
    if (how === 'notify' || how === 'sent') this.send(this.#sender.frame([{ si: this.#gapM }]));
  }

  noValue(): void {
    this.#gapM = null;
    const none = Array.from({ length: samplesIn(this.#served.profile.layout) }, () => ({ si: null }));
    this.send(this.#sender.frame(none));
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
    const { updateIntervalMs, layout } = this.#served.profile;
    const most = samplesIn(layout);
    const everyUs = (1_000 * (updateIntervalMs || USUAL_MS)) / most;
    const nowUs = this.#scheduler.nowUs();
    // A timer of a busy machine comes late, the samples of a tool do not: those that were due meanwhile follow at once.
    this.#dueUs = Math.max(this.#dueUs + everyUs, nowUs - MOST_LATE_US);
    this.#cancel = this.#scheduler.after(Math.max(0, this.#dueUs - nowUs), () => {
      this.#waiting.push(this.#torqueAt(this.#dueUs));
      if (this.#waiting.length >= most) this.send(this.#sender.frame(this.#waiting.splice(0)));
      this.#regularly();
    });
  }

  #answer(bytes: Uint8Array | null, request: string): void {
    if (bytes !== null && !Buffer.from(bytes).toString('hex').includes(request)) return;
    this.send(
      this.#sender.frame([
        this.#served.profile.quantity === 'torque'
          ? this.#torqueAt(this.#scheduler.nowUs())
          : { si: this.#gapM },
      ]),
    );
  }

  #torqueAt(us: number) {
    if (this.#felt !== null && this.#pull === null) return this.#felt;
    const noise = this.#random.normal() * this.#served.noiseNm;
    const pull = this.#pull;
    if (pull === null) return { si: noise, angleDeg: this.#turnedDeg };
    const atMs = (us - pull.sinceUs) / 1_000;
    const { nm, deg } = pull.shape.at(atMs);
    const angleDeg = this.#turnedDeg + deg;
    if (atMs >= pull.shape.lastsMs) {
      this.#pull = null;
      this.#turnedDeg = angleDeg;
    }
    return { si: nm + noise, angleDeg };
  }
}
