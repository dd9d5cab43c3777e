/** The commands of the program, from its own declarations, and why some of them get no mutated file. */
import { flattened, treeOf } from '../../src/cli/help/command-tree.ts';
import { buildProgram } from '../../src/cli/main.ts';

export interface CommandOfProgram {
  readonly path: readonly string[];
  readonly options: readonly string[];
  /** What its arguments offer to choose from. */
  readonly words: readonly string[];
  /** Asks questions, waits for a tool, or serves: a word of the command line does not end it. */
  readonly waits: boolean;
}

export function commandsOfProgram(): readonly CommandOfProgram[] {
  return flattened(treeOf(buildProgram(() => async () => {})))
    .filter(({ path, children }) => path.length > 0 && children.length === 0)
    .map(({ path, options, command }) => ({
      path,
      options: options.flatMap(({ long }) => (long == null ? [] : [long])),
      words: command.registeredArguments.flatMap(({ argChoices }) => argChoices ?? []),
      waits: WAITS.test(path.join(' ')),
    }));
}

const WAITS =
  /^(demo|sim .*|job|setup|doctor|devices .*|gauge-study run|driver teach|driver test|(witness|archive) serve|archive (join|ship|enrol|judge)|log (send|witness)|time-stamp|impact survey)$/;

const OF_LOG = 'reads the station log, which "ask" and "log check" are given';
const OF_ARCHIVE = 'reads the folder of an archive or a witness, which tests/archive and tests/serve spoil';
const ON_NET = 'needs a server at the other end';
const ON_AIR = 'needs a device; the part "radio" spoils what it sends';

/** Commands without a mutated file of their own, and the reason. */
const NO_FILE: Readonly<Record<string, string>> = {
  demo: 'makes all its files itself',
  'sim replay': 'plays a capture for as long as it is; "driver teach" is given one',
  setup: 'asks a person',
  doctor: 'reads the station file as "jobs" does, and waits for the adapter',
  'specifications list': OF_LOG,
  'specifications show': OF_LOG,
  'jobs show': OF_LOG,
  'jobs void': OF_LOG,
  'jobs hand-over': OF_LOG,
  'jobs papers': OF_LOG,
  'log checkpoint': OF_LOG,
  'log vkey': OF_LOG,
  'log send': ON_NET,
  'log witness': ON_NET,
  'log prove inclusion': OF_LOG,
  'log lost': OF_LOG,
  'keys list': "reads the keys of the station, in a folder that is the station's own",
  'keys rotate': 'writes the keys of the station',
  'keys revoke': 'writes the keys of the station',
  'keys lock': 'writes the keys of the station',
  'keys destroy': 'writes the keys of the station',
  'keys technician': 'writes the keys of the station',
  'keys technicians': OF_LOG,
  'keys make': 'only writes',
  'time-stamp': ON_NET,
  'witness init': OF_ARCHIVE,
  'witness add': OF_ARCHIVE,
  'witness list': OF_ARCHIVE,
  'witness serve': OF_ARCHIVE,
  'impact survey': 'needs an archive',
  'impact list': OF_LOG,
  'impact show': OF_LOG,
  'impact decide': OF_LOG,
  'impact close': OF_LOG,
  package: OF_LOG,
  forget: OF_LOG,
  retention: OF_LOG,
  dispute: OF_LOG,
  capability: OF_LOG,
  delivered: OF_LOG,
  drift: OF_LOG,
  'gauge-study run': 'asks a person and needs a tool',
  'gauge-study list': OF_LOG,
  'gauge-study show': OF_LOG,
  'gauge-study drop': OF_LOG,
  calendar: OF_LOG,
  'certificates check': OF_LOG,
  backup: OF_LOG,
  'devices scan': ON_AIR,
  'devices adopt': ON_AIR,
  'devices record': ON_AIR,
  'driver test': 'reads a profile as "driver check" does, and tries it for minutes',
  schema: 'reads no file',
  completion: 'reads no file',
  manual: 'reads no file',
};

/** One line for each reason. Throws where a command has neither an input nor a reason, or both. */
export function notReached(given: readonly (readonly string[])[]): readonly string[] {
  const names = commandsOfProgram().map(({ path }) => path.join(' '));
  const isGiven = (name: string) => {
    const words = name.split(' ');
    // `jobs` alone is `jobs list`.
    return given.some((argv) =>
      words.every((word, i) => argv[i] === word || (word === 'list' && argv[i]?.startsWith('-'))),
    );
  };
  const reasonOf = (name: string) => NO_FILE[name] ?? (name.startsWith('archive ') ? OF_ARCHIVE : undefined);
  const wrong = [
    ...names
      .filter((name) => !isGiven(name) && reasonOf(name) === undefined)
      .map((name) => `${name}: no input and no reason`),
    ...Object.keys(NO_FILE)
      .filter((name) => !names.includes(name))
      .map((name) => `${name}: no such command`),
    ...Object.keys(NO_FILE)
      .filter((name) => isGiven(name))
      .map((name) => `${name}: an input and a reason`),
  ];
  if (wrong.length > 0) throw new Error(`the list of commands without a file:\n${wrong.join('\n')}`);
  const byReason = new Map<string, string[]>();
  for (const name of names) {
    const reason = isGiven(name) ? undefined : reasonOf(name);
    if (reason !== undefined) byReason.set(reason, [...(byReason.get(reason) ?? []), name]);
  }
  return [...byReason].map(([reason, which]) => `no file for ${which.join(', ')}: it ${reason}`);
}
