/** Forgets a vehicle, a person or a customer: deletes the texts that the log keeps beside what is signed. */
import {
  type ForgettableKind,
  type HeldJob,
  heldJobs,
  isNothing,
  stands,
  type Wanted,
  wantedTexts,
} from '../../audit/forgetting.ts';
import { impactsOf } from '../../audit/impact-state.ts';
import type { Retention } from '../../audit/retention.ts';
import { STATION_STREAM } from '../../evidence/log.ts';
import { addedUp, type KeptText, type Withheld } from '../../evidence/sharing.ts';
import { ProblemError } from '../../problem.ts';
import { openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { optionText } from '../terminal/option-text.ts';
import { askYes } from '../terminal/questions.ts';
import { print } from '../terminal/wrapped.ts';
import { stamp, today } from './clock.ts';
import { type Scope, withStationFolder } from './scope.ts';
import type { StationFolder } from './station.ts';
import { readStationFile } from './station-file.ts';
import { filesHolding } from './still-held.ts';

type Named = { readonly [K in ForgettableKind]?: string };

interface ForgetOptions extends Scope, Named {
  readonly yes?: true;
  readonly althoughHeld?: true;
  readonly by?: string;
  readonly because?: string;
}

const KINDS: readonly ForgettableKind[] = ['plate', 'vin', 'fleet', 'customer', 'person'];

/** Says what would go and what would stay, asks, and deletes. */
export async function forget(options: ForgetOptions): Promise<ExitCode> {
  const wanted = wantedIn(options);
  const by = options.by === undefined ? 'station' : optionText(options.by, '--by', 80);
  const because = options.because === undefined ? null : optionText(options.because, '--because', 200);
  if (options.althoughHeld === true && (options.by === undefined || because === null))
    throw problem('override-incomplete', '--although-held needs --by NAME and --because TEXT', 'Give both.');
  const retention =
    options.data === undefined ? (await readStationFile(options.station)).retention : undefined;
  return withStationFolder(options, async (stationFolder) => {
    const found = wantedTexts(wanted, stationFolder.log.texts());
    if (found.length === 0)
      throw problem('nothing-matches', 'the log has no such text', 'Look with "plugmark ask".');
    print([...planLines(wanted, found), ...(await keptLines(stationFolder, wanted, found))]);
    const held = heldAmong(stationFolder, found, retention ?? null);
    if (held.length > 0 && options.althoughHeld !== true) throw heldProblem(held);
    if (held.length > 0) print(heldLines(held));
    if (options.yes !== true && !(await isMeant())) {
      print(['Nothing was deleted.']);
      return EXIT.failed;
    }
    const texts = found.map(({ entry, text, kind }) => ({ entry, text, kind }));
    const event = { type: 'texts-forgotten' as const, texts, ...(because !== null && { because }) };
    const isSwept = stationFolder.log.forget(found, { by, event }, stamp());
    print([
      `Deleted: ${countsOf(found)}. The log says where they were, and not what they said.`,
      ...(isSwept
        ? []
        : [
            'Another program has the log open: the file beside it keeps the texts until that program is closed. Close it, and run any command of plugmark on this station.',
          ]),
    ]);
    return isSwept ? EXIT.done : EXIT.failed;
  });
}

function wantedIn(options: Named): Wanted {
  const named = KINDS.flatMap((kind): Wanted[] => {
    const text = options[kind];
    return text === undefined ? [] : [{ kind, text }];
  });
  const [wanted] = named;
  if (wanted === undefined || named.length > 1 || isNothing(wanted))
    throw problem(
      'option-not-valid',
      'expected one of --plate, --vin, --fleet, --customer and --person',
      'Name one text at a time.',
    );
  return wanted;
}

const countsOf = (texts: readonly KeptText[]): string => {
  const counts: readonly Withheld[] = addedUp(texts.map(({ kind }) => ({ kind, count: 1 })));
  return counts.map(({ kind, count }) => `${kind} (${count})`).join(', ');
};

const jobsAmong = (texts: readonly KeptText[]): readonly string[] =>
  [...new Set(texts.map(({ stream }) => stream))].filter((stream) => stream !== STATION_STREAM);

const nameOf = (stream: string) => stream.replace(/^job:/, '');

const MOST = 10;
const someNames = (names: readonly string[]): string =>
  names.length <= MOST
    ? names.map(safeLine).join(', ')
    : `${names.slice(0, MOST).map(safeLine).join(', ')} and ${names.length - MOST} more`;

function planLines({ kind }: Wanted, found: readonly KeptText[]): readonly string[] {
  const jobs = jobsAmong(found).map(nameOf);
  const ofStation = found.filter(({ stream }) => stream === STATION_STREAM).length;
  return [
    `To be deleted: ${countsOf(found)}.`,
    ...(jobs.length === 0
      ? []
      : [`  in ${jobs.length === 1 ? '1 job' : `${jobs.length} jobs`}: ${someNames(jobs)}`]),
    ...(ofStation === 0 ? [] : [`  in the station's own entries: ${ofStation}`]),
    `  each text that is this ${kind}, and each free text that holds it.`,
  ];
}

/** What will still hold it: what is signed, and files that were made of it. */
async function keptLines(
  { log, folder }: StationFolder,
  wanted: Wanted,
  found: readonly KeptText[],
): Promise<readonly string[]> {
  const streams = jobsAmong(found);
  const signed = [...log.signed()].filter(({ body }) => stands(wanted, body));
  const given = streams.filter((stream) =>
    log.entries(stream).some(({ event }) => event.type === 'job-closed'),
  );
  const files = await filesHolding(folder, wanted, new Set(streams.map(nameOf)));
  return [
    ...(signed.length === 0
      ? []
      : [
          `It also stands in ${signed.length} signed ${signed.length === 1 ? 'entry' : 'entries'} (${someNames([...new Set(signed.map(({ stream }) => nameOf(stream)))])}), as in a job number or a description: there it cannot be deleted.`,
        ]),
    ...(given.length === 0
      ? []
      : [
          `${given.length === 1 ? '1 of these jobs was' : `${given.length} of these jobs were`} closed: whoever was given the record or a paper still has it.`,
        ]),
    ...(files.length === 0
      ? []
      : [
          'These files in the folder of the station hold it, and are left as they are:',
          ...files.slice(0, MOST).map((one) => `  ${safeLine(one)}`),
          ...(files.length > MOST ? [`  and ${files.length - MOST} more`] : []),
        ]),
    'Backups, and files in other places, hold it until you delete them. A backup that is restored brings it back.',
  ];
}

function heldAmong(
  { log }: StationFolder,
  found: readonly KeptText[],
  retention: Retention | null,
): readonly HeldJob[] {
  const streams = new Set(jobsAmong(found));
  const jobs = log.history.jobsOf({}).filter(({ stream }) => streams.has(stream));
  return heldJobs(jobs, retention, impactsOf(log.stationEntries()), today());
}

const heldLines = (held: readonly HeldJob[]): readonly string[] => [
  `Held, and deleted all the same: ${held.length === 1 ? '1 job' : `${held.length} jobs`}.`,
  ...held.slice(0, MOST).map(({ job, because }) => `  ${safeLine(job)}: ${because}`),
];

function heldProblem(held: readonly HeldJob[]): ProblemError {
  const named = held.slice(0, 3).map(({ job, because }) => `${job}: ${because}`);
  const more = held.length > 3 ? `; and ${held.length - 3} more` : '';
  return problem(
    'forget-held',
    `${held.length === 1 ? '1 of these jobs is' : `${held.length} of these jobs are`} held (${named.join('; ')}${more})`,
    'Nothing was deleted. Wait, or answer for it: --although-held --by NAME --because TEXT.',
  );
}

async function isMeant(): Promise<boolean> {
  const dialogue = openDialogue();
  try {
    return await askYes(dialogue, 'Delete these texts for good?', 'no');
  } finally {
    dialogue.close();
  }
}

const problem = (
  code: 'nothing-matches' | 'option-not-valid' | 'forget-held' | 'override-incomplete',
  message: string,
  next: string,
) => new ProblemError({ code, where: 'forget', message, next });
