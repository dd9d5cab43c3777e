/** The click of the wrench, tried before the first plug: whether it is wanted, and what is known of the click since. */
import type { ToolId } from '../reading.ts';
import { endsAtClick } from './click.ts';
import type { JobState } from './state.ts';

/** Wanted by the shop, neither done nor passed over, and no plug was pulled yet. */
export function isTrialDue(
  state: Pick<JobState, 'routine' | 'instruments' | 'basis' | 'trialSkipped' | 'strays' | 'cylinders'>,
): boolean {
  const { routine, trialSkipped, strays, cylinders } = state;
  if (routine?.trialClick !== true || trialSkipped) return false;
  if (!endsAtClick(state)) return false;
  return (
    strays.every(({ because }) => because !== 'trial-click') &&
    cylinders.every(({ pulls }) => pulls.length === 0)
  );
}

/**
 * By what share the torque falls at a click of this tool, where it is too slight to be seen otherwise: as its trial showed, or
 * as somebody said of a pull that it had clicked. Null where nothing is known.
 */
export function slightDropOf(
  { strays, cylinders }: Pick<JobState, 'strays' | 'cylinders'>,
  tool: ToolId,
): number | null {
  const drops = [...strays, ...cylinders.flatMap(({ pulls }) => pulls)].flatMap(
    ({ pull, because, ask, answer, given }) => {
      const clicked =
        because === 'trial-click' || (answer === 'fresh' && given !== true && ask === undefined);
      return clicked && pull.tool === tool && pull.slightFall !== undefined
        ? [pull.slightFall.dropShare]
        : [];
    },
  );
  return drops.sort((a, b) => a - b)[drops.length >> 1] ?? null;
}
