/** The panel of each phase that has one; the gap and the torque are worked at the bench itself (src/ui/frame.ts). */
import { phaseOf } from '../../job/phase.ts';
import type { JobState } from '../../job/state.ts';
import { damageSchema } from '../../plug/condition.ts';
import { w } from '../../words/catalogue.ts';
import type { Form } from '../form.ts';
import type { Glyphs } from '../glyphs.ts';
import type { KeyPress } from '../key-press.ts';
import type { Line } from '../line.ts';
import { beginList, listKeys, listLines, listSentence, pressedList, struck } from './list.ts';
import {
  beginNewPlugs,
  newPlugsKeys,
  newPlugsLines,
  newPlugsSentence,
  pressedNewPlugs,
} from './new-plugs.ts';
import {
  beginOldPlug,
  oldPlugKeys,
  oldPlugLines,
  oldPlugSentence,
  pressedOldPlug,
  toggled,
} from './old-plugs.ts';
import type { Draft, Move, Room } from './panel.ts';
import { pressedTrial, trialLines, trialSentence } from './trial.ts';
import { windowsLines, windowsSentence } from './windows.ts';

/** The draft that the phase at hand begins with; null where it has no panel. */
function started(job: JobState): Draft | null {
  const phase = phaseOf(job);
  switch (phase) {
    case 'windows':
      return { about: 'windows' };
    case 'trial':
      return { about: 'trial' };
    case 'before-removal':
    case 'fitting':
    case 'afterwards':
      return beginList(job, phase);
    case 'old-plugs':
      return job.oldPlugTarget === null ? null : beginOldPlug(job, job.oldPlugTarget);
    case 'new-plugs':
      return beginNewPlugs(job);
    default:
      return null;
  }
}

const same = (a: Draft, b: Draft): boolean =>
  a.about === b.about &&
  (a.about !== 'list' || b.about !== 'list' || a.phase === b.phase) &&
  (a.about !== 'old-plug' || b.about !== 'old-plug' || a.cylinder === b.cylinder);

/** `draft` as long as the job is still about the same, else a new one. */
export function draftFor(draft: Draft | null, job: JobState): Draft | null {
  const fresh = started(job);
  return draft !== null && fresh !== null && same(draft, fresh) ? draft : fresh;
}

export function pressedPanel(draft: Draft, press: KeyPress, job: JobState): Move {
  switch (draft.about) {
    case 'windows':
      return press.key === 'enter' ? { command: { do: 'confirm-windows' } } : null;
    case 'trial':
      return pressedTrial(press);
    case 'list':
      return pressedList(draft, press, job);
    case 'old-plug':
      return pressedOldPlug(draft, press, job);
    case 'new-plugs':
      return pressedNewPlugs(draft, press, job);
  }
}

/** The draft with what was typed to the end in a form that it asked for. */
export function filled(draft: Draft, { kind, about, answers }: Form): Draft {
  const text = answers[0] ?? '';
  if (draft.about === 'list' && kind === 'not-done') return struck(draft, String(about), text);
  if (draft.about === 'old-plug' && kind === 'old-plug-note') return { ...draft, note: text };
  if (draft.about === 'old-plug' && kind === 'damage') {
    const damage = damageSchema.options.find((one) => one === text);
    return damage === undefined ? draft : { ...draft, damage: toggled(draft.damage, damage) };
  }
  if (draft.about !== 'new-plugs') return draft;
  if (kind === 'part') return { ...draft, part: text };
  return kind === 'lot' ? { ...draft, lot: text } : draft;
}

export function panelSentence(draft: Draft, job: JobState): string {
  switch (draft.about) {
    case 'windows':
      return windowsSentence();
    case 'trial':
      return trialSentence();
    case 'list':
      return listSentence(draft, job);
    case 'old-plug':
      return oldPlugSentence(draft, job);
    case 'new-plugs':
      return newPlugsSentence(draft, job);
  }
}

export function panelLines(draft: Draft, job: JobState, room: Room, glyphs: Glyphs): readonly Line[] {
  switch (draft.about) {
    case 'windows':
      return windowsLines(job, room, glyphs);
    case 'trial':
      return trialLines(room, glyphs);
    case 'list':
      return listLines(draft, job, room, glyphs);
    case 'old-plug':
      return oldPlugLines(draft, job, room, glyphs);
    case 'new-plugs':
      return newPlugsLines(draft, job, room, glyphs);
  }
}

/** The keys of the panel, the most needed first. */
export function panelKeys(draft: Draft, job: JobState, types: boolean): readonly string[] {
  switch (draft.about) {
    case 'windows':
      return [w`[Enter] the windows are right`];
    case 'trial':
      return [w`[x] skip the trial`];
    case 'list':
      return listKeys(draft, job, types);
    case 'old-plug':
      return oldPlugKeys();
    case 'new-plugs':
      return newPlugsKeys();
  }
}
