/** Where figures came from, and what they are worth: one wording for screen, papers, CSV and verification. */
import type { Mark, Proof } from '../../job/proof.ts';
import { marksOf } from '../../job/proof.ts';
import type { GapCheck } from '../../plug/gap.ts';
import type { FigureSource } from '../../reading.ts';
import { phrases, plural, w } from '../../words/catalogue.ts';
import { listed } from './list.ts';

/** For a cell. */
export const SOURCE_WORD: Readonly<Record<FigureSource, string>> = phrases({
  linked: 'linked instrument',
  typed: 'typed by a person',
  replayed: 'REPLAYED',
  simulated: 'SIMULATED',
});

/** Beside a figure or a tool; null where an instrument sends it, as is usual. */
export const SOURCE_NOTE: Readonly<Record<FigureSource, string | null>> = phrases({
  linked: null,
  typed: 'typed',
  replayed: 'REPLAYED',
  simulated: 'SIMULATED',
});

/** A text with the note of its source: `OK, typed`. */
export function noted(text: string, source: FigureSource): string {
  const note = SOURCE_NOTE[source];
  return note === null ? text : `${text}, ${note}`;
}

/** Stands wherever figures are shown that prove nothing. */
export const MARK_WORD: Readonly<Record<Mark, string>> = phrases({
  replayed: 'REPLAYED',
  simulated: 'SIMULATED',
});

/** `SIMULATED, REPLAYED`; empty where nothing is marked. */
export const marksText = (marks: readonly Mark[]): string => marks.map((mark) => MARK_WORD[mark]).join(', ');

/** Of a whole job. */
export const MARK_SENTENCE: Readonly<Record<Mark, string>> = phrases({
  simulated:
    'SIMULATED: tools of this job were simulated. No vehicle was worked on, and it proves nothing about any engine.',
  replayed: 'REPLAYED: readings of this job came from a recording. It proves nothing about any engine.',
});

/** Of a paper about several jobs. */
export const MARK_PAPER: Readonly<Record<Mark, string>> = phrases({
  simulated:
    'SIMULATED: at least one job in this used simulated tools. Nobody worked on a vehicle in it, and it proves nothing about an engine.',
  replayed:
    'REPLAYED: at least one job in this used readings from a recording. They prove nothing about an engine.',
});

const STAMP: Readonly<Record<Mark, string>> = phrases({
  simulated: 'SIMULATED: NO REAL TOOL MEASURED THIS. NOT A RECORD OF WORK ON A VEHICLE.',
  replayed: 'REPLAYED: READ FROM A RECORDING. NOT A RECORD OF WORK ON A VEHICLE.',
});

/** Above and below each page; empty where nothing is marked. */
export function stampText(marks: readonly Mark[]): string {
  const [mark, ...others] = marks;
  if (mark === undefined) return '';
  return others.length === 0
    ? STAMP[mark]
    : w`${marksText(marks)}: FIGURES PROVE NOTHING. NOT A RECORD OF WORK ON A VEHICLE.`;
}

/** What there is to know about a link, in a list of what is out of the ordinary; null where its own authentication says more. */
export const LINK_CAVEAT: Readonly<Record<FigureSource, string | null>> = phrases({
  linked: null,
  typed: 'values typed, not read from the instrument over a link: attested by a person',
  replayed: 'values REPLAYED from a recording, not read from the instrument: they prove nothing',
  simulated: 'SIMULATED, there was no instrument: its values prove nothing',
});

/** What the figures are of that the cylinders of a job stand on. */
type Counted = keyof Proof['figures'] | 'turn';

const countedIn = ({ byAngle }: Proof): readonly (readonly [keyof Proof['figures'], Counted])[] => [
  ['torque', byAngle ? 'turn' : 'torque'],
  ['gap', 'gap'],
];

const HOW_MANY: Readonly<Record<Counted, (count: number) => string>> = {
  torque: (count) => plural(count, { one: '# torque', other: '# torques' }),
  gap: (count) => plural(count, { one: '# gap', other: '# gaps' }),
  turn: (count) => plural(count, { one: '# turn', other: '# turns' }),
};

const BY_TOOL: typeof HOW_MANY = {
  torque: (count) =>
    plural(count, {
      one: '# torque proven by a linked wrench',
      other: '# torques proven by a linked wrench',
    }),
  gap: (count) =>
    plural(count, { one: '# gap proven by a linked gauge', other: '# gaps proven by a linked gauge' }),
  turn: (count) =>
    plural(count, { one: '# turn proven by a linked wrench', other: '# turns proven by a linked wrench' }),
};

const BRIEFLY: Readonly<Record<'proven' | 'attested', typeof HOW_MANY>> = {
  proven: {
    torque: (count) => plural(count, { one: '# torque proven', other: '# torques proven' }),
    gap: (count) => plural(count, { one: '# gap proven', other: '# gaps proven' }),
    turn: (count) => plural(count, { one: '# turn proven', other: '# turns proven' }),
  },
  attested: {
    torque: (count) => plural(count, { one: '# torque attested', other: '# torques attested' }),
    gap: (count) => plural(count, { one: '# gap attested', other: '# gaps attested' }),
    turn: (count) => plural(count, { one: '# turn attested', other: '# turns attested' }),
  },
};

/** What so many figures of a source are worth. */
function worthText(source: FigureSource, of: Counted, count: number, by: string): string {
  const figures = HOW_MANY[of](count);
  switch (source) {
    case 'linked':
      return BY_TOOL[of](count);
    case 'typed':
      return w`${figures} typed by ${by}, attested, not proven by an instrument`;
    case 'replayed':
      return w`${figures} REPLAYED, no proof`;
    case 'simulated':
      return w`${figures} SIMULATED, no proof`;
  }
}

/**
 * `8 torques proven by a linked wrench; 8 gaps typed by NAME, attested, not proven by an instrument`. Empty where nothing is
 * done yet.
 */
export function proofText(proof: Proof): string {
  const { attestedBy } = proof;
  const by = attestedBy.length === 0 ? w`a person` : attestedBy.join(', ');
  return eachCount(proof, (source, of, count) => worthText(source, of, count, by)).join('; ');
}

/** `8 torques proven, 8 gaps attested`: for one line of a screen. */
export const proofBrief = (proof: Proof): string => eachCount(proof, briefText).join(', ');

function briefText(source: FigureSource, of: Counted, count: number): string {
  switch (source) {
    case 'linked':
      return BRIEFLY.proven[of](count);
    case 'typed':
      return BRIEFLY.attested[of](count);
    default:
      return `${HOW_MANY[of](count)} ${SOURCE_WORD[source]}`;
  }
}

/** For each count that is not zero. */
const eachCount = (
  proof: Proof,
  text: (source: FigureSource, of: Counted, count: number) => string,
): readonly string[] =>
  countedIn(proof).flatMap(([quantity, of]) =>
    SOURCES.flatMap((source) => {
      const count = proof.figures[quantity][source];
      return count === 0 ? [] : [text(source, of, count)];
    }),
  );

/** Beside proven torques, where the specification has no gap measured; null where it is. */
export const GAPS_UNMEASURED: Readonly<Record<GapCheck, string | null>> = phrases({
  gauge: null,
  wire: null,
  'visual-only': 'the gaps were looked at, not measured',
  'not-permitted': 'the gaps were not checked, as the specification says',
});

const SOURCES = ['linked', 'typed', 'replayed', 'simulated'] as const satisfies readonly FigureSource[];

/** What a reader of a verdict must know at once: marks, then what a person typed. Empty where an instrument sent all. */
export function proofCaveats(proof: Proof): readonly string[] {
  const { sources, figures } = proof;
  const typed = countedIn(proof).flatMap(([quantity, of]) => {
    const count = figures[quantity].typed;
    return count === 0 ? [] : [HOW_MANY[of](count)];
  });
  return [
    ...marksOf(sources).map((mark) => MARK_SENTENCE[mark]),
    ...(typed.length === 0
      ? []
      : [w`${listed(typed)} typed: attested by a person, NOT proven by an instrument.`]),
  ];
}

/** Of many jobs; `of` is how many there are. */
export function unprovenText(jobs: Readonly<Record<Mark | 'typed' | 'of', number>>): string {
  const marked = (['simulated', 'replayed'] as const).flatMap((mark) =>
    jobs[mark] === 0
      ? []
      : [w`${MARK_WORD[mark]}: ${jobs[mark]} of ${jobs.of} jobs; these prove nothing about any engine.`],
  );
  const typed =
    jobs.typed === 0
      ? []
      : [
          w`Figures of ${jobs.typed} of ${jobs.of} jobs were typed: attested by a person, NOT proven by an instrument.`,
        ];
  return [...marked, ...typed].join(' ');
}
