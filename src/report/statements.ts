import { isByAngle } from '../job/click.ts';
import { marksOf } from '../job/proof.ts';
import type { JobState } from '../job/state.ts';
import { phrases, w } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { MARK_SENTENCE, noteLines } from './words/index.ts';

/** The same words on every record: cautions, and what the document proves and does not prove. */
export function statements(state: JobState): {
  readonly cautions: readonly string[];
  readonly proves: readonly string[];
} {
  const { threads, source } = state.order.specification;
  const cautions = [
    w`Work on a cold engine with the ignition off. Start every plug by hand; use no power tools.`,
    w`The vehicle maker's service information decides on torque, gap, thread condition and sequence. Where it differs from this record, follow the maker.`,
    isByAngle(state.basis)
      ? w`The angle holds for threads that are ${THREADS[threads]}. Other threads need another figure.`
      : w`The torque figure holds for threads that are ${THREADS[threads]}. Other threads need another figure.`,
  ];
  if (source.kind === 'invented-example')
    cautions.push(
      w`The specification of this record is an INVENTED EXAMPLE. Never tighten a real plug to it.`,
    );
  return {
    cautions: [...cautions, ...noteLines(state.order, state.basis.notes).map(clean)],
    proves: provesOf(state),
  };
}

function provesOf({ sources, voided, cylinders }: JobState): readonly string[] {
  const measured = cylinders.some(({ pulls }) => pulls.some(({ pull }) => pull.turn?.plug !== undefined));
  const nothing = [
    ...(voided === null ? [] : [voidSentence()]),
    ...marksOf(sources).map((mark) => MARK_SENTENCE[mark]),
  ];
  return [
    ...(nothing.length === 0 ? [reportedSentence()] : nothing),
    ...HOW_TO_READ,
    ...(measured ? [turnedSentence()] : []),
    ...(sources.includes('typed') ? [typedSentence()] : []),
  ];
}

const THREADS = phrases({
  dry: 'clean and dry',
  oiled: 'oiled',
  'anti-seize': 'coated with anti-seize',
  'factory-coated': 'coated by the plug maker',
});

const typedSentence = () =>
  w`A figure marked as typed is attested by the person who worked on the job, and not proven by an instrument.`;

const turnedSentence = () =>
  w`Where a turn is given, the angle of the wrench proves that a plug turned, and by how much. Which of two plugs that nobody had tightened the wrench was on no angle tells: that rests on the technician.`;

const voidSentence = () => w`The job was declared VOID: its readings stay on the record, and prove nothing.`;

/** Not where anything was replayed or simulated: no instrument reported that. */
const reportedSentence = () =>
  w`It proves which gaps and torques the named instruments reported, when and for which cylinder, and the verdict on each.`;

const HOW_TO_READ: readonly string[] = phrases([
  'OK means inside the acceptance zone: the limits minus the guard band.',
  'The peak of each pull is judged, because the plug saw the peak; the first release (the click) is beside it. Torque proves torque, not clamp force, sealing or the state of the threads.',
  "The uncertainty rests on the basis named for each instrument. The signed record holds the points of a certificate, not the certificate itself, and does not replace the maker's service information.",
  'The signed record is the evidence; these pages only show what it holds.',
]);
