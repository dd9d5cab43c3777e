import type { Command } from 'commander';
import { ProblemError } from '../../problem.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { treeOf } from './command-tree.ts';
import { bash } from './completion-bash.ts';
import { fish } from './completion-fish.ts';
import { zsh } from './completion-zsh.ts';
import { placesOf } from './offers.ts';

const SHELLS = { bash, zsh, fish } as const;

/** Prints the completion of a shell, made from the commands as they are declared. */
export function completion(shell: string, program: Command): Promise<ExitCode> {
  if (!isShell(shell))
    throw new ProblemError({
      code: 'option-not-valid',
      message: `there is no completion for "${shell}"`,
      next: `Choose one of: ${Object.keys(SHELLS).join(', ')}.`,
    });
  process.stdout.write(`${SHELLS[shell](placesOf(treeOf(program)))}\n`);
  return Promise.resolve(EXIT.done);
}

const isShell = (name: string): name is keyof typeof SHELLS => Object.hasOwn(SHELLS, name);
