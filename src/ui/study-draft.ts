/** What stands between the keys and a gauge study: a figure being typed, how far the result is scrolled, the help. Pure. */
import { figurePressed } from './figure-keys.ts';
import { isQuit, type KeyPress, printed } from './key-press.ts';
import { type StudyView, takenOf } from './study-view.ts';

export interface StudyDesk {
  readonly help: boolean;
  /** No bell. */
  readonly quiet: boolean;
  /** The figure that is being typed; a digit always begins one, whatever the tool. */
  readonly figure: string;
  /** The first line of the result that is shown. */
  readonly from: number;
}

export const newStudyDesk = (quiet: boolean): StudyDesk => ({ help: false, quiet, figure: '', from: 0 });

/** What a key led to beside another desk. */
export type StudyOut = 'quit' | 'take' | 'back' | 'pause' | 'record' | { readonly typed: string };

export interface StudyPressed {
  readonly desk: StudyDesk;
  readonly out: StudyOut | null;
}

/** What a key does, the study being as `newest`; what it does to readings only if `painted` showed them as they are. */
export function pressedStudy(
  desk: StudyDesk,
  press: KeyPress,
  newest: StudyView,
  painted: StudyView | null,
): StudyPressed {
  if (press.ctrl === true && isQuit(press)) return { desk, out: 'quit' };
  if (newest.result !== null) return afterwards(desk, press);
  const figure = figurePressed(desk.figure, press);
  if (figure !== null)
    return {
      desk: { ...desk, figure: figure.figure },
      out: figure.typed === null ? null : { typed: figure.typed },
    };
  // Whatever dropped a figure does nothing else: half a figure and a reading taken back would be two things.
  if (desk.figure !== '') return { desk: { ...desk, figure: '' }, out: null };
  const inSight = painted !== null && takenOf(painted) === takenOf(newest) && painted.asked === newest.asked;
  return byKey(desk, press, newest, inSight);
}

function byKey(desk: StudyDesk, press: KeyPress, { due, asked }: StudyView, inSight: boolean): StudyPressed {
  const stays = (change: Partial<StudyDesk>): StudyPressed => ({ desk: { ...desk, ...change }, out: null });
  const key = printed(press)?.toLowerCase();
  if (isQuit(press)) return { desk, out: 'quit' };
  if (key === '?') return stays({ help: !desk.help });
  if (key === 'm') return stays({ quiet: !desk.quiet });
  const out = key === 'p' ? 'pause' : !inSight ? null : key === 'b' ? 'back' : null;
  const enter = !inSight ? null : due === null ? 'record' : asked === null ? null : 'take';
  return { desk: { ...desk, help: false }, out: press.key === 'enter' ? enter : out };
}

function afterwards(desk: StudyDesk, press: KeyPress): StudyPressed {
  if (isQuit(press) || press.key === 'enter') return { desk, out: 'quit' };
  const step = { up: -1, down: 1 }[press.key] ?? 0;
  return { desk: { ...desk, help: false, from: Math.max(0, desk.from + step) }, out: null };
}
