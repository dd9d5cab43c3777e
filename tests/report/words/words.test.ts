import { describe, expect, it } from 'vitest';
import { openItemSchema } from '../../../src/job/open-item.ts';
import { inUnits } from '../../../src/quantity/shown.ts';
import {
  checkText,
  choiceText,
  deviceRefusalText,
  gapStepText,
  linkEndText,
  MISS_WORDS,
  noRecordText,
  OPEN_WORDS,
  openItemText,
  type PLACEMENT_WORDS,
  placementText,
  purposeText,
  QUESTION_WORDS,
  questionText,
  REFUSAL_WORDS,
  REPLACEMENT_WORDS,
} from '../../../src/report/words/index.ts';
import type { Evidence } from '../../../src/sequence/evidence.ts';
import { placementReasonSchema } from '../../../src/sequence/reason.ts';
import { attemptOf, cylinderIn, jobWith, pullOf, questionOn, withCylinder } from '../../ui/fixtures.ts';

const EVIDENCE: Evidence = {
  riseNmPerS: 40,
  bend: 0,
  impulseNms: 5,
  workJ: null,
  angleDeg: null,
  sinceLastMs: 1280,
  heldRiseMs: 211.4,
  slowdown: null,
  turned: 0,
  knock: 0,
};
const pull = { ...pullOf(3, 27.41), riseMs: 80.4, highestNm: 60.004 };
const because = (reason: keyof typeof PLACEMENT_WORDS, more = {}) =>
  placementText({ pull, evidence: EVIDENCE, because: reason, ...more });

describe('why a pull was taken for what it is', () => {
  it('is said with the figures that it rests on', () => {
    expect(because('same-plug-again')).toBe('rose in 80 ms, 1.3 s after the last: the same plug once more');
    expect(placementText({ pull, because: 'plug-turned' })).toBe('rose in 80 ms: the plug turned');
    expect(because('slow-to-held')).toBe('it took 211 ms to what this plug had held');
    expect(because('end-of-scale')).toBe('the readings stood at 60.00 N·m, the end of the scale');
    expect(because('with-other-pull', { otherPull: 4 })).toBe('with pull 4');
    expect(because('other-pull-went-on', { otherPull: 4 })).toBe('pull 4 went on from it');
    expect(because('cylinder-left-out', { leftOut: 5 })).toBe('the plug of cylinder 5 was left out');
  });
});

describe('what a gap asks for', () => {
  it('is said with the figures that it rests on', () => {
    expect(gapStepText({ do: 'fit' })).toBeNull();
    expect(gapStepText({ do: 'regap', bentMm: 0, bendMm: 0.0512 })).toBe(
      'bend the ground electrode at its base by 0.05 mm and measure again',
    );
    expect(gapStepText({ do: 'replace', because: 'bent-too-far', bentMm: 0.25, limitMm: 0.2 })).toBe(
      'the electrode was bent by 0.25 mm in all; the limit is 0.20 mm',
    );
    expect(gapStepText({ do: 'replace', because: 'needs-too-much', neededMm: 0.22, limitMm: 0.2 })).toBe(
      'it needs a bend of 0.22 mm; the limit is 0.20 mm',
    );
    const barred = { do: 'replace', because: 'not-adjustable' } as const;
    expect(gapStepText(barred)).toBe('the specification does not allow adjusting');
    expect(gapStepText({ ...barred, bentMm: 0.04 })).toBe(
      'it was bent, but the specification does not allow adjusting',
    );
  });

  it('and in inches where the shop reads inches', () => {
    const text = inUnits({ torque: 'N.m', length: '[in_i]' }, () =>
      gapStepText({ do: 'regap', bentMm: 0, bendMm: 0.0512 }),
    );
    expect(text).toBe('bend the ground electrode at its base by 0.0020 in and measure again');
  });
});

describe('what is open', () => {
  it('names its cylinder', () => {
    expect(openItemText({ kind: 'new-plug-differs', cylinder: 3, features: ['heat-range', 'hex'] })).toBe(
      'cylinder 3: the new plug differs in heat range, hexagon',
    );
    expect(openItemText({ kind: 'plug-to-be-replaced', cylinder: 4, because: 'not-sound' })).toBe(
      'cylinder 4: plug to be replaced: it does not look sound',
    );
    expect(openItemText({ kind: 'question-not-answered', pull: 7 })).toBe('pull 7: question not answered');
  });

  it('stands behind the check that found it', () => {
    const open = [{ kind: 'no-torque', cylinder: 2 }, { kind: 'windows-not-confirmed' }] as const;
    expect(checkText({ detail: 'Not all of the job is done.', open })).toBe(
      'Not all of the job is done. Still open: cylinder 2: no torque yet; windows not confirmed.',
    );
    expect(checkText({ detail: 'The job was not closed.' })).toBe('The job was not closed.');
  });
});

describe('links and devices', () => {
  it('say why', () => {
    expect(linkEndText({ reason: 'out-of-reach', controllerReason: 8 })).toBe('out of reach or switched off');
    expect(linkEndText({ reason: 'link-ended', controllerReason: 0x3b })).toBe('the link ended, reason 0x3b');
    const other = { reason: 'other-serial', address: 'c0:00:00:00:00:09' } as const;
    expect(deviceRefusalText({ ...other, serial: 'W-2' })).toContain('has serial number W-2');
    expect(deviceRefusalText(other)).toContain('gives no serial number');
  });
});

describe('a question about a pull', () => {
  it('names the plug and says why it is asked', () => {
    const asked = withCylinder(jobWith(4), {
      ...cylinderIn(2, 'done', 'ask'),
      pulls: [attemptOf(5, null, { because: 'did-not-turn', evidence: EVIDENCE })],
    });
    expect(questionText(asked, questionOn(2, 'already-tight', ['rehit']))).toBe(
      'STOP: cylinder 2 is due, but this plug was tight already (rose in 400 ms, 1.3 s after the last: the plug did not turn). Was it another one, or was a cylinder left out?',
    );
  });
});

describe('packages and routines', () => {
  it('have their words', () => {
    expect(noRecordText({ because: 'still-open' })).toBe('it is still open');
    expect(noRecordText({ because: 'too-many-attempts', count: 4002, most: 4000 })).toBe(
      '4002 attempts; a record holds 4000',
    );
    expect(purposeText({ purpose: 'dispute', claim: 'W-17' })).toBe('Dispute, claim W-17');
    const item = { id: 'run', text: 'Engine run', choices: [{ id: 'not-run', text: 'not run' }] };
    expect(choiceText(item, 'not-run')).toBe('not run');
    expect(choiceText(item, 'gone')).toBe('gone');
  });
});

it('no two codes of a table read the same', () => {
  const texts = (words: readonly string[]) => expect(new Set(words).size).toBe(words.length);
  texts(placementReasonSchema.options.map((reason) => because(reason, { otherPull: 1, leftOut: 2 })));
  texts(Object.values(MISS_WORDS));
  texts(Object.values(REFUSAL_WORDS).map((words) => words({ address: 'A' })));
  texts(Object.values(REPLACEMENT_WORDS).map((words) => words({ because: 'not-sound' })));
  const asked = { name: 'cylinder 1', why: 'why', judgement: null, held: ['gap'] as const };
  texts(Object.values(QUESTION_WORDS).map((words) => words(asked)));
  expect(Object.keys(OPEN_WORDS).sort()).toEqual(
    openItemSchema.options.flatMap(({ shape: { kind } }) => [...kind._zod.values].map(String)).sort(),
  );
});
