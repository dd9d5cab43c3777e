import type { Command } from 'commander';
import { closing, type Declare, examples, oneOrMore, scope } from './common.ts';

const folder = (command: Command): Command =>
  command
    .option('--data <folder>', 'the folder of the archive', 'plugmark-archive')
    .option(
      '--database <address>',
      'keep it in PostgreSQL instead of a file there: postgres://user@host/name',
    );

/** Many stations, one history: what each of them ships is mirrored, checked and cosigned. */
export const declareArchive: Declare = (program, run) => {
  const archive = program
    .command('archive')
    .description('keeps the logs of many stations, and cosigns each for as long as it only goes on')
    .addHelpText(
      'after',
      examples(
        'plugmark archive init --name example.com/archive',
        'plugmark archive join https://archive.example.com',
      ),
    );
  archive
    .command('init')
    .description('makes an archive: its key, and the folder that it is in')
    .option('--data <folder>', 'the folder of the archive', 'plugmark-archive')
    .requiredOption('--name <text>', 'its name, like an address: example.com/archive')
    .addHelpText('after', closing({}, 'plugmark archive init --name example.com/archive'))
    .action((options) => run(async () => (await import('../archive/init.ts')).initArchive(options))());
  folder(archive.command('enrol').description('prints a one-time token with which a station joins'))
    .requiredOption('--tenant <name>', 'the shop or the fleet that the station belongs to')
    .option('--log <origin>', 'for this log alone: what "plugmark log vkey" prints before the first +')
    .addHelpText('after', closing({}, 'plugmark archive enrol --tenant north-street'))
    .action((options) => run(async () => (await import('../archive/token.ts')).makeToken(options))());
  folder(archive.command('take-key').description('takes in the new key of a station that lost its old one'))
    .requiredOption('--vkey <text>', 'what "plugmark log vkey" prints there')
    .addHelpText('after', closing({}, 'plugmark archive take-key --vkey "plugmark/log/3q2+7a1b2c3d+AQ"'))
    .action((options) => run(async () => (await import('../archive/take-key.ts')).takeLostKey(options))());
  folder(
    archive
      .command('give-back')
      .description('prints a one-time token with which a lost station gets its log back'),
  )
    .requiredOption('--log <origin>', 'the origin of its log, as "plugmark archive stations" prints it')
    .addHelpText('after', closing({}, 'plugmark archive give-back --log plugmark/3q2-7w'))
    .action((options) => run(async () => (await import('../archive/token.ts')).tokenToGiveBack(options))());
  folder(archive.command('serve').description('takes what stations ship until you end it'))
    .option('--listen <address>', 'address and port', '127.0.0.1:8019')
    .option('--certificate <file>', 'its certificate for TLS (PEM), with those above it')
    .option('--key <file>', 'with --certificate: its key (PEM)')
    .option('--without-tls', 'listen without TLS beyond this computer, because a proxy in front does it')
    .addHelpText('after', closing({}, 'plugmark archive serve'))
    .action((options) => run(async () => (await import('../archive/serve.ts')).serveArchive(options))());
  folder(
    archive.command('judge').description('judges again the jobs that wait for it, and says how all came out'),
  )
    .addHelpText(
      'after',
      closing(
        { failed: 'the samples of a job do not give its verdicts, or it could not be judged' },
        'plugmark archive judge',
      ),
    )
    .action((options) => run(async () => (await import('../archive/judge.ts')).judgeJobs(options))());
  folder(archive.command('reader').description('prints a token with which somebody may ask the archive'))
    .requiredOption('--tenant <name>', 'whose records may be read')
    .requiredOption('--reader <name>', 'whom the token is given to')
    .option('--log <origin>', 'of this log alone, as "plugmark archive stations" prints it')
    .option('--days <number>', 'how long it is good', oneOrMore, 30)
    .addHelpText(
      'after',
      closing({}, 'plugmark archive reader --tenant north-street --reader "Fleet auditor"'),
    )
    .action((options) => run(async () => (await import('../archive/reader.ts')).makeReader(options))());
  folder(archive.command('readers').description('lists who may ask the archive, and until when'))
    .addHelpText('after', closing({}, 'plugmark archive readers'))
    .action((options) => run(async () => (await import('../archive/reader.ts')).listReaders(options))());
  folder(archive.command('dismiss').description('takes back all tokens of a reader'))
    .requiredOption('--tenant <name>', 'whose records he could read')
    .requiredOption('--reader <name>', 'whom they were given to')
    .addHelpText(
      'after',
      closing({}, 'plugmark archive dismiss --tenant north-street --reader "Fleet auditor"'),
    )
    .action((options) => run(async () => (await import('../archive/reader.ts')).removeReader(options))());
  folder(archive.command('reads').description('lists what was asked, by whom and when'))
    .option('--last <number>', 'so many, the newest', oneOrMore, 100)
    .addHelpText('after', closing({}, 'plugmark archive reads'))
    .action((options) => run(async () => (await import('../archive/reader.ts')).listReads(options))());
  folder(archive.command('stations').description('lists the stations and how much of their logs is here'))
    .addHelpText('after', closing({ failed: 'a station showed two histories' }, 'plugmark archive stations'))
    .action((options) => run(async () => (await import('../archive/logs.ts')).listStations(options))());
  folder(archive.command('faults').description('prints the notes that prove two histories of a log'))
    .addHelpText('after', closing({ failed: 'a station showed two histories' }, 'plugmark archive faults'))
    .action((options) => run(async () => (await import('../archive/logs.ts')).listFaults(options))());
  folder(
    archive.command('check').description('reads all that is kept and holds it against what was cosigned'),
  )
    .addHelpText(
      'after',
      closing({ failed: 'something kept was changed or is missing' }, 'plugmark archive check'),
    )
    .action((options) => run(async () => (await import('../archive/logs.ts')).checkArchive(options))());
  scope(
    archive
      .command('join')
      .description('at a station: joins an archive by its one-time token')
      .argument('<url>', 'where it answers'),
  )
    .addHelpText('after', closing({}, 'plugmark archive join https://archive.example.com'))
    .action((url, options) =>
      run(async () => (await import('../archive/join.ts')).joinArchive(url, options))(),
    );
  scope(
    archive
      .command('ship')
      .description('at a station: ships all that the archive has not got, and keeps its receipt'),
  )
    .option('--sealed', 'only up to the last checkpoint that was signed, for which no key is needed')
    .addHelpText('after', closing({}, 'plugmark archive ship'))
    .action((options) => run(async () => (await import('../archive/ship.ts')).shipLog(options))());
  scope(archive.command('status').description('at a station: says how much of the log the archive has'))
    .addHelpText(
      'after',
      closing({ failed: 'the archive has more of the log than the station' }, 'plugmark archive status'),
    )
    .action((options) => run(async () => (await import('../archive/ship.ts')).archiveStatus(options))());
};
