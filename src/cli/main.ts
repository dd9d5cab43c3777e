import { Command, CommanderError, InvalidArgumentError } from 'commander';
import { EXIT, type ExitCode, guarded } from './exit.ts';
import { programVersion } from './version.ts';

const CAUTION =
  'Work on a cold engine with the ignition off, by hand, never with a power tool. The service information of the\n' +
  'engine maker decides every figure; this program checks the work and does not replace licensed practice.';

/** Reads the command line, runs one command and returns the exit code. Heavy modules load only with their command. */
export async function main(argv: readonly string[]): Promise<ExitCode> {
  let code: ExitCode = EXIT.done;
  const run = (command: () => Promise<ExitCode>) => async () => {
    code = await guarded(command);
  };
  const program = new Command('plugmark')
    .description(
      'Guides and proves a spark plug job: every gap and every pull of the torque wrench, judged and signed.',
    )
    .version(programVersion())
    .addHelpText('after', `\n${CAUTION}`)
    .exitOverride()
    .showHelpAfterError();

  program
    .command('demo')
    .description('a whole job with simulated tools, on the live screen')
    .option('--cylinders <count>', 'the engine: 4 or 8 cylinders', oneOf(4, 8), 8)
    .option('--seed <number>', 'another engine, other plugs, other habits', whole, 1)
    .option('--fast', 'do not wait for the simulated hands; plain lines instead of the screen')
    .option(
      '--technician <habit>',
      'careful, hurried, clicks-twice, stops-short, overpulls, skips or mixed',
      'mixed',
    )
    .option('--out <folder>', 'where the station log, the record, the PDF and the CSV go', 'plugmark-demo')
    .option('--direct', 'join the simulated tools without the Bluetooth stack')
    .option('--plain', 'plain lines instead of the screen')
    .addHelpText('after', '\nExample:\n  plugmark demo --fast --seed 7 --out demo-7')
    .action((options) => run(async () => (await import('./demo.ts')).demo(options))());

  program
    .command('job')
    .description('a real job, from a work order and the tools of a station file')
    .option('--order <file>', 'the work order (JSON); opens a new job')
    .option('--resume', 'goes on with the job that was left open')
    .option('--job <number>', 'with --resume: which job, where several are open')
    .option('--station <file>', 'the station file (JSON)', 'station.json')
    .option('--plain', 'plain lines instead of the screen')
    .addHelpText(
      'after',
      '\nExamples:\n  plugmark job --order order.json --station station.json\n  plugmark job --resume',
    )
    .action((options) => run(async () => (await import('./job.ts')).job(options))());

  program
    .command('verify')
    .description('says whether a job record is authentic and complete')
    .argument('<file>', 'the record (*.record.json)')
    .option('--trust <file>', 'the keys that are trusted (JWK set)', 'trusted-keys.json')
    .option('--json', 'the findings as JSON')
    .addHelpText(
      'after',
      '\nExit code: 0 authentic, complete, signer trusted; 1 not authentic or not complete; 2 not readable as a record;\n' +
        '3 authentic but the signer is not on the trust list.\n\nExample:\n  plugmark verify J-1001.record.json --trust trusted-keys.json',
    )
    .action((file, options) => run(async () => (await import('./verify.ts')).verify(file, options))());

  try {
    await program.parseAsync(argv);
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? EXIT.done : EXIT.badInput;
  }
  return code;
}

function whole(text: string): number {
  if (!/^\d{1,9}$/.test(text)) throw new InvalidArgumentError('expected a whole number.');
  return Number(text);
}

function oneOf(...allowed: readonly number[]): (text: string) => number {
  return (text) => {
    const value = whole(text);
    if (!allowed.includes(value)) throw new InvalidArgumentError(`expected ${allowed.join(' or ')}.`);
    return value;
  };
}
