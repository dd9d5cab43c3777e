/** What there is to note on a job, in words: on its vehicle, on its figures, and who answers for these. */
import type { WorkOrder } from '../../job/order.ts';
import { vinFault } from '../../job/vin.ts';
import { isWithheld } from '../../personal.ts';
import type { Note } from '../../plug/note.ts';
import { SOURCE_WORDS } from '../../plug/precedence.ts';
import type { Specification } from '../../plug/specification.ts';

/** The notes of an order: those on VIN and names are personal, and no part of what is signed. */
export const noteLines = (order: WorkOrder, notes: readonly Note[]): readonly string[] => [
  ...vinLines(order.vehicle.vin),
  ...notes.map(noteWords),
  ...nameLines(order.specification),
];

function noteWords(note: Note): string {
  switch (note.code) {
    case 'no-general-table':
      return 'No general table has a figure for this thread and seat.';
    case 'outside-general-tables':
      return `General tables say ${short(note.lowestNm)} to ${short(note.highestNm)} N·m (${note.seat} seat, ${note.head} head). No table holds the whole of this range; a better source goes before them.`;
    case 'general-tables-disagree':
      return 'The publishers of general tables disagree: no torque suits all of them.';
    case 'general-table-used':
      return 'GENERAL TABLE: the figure is not for this engine. Look for the engine maker’s figure first.';
    case 'source-set-aside':
      return `Set aside: ${SOURCE_WORDS[note.source]} (${note.title}) says ${note.torque} on ${note.threads} threads.`;
    case 'threads-dry':
      return 'No oil and no anti-seize: the figure assumes dry threads.';
    case 'torque-reduced':
      return `Reduced by ${note.percent} % for ${note.lubricant} threads: the shop's own rule; the source does not say so.`;
    case 'reduction-by-friction':
      return `For the same clamp force, friction falling from ${note.frictionDry.toFixed(2)} to ${note.frictionLubricated.toFixed(2)} would ask for ${note.percent} % less (Motosh; seat ring assumed).`;
    case 'plug-used':
      return 'A used plug goes back into the cylinder it came from.';
    case 'gasket-used':
      return 'A used gasket takes far less angle than a new one.';
    case 'by-angle-alone':
      return 'The order names an angle and no torque. The turn from contact is judged. The torque window is what general tables give for this thread and seat, and a quarter more: a torque outside of it is never OK.';
    case 'turn-without-tolerance':
      return 'The angle is one figure without a tolerance: no wrench can prove it. Give two limits, or turn the plug by hand and record it so.';
  }
}

const short = (nm: number) => String(Number(nm.toFixed(1)));

/** The doubt about a VIN that stops no work. */
function vinLines(vin: string | undefined): readonly string[] {
  const fault = vin === undefined || isWithheld(vin) ? null : vinFault(vin);
  if (fault === null) return [];
  const { message, next } = fault.problem;
  return [`${message.charAt(0).toUpperCase()}${message.slice(1)}. ${next}`];
}

function nameLines({ checkedBy, reduction }: Specification): readonly string[] {
  return [
    ...(checkedBy === undefined ? [] : [`The figure was checked by ${checkedBy}.`]),
    ...(reduction === undefined
      ? []
      : [`The rule for ${reduction.lubricant} threads was set by ${reduction.setBy}.`]),
  ];
}
