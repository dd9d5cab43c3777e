import { FORM_NAMES } from '../help/form-names.ts';
import { closing, type Declare } from './common.ts';

/** What is made from the declarations themselves. */
export const declareHelp: Declare = (program, run) => {
  program
    .command('schema')
    .description('prints the JSON Schema of a form')
    .argument(
      '<form>',
      `${FORM_NAMES.join(', ')}; or a command with --json, such as calendar or jobs-list, for its answer`,
    )
    .addHelpText('after', closing({}, 'plugmark schema work-order', 'plugmark schema jobs-list'))
    .action((form) => run(async () => (await import('../help/schema.ts')).schema(form))());
  program
    .command('completion')
    .description('prints the completion of commands and options for a shell')
    .addArgument(program.createArgument('<shell>', 'your shell').choices(['bash', 'zsh', 'fish']))
    .addHelpText(
      'after',
      closing(
        {},
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
      closing(
        {},
        'plugmark manual',
        'plugmark manual verdicts',
        'plugmark manual commands --roff > plugmark.1',
        'plugmark manual --out man',
      ),
    )
    .action((topic, options) =>
      run(async () => (await import('../help/manual.ts')).manual(program, topic, options))(),
    );
  program
    .command('complete', { hidden: true })
    .description('prints names of this station for the completion of a shell, one a line')
    .argument('<kind>', 'tool, job, open-job, person, impact, study or kid')
    .argument('[words...]', 'the words of the command line so far')
    .action((kind, words) => run(async () => (await import('../help/complete.ts')).complete(kind, words))());
};
