/** What the signal of a pull gives reason to say, as one calm sentence; none of it is a verdict. */
import { coachingFor } from '../job/coaching.ts';
import type { JobState } from '../job/state.ts';
import type { Advice } from '../pull/coaching.ts';
import { shownUnit } from '../quantity/shown.ts';
import { placementText } from '../report/words/index.ts';
import { fixed, w } from '../words/catalogue.ts';
import { capital, roughTorque } from './words.ts';

export function adviceText({ kind, figure, limit }: Advice): string {
  const whole = fixed(figure, 0);
  switch (kind) {
    case 'too-fast-ms':
      return w`Slower towards the click: the last fifth took ${whole} ms, ${fixed(limit, 0)} at least.`;
    case 'follow-through-percent':
      return w`Stop at the click: the pull went ${whole} % beyond it.`;
    case 'fell-back-percent':
      return w`The torque fell back by ${whole} % on the way: keep the hand still on the grip.`;
    case 'early-torque':
      return w`The torque came early and evenly: is the thread crossed or dirty?`;
    case 'early-torque-deg':
      return w`The torque came early, over ${whole} degrees: is the thread crossed or dirty?`;
    case 'turned-too-little-deg':
      return w`It turned ${whole} degrees, ${fixed(limit, 0)} or more are usual: gasket missing, or used?`;
    case 'turned-too-far-deg':
      return w`It turned ${whole} degrees, ${fixed(limit, 0)} at most are usual: a gasket too many?`;
    case 'zero-not-settled-nm':
      return w`Let the wrench lie for two seconds before a pull: its zero stood at ${roughTorque(figure, 1)} ${shownUnit('N.m')}.`;
    case 'end-of-scale-nm':
      return w`The wrench came to the end of its scale at ${roughTorque(figure, 1)} ${shownUnit('N.m')}.`;
    case 'tool-smooths-ms':
      return w`This tool seems to smooth: clicks took ${whole} ms to fall, so its peaks read low. State its bandwidth.`;
    case 'click-not-visible-ms':
      return w`Readings came ${whole} ms apart, too far to show a click.`;
  }
}

/** The gravest thing to say about the last pull; null for a good one. */
export function adviceOnLast(job: JobState): string | null {
  const last = job.lastPull;
  const stray = job.strays.find(({ pull, because }) => pull.pull === last?.pull && because === 'trial-click');
  if (stray !== undefined) return `${capital(placementText(stray))}.`;
  const [gravest] = last === null ? [] : coachingFor(job, last.pull);
  return gravest === undefined ? null : adviceText(gravest);
}
