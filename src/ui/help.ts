/** The keys of the phase at hand, and those that always count. */

import { heldGapStep } from '../job/held-gap.ts';
import type { JobState } from '../job/state.ts';
import { phrases, w } from '../words/catalogue.ts';
import { canStay } from './exceptions.ts';
import { plugKeys } from './gap-keys.ts';
import type { InputState } from './input-state.ts';
import { KEY, letterOf } from './key-table.ts';
import type { Line } from './line.ts';
import type { Draft } from './panels/panel.ts';
import { columnsOf, fill } from './printable.ts';
import { answerWords } from './words.ts';

type Keys = readonly (readonly [string, string])[];

const atBench = (job: JobState): Keys => [
  [w`left, right`, w`cylinder of the next pull`],
  [w`up, down`, w`cylinder of the next gap reading`],
  ...plugKeys(job),
  [w`${letterOf(KEY.sign)}, Enter`, w`sign and finish when nothing is open`],
];

const stays = (): Keys => [[KEY.keep, w`keep it as it is; a named person answers for it`]];

const keepsGap = (): Keys => [[KEY.keep, w`keep the early gap; a named person answers for it`]];

const ON_PANEL: Readonly<Record<Draft['about'], Keys>> = phrases({
  windows: [['Enter', 'confirm the windows']],
  trial: [[KEY.not, 'skip the trial click']],
  list: [
    ['up, down', 'another line'],
    ['space, Enter', 'tick this line; space again: not ticked'],
    [KEY.all, 'all lines without a choice, once read'],
    ['1 to 6', 'choose for this line; or left and right'],
    [KEY.not, 'not done, with the reason; again: open'],
    ['Enter', 'when all is answered: confirm the whole list'],
  ],
  'old-plug': [
    [KEY.normal, 'this plug is normal'],
    [KEY.all, 'all plugs not yet read are normal'],
    ['up, down', 'another condition, each with its look'],
    [KEY.not, 'mark damage; again: unmark it'],
    [KEY.thread, 'thread in the head: sound, dirty, damaged'],
    [KEY.note, 'write a note'],
    ['left, right', 'another cylinder, also one already read'],
    ['Enter', 'confirm this plug as marked'],
  ],
  'new-plugs': [
    ['up, down', 'another line'],
    [KEY.not, 'this feature differs; again: it agrees'],
    [KEY.part, 'another part number'],
    [KEY.lot, 'lot or date code'],
    [KEY.oneByOne, 'one cylinder at a time; again: all'],
    ['Enter', 'confirm the plugs as marked'],
  ],
});

const ALWAYS: Keys = phrases([
  [KEY.takeBack, 'take back what was stated or read'],
  [KEY.otherwise, 'something did not go as planned'],
  [KEY.bell, 'bell on and off'],
  [KEY.help, 'this list on and off'],
  ['q, Ctrl-C', 'leave; all is saved, resume at any time'],
  ['Ctrl-Z', 'to the shell; fg comes back'],
]);

/** A line for each key. */
export function keyLines(keys: Keys): Line[] {
  const widest = Math.max(12, ...keys.map(([key]) => columnsOf(key) + 1));
  return keys.map(([key, what]) => [{ text: ` ${fill(key, widest, '')}`, bold: true }, { text: what }]);
}

/** Every key that means something now, and what it does. */
export function helpLines(job: JobState, { draft }: InputState): Line[] {
  const question = job.questions[0];
  if (question !== undefined) {
    const answers = question.answers
      .map((answer) => answerWords(question.kind, answer))
      .map(({ key, long }) => [letterOf(key), long] as const);
    return keyLines([
      ...answers,
      [w`arrows`, w`mark an answer; Enter gives it`],
      ...(canStay(question) ? stays() : []),
      ...ALWAYS,
    ]);
  }
  return keyLines([
    ...(draft === null
      ? atBench(job)
      : ON_PANEL[draft.about].map(([key, what]) => [letterOf(key), what] as const)),
    ...(heldGapStep(job) === null ? [] : keepsGap()),
    ...ALWAYS,
  ]);
}
