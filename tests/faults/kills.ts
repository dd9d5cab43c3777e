/** A program is killed at any moment: what it acknowledged is there, nothing else is, and the job goes on. */
import { join } from 'node:path';
import { openStationLog } from '../../db/log.ts';
import type { Random } from '../../sim/random.ts';
import { acknowledgedIn, heldAgainst } from './log-facts.ts';
import { BIN, HERE, manners, type Outcome, type Part, pauseMs, started, whole } from './part.ts';
import { typedStation } from './typed-station.ts';

export const kills: Part = {
  name: 'kills',
  what: 'programs killed while they write',
  cases: 1000,
  short: 12,
  prepare: () => ({
    // The whole program starts slowly; most of the moments that matter are in its store.
    one: (number, random, folder) =>
      number % 10 === 0 ? wholeProgram(random, folder) : storeAlone(random, folder),
  }),
};

/** Killed again and again on the same log, so that every opening is one after a kill. */
async function storeAlone(random: Random, folder: string): Promise<Outcome> {
  const path = join(folder, 'station.db');
  let acknowledged = 0;
  for (let round = 0; round < 3; round++) {
    const writer = started(process.execPath, [join(HERE, 'writer.mjs'), path, 'K', '0', '100000']);
    const after = Math.floor(random.uniform() ** 2 * 400);
    if (round > 0 || random.chance(0.8)) await writer.says('ack');
    await pauseMs(after);
    writer.kill('SIGKILL');
    const { out, err } = await writer.ended;
    if (err !== '') return { faults: [`the writer says: ${err.slice(0, 300)}`] };
    acknowledged = Math.max(acknowledged, acknowledgedIn(out));
  }
  const { faults, held } = await heldAgainst(path, 'K', acknowledged);
  return { faults, counted: { acknowledged, 'not acknowledged and kept': held - acknowledged, kills: 3 } };
}

async function wholeProgram(random: Random, folder: string): Promise<Outcome> {
  const { station, order } = typedStation(folder);
  const faults: string[] = [];
  const shown = new Set<string>();
  const typed: string[] = [];
  let hadTime = false;
  for (let round = 0; round < 2; round++) {
    const args = round === 0 ? ['--order', order] : ['--resume'];
    const job = started(process.execPath, [BIN, 'job', ...args, '--station', station, '--plain']);
    await job.says('gauge  linked');
    const figures = whole(random, 1, 3);
    for (let i = 0; i < figures; i++) {
      const figure = `0.7${whole(random, 1, 9)}`;
      typed.push(`${figure}0`);
      job.type(`${figure} mm`);
      await pauseMs(random.uniform(0, 60));
    }
    // In one of two kills the program gets the time for an answer, however slow the machine is.
    if (random.chance(0.5)) {
      await Promise.race([job.says('  gap  '), pauseMs(ANSWERS_WITHIN_MS)]);
      hadTime = true;
    }
    await pauseMs(random.uniform(0, 200));
    job.kill('SIGKILL');
    const ended = await job.ended;
    faults.push(...manners(ended));
    if (ended.err !== '') faults.push(`it says: ${ended.err.slice(0, 300)}`);
    for (const [line] of ended.out.matchAll(/cylinder \d {2}gap {2}.*$/gm)) shown.add(figuresOf(line));
  }
  const log = await openStationLog(join(folder, 'data', 'station.db'));
  try {
    const fault = log.check();
    if (fault !== null) faults.push(`the log is damaged: ${fault.message}`);
    const held = log
      .entries('job:EX-4001')
      .flatMap(({ event }) =>
        event.type === 'gap-measured' ? [`${event.cylinder} ${event.judgement.value.toFixed(3)}`] : [],
      );
    const entries = log.entries('job:EX-4001');
    const left = [...typed];
    for (const line of held) {
      const at = left.indexOf(line.split(' ')[1] ?? '');
      if (at < 0) faults.push(`"${line}" is in the log, and nobody typed it`);
      else left.splice(at, 1);
    }
    const readings = entries.reduce(
      (sum, { event }) => sum + (event.type === 'readings' ? event.count : 0),
      0,
    );
    if (readings > typed.length)
      faults.push(`${typed.length} figures were typed, the log contains ${readings} readings`);
    if (hadTime && shown.size === 0) faults.push('figures were typed and had time, and no verdict was shown');
    for (const line of shown)
      if (!held.includes(line)) faults.push(`"${line}" was shown and is not in the log`);
  } finally {
    log.close();
  }
  return { faults, counted: { 'verdicts shown': shown.size, kills: 2 } };
}

/** Long enough for a machine that is full of others. */
const ANSWERS_WITHIN_MS = 8000;

const figuresOf = (line: string): string => {
  const [, cylinder, value] = /cylinder (\d) {2}gap {2}[A-Z ]+ {2}([\d.]+)/.exec(line) ?? [];
  return `${cylinder} ${value}`;
};
