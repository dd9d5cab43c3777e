/** Where figures came from, and what they are worth: one wording for screen, papers, CSV and verification. */
import type { Counts, Mark, Proof } from '../../job/proof.ts';
import { marksOf } from '../../job/proof.ts';
import type { GapCheck } from '../../plug/gap.ts';
import type { FigureSource } from '../../reading.ts';

/** For a cell. */
export const SOURCE_WORD: Readonly<Record<FigureSource, string>> = {
  linked: 'linked instrument',
  typed: 'typed by a person',
  replayed: 'REPLAYED',
  simulated: 'SIMULATED',
};

/** Beside a figure or a tool; null where an instrument sends it, as is usual. */
export const SOURCE_NOTE: Readonly<Record<FigureSource, string | null>> = {
  linked: null,
  typed: 'typed',
  replayed: 'REPLAYED',
  simulated: 'SIMULATED',
};

/** A text with the note of its source: `OK, typed`. */
export function noted(text: string, source: FigureSource): string {
  const note = SOURCE_NOTE[source];
  return note === null ? text : `${text}, ${note}`;
}

/** Stands wherever figures are shown that prove nothing. */
export const MARK_WORD: Readonly<Record<Mark, string>> = { replayed: 'REPLAYED', simulated: 'SIMULATED' };

/** `SIMULATED, REPLAYED`; empty where nothing is marked. */
export const marksText = (marks: readonly Mark[]): string => marks.map((mark) => MARK_WORD[mark]).join(', ');

/** Of a whole job. */
export const MARK_SENTENCE: Readonly<Record<Mark, string>> = {
  simulated:
    'SIMULATED: tools of this job were simulated. No vehicle was worked on, and it proves nothing about any engine.',
  replayed: 'REPLAYED: readings of this job came from a recording. It proves nothing about any engine.',
};

/** Of a paper about several jobs. */
export const MARK_PAPER: Readonly<Record<Mark, string>> = {
  simulated:
    'SIMULATED: at least one job in this used simulated tools. Nobody worked on a vehicle in it, and it proves nothing about an engine.',
  replayed:
    'REPLAYED: at least one job in this used readings from a recording. They prove nothing about an engine.',
};

const STAMP: Readonly<Record<Mark, string>> = {
  simulated: 'SIMULATED: NO REAL TOOL MEASURED THIS. NOT A RECORD OF WORK ON A VEHICLE.',
  replayed: 'REPLAYED: READ FROM A RECORDING. NOT A RECORD OF WORK ON A VEHICLE.',
};

/** Above and below each page; empty where nothing is marked. */
export function stampText(marks: readonly Mark[]): string {
  const [mark, ...others] = marks;
  if (mark === undefined) return '';
  return others.length === 0
    ? STAMP[mark]
    : `${marksText(marks)}: FIGURES PROVE NOTHING. NOT A RECORD OF WORK ON A VEHICLE.`;
}

/** What there is to know about a link, in a list of what is out of the ordinary; null where its own authentication says more. */
export const LINK_CAVEAT: Readonly<Record<FigureSource, string | null>> = {
  linked: null,
  typed: 'values typed, not read from the instrument over a link: attested by a person',
  replayed: 'values REPLAYED from a recording, not read from the instrument: they prove nothing',
  simulated: 'SIMULATED, there was no instrument: its values prove nothing',
};

type Quantity = keyof Proof['figures'];

type Called = readonly [one: string, many: string, tool: string];
const FIGURES: Readonly<Record<Quantity, Called>> = {
  torque: ['torque', 'torques', 'wrench'],
  gap: ['gap', 'gaps', 'gauge'],
};
const TURN: Called = ['turn', 'turns', 'wrench'];

const calledIn = ({ byAngle }: Proof, quantity: Quantity): Called =>
  byAngle && quantity === 'torque' ? TURN : FIGURES[quantity];

/** What so many figures of a source are worth, as the end of "8 torques ...". */
const WORTH_WORDS: Readonly<Record<FigureSource, (tool: string, by: string) => string>> = {
  linked: (tool) => `proven by a linked ${tool}`,
  typed: (_, by) => `typed by ${by}, attested, not proven by an instrument`,
  replayed: () => 'REPLAYED, no proof',
  simulated: () => 'SIMULATED, no proof',
};

/**
 * `8 torques proven by a linked wrench; 8 gaps typed by NAME, attested, not proven by an instrument`. Empty where nothing is
 * done yet.
 */
export function proofText(proof: Proof): string {
  const { figures, attestedBy } = proof;
  const by = attestedBy.length === 0 ? 'a person' : attestedBy.join(', ');
  const of = (quantity: Quantity) => worthOf(figures[quantity], calledIn(proof, quantity), by);
  return [...of('torque'), ...of('gap')].join('; ');
}

const BRIEF: Readonly<Record<FigureSource, string>> = {
  linked: 'proven',
  typed: 'attested',
  replayed: 'REPLAYED',
  simulated: 'SIMULATED',
};

/** `8 torques proven, 8 gaps attested`: for one line of a screen. */
export function proofBrief(proof: Proof): string {
  const { figures } = proof;
  return (['torque', 'gap'] as const)
    .flatMap((quantity) =>
      SOURCES.flatMap((source) => {
        const count = figures[quantity][source];
        const [one, many] = calledIn(proof, quantity);
        return count === 0 ? [] : [`${count} ${count === 1 ? one : many} ${BRIEF[source]}`];
      }),
    )
    .join(', ');
}

function worthOf(counts: Counts, [one, many, tool]: Called, by: string): readonly string[] {
  return SOURCES.flatMap((source) => {
    const count = counts[source];
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many} ${WORTH_WORDS[source](tool, by)}`];
  });
}

/** Beside proven torques, where the specification has no gap measured; null where it is. */
export const GAPS_UNMEASURED: Readonly<Record<GapCheck, string | null>> = {
  gauge: null,
  wire: null,
  'visual-only': 'the gaps were looked at, not measured',
  'not-permitted': 'the gaps were not checked, as the specification says',
};

const SOURCES = ['linked', 'typed', 'replayed', 'simulated'] as const satisfies readonly FigureSource[];

/** What a reader of a verdict must know at once: marks, then what a person typed. Empty where an instrument sent all. */
export function proofCaveats(proof: Proof): readonly string[] {
  const { sources, figures } = proof;
  const typed = (['torque', 'gap'] as const).flatMap((quantity) => {
    const count = figures[quantity].typed;
    const [one, many] = calledIn(proof, quantity);
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  });
  return [
    ...marksOf(sources).map((mark) => MARK_SENTENCE[mark]),
    ...(typed.length === 0
      ? []
      : [`${typed.join(' and ')} typed: attested by a person, NOT proven by an instrument.`]),
  ];
}

/** Of many jobs; `of` is how many there are. */
export function unprovenText(jobs: Readonly<Record<Mark | 'typed' | 'of', number>>): string {
  const marked = (['simulated', 'replayed'] as const).flatMap((mark) =>
    jobs[mark] === 0
      ? []
      : [`${MARK_WORD[mark]}: ${jobs[mark]} of ${jobs.of} jobs; these prove nothing about any engine.`],
  );
  const typed =
    jobs.typed === 0
      ? []
      : [
          `Figures of ${jobs.typed} of ${jobs.of} jobs were typed: attested by a person, NOT proven by an instrument.`,
        ];
  return [...marked, ...typed].join(' ');
}
