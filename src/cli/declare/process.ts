import { Option } from 'commander';
import { type Declare, examples, oneOrMore, positive, scope, whole } from './common.ts';
import { asked } from './filters.ts';

/** What the records say of processes and tools: capability, drift, gaps as delivered, gauge studies, calibrations. */
export const declareProcess: Declare = (program, run) => {
  asked(scope(program.command('capability').description('what the process can do, by specification')))
    .option('--specification <key>', 'one specification, by its key or the beginning of it')
    .option('--by <grouping>', 'specification, tool, technician or cylinder', 'specification')
    .option('--cylinder <number>', 'only this cylinder', whole)
    .option('--gap', 'gaps instead of torques')
    .option('--last <number>', 'how many readings the charts show', oneOrMore, 40)
    .option(
      '--out <folder>',
      'also writes a PDF and the charts as SVG; of several groups each into a folder in it',
    )
    .addHelpText(
      'after',
      examples(
        'plugmark capability',
        'plugmark capability --specification d6e8 --by technician --out process',
      ),
    )
    .action((options) => run(async () => (await import('../audit/capability.ts')).showCapability(options))());
  asked(scope(program.command('delivered').description('gaps of new plugs as they came, by part and lot')))
    .addHelpText('after', examples('plugmark delivered --part EXAMPLE-14G --from 2026-01-01'))
    .action((options) => run(async () => (await import('../audit/delivered.ts')).showDelivered(options))());
  scope(
    program
      .command('drift')
      .description('whether a tool has moved: by its pulls since its calibration, and by its certificates')
      .argument('<tool>', 'its serial number, or its name in the station file'),
  )
    .option(
      '--permissible <percent>',
      'how far it may be off; what the tool permits itself unless told',
      positive,
    )
    .option('--last <number>', 'how many days the chart shows', oneOrMore, 40)
    .option('--out <folder>', 'also writes the charts as SVG')
    .addHelpText(
      'after',
      `\nExit code: 0 nothing to say against it; 1 WARNING or UNDECIDED, it wants a look sooner.\n${examples('plugmark drift EXAMPLE-W-07')}`,
    )
    .action((tool, options) =>
      run(async () => (await import('../audit/drift.ts')).showDrift(tool, options))(),
    );

  const study = program
    .command('gauge-study')
    .description('repeatability and reproducibility of a tool, measured with the tool')
    .addHelpText('after', examples('plugmark gauge-study show GS-1'));
  study
    .command('run')
    .description('leads through the study and computes it, average and range beside analysis of variance')
    .option('--tool <id>', 'which tool of the station file')
    .option('--appraisers <names>', 'who measures, with commas')
    .option('--parts <parts>', 'how many parts, or their names with commas', '10')
    .option('--trials <number>', 'how often each measures each part', whole, 3)
    .option('--at <torque>', 'for a wrench: what its pulls come to, in N·m', positive)
    .addOption(
      new Option('--resume <number>', 'goes on with a study that was left open, like GS-1').conflicts([
        'tool',
        'appraisers',
        'parts',
        'trials',
        'at',
      ]),
    )
    .option('--station <file>', 'the station file (JSON)', 'station.json')
    .option('--plain', 'plain lines instead of the screen')
    .option('--quiet', 'no bell')
    .addHelpText(
      'after',
      examples(
        'plugmark gauge-study run --tool gauge --appraisers "Ann,Ben,Cem" --parts 10',
        'plugmark gauge-study run --resume GS-1',
      ),
    )
    .action((options) => run(async () => (await import('../study/gauge-study.ts')).runStudy(options))());
  scope(study.command('list').description('all studies: made, open, given up'))
    .addHelpText('after', examples('plugmark gauge-study list'))
    .action((options) => run(async () => (await import('../study/study-list.ts')).listStudies(options))());
  scope(study.command('show').description('one study').argument('<number>', 'its number, like GS-1'))
    .addHelpText('after', examples('plugmark gauge-study show GS-1'))
    .action((number, options) =>
      run(async () => (await import('../study/study-list.ts')).showStudy(number, options))(),
    );

  scope(
    study
      .command('drop')
      .description('gives up a study that is open; what was measured for it stays in the log')
      .argument('<number>', 'its number, like GS-1'),
  )
    .requiredOption('--because <reason>', 'why it is given up')
    .addHelpText(
      'after',
      examples('plugmark gauge-study drop GS-1 --because "The wrong parts were laid out."'),
    )
    .action((number, options) =>
      run(async () => (await import('../study/study-list.ts')).dropStudy(number, options))(),
    );

  scope(program.command('calendar').description('when each tool has to be calibrated again'))
    .option('--soon <days>', 'so many days ahead a tool is due soon', whole, 30)
    .option('--staircase', 'also says the next interval, longer or shorter by what was found')
    .option('--shortest <days>', 'the shortest interval', whole, 90)
    .option('--longest <days>', 'the longest interval', whole, 365)
    .option('--ics <file>', 'also writes it as iCalendar, for a calendar program')
    .addHelpText(
      'after',
      `\nExit code: 0 no tool is due; 1 one is.\n${examples('plugmark calendar --staircase --ics calibrations.ics')}`,
    )
    .action((options) => run(async () => (await import('../audit/calendar.ts')).showCalendar(options))());
  const certificates = program
    .command('certificates')
    .description('files of calibration certificates, kept by their digest')
    .addHelpText('after', examples('plugmark certificates check'));
  scope(
    certificates
      .command('keep')
      .description('keeps certificates in the folder of the station')
      .argument('[file...]', 'the files; all that the station file names unless told'),
  )
    .option('--for <number>', 'the certificate that a file belongs to, such as its scan')
    .addHelpText(
      'after',
      examples('plugmark certificates keep', 'plugmark certificates keep scan.pdf --for EXAMPLE-2026-0118'),
    )
    .action((files, options) =>
      run(async () => (await import('../audit/certificates.ts')).keepCertificates(files, options))(),
    );
  scope(certificates.command('check').description('whether all that were kept are there as they were'))
    .addHelpText('after', examples('plugmark certificates check'))
    .action((options) =>
      run(async () => (await import('../audit/certificates.ts')).checkCertificates(options))(),
    );
};
