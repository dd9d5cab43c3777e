/** Why the steps around the torque are as they are, for whoever asks; by the ids of the usual routine. */
import type { RoutineItem } from '../../job/routine.ts';
import { phrases, w } from '../../words/catalogue.ts';

interface Reason {
  readonly why: string;
  /** Who says so; null for what is common practice. */
  readonly cited: string | null;
}

const REASONS: Readonly<Record<string, Reason>> = phrases({
  'engine-cold': {
    why: 'In a hot head the threads seize, and come out with the plug.',
    cited: 'NGK, installation advice',
  },
  'ignition-off': { why: 'A coil that fires gives a shock that throws you.', cited: null },
  boots: {
    why: 'Heat glues a boot to its plug. A straight pull tears the boot, or the wire in it.',
    cited: null,
  },
  'blown-clean': {
    why: 'Grit in the well falls through the open hole onto the piston, and under the new seat.',
    cited: null,
  },
  'hand-tools': {
    why: 'A power tool cracks insulators and cuts across threads before you feel it.',
    cited: null,
  },
  'threads-clean': {
    why: 'Dirt takes up torque: the wrench clicks, and the plug is loose on its seat.',
    cited: 'NGK, installation advice',
  },
  chased: { why: 'A crossed or dirty thread turns hard by hand. Chips must not fall in.', cited: null },
  lubricant: {
    why: 'On greased threads the same torque pulls far harder, until the shell stretches.',
    cited: 'NGK and Denso, installation advice',
  },
  'by-hand': {
    why: 'A hose slips when the thread is crossed; a wrench cuts on. Where a plug sits deep, use one.',
    cited: null,
  },
  'boot-compound': {
    why: 'A thin film inside the boot keeps it from sticking. On threads or terminal it does harm.',
    cited: null,
  },
  'boots-seated': { why: 'A boot that does not seat lets the spark jump, and burns.', cited: null },
  'engine-run': { why: 'A misfire now is yours to find; next week it is a complaint.', cited: null },
  'old-parts': { why: 'One plug that differs from the others tells more than its shade.', cited: null },
});

/** One line; of an item with a reason of the shop's own that one. Null where nobody gave one. */
export function reasonText({ id, reason }: RoutineItem): string | null {
  if (reason !== undefined) return w`Why: ${reason}`;
  const known = Object.hasOwn(REASONS, id) ? REASONS[id] : undefined;
  if (known === undefined) return null;
  const { why, cited } = known;
  return w`Why: ${why} (${cited ?? w`common practice, no source`})`;
}
