/** Whether pulls of a job end at a click. */
import type { ToolId } from '../reading.ts';
import type { JobState } from './state.ts';

type Of = Pick<JobState, 'instruments'> & { readonly basis: Pick<JobState['basis'], 'turn'> };

/** The order names an angle in place of a torque. */
export const isByAngle = ({ turn }: Pick<JobState['basis'], 'turn'>): boolean => turn?.alone === true;

/** The wrench releases at its setting, and the order is one for a torque: who turns by an angle stops where the angle is reached. */
export const endsAtClick = ({ instruments, basis }: Of, tool?: ToolId): boolean =>
  !isByAngle(basis) &&
  instruments.some(({ id, type }) => type === 'setting' && (tool === undefined || id === tool));
