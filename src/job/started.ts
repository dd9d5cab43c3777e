/** The pulls on the plug that is in a cylinder now. */
import type { CylinderState, TorqueAttempt } from './state.ts';

/** The pulls since the plug was last started again by command. */
export function countingPulls({ pulls, restartedAfter = 0 }: CylinderState): readonly TorqueAttempt[] {
  return pulls.filter(({ pull }) => pull.pull > restartedAfter);
}

/** The plug comes out with this pull, or because of it: it is fitted again behind it, or another one is. */
export const comesOut = ({ kind, answer }: Pick<TorqueAttempt, 'kind' | 'answer'>): boolean =>
  kind === 'loosening' || answer === 'refit' || answer === 'replace';

/** All pulls on the plug since it was fitted, whatever they came to: each may have turned it. */
export function strokesOnPlug(c: CylinderState): readonly TorqueAttempt[] {
  const pulls = countingPulls(c);
  return pulls.slice(pulls.findLastIndex(comesOut) + 1);
}

/** Those since the plug was fitted that did not bring it home; none where one of them did. */
export function startedBy(c: CylinderState): readonly TorqueAttempt[] {
  const since = strokesOnPlug(c).filter(({ kind }) => kind !== 'rehit' && kind !== 'check');
  return since.every(({ kind, judgement }) => kind === 'run-down' || judgement?.side === 'low') ? since : [];
}
