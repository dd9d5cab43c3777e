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
    .description('prints a topic of the manual, or the list of topics')
    .argument('[topic]', 'which one; "commands" is the reference of all commands')
    .option('--roff', 'as a page for man')
    .option('--out <folder>', 'write all pages for man into this folder')
    .addHelpText(
      'after',
      examples(
        'plugmark manual',
        'plugmark manual verdicts',
        'plugmark manual commands --roff > plugmark.1',
        'plugmark manual --out man',
      ),
    )
    .action((topic, options) =>
      run(async () => (await import('../help/manual.ts')).manual(program, topic, options))(),
    );
};
