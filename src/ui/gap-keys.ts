/** What is done about a plug without a tool: looking at it, trying wires, throwing it away. */
import type { Command } from '../job/command.ts';
import type { JobState } from '../job/state.ts';
import { gapCheckOf, type WireOutcome } from '../plug/gap.ts';
import { gapStepText, roundWireText, WIRE_WORDS } from '../report/words/index.ts';
import { w } from '../words/catalogue.ts';
import { KEY } from './key-table.ts';

const SEEN = { [KEY.good]: true, [KEY.not]: false } as const;
const WIRE = {
  [KEY.good]: 'fits',
  [KEY.tight]: 'tight',
  [KEY.wide]: 'wide',
} as const satisfies Record<string, WireOutcome>;

const has = <T extends object>(table: T, key: string): key is Extract<keyof T, string> =>
  Object.hasOwn(table, key);

/** The command of a key about the plug for `cylinder`; null when the key says nothing about it. */
export function plugCommand(key: string, state: JobState, cylinder: number | null): Command | null {
  if (cylinder === null) return null;
  const { gapTarget } = state;
  if (gapTarget === null) return null;
  const check = gapCheckOf(state.order.specification);
  if (check === 'visual-only' && has(SEEN, key))
    return { do: 'gap-inspected', cylinder: gapTarget, sound: SEEN[key] };
  if (check === 'wire' && has(WIRE, key)) return { do: 'gap-wire', cylinder: gapTarget, outcome: WIRE[key] };
  return null;
}

/** What to do about the gap of a plug: the plain request, or what its last reading asks for. */
export function gapRequest(state: JobState, cylinder: number): string | null {
  const step = state.plugs[cylinder]?.step ?? null;
  if (step?.do === 'replace')
    return w`Replace the plug for cylinder ${cylinder}: ${gapStepText(step) ?? ''}. Take a new one and press d.`;
  const again = step?.do === 'regap' ? `: ${gapStepText(step)}` : '';
  switch (gapCheckOf(state.order.specification)) {
    case 'visual-only':
      return w`Look at the gap of the plug for cylinder ${cylinder}. Put nothing into it. v: good, x: not good.`;
    case 'wire':
      return w`Try both round wires on the plug for cylinder ${cylinder}${again}. v ${WIRE_WORDS.fits}; i tight; z wide. ${roundWireText()}`;
    default:
      return null;
  }
}

/** For the list of keys. */
export const plugKeys = (state: JobState): readonly (readonly [string, string])[] => {
  const check = gapCheckOf(state.order.specification);
  return [
    ...(check === 'visual-only' ? [['v, x', w`gap by eye: good, not good`] as const] : []),
    ...(check === 'wire' ? [['v, i, z', w`gap by wires: right, too tight, too wide`] as const] : []),
    [KEY.discard, w`discard this plug, after a question`],
  ];
};
