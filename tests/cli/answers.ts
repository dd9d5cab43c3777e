import { vi } from 'vitest';
import { main } from '../../src/cli/main.ts';
import type { Dialogue } from '../../src/cli/terminal/dialogue.ts';
import { ProblemError } from '../../src/problem.ts';

/** Runs `work` and gives what it wrote to standard output beside what it returned. */
export async function said<T>(
  work: () => T | Promise<T>,
): Promise<{ readonly value: T; readonly text: string }> {
  let text = '';
  const spy = vi.spyOn(process.stdout, 'write').mockImplementation((chunk) => {
    text += String(chunk);
    return true;
  });
  try {
    return { value: await work(), text };
  } finally {
    spy.mockRestore();
  }
}

/**
 * What the command line answers to these words, without a program of its own: starting one takes half a second. For what is
 * answered; how a program starts, ends, and is piped and killed is asked of the built one (`run` in program.ts).
 */
export async function typed(args: readonly string[], { cwd = process.cwd() } = {}) {
  const before = process.cwd();
  const written = { stdout: '', stderr: '' };
  const spies = (['stdout', 'stderr'] as const).map((name) =>
    vi.spyOn(process[name], 'write').mockImplementation((chunk) => {
      written[name] += String(chunk);
      return true;
    }),
  );
  process.chdir(cwd);
  try {
    const code: number = await main(['node', 'plugmark', ...args]);
    return { code, ...written };
  } finally {
    process.chdir(before);
    for (const spy of spies) spy.mockRestore();
  }
}

/** The problem that `work` ends with. */
export async function problemOf(work: () => unknown): Promise<ProblemError['problem']> {
  try {
    await work();
  } catch (error) {
    if (error instanceof ProblemError) return error.problem;
    throw error;
  }
  throw new Error('it ended well');
}

/** Somebody who answers a question by the first words of its prompt, several answers one after the other; Enter otherwise. */
export function answering(answers: Readonly<Record<string, string | readonly string[]>>, patient = true) {
  const left = new Map(Object.entries(answers).map(([words, all]) => [words, [all].flat()]));
  const lines: string[] = [];
  const prompts: string[] = [];
  const dialogue: Dialogue = {
    patient,
    say: (line) => void lines.push(line),
    ask: (prompt) => {
      prompts.push(prompt);
      if (prompts.length > 500) throw new Error(`asked for ever: ${prompt}`);
      const [words] = [...left.keys()].filter((start) => prompt.startsWith(start));
      return Promise.resolve((words === undefined ? undefined : left.get(words)?.shift()) ?? '');
    },
    leave: () => {},
    close: () => {},
  };
  return { dialogue, lines, prompts };
}

/** Every look at the clock is two seconds after the one before: what is done takes longer than a moment. */
export function slowly(): void {
  let ms = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => {
    ms += 2_000;
    return ms;
  });
}
