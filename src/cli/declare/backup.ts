import { type Declare, examples, scope } from './common.ts';

/** What keeps the station log from being lost. */
export const declareBackup: Declare = (program, run) => {
  scope(
    program
      .command('backup')
      .description('copies the station log, also while a job runs, and reads the copy through')
      .argument('<file>', 'the copy, a file that is not there yet'),
  )
    .addHelpText('after', examples('plugmark backup /media/stick/station-2026-03-02.db'))
    .action((file, options) =>
      run(async () => (await import('../station/backup.ts')).backUp(file, options))(),
    );
  scope(
    program
      .command('restore')
      .description('puts a backup in the place of the station log, after all of it was read')
      .argument('<file>', 'the backup'),
  )
    .option('--set-aside', 'also where the log has entries that the backup has not; they are kept beside it')
    .addHelpText(
      'after',
      `\nThe log that was there is never thrown away: it lies beside the restored one, and the command says where.\n${examples(
        'plugmark restore /media/stick/station-2026-03-02.db',
      )}`,
    )
    .action((file, options) =>
      run(async () => (await import('../station/backup.ts')).restore(file, options))(),
    );
  scope(
    program
      .command('recover')
      .description(
        'saves what can be read of a damaged station log, and of exported records, into a new one; of records alone where the log is gone',
      )
      .requiredOption('--out <file>', 'the new log, a file that is not there yet'),
  )
    .option('--records <folder>', 'a folder of exported records, which fill gaps')
    .option('--trust <file>', "the keys by which records are believed; the station's own list unless told")
    .addHelpText(
      'after',
      `\nExit code: 0 everything that is known of was saved; 1 something is lost, and it says what.\n${examples(
        'plugmark recover --out saved.db --records records/',
      )}`,
    )
    .action((options) => run(async () => (await import('../station/recover.ts')).recover(options))());
};
