/**
 * A tone or a spoken line for those who look at the engine: a command that the shop chose, started without a shell. The job
 * never waits for it, and goes on where it cannot be started.
 */
import { spawn } from 'node:child_process';
import type { Chime } from '../../ui/chime.ts';
import type { Sound } from '../../ui/sound-commands.ts';

/** One at a time of each: a slow voice is not heard ten times behind the work. */
export function soundPlayer(sound: Sound): (chime: Chime) => void {
  const running = new Set<Chime>();
  return (chime) => {
    const [program, ...args] = sound[chime] ?? [];
    if (program === undefined || running.has(chime)) return;
    running.add(chime);
    const child = spawn(program, args, { stdio: 'ignore', detached: false });
    const over = () => running.delete(chime);
    child.once('error', over).once('exit', over);
    child.unref();
  };
}
