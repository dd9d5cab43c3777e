import { Option } from 'commander';
import {
  askedScope,
  closing,
  type Declare,
  examples,
  forReader,
  json,
  oneOrMore,
  positive,
  scope,
  whole,
} from './common.ts';
import { asked } from './filters.ts';

/** What the records say of processes and tools: capability, drift, gaps as delivered, gauge studies, calibrations. */
export const declareProcess: Declare = (program, run) => {
  forReader(
    json(
      asked(
        askedScope(
          program.command('capability').description('shows what the process can do, by specification'),
        ),
      ),
    ),
  )
    .option('--specification <key>', 'one specification, by its key or the start of it')
    .addOption(
      new Option('--per <grouping>', 'one group for each')
        .choices(['specification', 'tool', 'technician', 'cylinder'])
        .default('specification'),
    )
    .option('--cylinder <number>', 'only this cylinder', whole)
    .option('--gap', 'gaps instead of torques')
    .option('--last <number>', 'how many readings the charts show', oneOrMore, 40)
    .option(
      '--out <folder>',
      'also write a PDF and the charts as SVG; each of several groups into its own folder',
    )
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark capability',
        'plugmark capability --specification d6e8 --per technician --out process',
      ),
    )
    .action((options) => run(async () => (await import('../audit/capability.ts')).showCapability(options))());
  json(
    asked(
      askedScope(
        program.command('delivered').description('shows the gaps of new plugs as they came, by part and lot'),
      ),
    ),
  )
    .addHelpText('after', closing({}, 'plugmark delivered --part EXAMPLE-14G --from 2026-01-01'))
    .action((options) => run(async () => (await import('../audit/delivered.ts')).showDelivered(options))());
  forReader(
    json(
      askedScope(
        program
          .command('drift')
          .description(
            'shows whether a tool has drifted: by its pulls since calibration, and by its certificates',
          )
          .argument('<tool>', 'its serial number, or its name in the station file'),
      ),
    ),
  )
    .option('--permissible <percent>', 'how far it may be off; as stated for the tool unless given', positive)
    .option('--last <number>', 'how many days the chart shows', oneOrMore, 40)
    .option('--out <folder>', 'also writes a PDF and the charts as SVG')
    .addHelpText(
      'after',
      closing(
        {
          done: 'nothing speaks against the tool',
          failed: 'WARNING or UNDECIDED: have the tool checked sooner',
        },
        'plugmark drift EXAMPLE-W-07',
      ),
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
    .description(
      'leads you through a study and computes it, by average and range and by analysis of variance',
    )
    .option('--tool <tool>', 'which tool of the station file')
    .option('--appraisers <names>', 'who measures, separated by commas')
    .option('--parts <parts>', 'how many parts, or their names separated by commas', '10')
    .option('--trials <number>', 'how often each person measures each part', whole, 3)
    .option('--at <torque>', 'for a wrench: the torque of its pulls, in N·m', positive)
    .addOption(
      new Option('--resume <study>', 'go on with a study that was left open, such as GS-1').conflicts([
        'tool',
        'appraisers',
        'parts',
        'trials',
        'at',
      ]),
    )
    .option('--station <file>', 'the station file', 'station.json')
    .option('--plain', 'plain lines instead of the screen')
    .option('--quiet', 'no bell')
    .addHelpText(
      'after',
      closing(
        {
          failed: 'you left before the first reading; nothing was kept',
          leftOpen: 'the study is still open; go on with: plugmark gauge-study run --resume',
        },
        'plugmark gauge-study run --tool gauge --appraisers "Ann,Ben,Cem" --parts 10',
        'plugmark gauge-study run --resume GS-1',
      ),
    )
    .action((options) => run(async () => (await import('../study/gauge-study.ts')).runStudy(options))());
  json(scope(study.command('list').description('lists all studies: made, open, given up')))
    .addHelpText('after', closing({}, 'plugmark gauge-study list'))
    .action((options) => run(async () => (await import('../study/study-list.ts')).listStudies(options))());
  json(
    scope(
      study.command('show').description('shows one study').argument('<study>', 'its number, such as GS-1'),
    ),
  )
    .addHelpText('after', closing({}, 'plugmark gauge-study show GS-1'))
    .action((number, options) =>
      run(async () => (await import('../study/study-list.ts')).showStudy(number, options))(),
    );

  scope(
    study
      .command('drop')
      .description('gives up an open study; its readings stay in the log')
      .argument('<study>', 'its number, such as GS-1'),
  )
    .requiredOption('--because <text>', 'why')
    .addHelpText(
      'after',
      closing({}, 'plugmark gauge-study drop GS-1 --because "The wrong parts were laid out."'),
    )
    .action((number, options) =>
      run(async () => (await import('../study/study-list.ts')).dropStudy(number, options))(),
    );

  json(askedScope(program.command('calendar').description('shows when each tool must be calibrated again')))
    .option('--soon <days>', 'a tool is due soon this many days ahead', whole, 30)
    .option('--staircase', 'add the next interval, longer or shorter by what the laboratory found')
    .option('--shortest <days>', 'the shortest interval', whole, 90)
    .option('--longest <days>', 'the longest interval', whole, 365)
    .option('--ics <file>', 'also write it for a calendar program (iCalendar)')
    .addHelpText(
      'after',
      closing(
        { done: 'no tool is due', failed: 'a tool is due, or out of tolerance' },
        'plugmark calendar --staircase --ics calibrations.ics',
      ),
    )
    .action((options) => run(async () => (await import('../audit/calendar.ts')).showCalendar(options))());
  const certificates = program
    .command('certificates')
    .description('calibration certificates, kept as files and found by their digest')
    .addHelpText('after', examples('plugmark certificates check'));
  scope(
    certificates
      .command('keep')
      .description("keeps certificates in the folder of the station's data")
      .argument('[file...]', 'the files; those in the station file unless given'),
  )
    .option('--for <number>', 'the certificate that the file belongs to, for a scan')
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark certificates keep',
        'plugmark certificates keep scan.pdf --for EXAMPLE-2026-0118',
      ),
    )
    .action((files, options) =>
      run(async () => (await import('../audit/certificates.ts')).keepCertificates(files, options))(),
    );
  json(
    scope(
      certificates.command('check').description('checks that all kept certificates are there, unchanged'),
    ),
  )
    .addHelpText(
      'after',
      closing(
        { done: 'all are there, unchanged', failed: 'one is missing or changed' },
        'plugmark certificates check',
      ),
    )
    .action((options) =>
      run(async () => (await import('../audit/certificates.ts')).checkCertificates(options))(),
    );
};
