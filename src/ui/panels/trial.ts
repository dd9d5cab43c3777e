/** The trial click before the first plug: what it is for. It ends by itself when the wrench clicks, or with one key. */

import { w } from '../../words/catalogue.ts';
import { folded } from '../folded.ts';
import type { Glyphs } from '../glyphs.ts';
import { type KeyPress, printed } from '../key-press.ts';
import { KEY } from '../key-table.ts';
import type { Line } from '../line.ts';
import { printable } from '../printable.ts';
import type { Move, Room } from './panel.ts';

export const trialSentence = (): string =>
  w`Trial click: pull once until the wrench clicks, in a vise or on a tight bolt, not on a plug. Or press x to skip it.`;

const why = (): string =>
  w`It shows how far the torque falls at a click of this wrench, and how far the hand goes beyond it. Some wrenches click so softly that the fall is lost among others. Once it is known, you are not asked after each pull whether it clicked. A pull that turns a plug counts as the first plug.`;

export const pressedTrial = (press: KeyPress): Move =>
  printed(press)?.toLowerCase() === KEY.not ? { command: { do: 'skip-trial' } } : null;

export const trialLines = ({ columns, rows }: Room, glyphs: Glyphs): Line[] =>
  folded(printable(why(), 600, glyphs.ascii), columns - 2, rows, glyphs.cutMark).map((text) => [
    { text: ` ${text}` },
  ]);
