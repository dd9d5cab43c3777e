import { type Declare, examples, scope } from './common.ts';

/** The station itself: its first day, its health, its figures, and the jobs in its log. */
export const declareStation: Declare = (program, run) => {
  program
    .command('setup')
    .description('a guided first run: asks for station, tools and people, and writes the station file')
    .option('--station <file>', 'the station file to write', 'station.json')
    .addHelpText('after', examples('plugmark setup', 'plugmark setup --station bay-2.json < answers.txt'))
    .action((options) => run(async () => (await import('../station/setup.ts')).setup(options))());

  program
    .command('doctor')
    .description('looks over program, Bluetooth, log, key, clock, disk and terminal; changes nothing')
    .option('--station <file>', 'the station file (JSON); station.json where there is one')
    .option('--json', 'the findings as JSON')
    .addHelpText(
      'after',
      `\nExit code: 0 all that plugmark needs is there; 1 something is missing.\n${examples('plugmark doctor --station station.json')}`,
    )
    .action((options) => run(async () => (await import('../station/doctor.ts')).doctor(options))());

  const specifications = program
    .command('specifications')
    .description("the shop's own library of engines, plugs and figures")
    .addHelpText('after', examples('plugmark specifications', 'plugmark specifications list V8'));
  scope(
    specifications
      .command('list', { isDefault: true })
      .description('lists the specifications; meant where no other is named')
      .argument('[words...]', 'only those whose name, plug or source holds all of them'),
  )
    .addHelpText('after', examples('plugmark specifications list', 'plugmark specifications list example v8'))
    .action((words, options) =>
      run(async () => (await import('../bench/specifications.ts')).listSpecifications(words, options))(),
    );
  scope(
    specifications
      .command('show')
      .description('shows one, with its engine drawn')
      .argument('<words...>', 'its name, or words that no other holds'),
  )
    .addHelpText('after', examples('plugmark specifications show "Example V8"'))
    .action((words, options) =>
      run(async () => (await import('../bench/specifications.ts')).showSpecification(words, options))(),
    );
  scope(
    specifications
      .command('add')
      .description('adds the figures of a work order, or asks for them one by one'),
  )
    .option('--order <file>', 'the work order (JSON) whose engine, plug and figures are kept')
    .option('--name <text>', 'with --order: what it is found by; the name of the engine unless told')
    .option('--by <name>', 'with --order: who enters it; the technician of the order unless told')
    .addHelpText(
      'after',
      examples(
        'plugmark specifications add',
        'plugmark specifications add --order order.json --name "Example V8"',
      ),
    )
    .action((options) =>
      run(async () => (await import('../bench/specifications.ts')).addSpecification(options))(),
    );
  scope(
    specifications
      .command('check')
      .description('says of each whether it can be read, and whether a job could be opened with it'),
  )
    .addHelpText('after', examples('plugmark specifications check'))
    .action((options) =>
      run(async () => (await import('../bench/specifications.ts')).checkSpecifications(options))(),
    );

  const jobs = program
    .command('jobs')
    .description('the jobs in the station log: lists them, shows one, changes hands')
    .addHelpText('after', examples('plugmark jobs', 'plugmark jobs --open', 'plugmark jobs show J-1001'));
  scope(
    jobs
      .command('list', { isDefault: true })
      .description('lists jobs, the latest first; meant where no other is named'),
  )
    .option('--number <text>', 'only jobs whose number holds this')
    .option('--vin <text>', 'only vehicles whose VIN holds this')
    .option('--plate <text>', 'only vehicles whose plate holds this')
    .option('--fleet <text>', 'only vehicles whose fleet number holds this')
    .option('--from <date>', 'only jobs opened on this day (UTC) or later')
    .option('--to <date>', 'only jobs opened on this day (UTC) or earlier')
    .option('--open', 'only jobs that are still open')
    .addHelpText(
      'after',
      examples('plugmark jobs list --open', 'plugmark jobs list --plate "EXAMPLE 8" --from 2026-03-01'),
    )
    .action((options) => run(async () => (await import('../station/jobs.ts')).listJobs(options))());
  scope(
    jobs.command('show').description('where a job stands, in plain lines').argument('<number>', 'the job'),
  )
    .addHelpText('after', examples('plugmark jobs show J-1001'))
    .action((number, options) =>
      run(async () => (await import('../station/jobs.ts')).showJob(number, options))(),
    );
  scope(jobs.command('void').description('declares a job void; what was read stays, and proves nothing'))
    .argument('<number>', 'the job')
    .requiredOption('--reason <text>', 'why')
    .requiredOption('--by <name>', 'who says so')
    .addHelpText('after', examples('plugmark jobs void J-1001 --reason "wrong vehicle" --by "Foreman One"'))
    .action((number, options) =>
      run(async () => (await import('../station/jobs.ts')).voidJob(number, options))(),
    );
  scope(jobs.command('hand-over').description('gives an open job to another technician'))
    .argument('<number>', 'the job')
    .requiredOption('--to <name>', 'who goes on with it')
    .addHelpText('after', examples('plugmark jobs hand-over J-1001 --to "Technician Two"'))
    .action((number, options) =>
      run(async () => (await import('../station/jobs.ts')).handOver(number, options))(),
    );
  scope(jobs.command('papers').description('writes record, PDF and CSV of a closed job again, from the log'))
    .argument('<number>', 'the job')
    .option('--out <folder>', "where they go; the folder of the station's data unless told")
    .addHelpText('after', examples('plugmark jobs papers J-1001 --out papers'))
    .action((number, options) =>
      run(async () => (await import('../station/jobs.ts')).papersAgain(number, options))(),
    );
};
