import { closing, csvLocale, type Declare, examples, forReader, json, scope } from './common.ts';

/** The station itself: its first day, its health, its figures, and the jobs in its log. */
export const declareStation: Declare = (program, run) => {
  program
    .command('setup')
    .description(
      'guides you through the first day: asks for station, tools and people, writes the station file',
    )
    .option('--station <file>', 'the station file to write', 'station.json')
    .addHelpText(
      'after',
      closing(
        { failed: 'you stopped; no station file was written' },
        'plugmark setup',
        'plugmark setup --station bay-2.json < answers.txt',
      ),
    )
    .action((options) => run(async () => (await import('../station/setup.ts')).setup(options))());

  json(
    program
      .command('doctor')
      .description('checks program, Bluetooth, log, key, clock, disk and terminal; changes nothing')
      .option('--station <file>', 'the station file; the one at hand where there is one'),
  )
    .addHelpText(
      'after',
      closing(
        { done: 'everything that plugmark needs is there', failed: 'something is missing' },
        'plugmark doctor --station station.json',
      ),
    )
    .action((options) => run(async () => (await import('../station/doctor.ts')).doctor(options))());

  const specifications = program
    .command('specifications')
    .description("the shop's own library of engines, plugs and figures")
    .addHelpText('after', examples('plugmark specifications', 'plugmark specifications list V8'));
  json(
    scope(
      specifications
        .command('list', { isDefault: true })
        .description('lists the specifications; runs where you name no other command')
        .argument('[words...]', 'only those with all these words in their name, plug or source'),
    ),
  )
    .addHelpText(
      'after',
      closing({}, 'plugmark specifications list', 'plugmark specifications list example v8'),
    )
    .action((words, options) =>
      run(async () => (await import('../bench/specifications.ts')).listSpecifications(words, options))(),
    );
  json(
    scope(
      specifications
        .command('show')
        .description('shows one specification, with its engine drawn')
        .argument('<words...>', 'its name, or words that no other one has'),
    ),
  )
    .addHelpText('after', closing({}, 'plugmark specifications show "Example V8"'))
    .action((words, options) =>
      run(async () => (await import('../bench/specifications.ts')).showSpecification(words, options))(),
    );
  scope(
    specifications
      .command('add')
      .description('adds the figures of a work order, or asks for them one by one'),
  )
    .option('--order <file>', 'the work order whose engine, plug and figures are kept')
    .option('--name <text>', 'with --order: the name of the specification; that of the engine unless given')
    .option('--by <person>', 'with --order: who enters it; the technician of the order unless given')
    .addHelpText(
      'after',
      closing(
        { failed: 'you stopped; nothing was written' },
        'plugmark specifications add',
        'plugmark specifications add --order order.json --name "Example V8"',
      ),
    )
    .action((options) =>
      run(async () => (await import('../bench/specifications.ts')).addSpecification(options))(),
    );
  json(
    scope(
      specifications
        .command('check')
        .description('checks that each can be read, and that a job could be opened with it today'),
    ),
  )
    .addHelpText(
      'after',
      closing({ done: 'all can be used', failed: 'one cannot be used' }, 'plugmark specifications check'),
    )
    .action((options) =>
      run(async () => (await import('../bench/specifications.ts')).checkSpecifications(options))(),
    );

  const jobs = program
    .command('jobs')
    .description('the jobs in the station log: list, show, void, hand over')
    .addHelpText('after', examples('plugmark jobs', 'plugmark jobs --open', 'plugmark jobs show J-1001'));
  json(
    scope(
      jobs
        .command('list', { isDefault: true })
        .description('lists jobs, the latest first; runs where you name no other command'),
    ),
  )
    .option('--job <job>', 'only jobs with this in their number')
    .option('--vin <vin>', 'only vehicles with this in their VIN')
    .option('--plate <plate>', 'only vehicles with this in their plate')
    .option('--fleet <number>', 'only vehicles with this in their fleet number')
    .option('--from <date>', 'only jobs opened on this day (UTC) or later')
    .option('--to <date>', 'only jobs opened on this day (UTC) or earlier')
    .option('--open', 'only those that are still open')
    .addHelpText(
      'after',
      closing({}, 'plugmark jobs list --open', 'plugmark jobs list --plate "EXAMPLE 8" --from 2026-03-01'),
    )
    .action((options) => run(async () => (await import('../station/jobs.ts')).listJobs(options))());
  json(scope(jobs.command('show').description('shows where a job stands').argument('<job>', 'its number')))
    .addHelpText('after', closing({}, 'plugmark jobs show J-1001'))
    .action((number, options) =>
      run(async () => (await import('../station/jobs.ts')).showJob(number, options))(),
    );
  scope(
    jobs
      .command('void')
      .description('declares a job void: its readings stay in the log and prove nothing')
      .argument('<job>', 'its number'),
  )
    .requiredOption('--because <text>', 'why')
    .requiredOption('--by <person>', 'who declares it')
    .addHelpText(
      'after',
      closing({}, 'plugmark jobs void J-1001 --because "wrong vehicle" --by "Foreman One"'),
    )
    .action((number, options) =>
      run(async () => (await import('../station/jobs.ts')).voidJob(number, options))(),
    );
  scope(
    jobs
      .command('hand-over')
      .description('gives an open job to another technician')
      .argument('<open-job>', 'its number')
      .argument('<person>', 'who goes on with it'),
  )
    .addHelpText('after', closing({}, 'plugmark jobs hand-over J-1001 "Technician Two"'))
    .action((number, person, options) =>
      run(async () => (await import('../station/jobs.ts')).handOver(number, person, options))(),
    );
  forReader(
    csvLocale(
      scope(
        jobs
          .command('papers')
          .description('writes record, PDF and CSV of a closed job again, from the log')
          .argument('<job>', 'its number'),
      ),
    ),
  )
    .option('--out <folder>', "folder for the papers; that of the station's data unless given")
    .addHelpText(
      'after',
      closing(
        {
          failed: 'written, but the job is not complete or not proven',
          void: 'written, but the job was declared void',
        },
        'plugmark jobs papers J-1001 --out papers',
        'plugmark jobs papers J-1001 --out papers-fr --language fr --csv-locale fr',
      ),
    )
    .action((number, options) =>
      run(async () => (await import('../station/jobs.ts')).papersAgain(number, options))(),
    );
};
