import { Option } from 'commander';
import {
  askedScope,
  closing,
  csvLocale,
  type Declare,
  examples,
  forReader,
  json,
  scope,
  whole,
} from './common.ts';
import { asked } from './filters.ts';

/** What is asked of the records later: impact assessments, questions, packages for an auditor, papers for a dispute. */
export const declareAudit: Declare = (program, run) => {
  const impact = program
    .command('impact')
    .description(
      'a tool was out of tolerance at calibration: which proofs still hold, which vehicles to recall',
    )
    .addHelpText(
      'after',
      examples(
        'plugmark impact wrench --as-found as-found.json --by "Quality One"',
        'plugmark impact show IA-1',
      ),
    );
  forReader(
    scope(
      impact
        .command('assess', { isDefault: true })
        .description(
          'judges everything since the last good check again; runs where you name no other command',
        )
        .argument('<tool>', 'the tool, as in the station file')
        .requiredOption('--as-found <file>', 'what the laboratory found, in the form of a certificate')
        .requiredOption('--by <person>', 'who assesses')
        .option(
          '--since <certificate>',
          'the last good check, if the log leaves it open: NUMBER or "NUMBER of DATE"',
        )
        .option(
          '--out <folder>',
          "folder for the PDF and the lists; that of the station's data unless given",
        ),
    ),
  )
    .addHelpText(
      'after',
      closing(
        {
          done: 'every proof still holds',
          failed: 'some proofs do not hold',
          badInput: 'an input is not as it should be; nothing was written',
        },
        'plugmark impact assess wrench --as-found as-found.json --by "Quality One" --out impact',
      ),
    )
    .action((tool, options) => run(async () => (await import('../audit/impact.ts')).impact(tool, options))());
  impact
    .command('survey')
    .description('judges again, over all stations of an archive, what a tool was used for; records nothing')
    .argument('<serial>', 'the serial number of the tool')
    .requiredOption('--as-found <file>', 'what the laboratory found, in the form of a certificate')
    .requiredOption('--archive <url>', 'the archive')
    .option(
      '--since <certificate>',
      'the last good check, if the logs leave it open: NUMBER or "NUMBER of DATE"',
    )
    .option('--out <file>', 'write every reading that was judged again, as CSV')
    .addHelpText(
      'after',
      closing(
        { done: 'every proof still holds', failed: 'some proofs do not hold' },
        'plugmark impact survey EXAMPLE-W-07 --as-found as-found.json --archive https://archive.example.com',
      ),
    )
    .action((serial, options) =>
      run(async () => (await import('../audit/impact-survey.ts')).surveyImpact(serial, options))(),
    );
  json(scope(impact.command('list').description('lists all impact assessments, the latest first')))
    .option('--open', 'only those that are still open')
    .addHelpText('after', closing({}, 'plugmark impact list --open'))
    .action((options) =>
      run(async () => (await import('../audit/impact-decisions.ts')).listImpacts(options))(),
    );
  forReader(
    json(
      scope(
        impact
          .command('show')
          .description('shows the jobs that an impact assessment touches, and what was decided')
          .argument('<impact>', 'the impact assessment, such as IA-1'),
      ),
    ),
  )
    .option('--out <folder>', 'write its PDF and its list of vehicles again, into this folder')
    .addHelpText('after', closing({}, 'plugmark impact show IA-1 --out impact'))
    .action((number, options) =>
      run(async () => (await import('../audit/impact-decisions.ts')).showImpact(number, options))(),
    );
  scope(
    impact
      .command('decide')
      .description('decides what happens to jobs that it touches')
      .argument('<impact>', 'the impact assessment, such as IA-1')
      .argument('[job...]', 'the jobs; part of a number is enough where it fits only one'),
  )
    .addOption(
      new Option(
        '--as <decision>',
        'recall: call the vehicle back; inform: its owner was told; accept: leave it as it is; redone: done again',
      )
        .choices(['recall', 'inform', 'accept', 'redone'])
        .makeOptionMandatory(),
    )
    .option('--in <job>', 'with redone: the later job; found by the vehicle unless given')
    .requiredOption('--because <text>', 'why')
    .requiredOption('--by <person>', 'who decides')
    .addOption(
      new Option('--undecided <sort>', 'all jobs of this sort that are not decided yet').choices([
        'doubtful',
        'out',
        'any',
      ]),
    )
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark impact decide IA-1 J-1001 --as recall --because "two plugs loose" --by "Foreman One"',
        'plugmark impact decide IA-1 --undecided doubtful --as inform --because "letter of 2 March" --by "Foreman One"',
      ),
    )
    .action((number, jobs, options) =>
      run(async () => (await import('../audit/impact-decisions.ts')).decideImpact(number, jobs, options))(),
    );
  scope(
    impact
      .command('close')
      .description('closes an impact assessment, once every job is decided and every recall redone')
      .argument('<impact>', 'the impact assessment, such as IA-1'),
  )
    .requiredOption('--because <text>', 'why it can be closed')
    .requiredOption('--by <person>', 'who closes it')
    .addHelpText(
      'after',
      closing({}, 'plugmark impact close IA-1 --because "all seen to" --by "Foreman One"'),
    )
    .action((number, options) =>
      run(async () => (await import('../audit/impact-decisions.ts')).closeImpact(number, options))(),
    );

  csvLocale(
    json(
      asked(
        askedScope(
          program
            .command('ask')
            .description('finds jobs or attempts by vehicle, fleet, part, lot, person, tool or day'),
        ),
      ),
    ),
  )
    .option('--exceptions', 'only what needs an explanation, with the reason')
    .option('--attempts', 'every pull and gap reading instead of the jobs')
    .option('--csv', 'the answer as CSV')
    .option('--out <file>', 'the answer as a file that ends in .csv, .xlsx (a workbook) or .parquet')
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark ask --vin ZZ9EXAMP1PM000104',
        'plugmark ask --fleet BUS-12 --from 2026-01-01 --exceptions',
        'plugmark ask --lot L-2231 --attempts --csv > lot.csv',
        'plugmark ask --from 2026-01-01 --attempts --out attempts.xlsx',
      ),
    )
    .action((options) => run(async () => (await import('../audit/ask.ts')).ask(options))());

  forReader(
    asked(
      scope(
        program
          .command('package')
          .description('writes a folder for an auditor: records, proofs and an index, to be checked offline'),
      ),
    ),
  )
    .requiredOption('--out <folder>', 'a new folder')
    .option('--kept <file>', 'the checkpoint that the auditor kept from before')
    .option('--exceptions', 'only jobs that need an explanation')
    .option('--no-papers', 'records without their PDFs: a quarter of the size, a fifth of the time')
    .option('--without <kinds>', 'personal texts that are withheld, as "plugmark share" takes them')
    .addHelpText(
      'after',
      closing(
        { failed: 'the log does not go on from the checkpoint; no package was written' },
        'plugmark package --out audit-2026 --kept 2025.checkpoint --from 2026-01-01',
      ),
    )
    .action((options) => run(async () => (await import('../evidence/package.ts')).makePackage(options))());

  scope(
    program
      .command('forget')
      .description('deletes personal texts from the log for good; every signature and verdict stays'),
  )
    .option('--plate <plate>', 'a number plate, and every free text with it')
    .option('--vin <vin>', 'a VIN')
    .option('--fleet <number>', 'a fleet number')
    .option('--customer <name>', 'a customer')
    .option('--person <name>', 'somebody who worked, answered or decided')
    .option('--yes', 'without asking')
    .option(
      '--although-held',
      'also of jobs that are open, in an open impact assessment, or inside the retention time',
    )
    .option('--by <person>', 'who decides')
    .option('--because <text>', 'why')
    .addHelpText(
      'after',
      closing(
        { failed: 'nothing was deleted; or another program keeps the texts until it is closed' },
        'plugmark forget --plate "EX 123"',
        'plugmark forget --person "Technician One" --although-held --by "Owner One" --because "asked for it"',
      ),
    )
    .action((options) => run(async () => (await import('../station/forget.ts')).forget(options))());
  csvLocale(
    json(
      askedScope(
        program
          .command('retention')
          .description('shows how old the records are, and what the retention time of the shop says'),
      ),
    ),
  )
    .option('--years <number>', 'the retention time, instead of the one in the station file', whole)
    .option('--csv', 'every job, as CSV')
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark retention',
        'plugmark retention --years 7 --csv --csv-locale de > retention.csv',
        'plugmark retention --years 7 --archive https://archive.example.com',
      ),
    )
    .action((options) => run(async () => (await import('../audit/retention.ts')).retention(options))());

  forReader(
    scope(
      program
        .command('dispute')
        .description(
          'writes the file of a claim about one vehicle: what was known then, what was learned since',
        ),
    ),
  )
    .requiredOption('--claim <text>', 'number or name of the claim')
    .requiredOption('--out <folder>', 'a new folder')
    .option('--vin <vin>', 'the vehicle, by its VIN')
    .option('--plate <plate>', 'the vehicle, by its plate')
    .option('--fleet <number>', 'the vehicle, by its fleet number')
    .option('--from <date>', 'only jobs opened on this day (UTC) or later')
    .option('--to <date>', 'only jobs opened on this day (UTC) or earlier')
    .option('--kept <file>', 'the checkpoint that the other side kept from before')
    .option('--no-papers', 'records without their PDFs')
    .addHelpText(
      'after',
      closing(
        { failed: 'the log does not go on from the checkpoint; nothing was written' },
        'plugmark dispute --vin ZZ9EXAMP1PM000104 --claim W-2026-17 --out claim-17',
      ),
    )
    .action((options) => run(async () => (await import('../audit/dispute.ts')).dispute(options))());
};
