/** Studies as the screen gets them, built by hand. */
import type { ToolDescription } from '../../src/reading.ts';
import type { StudyResult, StudyView } from '../../src/ui/study-view.ts';

const description: ToolDescription = {
  quantity: 'length',
  unit: 'm',
  exponent: -7,
  samplingFunction: 'unspecified',
  batteryPercent: 15,
  link: { kind: 'bluetooth-le', authenticated: false },
};

export interface Sizes {
  readonly appraisers?: readonly string[];
  readonly parts?: readonly string[];
  readonly trials?: number;
  /** So many readings are taken, appraiser by appraiser and part by part. */
  readonly taken?: number;
}

/** A study in the middle of its first trial. */
export function studyOf({
  appraisers = ['Ann', 'Ben', 'Cem'],
  parts = Array.from({ length: 10 }, (_, i) => String(i + 1)),
  trials = 3,
  taken = 4,
}: Sizes = {}): StudyView {
  const perTrial = appraisers.length * parts.length;
  const steps = perTrial * trials;
  const place = taken % perTrial;
  return {
    study: 'GS-1',
    station: 'Example garage',
    quantity: 'length',
    types: false,
    tool: { tool: 'gauge', link: 'linked', description },
    calibrations: { instruments: [], basis: { on: '2026-11-25' } },
    appraisers,
    parts,
    trials,
    steps,
    measured: appraisers.map((_, a) =>
      parts.map((_, p) => Math.floor(taken / perTrial) + (a * parts.length + p < place ? 1 : 0)),
    ),
    due:
      taken === steps
        ? null
        : {
            appraiser: Math.floor(place / parts.length),
            part: place % parts.length,
            trial: Math.floor(taken / perTrial) + 1,
          },
    last: taken === 0 ? null : { done: 'taken', appraiser: 0, part: 3, value: 0.752 },
    handOver: false,
    paused: false,
    notice: null,
    asked: null,
    live: null,
    result: null,
  };
}

const variations = ['repeatability (EV)', 'reproducibility (AV)', 'interaction', 'gauge as used (GRR)'].map(
  (name, i) => ({ name, sigma: `0.0${i}123`, percent: `${i}2.1 %` }),
);

export const RESULT: StudyResult = {
  unit: 'mm',
  methods: [
    { title: 'average, range', values: { variations, categories: '7', grade: 'weak' }, why: '' },
    { title: 'variance (ANOVA)', values: { variations, categories: '4', grade: 'not-fit' }, why: '' },
  ],
  notes: ['Range above 0.070, to be measured again: appraiser Ann, part 4.'],
};

const wrench: StudyView = {
  ...studyOf(),
  quantity: 'torque',
  tool: { tool: 'wrench', link: 'linked', description: { ...description, quantity: 'torque', unit: 'N.m' } },
  last: { done: 'taken', appraiser: 0, part: 3, value: 25.634 },
  live: { nowNm: 0.04, pulling: false },
};

export const STUDIES: Readonly<Record<string, StudyView>> = {
  first: { ...studyOf({ taken: 0 }), tool: { tool: 'gauge', link: 'seeking' } },
  going: studyOf(),
  typing: { ...studyOf(), types: true },
  lost: { ...studyOf(), tool: { tool: 'gauge', link: 'lost', end: { reason: 'no-answer' } } },
  back: { ...studyOf(), last: { done: 'back', appraiser: 0, part: 3, value: null } },
  handOver: {
    ...studyOf({ taken: 10 }),
    handOver: true,
    last: { done: 'taken', appraiser: 0, part: 9, value: null },
  },
  notice: { ...studyOf(), notice: { words: 'That came too soon after the reading before: not taken.' } },
  asked: { ...studyOf(), asked: { value: 99, lower: 0.2, upper: 3 } },
  askedPull: { ...wrench, asked: { value: 250, lower: 12.5, upper: 50 } },
  paused: { ...studyOf(), paused: true },
  pulling: { ...wrench, live: { nowNm: 12.34, pulling: true } },
  pulled: wrench,
  whole: studyOf({ taken: 90 }),
  result: { ...studyOf({ taken: 90 }), result: RESULT },
};
