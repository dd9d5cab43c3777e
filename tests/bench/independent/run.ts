/**
 * `npm run bench:independent -- [--cell NAME[,NAME]] [--seed N] [--size X] [--angle]`: the program against jobs that another
 * language made with other physics. Tune on seed 1, report on others. Measures and prints; asserts nothing.
 */
import { parseArgs } from 'node:util';
import { cost } from './cost.ts';
import { handling, leftOut, people, trial } from './jobs.ts';
import { CELLS, type Cell, type Tape, tapes } from './lines.ts';
import { peaks } from './peaks.ts';

const MEASURES: Readonly<Record<Cell, () => { add: (tape: Tape) => void; lines: () => string[] }>> = {
  pulls: peaks,
  unclicked: peaks,
  weak: peaks,
  trial,
  drag: peaks,
  filter: peaks,
  coarse: peaks,
  slow: peaks,
  jitter: peaks,
  loss: peaks,
  leftout: () => leftOut('pace deg/s'),
  gyroscopes: () => leftOut('fault'),
  people,
  handling,
  cost,
};

const { values } = parseArgs({
  options: {
    cell: { type: 'string', default: CELLS.join(',') },
    seed: { type: 'string', default: '1' },
    size: { type: 'string', default: '1' },
    angle: { type: 'boolean', default: false },
  },
});
const seed = Number(values.seed);
const size = Number(values.size);
const cells = CELLS.filter((cell) => values.cell.split(',').includes(cell));
const unknown = values.cell.split(',').filter((name) => !CELLS.some((cell) => cell === name));
if (unknown.length > 0 || !Number.isInteger(seed) || !(size > 0)) {
  console.error(`Give --cell ${CELLS.join(',')}, --seed 1, --size 1.`);
  process.exit(2);
}

const lines = [`seed ${seed}, size ${size}${values.angle ? ', the tool sends its angle' : ''}`];
for (const cell of cells) {
  const measure = MEASURES[cell]();
  const startedMs = Date.now();
  let shownMs = startedMs;
  let jobs = 0;
  for await (const tape of tapes(cell, { seed, size, angle: values.angle })) {
    measure.add(tape);
    jobs += 1;
    if (Date.now() - shownMs < 5000) continue;
    shownMs = Date.now();
    process.stderr.write(`${cell}: ${jobs} jobs, ${Math.round((shownMs - startedMs) / 1000)} s\n`);
  }
  process.stderr.write(`${cell}: ${jobs} jobs, ${Math.round((Date.now() - startedMs) / 1000)} s, done\n`);
  lines.push('', `== ${cell} ==`, ...measure.lines());
}
console.log(lines.join('\n'));
