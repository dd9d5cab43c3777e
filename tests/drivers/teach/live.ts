import type { Profile } from '../../../drivers/profile/schema.ts';
import type { Taught } from '../../../drivers/teach/teach.ts';
import type { Scheduler } from '../../../sim/scheduler.ts';
import { type Port, play } from '../../../sim/serve/player.ts';
import type { ScenarioStep } from '../../../sim/serve/scenario.ts';
import { type LiveOptions, teachLive } from '../../../src/cli/station/teach-live.ts';
import type { Dialogue } from '../../../src/cli/terminal/dialogue.ts';

/** Peaks that somebody pulls to, by what is asked for. */
const SMALL = 8.23;
const AGAINST = -6.41;
const LARGE = 41.07;
const OTHERS = [30.55, 25.34, 44.02, 15.78, 19.11];
const NOISE_NM = 0.001;

export interface LiveLesson {
  readonly profile: Profile;
  readonly port: Port;
  readonly scheduler: Scheduler;
  readonly options: Pick<LiveOptions, 'from' | 'restMs'>;
}

function peakFor(prompt: string, others: number[]): number {
  if (/small/.test(prompt)) return SMALL;
  if (/against/.test(prompt)) return AGAINST;
  return /large/.test(prompt) ? LARGE : (others.shift() ?? 22.2);
}

/** A device that is played, and a person beside it who pulls as asked and reads its display. */
export async function taughtLive({ profile, port, scheduler, options }: LiveLesson) {
  const others = [...OTHERS];
  const figures: number[] = [];
  const said: string[] = [];
  let asked: { readonly nm: number; readonly done: () => void } | null = null;
  let isOver = false;
  function* hands(): Generator<ScenarioStep> {
    while (!isOver) {
      const pull = asked;
      asked = null;
      yield { do: 'wait', ms: pull === null ? 20 : 300 };
      if (pull === null) continue;
      yield { do: 'pull', tool: 'wrench', peakNm: pull.nm, riseMs: 400, clicks: false, turnDeg: 60 };
      pull.done();
    }
  }
  const { done } = play(
    { seed: 1, times: 1, steps: hands() },
    [{ id: 'wrench', profile, port, noiseNm: NOISE_NM }],
    scheduler,
  );
  const pull = (nm: number) =>
    new Promise<void>((resolve) => {
      asked = { nm, done: resolve };
    });
  const dialogue: Dialogue = {
    patient: false,
    say: (line) => void said.push(line),
    leave: () => {},
    close: () => {},
    async ask(prompt) {
      said.push(prompt);
      if (!/type what/.test(prompt)) return '';
      const figure = peakFor(prompt, others);
      figures.push(figure);
      await pull(figure);
      return String(figure);
    },
  };
  let taught: Taught | { readonly outcome: 'failed'; readonly why: string };
  const startedMs = performance.now();
  try {
    taught = await teachLive(
      { ...options, baud: 9_600, title: `Taught: ${profile.title}`, unit: 'N·m', step: '0.01' },
      dialogue,
    );
  } catch (error) {
    taught = { outcome: 'failed', why: error instanceof Error ? error.message : String(error) };
  } finally {
    isOver = true;
    await done;
  }
  return { taught, figures, said, seconds: (performance.now() - startedMs) / 1_000 };
}
