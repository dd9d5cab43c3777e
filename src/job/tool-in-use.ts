/** Several wrenches or gauges in one job: which of them is in use, and what each can prove. */
import type { Quantity, ToolId } from '../reading.ts';
import type { JobEventOf } from './event.ts';
import type { JobState, ToolWindows } from './state.ts';

/** The first tool of a quantity that the job has. */
const firstOf = ({ instruments }: Pick<JobState, 'instruments'>, quantity: Quantity): ToolId | null =>
  instruments.find((one) => one.quantity === quantity)?.id ?? null;

/** Of each tool, as the opening has them. */
export function windowsIn(event: JobEventOf<'job-opened'>): JobState['windows'] {
  const { instruments, torqueWindow, gapWindow, basis, furtherWindows = [] } = event;
  const wrench = firstOf({ instruments }, 'torque');
  const gauge = firstOf({ instruments }, 'length');
  const own: (readonly [ToolId, ToolWindows])[] = [];
  if (wrench !== null) own.push([wrench, { window: torqueWindow, firstWindow: basis.firstTorqueWindow }]);
  if (gauge !== null && gapWindow !== null) own.push([gauge, { window: gapWindow, firstWindow: null }]);
  for (const { tool, window, firstWindow } of furtherWindows) own.push([tool, { window, firstWindow }]);
  return Object.fromEntries(own);
}

export const firstInUse = (event: Pick<JobState, 'instruments'>): JobState['inUse'] => ({
  torque: firstOf(event, 'torque'),
  length: firstOf(event, 'length'),
});

/** The state with a tool in use: its windows are those that readings are held against. */
export function withToolInUse(state: JobState, tool: ToolId): JobState {
  const quantity = state.instruments.find(({ id }) => id === tool)?.quantity;
  const windows = state.windows[tool];
  if (quantity === undefined) return state;
  const inUse = { ...state.inUse, [quantity]: tool };
  if (windows === undefined) return { ...state, inUse };
  return quantity === 'length'
    ? { ...state, inUse, gapWindow: windows.window }
    : {
        ...state,
        inUse,
        torqueWindow: windows.window,
        basis: { ...state.basis, firstTorqueWindow: windows.firstWindow },
      };
}

/**
 * What is to be said when a reading comes from this tool: another one of its kind was in use, or somebody else was at work,
 * and this is its owner's. A key that said who is at work holds until another tool is in hand. Null where nothing changes.
 */
export function taken(
  { instruments, inUse, inHand, toolsOf, technician }: JobState,
  tool: ToolId,
): Pick<JobEventOf<'tool-in-use'>, 'tool'> | null {
  const quantity = instruments.find(({ id }) => id === tool)?.quantity;
  if (quantity === undefined) return null;
  const owner = toolsOf[tool];
  const changesHands = inHand !== tool && owner !== undefined && owner !== technician;
  return inUse[quantity] !== tool || changesHands ? { tool } : null;
}

/** The job has more than one tool of this quantity. */
export const hasSeveral = ({ instruments }: Pick<JobState, 'instruments'>, quantity: Quantity): boolean =>
  instruments.filter((one) => one.quantity === quantity).length > 1;
