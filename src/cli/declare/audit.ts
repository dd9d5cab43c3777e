import { type Declare, examples, scope, whole } from './common.ts';
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
  scope(
    impact
      .command('assess', { isDefault: true })
      .description('judges everything since the last good check again; meant where no other is named')
      .argument('<tool>', 'the tool, as the station file names it')
      .requiredOption('--as-found <file>', 'what the laboratory found, in the form of a certificate')
      .requiredOption('--by <name>', 'who assesses')
      .option(
        '--since <certificate>',
        'the one to count from, where the log leaves that open: its number, or "NUMBER of DATE"',
      )
      .option(
        '--out <folder>',
        "where the PDF and the lists go; the folder of the station's data unless told",
      ),
  )
    .addHelpText(
      'after',
      `\nExit code: 0 every proof holds; 1 some do not; 2 the input is at fault, and nothing was written.\n${examples(
        'plugmark impact assess wrench --as-found as-found.json --by "Quality One" --out impact',
      )}`,
    )
    .action((tool, options) => run(async () => (await import('../audit/impact.ts')).impact(tool, options))());
  scope(impact.command('list').description('all impact assessments and where they stand'))
    .option('--open', 'only those that are not closed')
    .addHelpText('after', examples('plugmark impact list --open'))
    .action((options) =>
      run(async () => (await import('../audit/impact-decisions.ts')).listImpacts(options))(),
    );
  scope(
    impact
      .command('show')
      .description('the jobs that an impact assessment touches, and what was decided')
      .argument('<number>', 'the impact assessment, like IA-1'),
  )
    .option('--out <folder>', 'writes its PDF and its list of vehicles again, as it stands now')
    .addHelpText('after', examples('plugmark impact show IA-1 --out impact'))
    .action((number, options) =>
      run(async () => (await import('../audit/impact-decisions.ts')).showImpact(number, options))(),
    );
  scope(
    impact
      .command('decide')
      .description('what becomes of jobs that it touches')
      .argument('<number>', 'the impact assessment, like IA-1')
      .argument('[job...]', 'the jobs; any part of a number that means one'),
  )
    .requiredOption(
      '--as <decision>',
      'recall (the vehicle is called back), inform (its owner was told), accept (left as it is) or redone',
    )
    .option('--in <job>', 'the later job that did it again, for redone; found by the vehicle unless named')
    .requiredOption('--because <text>', 'why')
    .requiredOption('--by <name>', 'who decides')
    .option('--all <sort>', 'all that are not decided yet: doubtful, out or any')
    .addHelpText(
      'after',
      examples(
        'plugmark impact decide IA-1 J-1001 --as recall --because "two plugs loose" --by "Foreman One"',
        'plugmark impact decide IA-1 --all doubtful --as inform --because "letter of 2 March" --by "Foreman One"',
      ),
    )
    .action((number, jobs, options) =>
      run(async () => (await import('../audit/impact-decisions.ts')).decideImpact(number, jobs, options))(),
    );
  scope(
    impact
      .command('close')
      .description(
        'ends an impact assessment; refused while a job is not decided, or recalled and not redone',
      )
      .argument('<number>', 'the impact assessment, like IA-1'),
  )
    .requiredOption('--because <text>', 'in what words')
    .requiredOption('--by <name>', 'who closes it')
    .addHelpText('after', examples('plugmark impact close IA-1 --because "all seen to" --by "Foreman One"'))
    .action((number, options) =>
      run(async () => (await import('../audit/impact-decisions.ts')).closeImpact(number, options))(),
    );

  asked(
    scope(
      program
        .command('ask')
        .description('jobs or attempts by vehicle, fleet, part, lot, person, tool or day'),
    ),
  )
    .option('--exceptions', 'only what wants an explanation, and why')
    .option('--attempts', 'every pull and gap reading, instead of the jobs')
    .option('--csv', 'as CSV')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      examples(
        'plugmark ask --vin ZZ9EXAMP1PM000104',
        'plugmark ask --fleet BUS-12 --from 2026-01-01 --exceptions',
        'plugmark ask --lot L-2231 --attempts --csv > lot.csv',
      ),
    )
    .action((options) => run(async () => (await import('../audit/ask.ts')).ask(options))());

  asked(
    scope(
      program
        .command('package')
        .description('a folder for an auditor: records, proofs and an index, checked offline'),
    ),
  )
    .requiredOption('--out <folder>', 'a new folder')
    .option('--since <file>', 'the checkpoint that the auditor kept from before')
    .option('--exceptions', 'only jobs of which something wants an explanation')
    .option('--no-papers', 'the records without their PDFs: a quarter of the bytes, a fifth of the time')
    .addHelpText(
      'after',
      examples('plugmark package --out audit-2026 --since 2025.checkpoint --from 2026-01-01'),
    )
    .action((options) => run(async () => (await import('../evidence/package.ts')).makePackage(options))());

  scope(
    program
      .command('retention')
      .description('how old the records are, and what the retention time of the shop says'),
  )
    .option('--years <number>', 'the retention time, instead of the one in the station file', whole)
    .option('--csv', 'every job, as CSV')
    .option('--json', 'every job, as JSON')
    .addHelpText(
      'after',
      examples('plugmark retention', 'plugmark retention --years 7 --csv > retention.csv'),
    )
    .action((options) => run(async () => (await import('../station/retention.ts')).retention(options))());

  scope(
    program
      .command('dispute')
      .description('the file of one claim about one vehicle: what was known then, what was learned since'),
  )
    .requiredOption('--claim <text>', 'number or name of the claim')
    .requiredOption('--out <folder>', 'a new folder')
    .option('--vin <vin>', 'the vehicle, by its VIN')
    .option('--plate <plate>', 'the vehicle, by its plate')
    .option('--fleet <number>', 'the vehicle, by its fleet number')
    .option('--from <date>', 'only jobs opened on this day (UTC) or later')
    .option('--to <date>', 'only jobs opened on this day (UTC) or earlier')
    .option('--since <file>', 'a checkpoint that the other side kept from before')
    .option('--no-papers', 'the records without their PDFs')
    .addHelpText(
      'after',
      examples('plugmark dispute --vin ZZ9EXAMP1PM000104 --claim W-2026-17 --out claim-17'),
    )
    .action((options) => run(async () => (await import('../audit/dispute.ts')).dispute(options))());
};
