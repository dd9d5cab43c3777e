/** The table of words says everything by the catalogue: of each code nothing is left that no dictionary can reach. */
import { describe, expect, it } from 'vitest';
import { noRecordReasonSchema } from '../../../src/evidence/record.ts';
import type { OpenItem } from '../../../src/job/open-item.ts';
import { stepSchema } from '../../../src/job/order-of-work.ts';
import { outOfOrderSchema } from '../../../src/job/out-of-order.ts';
import type { Proof } from '../../../src/job/proof.ts';
import { itemsOf, listPhaseSchema, USUAL_ROUTINE } from '../../../src/job/routine.ts';
import type { Statement } from '../../../src/job/state.ts';
import { EVALUATION_WORD } from '../../../src/metrology/verdict.ts';
import { HEAD_WORDS, SEAT_WORDS, TABLE_THREADS, THREADS_WORDS } from '../../../src/plug/fit-words.ts';
import type { Note } from '../../../src/plug/note.ts';
import { SOURCE_WORDS } from '../../../src/plug/precedence.ts';
import { figureSourceSchema } from '../../../src/reading.ts';
import { CONDITIONS, DAMAGE, stainText, THREADS } from '../../../src/report/words/condition.ts';
import * as words from '../../../src/report/words/index.ts';
import type { Evidence } from '../../../src/sequence/evidence.ts';
import { called } from '../../../src/sequence/plan.ts';
import { placementReasonSchema } from '../../../src/sequence/reason.ts';
import { inLanguage } from '../../../src/words/catalogue.ts';
import { exampleOrder } from '../../job/workshop.ts';
import { attemptOf, cylinderIn, jobWith, pullOf, questionOn, withCylinder } from '../../ui/fixtures.ts';
import { PSEUDO, unspoken } from '../../words/pseudo.ts';

/** Texts of a table, however deep; functions in it are asked beside. */
function textsIn(table: unknown): readonly string[] {
  if (typeof table === 'string') return [table];
  return typeof table === 'object' && table !== null ? Object.values(table).flatMap(textsIn) : [];
}

/** Names, units and codes that stay as they are. */
const FACTS = ['N·m', 'mm', 'ms', 'NAME', 'TITLE', 'BASIS', /0x[0-9a-f]+/, /W-\d/];

const left = (make: () => readonly (string | null)[]): readonly string[] =>
  inLanguage(PSEUDO, () => make()).flatMap((text) => unspoken(text ?? '', FACTS));

it('its tables', () => {
  const tables = [words, CONDITIONS, DAMAGE, THREADS, EVALUATION_WORD, SOURCE_WORDS];
  const fits = [HEAD_WORDS, SEAT_WORDS, TABLE_THREADS, THREADS_WORDS];
  const texts = () => [...tables, ...fits].flatMap(textsIn);
  expect(texts().length).toBeGreaterThan(150);
  expect(left(texts)).toEqual([]);
});

it('its single sentences', () => {
  expect(
    left(() => [
      stainText(),
      words.phoneNote(),
      words.roundWireText(),
      words.outOfOrderWord(),
      words.checkText({ detail: '', open: [{ kind: 'windows-not-confirmed' }] }),
      words.purposeText({ purpose: 'dispute', claim: 'W-17' }),
      words.linkEndText({ reason: 'link-ended', controllerReason: 0x3b }),
      ...noRecordReasonSchema.options.map((because) => words.noRecordText({ because, count: 9, most: 5 })),
    ]),
  ).toEqual([]);
});

it('why a device was refused', () => {
  const refusals = Object.values(words.REFUSAL_WORDS);
  const device = { address: '00:11', serial: '1' };
  expect(left(() => refusals.flatMap((say) => [say(device), say({ address: '00:11' })]))).toEqual([]);
});

const EVIDENCE: Evidence = {
  riseNmPerS: 40,
  bend: 0,
  impulseNms: 5,
  workJ: null,
  angleDeg: null,
  sinceLastMs: 1280,
  heldRiseMs: 211.4,
  slowdown: null,
  uneven: 0,
  usualRiseMs: 300,
  turned: 0,
  knock: 0,
};

it('why a pull was taken for what it is', () => {
  const pull = pullOf(3, 27.41);
  const trials = [
    { ...pull, release: 'seen' as const, releaseNm: 27, dropShare: 0.4 },
    { ...pull, release: 'none' as const, slightFall: { torqueNm: 27, dropShare: 0.1 } },
    { ...pull, release: 'not-visible' as const },
    { ...pull, release: 'none' as const },
  ];
  const of = (evidence: Evidence) =>
    placementReasonSchema.options.map((because) =>
      words.placementText({ pull, evidence, because, otherPull: 4, leftOut: 5 }),
    );
  expect(
    left(() => [
      ...of(EVIDENCE),
      ...of({ ...EVIDENCE, plugDeg: 12 }),
      ...trials.map((trial) => words.placementText({ pull: trial, because: 'trial-click' })),
    ]),
  ).toEqual([]);
});

it('questions, by name of the plug', () => {
  const kinds = ['no-click', 'already-tight', 'over-window', 'early', 'cut', 'loosened'] as const;
  const asked = withCylinder(jobWith(4), {
    ...cylinderIn(2, 'done', 'ask'),
    pulls: [attemptOf(5, null, { because: 'did-not-turn', evidence: EVIDENCE, early: ['windows', 'gap'] })],
  });
  const twin = { plugs: [{ cylinder: 1, plugs: [1, 9] }] };
  expect(
    left(() => [
      ...kinds.map((kind) => words.questionText(asked, questionOn(2, kind, ['rehit']))),
      called(twin, 9),
      called({}, 3),
    ]),
  ).toEqual([]);
});

it('what came out of order, and what was stated', () => {
  const whats = outOfOrderSchema.shape.what.options;
  const all = whats.flatMap((what) =>
    stepSchema.options.map((step) => ({ what, step, cylinder: 2, pull: 3 })),
  );
  const stated: readonly Statement[] = [
    { what: 'windows' },
    { what: 'list', phase: 'fitting', was: {} },
    { what: 'old-plugs', cylinders: [1, 2], was: [] },
    { what: 'new-plugs', cylinders: [1], was: [] },
    { what: 'old-gap', cylinder: 1, gapMm: 0.8 },
    { what: 'gap', cylinder: 1, tool: 'gauge', reading: 1, gapMm: 0.8 },
    { what: 'gap-inspected', cylinder: 1, sound: true },
    { what: 'gap-inspected', cylinder: 1, sound: false },
    { what: 'answer', pull: 1, cylinder: 1, answer: 'refit' },
    { what: 'by-angle', cylinder: 1 },
    { what: 'accepted', cylinder: 1, pull: 1 },
  ];
  expect(
    left(() => [
      ...all.map(words.outOfOrderText),
      words.outOfOrderText({ what: 'gap', step: 'windows', cylinder: 1, doneAgain: true }),
      words.outOfOrderCaveat(all),
      words.outOfOrderCaveat(all.slice(0, 1)),
      ...stepSchema.options.map(words.earlyText),
      ...stated.map(words.statementWords),
    ]),
  ).toEqual([]);
});

it('what is open, and what a gap asks for', () => {
  const open: readonly OpenItem[] = [
    { kind: 'new-plug-differs', cylinder: 3, features: ['heat-range', 'hex'] },
    { kind: 'plug-to-be-replaced', cylinder: 4, because: 'bent-too-far', bentMm: 0.3, limitMm: 0.2 },
    { kind: 'question-not-answered', pull: 7 },
    { kind: 'no-torque', cylinder: 1 },
  ];
  const replacements = Object.values(words.REPLACEMENT_WORDS);
  expect(
    left(() => [
      words.openItemsText(open),
      ...replacements.flatMap((say) => [
        say({ because: 'not-sound' }),
        say({ because: 'not-sound', bentMm: 0.1, neededMm: 0.3, limitMm: 0.2 }),
      ]),
      words.gapStepText({ do: 'regap', bentMm: 0, bendMm: 0.05 }),
    ]),
  ).toEqual([]);
});

it('the notes of an order', () => {
  const order = exampleOrder(4);
  const { specification } = order;
  const notes: readonly Note[] = [
    { code: 'no-general-table' },
    { code: 'outside-general-tables', lowestNm: 20, highestNm: 30, seat: 'gasket', head: 'cast-iron' },
    { code: 'general-tables-disagree' },
    { code: 'general-table-used' },
    { code: 'source-set-aside', source: 'plug-box', title: 'TITLE', torque: '25 N·m', threads: 'oiled' },
    { code: 'threads-dry' },
    { code: 'torque-reduced', percent: 30, lubricant: 'anti-seize' },
    { code: 'single-figure', percent: 10 },
    { code: 'reduction-by-friction', frictionDry: 0.15, frictionLubricated: 0.1, percent: 31 },
    { code: 'plug-used' },
    { code: 'gasket-used' },
    { code: 'by-angle-alone' },
    { code: 'turn-without-tolerance' },
  ];
  const reduction = { percent: 30, lubricant: 'oiled', setBy: 'NAME' } as const;
  const singleFigure = { percent: 10, setBy: 'NAME', basis: 'BASIS' };
  const named = {
    ...order,
    vehicle: { vin: 'OOO' },
    specification: { ...specification, torque: '28 N·m', checkedBy: 'NAME', reduction, singleFigure },
  };
  expect(left(() => [...words.noteLines(named, notes), ...words.noteLines(order, notes)])).toEqual([]);
});

it('the usual routine with its reasons', () => {
  const items = listPhaseSchema.options.flatMap((phase) => itemsOf(USUAL_ROUTINE, phase));
  const texts = () =>
    items.flatMap((item) => [
      words.itemText(item),
      words.reasonText(item),
      ...(item.choices ?? []).map(({ id }) => words.choiceText(item, id)),
    ]);
  expect(texts().length).toBeGreaterThan(30);
  expect(left(texts)).toEqual([]);
});

describe('what figures are worth', () => {
  const ONE = { linked: 1, typed: 2, replayed: 1, simulated: 8 };
  const proof = (byAngle: boolean, attestedBy: readonly string[]): Proof => ({
    sources: figureSourceSchema.options,
    figures: { torque: ONE, gap: ONE },
    attestedBy,
    byAngle,
  });
  const proofs = [proof(false, []), proof(true, ['NAME'])];

  it('is said of every source', () => {
    const jobs = { simulated: 1, replayed: 2, typed: 1, of: 9 };
    expect(
      left(() => [
        ...proofs.flatMap((one) => [words.proofText(one), words.proofBrief(one), ...words.proofCaveats(one)]),
        words.unprovenText(jobs),
        words.stampText(['simulated']),
        words.stampText(['simulated', 'replayed']),
        ...words.notProvenByAny([]),
      ]),
    ).toEqual([]);
  });
});
