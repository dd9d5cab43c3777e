/** What stands between the keys and a gauge study: a figure being typed, how far the result is scrolled, the help. Pure. */
import { figurePressed } from './figure-keys.ts';
import { isQuit, type KeyPress, printed } from './key-press.ts';
import { KEY } from './key-table.ts';
import { type StudyView, takenOf } from './study-view.ts';

export interface StudyInputState {
  readonly help: boolean;
  /** No bell. */
  readonly quiet: boolean;
  /** The figure that is being typed; a digit always begins one, whatever the tool. */
  readonly figure: string;
  /** The first line of the result that is shown. */
  readonly from: number;
}

export const newStudyInputState = (quiet: boolean): StudyInputState => ({
  help: false,
  quiet,
  figure: '',
  from: 0,
});

/** What a key led to beside another desk. */
export type StudyOut = 'quit' | 'take' | 'back' | 'pause' | 'record' | { readonly typed: string };

export interface StudyPressed {
  readonly input: StudyInputState;
  readonly out: StudyOut | null;
}

/** What a key does, the study being as `newest`; what it does to readings only if `painted` showed them as they are. */
export function pressedStudy(
  input: StudyInputState,
  press: KeyPress,
  newest: StudyView,
  painted: StudyView | null,
): StudyPressed {
  if (press.ctrl === true && isQuit(press)) return { input, out: 'quit' };
  if (newest.result !== null) return afterwards(input, press);
  const figure = figurePressed(input.figure, press);
  if (figure !== null)
    return {
      input: { ...input, figure: figure.figure },
      out: figure.typed === null ? null : { typed: figure.typed },
    };
  // Whatever dropped a figure does nothing else: half a figure and a reading taken back would be two things.
  if (input.figure !== '') return { input: { ...input, figure: '' }, out: null };
  const inSight = painted !== null && takenOf(painted) === takenOf(newest) && painted.asked === newest.asked;
  return byKey(input, press, newest, inSight);
}

function byKey(
  input: StudyInputState,
  press: KeyPress,
  { due, asked }: StudyView,
  inSight: boolean,
): StudyPressed {
  const stays = (change: Partial<StudyInputState>): StudyPressed => ({
    input: { ...input, ...change },
    out: null,
  });
  const key = printed(press)?.toLowerCase();
  if (isQuit(press)) return { input, out: 'quit' };
  if (key === KEY.help) return stays({ help: !input.help });
  if (key === KEY.bell) return stays({ quiet: !input.quiet });
  const out = key === KEY.pause ? 'pause' : !inSight ? null : key === KEY.takeBack ? 'back' : null;
  const enter = !inSight ? null : due === null ? 'record' : asked === null ? null : 'take';
  return { input: { ...input, help: false }, out: press.key === 'enter' ? enter : out };
}

function afterwards(input: StudyInputState, press: KeyPress): StudyPressed {
  if (isQuit(press) || press.key === 'enter') return { input, out: 'quit' };
  const step = { up: -1, down: 1 }[press.key] ?? 0;
  return { input: { ...input, help: false, from: Math.max(0, input.from + step) }, out: null };
}
