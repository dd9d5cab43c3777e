import { Command, CommanderError } from 'commander';
import { w } from '../words/catalogue.ts';
import { declareArchive } from './declare/archive.ts';
import { declareAudit } from './declare/audit.ts';
import { declareBackup } from './declare/backup.ts';
import { allExitCodes, type Declare, examples, type Run } from './declare/common.ts';
import { declareDevices } from './declare/devices.ts';
import { declareEvidence } from './declare/evidence.ts';
import { declareHelp } from './declare/help.ts';
import { declareProcess } from './declare/process.ts';
import { declarePulls } from './declare/pulls.ts';
import { declareStation } from './declare/station.ts';
import { declareWindow } from './declare/window.ts';
import { declareWitness } from './declare/witness.ts';
import { declareWork } from './declare/work.ts';
import { HELP_IN_READERS_LANGUAGE, refusalOf } from './help/spoken-help.ts';
import { programVersion } from './help/version.ts';
import { speakToReader } from './station/reader-language.ts';
import { EXIT, type ExitCode, guarded, safeLine } from './terminal/exit.ts';

const caution = () =>
  [
    w`Work on a cold engine with the ignition off, by hand, never with a power tool.`,
    w`The service information of the engine maker decides every figure.`,
    w`This program checks the work and does not replace licensed practice.`,
  ].join('\n');

/** In the order of the help. */
const DECLARED: readonly Declare[] = [
  declareWork,
  declareStation,
  declareWindow,
  declareEvidence,
  declareWitness,
  declareArchive,
  declareAudit,
  declareProcess,
  declareBackup,
  declareDevices,
  declarePulls,
  declareHelp,
];

/** The whole command line. Heavy modules load only with their command. */
export function buildProgram(run: Run): Command {
  const program = new Command('plugmark')
    .description(
      'Guides and proves a spark plug job: every gap and every pull of the torque wrench, judged and signed.',
    )
    .version(programVersion(), '-V, --version', 'prints the version')
    .helpOption('-h, --help', 'prints this help')
    .helpCommand('help [command]', 'prints the help of a command')
    .addHelpText('after', `${allExitCodes()}\n${examples('plugmark demo')}\n\n${caution()}`)
    .configureHelp(HELP_IN_READERS_LANGUAGE)
    .exitOverride()
    .configureOutput({ outputError: (text, write) => write(commandLineProblem(text)) });
  for (const declare of DECLARED) declare(program, run);
  pointToHelp(program, 'plugmark');
  return program;
}

/** What commander found wrong, on one line: a word with a line break in it is not to look like an answer. */
const commandLineProblem = (text: string): string =>
  `plugmark: ${safeLine(refusalOf(text.replace(/^error: /, '').trim()))}\n`;

/** Names the help of the very command; the whole help would push the sentence off the screen. */
function pointToHelp(command: Command, name: string): void {
  command.showHelpAfterError(`  ${w`See: ${name} --help`}`);
  for (const child of command.commands) pointToHelp(child, `${name} ${child.name()}`);
}

/** One key in 64 has a thumbprint that begins with a hyphen, and would be taken for an option. */
const THUMBPRINT = /^-[\w-]{42}$/;

function thumbprintsLast(argv: readonly string[]): readonly string[] {
  const thumbprints = argv.filter((word) => THUMBPRINT.test(word));
  if (thumbprints.length === 0 || argv.includes('--')) return argv;
  return [...argv.filter((word) => !THUMBPRINT.test(word)), '--', ...thumbprints];
}

/** In front of the command are the interpreter and the program. */
const COMMAND_AT = 2;

/** Reads the command line, runs one command and returns the exit code. */
export async function main(argv: readonly string[]): Promise<ExitCode> {
  let code: ExitCode = EXIT.done;
  const run: Run = (command) => async () => {
    code = await guarded(command);
  };
  try {
    await speakToReader(argv.slice(COMMAND_AT));
    if (argv.length <= COMMAND_AT) await run(async () => (await import('./station/start.ts')).startPage())();
    else await buildProgram(run).parseAsync(thumbprintsLast(argv));
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? EXIT.done : EXIT.badInput;
  }
  return code;
}
