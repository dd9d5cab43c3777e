/** The program without a command: what is likely to be wanted now, with the command for it. */

import { existsSync } from 'node:fs';
import { openItems } from '../../job/closing.ts';
import { foldAll } from '../../job/fold.ts';
import { ok } from '../../result.ts';
import { plural, w } from '../../words/catalogue.ts';
import { commandLine } from '../terminal/command-line.ts';
import { type Dialogue, openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { askUntil } from '../terminal/questions.ts';
import { ownLanguage } from './reader-language.ts';
import { showFor } from './reads.ts';
import { openStationFolder, type StationFolder } from './station.ts';
import { stationAtHand, USUAL_FILE } from './station-at-hand.ts';
import { type LoadedStation, readStationFile } from './station-file.ts';
import { logPath } from './station-log.ts';

interface Offer {
  readonly text: string;
  readonly words: readonly string[];
  readonly run: () => Promise<ExitCode>;
}

/** So many open jobs are offered by name. */
const MOST_JOBS = 5;

/** Offers what is likely; on a terminal it runs what is chosen, elsewhere it names the commands. */
export async function startPage(): Promise<ExitCode> {
  const file = stationAtHand(USUAL_FILE);
  if (!existsSync(file)) {
    process.stdout.write(`${NO_STATION().join('\n')}\n`);
    return EXIT.done;
  }
  const station = await readStationFile(file);
  await showFor(ownLanguage() ?? station.reads.screen, station.reads.units, !speaksUtf8());
  const offers = await offersOf(station);
  const lines = [
    w`Station ${safeLine(station.station)}`,
    ...offers.map(({ text, words }, i) => `  ${i + 1}  ${text}\n       ${commandLine(...words)}`),
  ];
  const dialogue = openDialogue();
  if (!dialogue.patient) {
    dialogue.leave();
    process.stdout.write(`${lines.join('\n')}\n`);
    return EXIT.done;
  }
  const chosen = await chosenIn(dialogue, lines, offers).finally(dialogue.leave);
  return chosen === null ? EXIT.done : await chosen.run();
}

const NO_STATION = () => [
  w`plugmark guides and proves a spark plug job. There is no station here yet.`,
  `  1  ${w`See a whole job with simulated tools`}\n       ${commandLine('demo')}`,
  `  2  ${w`Set this bay up: its tools and its people`}\n       ${commandLine('setup')}`,
  `  3  ${w`Read how it works`}\n       ${commandLine('manual')}`,
  w`All commands: ${commandLine('--help')}`,
];

function chosenIn(
  dialogue: Dialogue,
  lines: readonly string[],
  offers: readonly Offer[],
): Promise<Offer | null> {
  dialogue.say(lines.join('\n'));
  return askUntil<Offer | null>(dialogue, w`Number, Enter for 1, q to leave: `, (answer) => {
    if (answer === 'q') return ok(null);
    const offer = offers[answer === '' ? 0 : Number(answer) - 1];
    return offer === undefined
      ? { ok: false, error: w`expected a number from 1 to ${offers.length}, Enter, or q` }
      : ok(offer);
  });
}

async function offersOf({ file, folder }: LoadedStation): Promise<readonly Offer[]> {
  const at = file === USUAL_FILE ? [] : ['--station', file];
  const goOn = await openJobs(folder);
  const rest: readonly Offer[] = [
    {
      text: w`New job`,
      words: ['job', ...at],
      run: async () => (await import('../bench/job.ts')).job({ station: file }),
    },
    {
      text: w`Look at the records`,
      words: ['jobs', ...at],
      run: async () => (await import('./jobs.ts')).listJobs({ station: file }),
    },
    {
      text: w`Check the station and its tools`,
      words: ['doctor', '--station', file],
      run: async () => (await import('./doctor.ts')).doctor({ station: file }),
    },
  ];
  return [
    ...goOn.map(({ job, about }) => ({
      text: w`Go on with job ${safeLine(job)}${about}`,
      words: ['job', '--resume', job, ...at],
      run: async () => (await import('../bench/job.ts')).job({ station: file, resume: job }),
    })),
    ...rest,
  ];
}

interface OpenJob {
  readonly job: string;
  readonly about: string;
}

/** The open jobs, the latest first; none before the first job. */
async function openJobs(folder: string): Promise<readonly OpenJob[]> {
  if (!existsSync(logPath(folder))) return [];
  const stationFolder = await openStationFolder(folder);
  try {
    return stationFolder.log
      .lastJobs(1000)
      .filter(({ state }) => state === 'open')
      .slice(0, MOST_JOBS)
      .map((row) => ({ job: row.job, about: aboutJob(stationFolder, row.stream) }));
  } finally {
    stationFolder.log.close();
  }
}

/** Plate or vehicle, whose it is, and how much of it is open. */
function aboutJob({ log }: StationFolder, stream: string): string {
  const state = foldAll(log.entries(stream).map(({ event }) => event));
  if (state === null) return '';
  const { plate, description } = state.order.vehicle;
  const open = openItems(state).length;
  const parts = [
    plate ?? description ?? '',
    state.technician,
    open === 0 ? w`ready to be closed` : plural(open, { one: '# item open', other: '# items open' }),
  ];
  return `: ${safeLine(parts.filter((part) => part !== '').join(', '))}`;
}
