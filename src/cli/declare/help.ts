import { type Declare, examples } from './common.ts';

/** What is made from the declarations themselves. */
export const declareHelp: Declare = (program, run) => {
  program
    .command('completion')
    .description('prints the completion of commands and options for a shell')
    .argument('<shell>', 'bash, zsh or fish')
    .addHelpText(
      'after',
      examples(
        'plugmark completion bash > ~/.local/share/bash-completion/completions/plugmark',
        'plugmark completion zsh > ~/.zfunc/_plugmark',
        'plugmark completion fish > ~/.config/fish/completions/plugmark.fish',
      ),
    )
    .action((shell) => run(async () => (await import('../help/completion.ts')).completion(shell, program))());
  program
    .command('manual')
    .description('prints the reference of all commands')
    .option('--roff', 'as a page for man')
    .addHelpText(
      'after',
      examples('plugmark manual', 'plugmark manual --roff > ~/.local/share/man/man1/plugmark.1'),
    )
    .action((options) => run(async () => (await import('../help/manual.ts')).manual(program, options))());
};
