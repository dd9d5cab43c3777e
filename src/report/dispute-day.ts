/** A job as it was on its day: figures and sources of then, tools in force then, and what they proved. */

import { recordedOn } from '../audit/dispute.ts';
import type { LogEntry, StationEntry } from '../evidence/log.ts';
import { dueDate } from '../instrument/fitness.ts';
import type { InstrumentInUse } from '../instrument/instrument.ts';
import { isByAngle } from '../job/click.ts';
import { proofOf } from '../job/proof.ts';
import type { CylinderState, JobState } from '../job/state.ts';
import type { Judgement } from '../metrology/judgement.ts';
import type { FigureSource } from '../reading.ts';
import { w } from '../words/catalogue.ts';
import { figure, percent, UNIT_TEXT, type Unit, utc } from './figures.ts';
import type { Labelled, Part } from './paper.ts';
import { SEAT_WORDS, THREADS_WORDS } from './plug-words.ts';
import type { Cell } from './table.ts';
import { cylinderVerdict, VERDICT_WORD, verdictOf } from './verdict.ts';
import { windowText } from './window-text.ts';
import { instrumentRefusalText, noted, noteLines, promiseWords, proofText } from './words/index.ts';

export function knownThen(
  state: JobState,
  entries: readonly LogEntry[],
  station: readonly StationEntry[],
): readonly Labelled[] {
  const { order, torqueWindow, gapWindow } = state;
  const { specification, vehicle, complaint } = order;
  const { source } = specification;
  const recorded = recordedOn(state, station);
  const torque = windowText(torqueWindow);
  return [
    { label: w`Complaint`, value: complaint ?? w`not given` },
    {
      label: w`Odometer`,
      value: vehicle.odometerKm === undefined ? w`not given` : `${vehicle.odometerKm} km`,
    },
    { label: w`Technician`, value: state.technician },
    { label: w`Opened`, value: utc(entries[0]?.at ?? '') },
    { label: w`Ended`, value: endOf(state, entries) },
    { label: w`Plug`, value: `${order.plug.part}, ${order.plug.thread}, ${SEAT_WORDS[order.plug.seat]}` },
    {
      label: isByAngle(state.basis) ? w`Turn as printed` : w`Torque as printed`,
      value: w`${specification.torque}, threads ${THREADS_WORDS[specification.threads]}`,
    },
    { label: w`Gap as printed`, value: specification.gap ?? w`none` },
    {
      label: w`Source`,
      value: [source.title, source.edition, source.date].filter((one) => one !== undefined).join(', '),
    },
    { label: w`In the log since`, value: recorded === null ? w`never` : utc(recorded) },
    { label: w`Torque accepted`, value: w`${torque.acceptance}, of ${torque.limits}` },
    {
      label: w`Gap accepted`,
      value: gapWindow === null ? w`not measured` : windowText(gapWindow).acceptance,
    },
    { label: w`Notes of the day`, value: noteLines(state.order, state.basis.notes).join(' ') || w`none` },
  ];
}

export function endOf(state: JobState, entries: readonly LogEntry[]): string {
  const closing = entries.findLast(({ event }) => event.type === 'job-closed');
  if (closing === undefined) return w`still open`;
  const complete = state.closed?.complete === true ? w`complete` : w`NOT COMPLETE`;
  return w`${complete}, ${utc(closing.at)} by ${closing.by}`;
}

export function toolRow(
  instrument: InstrumentInUse,
  { basis }: JobState,
  entries: readonly LogEntry[],
): readonly Cell[] {
  const { id, serial, certificate } = instrument;
  const due = dueDate(instrument);
  const rests =
    certificate === undefined
      ? w`${promiseWords(instrument)}; no certificate`
      : w`certificate ${certificate.number}, ${certificate.laboratory}, ${certificate.date}`;
  const answered = entries.flatMap(({ event }) =>
    event.type === 'instrument-overridden' && event.tool === id ? [event] : [],
  );
  const inForce =
    certificate === undefined
      ? w`nothing that runs out`
      : due === null
        ? w`yes; no due date was set`
        : due >= basis.on
          ? w`yes, until ${due}`
          : w`NO, it ran out on ${due}`;
  const by = answered.map(
    ({ by: who, refusal, reason }) =>
      w`; ${who} answered for it (${instrumentRefusalText(refusal)}): ${reason}`,
  );
  return [{ text: id }, { text: serial ?? w`not given` }, { text: rests }, { text: inForce + by.join('') }];
}

export function proofs(name: string, state: JobState): Part {
  return {
    kind: 'table',
    title: w`${name}: what it came to`,
    note:
      state.voided === null ? proofText(proofOf(state)) : w`VOID: the readings of this job prove nothing.`,
    columns: [
      { title: w`Cylinder`, share: 0.8, align: 'right', heads: true },
      { title: w`Verdict`, share: 1.7 },
      { title: w`Gap`, share: 2 },
      { title: w`Torque`, share: 2.2 },
      { title: w`Probability`, share: 1.1, align: 'right' },
      { title: w`Tries`, share: 1.2 },
    ],
    rows: [...state.cylinders]
      .sort((a, b) => a.cylinder - b.cylinder)
      .map((cylinder) => {
        const verdict = cylinderVerdict(cylinder);
        const pulls = cylinder.pulls.map(({ judgement, pull: { source } }) => ({ judgement, source }));
        const torque = standing(cylinder.torque, pulls);
        return [
          { text: String(cylinder.cylinder) },
          { text: VERDICT_WORD[verdict], verdict, bold: true },
          { text: judged(standing(cylinder.gap, cylinder.gaps), 'mm') },
          { text: judged(torque, 'N.m') },
          { text: torque === null ? '' : percent(torque.judgement.conformanceProbability) },
          { text: w`${cylinder.gaps.length} gap, ${cylinder.pulls.length} pull` },
        ];
      }),
  };
}

/** The figures that stand: of the last OK once done, else of the last attempt that was judged. */
function standing(
  step: CylinderState['gap'],
  attempts: readonly (Pick<Figure, 'source'> & { readonly judgement: Judgement | null })[],
): Figure | null {
  const all = attempts.flatMap(({ judgement, source }) =>
    judgement === null ? [] : [{ judgement, source }],
  );
  return (step === 'done' ? all.findLast(({ judgement }) => judgement.result === 'OK') : all.at(-1)) ?? null;
}

interface Figure {
  readonly judgement: Judgement;
  readonly source: FigureSource;
}

function judged(standing: Figure | null, unit: Unit): string {
  if (standing === null) return w`none`;
  const { judgement, source } = standing;
  const { value, expandedUncertainty } = judgement;
  const word = noted(VERDICT_WORD[verdictOf(judgement)], source);
  return `${figure(value, unit)} ± ${figure(expandedUncertainty, unit)} ${UNIT_TEXT[unit]} ${word}`;
}
