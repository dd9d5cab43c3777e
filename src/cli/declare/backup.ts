import { w } from '../../words/catalogue.ts';
import { closing, type Declare, json, scope } from './common.ts';

/** What keeps the station log from being lost. */
export const declareBackup: Declare = (program, run) => {
  json(
    scope(
      program
        .command('backup')
        .description('copies the station log, also while a job runs, and checks the whole copy')
        .argument('<file>', 'the copy; a file that does not exist yet'),
    ),
  )
    .addHelpText('after', closing({}, 'plugmark backup /media/stick/station-2026-03-02.db'))
    .action((file, options) =>
      run(async () => (await import('../station/backup.ts')).backUp(file, options))(),
    );
  scope(
    program
      .command('restore')
      .description('checks a whole backup and puts it in the place of the station log')
      .argument('[file]', 'the backup'),
  )
    .option('--from-archive <url>', 'in place of a backup: what the archive has, by its one-time token')
    .option(
      '--set-aside',
      'restore even if the log has entries that the backup lacks; they are kept beside it',
    )
    .addHelpText(
      'after',
      `\n${w`The old log is never thrown away. It stays beside the restored one; the command prints where.`}\n${closing(
        {},
        'plugmark restore /media/stick/station-2026-03-02.db',
        'plugmark restore --from-archive https://archive.example.com',
      )}`,
    )
    .action((file, options) =>
      run(async () => (await import('../station/backup.ts')).restore(file, options))(),
    );
  json(
    scope(
      program
        .command('recover')
        .description('saves what can be read of a damaged station log and of exported records into a new log')
        .requiredOption('--out <file>', 'the new log; a file that does not exist yet'),
    ),
  )
    .option('--records <folder>', 'a folder of exported records, to fill gaps or where the log is gone')
    .option('--trust <file>', "the keys that you trust (JWK set); the station's own list unless given")
    .addHelpText(
      'after',
      closing(
        { done: 'everything known was saved', failed: 'something is lost; the output says what' },
        'plugmark recover --out saved.db --records records/',
      ),
    )
    .action((options) => run(async () => (await import('../station/recover.ts')).recover(options))());
};
