/** The pulls that a cylinder's plug has had since it was fitted and that did not bring it home. */
import type { CylinderState, TorqueAttempt } from './state.ts';
import { countingPulls } from './torque-step.ts';

export function startedBy(c: CylinderState): readonly TorqueAttempt[] {
  const since = strokesOnPlug(c).filter(({ kind }) => kind !== 'rehit' && kind !== 'check');
  return since.every(({ kind, judgement }) => kind === 'run-down' || judgement?.side === 'low') ? since : [];
}

/** Backed out for whatever reason, and fitted again or about to be. */
export const comesOut = ({ kind, answer }: TorqueAttempt): boolean =>
  kind === 'loosening' || answer === 'refit' || answer === 'replace';

/** All pulls on the plug since it was fitted, whatever they came to: each may have turned it. */
export function strokesOnPlug(c: CylinderState): readonly TorqueAttempt[] {
  const pulls = countingPulls(c);
  return pulls.slice(pulls.findLastIndex(comesOut) + 1);
}
