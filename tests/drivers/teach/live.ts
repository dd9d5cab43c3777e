import type { BluetoothProfile } from '../../../drivers/profile/schema.ts';
import type { Taught } from '../../../drivers/teach/teach.ts';
import type { Scheduler } from '../../../sim/scheduler.ts';
import { type Port, play } from '../../../sim/serve/player.ts';
import { scenarioSchema } from '../../../sim/serve/scenario.ts';
import { type LiveOptions, teachLive } from '../../../src/cli/station/teach-live.ts';
import type { Dialogue } from '../../../src/cli/terminal/dialogue.ts';

/** Peaks that somebody pulls to, by what is asked for. */
const SMALL = 8.23;
const AGAINST = -6.41;
const LARGE = 41.07;
const OTHERS = [30.55, 25.34, 44.02, 15.78, 19.11];
const NOISE_NM = 0.003;

export interface LiveLesson {
  readonly profile: BluetoothProfile | Parameters<typeof play>[1][number]['profile'];
  readonly port: Port;
  readonly scheduler: Scheduler;
  readonly options: Pick<LiveOptions, 'from' | 'restMs'>;
}

/** A device that is played, and a person beside it who pulls as asked and reads its display. */
export async function taughtLive({ profile, port, scheduler, options }: LiveLesson) {
  const others = [...OTHERS];
  const figures: number[] = [];
  const said: string[] = [];
  const served = [{ id: 'wrench', profile, port, noiseNm: NOISE_NM }];
  const scenario = (steps: readonly unknown[]) =>
    scenarioSchema.parse({
      form: 'plugmark/scenario/1',
      title: 'a lesson',
      tools: [{ id: 'wrench', profile: 'p', port: 'p' }],
      steps,
      seed: figures.length,
    });
  let lying = play(scenario([{ do: 'wait', ms: 600_000 }]), served, scheduler);
  const dialogue: Dialogue = {
    patient: false,
    say: (line) => void said.push(line),
    leave: () => {},
    close: () => {},
    async ask(prompt) {
      said.push(prompt);
      if (!/type what/.test(prompt)) return '';
      const figure = /small/.test(prompt)
        ? SMALL
        : /against/.test(prompt)
          ? AGAINST
          : /large/.test(prompt)
            ? LARGE
            : (others.shift() ?? 22.2);
      figures.push(figure);
      lying.stop();
      await lying.done;
      await play(
        scenario([
          { do: 'wait', ms: 300 },
          { do: 'pull', tool: 'wrench', peakNm: figure, riseMs: 400, clicks: false },
        ]),
        served,
        scheduler,
      ).done;
      lying = play(scenario([{ do: 'wait', ms: 600_000 }]), served, scheduler);
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
    lying.stop();
    await lying.done;
  }
  return { taught, figures, said, seconds: (performance.now() - startedMs) / 1_000 };
}
