import { archive } from './archive.ts';
import { endToEnd } from './end-to-end.ts';
import { dictionary } from './evidence/dictionary.ts';
import { everyBit } from './evidence/every-bit.ts';
import { logCost } from './evidence/log-cost.ts';
import { recordSize } from './evidence/record-size.ts';
import { signCost } from './evidence/sign-cost.ts';
import { verifyRate } from './evidence/verify-rate.ts';
import { witness } from './evidence/witness.ts';
import { history } from './history/measure.ts';
import { fitKinds } from './kinds/fit.ts';
import { kinds } from './kinds/measure.ts';
import type { Measurement } from './measurement.ts';
import { page } from './page/measure.ts';
import { profiles } from './profiles.ts';
import { pullCampaign } from './pull-campaign.ts';
import { latency } from './radio/latency.ts';
import { loss } from './radio/loss.ts';
import { reconnect } from './radio/reconnect.ts';
import { soak } from './radio/soak.ts';
import { screenCost } from './screen/measure.ts';
import { speed } from './speed.ts';
import { startup } from './startup.ts';
import { stickSlip } from './stickslip/measure.ts';
import { teachLive } from './teach.ts';
import { turns } from './turns.ts';

/** `npm run bench -- NAME [name=value …]`: one measurement; without a name, the list of them. */
const MEASUREMENTS: readonly Measurement[] = [
  startup,
  pullCampaign,
  speed,
  endToEnd,
  kinds,
  fitKinds,
  verifyRate,
  logCost,
  witness,
  recordSize,
  signCost,
  everyBit,
  dictionary,
  history,
  archive,
  latency,
  loss,
  reconnect,
  soak,
  screenCost,
  profiles,
  teachLive,
  page,
  turns,
  stickSlip,
];

const [name, ...given] = process.argv.slice(2);
const measurement = MEASUREMENTS.find((one) => one.name === name);
if (measurement === undefined) {
  const rows = MEASUREMENTS.map((one) => `  ${one.name.padEnd(12)} ${one.what}`);
  console.log(['npm run bench -- NAME [name=value …]', '', ...rows].join('\n'));
  if (name !== undefined) process.exitCode = 2;
} else {
  const terms = new Map(given.map((pair) => [pair.split('=')[0] ?? '', pair.split('=')[1] ?? '']));
  const startedMs = Date.now();
  let shownMs = 0;
  const lines = await measurement.run({
    number: (key, otherwise) => Number(terms.get(key) ?? otherwise),
    text: (key, otherwise) => terms.get(key) ?? otherwise,
    progress: (share, note) => {
      const nowMs = Date.now();
      if (nowMs - shownMs < 1000) return;
      shownMs = nowMs;
      const seconds = Math.round((nowMs - startedMs) / 1000);
      const text = `${name}: ${(100 * share).toFixed(0).padStart(3)} %  ${seconds} s  ${note}`;
      if (process.stderr.isTTY) process.stderr.write(`\r${text}\u001b[K`);
      else if (seconds % 30 === 0) process.stderr.write(`${text}\n`);
    },
  });
  if (process.stderr.isTTY) process.stderr.write('\n');
  console.log(lines.join('\n'));
  console.log(`\n${((Date.now() - startedMs) / 1000).toFixed(0)} s, node ${process.versions.node}`);
}
