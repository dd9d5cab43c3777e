/** Forgets a vehicle, a person or a customer: deletes the texts that the log keeps beside what is signed. */

import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Swept } from '../../../db/log.ts';
import {
  type ForgettableKind,
  type HeldJob,
  heldJobs,
  isNothing,
  standsIn,
  type Wanted,
  wantedTexts,
} from '../../audit/forgetting.ts';
import { impactsOf } from '../../audit/impact-state.ts';
import type { Retention } from '../../audit/retention.ts';
import type { KeptText } from '../../evidence/sharing.ts';
import { ProblemError } from '../../problem.ts';
import { plural, w } from '../../words/catalogue.ts';
import { openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { optionText } from '../terminal/option-text.ts';
import { askYes } from '../terminal/questions.ts';
import { print } from '../terminal/wrapped.ts';
import { stamp, today } from './clock.ts';
import { countsOf, fileLines, heldLines, jobsAmong, keptLines, planLines } from './forget-lines.ts';
import { type Scope, withStationFolder } from './scope.ts';
import type { StationFolder } from './station.ts';
import { readStationFile } from './station-file.ts';

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
  const { by, because } = answeredFor(options, wanted);
  const shop = await shopOf(options);
  return withStationFolder(options, async (stationFolder) => {
    const { log } = stationFolder;
    const found = wantedTexts(wanted, log.texts());
    if (found.length === 0) return nothingThere(stationFolder, wanted, shop);
    print([...planLines(wanted, found), ...(await keptLines(stationFolder, wanted, found, shop.files))]);
    if (!shop.known && jobsAmong(found).length > 0) print([retentionUnknown()]);
    const held = heldAmong(stationFolder, found, shop.retention);
    if (held.length > 0 && options.althoughHeld !== true) throw heldProblem(held);
    if (held.length > 0) print(heldLines(held));
    if (options.yes !== true && !(await isMeant())) {
      print([w`Nothing was deleted.`]);
      return EXIT.failed;
    }
    // While somebody read and thought, another program may have gone on.
    if (placesOf(wantedTexts(wanted, log.texts())) !== placesOf(found)) throw wentOn();
    const texts = found.map(({ entry, text, kind }) => ({ entry, text, kind }));
    const event = { type: 'texts-forgotten' as const, texts, ...(because !== null && { because }) };
    log.forget(found, { by, event }, stamp());
    print([w`Deleted: ${countsOf(found)}. The log says where they were, and not what they said.`]);
    return swept(log.sweep());
  });
}

/** Whoever forgets again may want to finish what was broken off, or to know where it still is. */
async function nothingThere(
  stationFolder: StationFolder,
  wanted: Wanted,
  { files }: Shop,
): Promise<ExitCode> {
  const { log } = stationFolder;
  print(await fileLines(stationFolder, wanted, [], files));
  const isAgain = log.stationEntries().some(({ event }) => event.type === 'texts-forgotten');
  if (isAgain && swept(log.sweep()) === EXIT.failed) return EXIT.failed;
  throw problem('nothing-matches', w`the log has no such text`, w`Look with "plugmark ask".`);
}

function swept(how: Swept): ExitCode {
  if (how === 'done') return EXIT.done;
  print([
    how === 'open-elsewhere'
      ? w`NOT finished: another program has the log open, and old pages of the file may still hold the texts. Close it, then run the same command again.`
      : w`NOT finished: old pages of the file may still hold the texts, and the disk has no room to write it anew. Free as much as the log takes, then run the same command again.`,
  ]);
  return EXIT.failed;
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
      w`expected one of --plate, --vin, --fleet, --customer and --person`,
      w`Name one text at a time.`,
    );
  return wanted;
}

/** Who decides and why: in an entry of the log, which may not name again what is forgotten. */
function answeredFor(options: ForgetOptions, wanted: Wanted) {
  const by = options.by === undefined ? 'station' : optionText(options.by, '--by', 80);
  const because = options.because === undefined ? null : optionText(options.because, '--because', 200);
  if (options.althoughHeld === true && (options.by === undefined || because === null))
    throw problem(
      'override-incomplete',
      w`--although-held needs --by NAME and --because TEXT`,
      w`Give both.`,
    );
  const stands = standsIn(wanted);
  for (const [option, text] of [
    ['--by', by],
    ['--because', because],
  ] as const)
    if (text !== null && stands(text))
      throw problem(
        'option-not-valid',
        w`${option} contains the text that is to be forgotten`,
        w`The log keeps who decided and why. Say it without that text.`,
      );
  return { by, because };
}

interface Shop {
  /** Whether the station file was there to say. */
  readonly known: boolean;
  readonly retention: Retention | null;
  /** Files of the shop that may lie outside the folder of its data. */
  readonly files: readonly string[];
}

const retentionUnknown = () =>
  w`The retention time of the shop is not known here: it is in the station file (--station FILE).`;

/** With the folder of its data alone, what the usual station file says, if it is the file of that folder. */
async function shopOf({ station, data }: Scope): Promise<Shop> {
  if (data !== undefined && !existsSync(station)) return { known: false, retention: null, files: [] };
  const { folder, retention = null, library } = await readStationFile(station);
  if (data !== undefined && resolve(data) !== folder) return { known: false, retention: null, files: [] };
  return { known: true, retention, files: [station, library] };
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

function heldProblem(held: readonly HeldJob[]): ProblemError {
  const named = held.slice(0, 3).map(({ job, because }) => `${job}: ${because}`);
  const more = held.length > 3 ? w`; and ${held.length - 3} more` : '';
  return problem(
    'forget-held',
    w`${plural(held.length, { one: '# of these jobs is held', other: '# of these jobs are held' })} (${named.join('; ')}${more})`,
    w`Nothing was deleted. Wait, or answer for it: --although-held --by NAME --because TEXT.`,
  );
}

const placesOf = (texts: readonly KeptText[]) => texts.map(({ entry, text }) => `${entry}.${text}`).join();

const wentOn = () =>
  problem(
    'log-busy',
    w`another program wrote such a text meanwhile, or deleted one`,
    w`Nothing was deleted. Close the other program, then try again.`,
  );

async function isMeant(): Promise<boolean> {
  const dialogue = openDialogue();
  try {
    return await askYes(dialogue, w`Delete these texts for good?`, 'no');
  } finally {
    dialogue.close();
  }
}

const problem = (
  code: 'nothing-matches' | 'option-not-valid' | 'forget-held' | 'override-incomplete' | 'log-busy',
  message: string,
  next: string,
) => new ProblemError({ code, where: 'forget', message, next });
