/** What there is to note on a job, in words: on its vehicle, on its figures, and who answers for these. */
import type { WorkOrder } from '../../job/order.ts';
import { vinFault } from '../../job/vin.ts';
import { isWithheld } from '../../personal.ts';
import { HEAD_WORDS, SEAT_WORDS, THREADS_WORDS } from '../../plug/fit-words.ts';
import type { Note } from '../../plug/note.ts';
import { SOURCE_WORDS } from '../../plug/precedence.ts';
import type { Specification } from '../../plug/specification.ts';
import { roughTorque, shownUnit } from '../../quantity/shown.ts';
import { fixed, w } from '../../words/catalogue.ts';

/** The notes of an order: those on VIN and names are personal, and no part of what is signed. */
export const noteLines = (order: WorkOrder, notes: readonly Note[]): readonly string[] => [
  ...vinLines(order.vehicle.vin),
  ...notes.map((note) => noteWords(note, order.specification)),
  ...nameLines(order.specification),
];

function noteWords(note: Note, { torque, singleFigure }: Specification): string {
  switch (note.code) {
    case 'no-general-table':
      return w`No general table has a figure for this thread and seat.`;
    case 'outside-general-tables':
      return w`General tables say ${roughTorque(note.lowestNm)} to ${roughTorque(note.highestNm)} ${shownUnit('N.m')} (${SEAT_WORDS[note.seat]}, ${HEAD_WORDS[note.head]}). No table holds the whole of this range; a better source goes before them.`;
    case 'general-tables-disagree':
      return w`The publishers of general tables disagree: no torque suits all of them.`;
    case 'general-table-used':
      return w`GENERAL TABLE: the figure is not for this engine. Look for the engine maker’s figure first.`;
    case 'source-set-aside':
      return w`Set aside: ${SOURCE_WORDS[note.source]} (${note.title}) says ${note.torque} on ${THREADS_WORDS[note.threads]}.`;
    case 'threads-dry':
      return w`No oil and no anti-seize: the figure assumes dry threads.`;
    case 'torque-reduced':
      return w`Reduced by ${note.percent} % for ${THREADS_WORDS[note.lubricant]}: the shop's own rule; the source does not say so.`;
    case 'single-figure':
      return singleFigure === undefined
        ? w`SHOP RULE: the source prints the single figure ${torque}. Plus/minus ${note.percent} % is this shop's own tolerance, not the maker's.`
        : w`SHOP RULE: the source prints the single figure ${torque}. Plus/minus ${note.percent} % is this shop's own tolerance, not the maker's (basis: ${singleFigure.basis}).`;
    case 'reduction-by-friction':
      return w`For the same clamp force, friction falling from ${fixed(note.frictionDry, 2)} to ${fixed(note.frictionLubricated, 2)} would ask for ${note.percent} % less (Motosh; seat ring assumed).`;
    case 'plug-used':
      return w`A used plug goes back into the cylinder it came from.`;
    case 'gasket-used':
      return w`A used gasket takes far less angle than a new one.`;
    case 'by-angle-alone':
      return w`The order names an angle and no torque. The turn from contact is judged. The torque window goes from half of what general tables give for this thread and seat to a quarter more than they give: a torque outside of it is never OK.`;
    case 'turn-without-tolerance':
      return w`The angle is one figure without a tolerance: no wrench can prove it. Give two limits, or turn the plug by hand and record it so.`;
  }
}

/** The doubt about a VIN that stops no work. */
function vinLines(vin: string | undefined): readonly string[] {
  const fault = vin === undefined || isWithheld(vin) ? null : vinFault(vin);
  if (fault === null) return [];
  const { message, next } = fault.problem;
  return [`${message.charAt(0).toUpperCase()}${message.slice(1)}. ${next}`];
}

function nameLines({ checkedBy, reduction, singleFigure }: Specification): readonly string[] {
  return [
    ...(checkedBy === undefined ? [] : [w`The figure was checked by ${checkedBy}.`]),
    ...(singleFigure === undefined ? [] : [w`The rule for single figures was set by ${singleFigure.setBy}.`]),
    ...(reduction === undefined
      ? []
      : [w`The rule for ${THREADS_WORDS[reduction.lubricant]} was set by ${reduction.setBy}.`]),
  ];
}
