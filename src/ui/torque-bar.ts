/** The torque now as a bar over the window: limits, guard bands, acceptance zone. */

import { torqueWindowOf } from '../job/stage.ts';
import { turnSoFar } from '../job/turn.ts';
import type { Window } from '../metrology/judgement.ts';
import { shownLimit } from '../quantity/shown.ts';
import { degrees, turnLimitsText, turnText } from '../report/words/index.ts';
import { w } from '../words/catalogue.ts';
import type { Glyphs } from './glyphs.ts';
import type { Layout } from './layout.ts';
import { apart, columnsOfLine, type Line, type Span } from './line.ts';
import { columnsOf, fill } from './printable.ts';
import type { BenchView } from './view.ts';
import { figure, roughTorque, type Tone, unitWord, windowFigures } from './words.ts';
import { columnOf, runsOf, type Scale, scaleFor, type Zone, zonesOf } from './zones.ts';

/** Where a torque lies, in words; the verdict is another thing and is not given here. */
function zoneOf(nowNm: number, window: Window): { word: string; tone?: Tone } {
  if (nowNm > window.upperLimit) return { word: w`over the window`, tone: 'bad' };
  if (nowNm < window.lowerLimit) return { word: w`under the window` };
  return nowNm >= window.acceptLower && nowNm <= window.acceptUpper
    ? { word: w`in the window`, tone: 'good' }
    : { word: w`near a limit`, tone: 'attention' };
}

function heading(view: BenchView, columns: number, glyphs: Glyphs): Line {
  const { nowNm, pulling, peakNm } = view.live;
  const { torqueTarget, closed } = view.job;
  const torqueWindow = torqueWindowOf(view.job, torqueTarget);
  const unit = unitWord('N.m', glyphs);
  const now: Span[] =
    nowNm !== null
      ? [{ text: w` Torque ${roughTorque(nowNm, 1).padStart(5)} ${unit}`, bold: true }]
      : peakNm === null
        ? [{ text: w` Torque  no reading yet` }]
        : [];
  const { turn } = view.job.basis;
  const soFar = pulling && turn !== undefined ? turnSoFar(view.job, view.live) : null;
  if (soFar !== null) now.push({ text: `  ${w`turned ${degrees(soFar)}`}`, bold: true });
  else if (nowNm !== null && pulling) now.push({ text: `  ${zoneOf(nowNm, torqueWindow).word}` });
  else if (peakNm !== null) now.push({ text: `  ${w`peak ${figure(peakNm, 'N.m')}`}` });
  const turned = pulling || view.job.lastPull === null ? null : turnText(view.job.lastPull);
  if (turned !== null) now.push({ text: `  ${turned}` });
  const limits = turn?.alone === true ? w`turn ${turnLimitsText(turn)}` : windowFigures(torqueWindow);
  const window = turn?.alone === true ? `${limits} ` : `${limits} ${unit} `;
  const label = torqueTarget === null || closed !== null ? w`Window: ` : w`Cylinder ${torqueTarget}: `;
  // The unit stands beside the torque already; half of a figure would be another one.
  const right = [label + window, window, `${limits} `];
  const fits = right.find((text) => columnsOfLine(now) + columnsOf(text) + 2 <= columns) ?? `${limits} `;
  return apart(now, [{ text: fits }], columns, glyphs.cutMark);
}

/** The filled part in eighths of a column where the terminal has them. */
function filled(valueNm: number, { columns, top }: Scale, { across }: Glyphs): string {
  const steps = across.length - 1;
  const parts = Math.round(Math.max(0, Math.min(1, valueNm / top)) * columns * steps);
  const rest = across[parts % steps] ?? ' ';
  return (across[steps] ?? '#').repeat(Math.floor(parts / steps)) + (parts % steps === 0 ? '' : rest);
}

function bar(view: BenchView, scale: Scale, glyphs: Glyphs): Line {
  const { nowNm, pulling, peakNm } = view.live;
  const shown = filled(nowNm ?? 0, scale, glyphs);
  const window = torqueWindowOf(view.job, view.job.torqueTarget);
  const fillTone = pulling && nowNm !== null ? zoneOf(nowNm, window).tone : undefined;
  const line: Span[] = [{ text: ' ' }, { text: shown, tone: fillTone }];
  const peakAt = peakNm === null || peakNm <= 0 ? -1 : columnOf(peakNm, scale);
  if (peakAt >= shown.length)
    line.push({ text: ' '.repeat(peakAt - shown.length) + glyphs.peak, bold: true });
  return line;
}

function scaleLine(window: Window, scale: Scale, glyphs: Glyphs): Line {
  const marks: Readonly<Record<Zone, { mark: string; tone?: Tone }>> = {
    outside: { mark: glyphs.line },
    limit: { mark: glyphs.limit },
    guard: { mark: glyphs.guard, tone: 'attention' },
    accept: { mark: glyphs.accept, tone: 'good' },
  };
  const runs = runsOf(zonesOf(window, scale)).map(({ zone, length }): Span => {
    const { mark, tone } = marks[zone];
    return { text: mark.repeat(length), tone, bold: zone === 'limit' };
  });
  return [{ text: ' ' }, ...runs];
}

/** The limits under their marks, and what the two shadings mean. */
function figures(window: Window, scale: Scale, glyphs: Glyphs): Line {
  const legend = window.decidable
    ? w` ${glyphs.accept} proves the torque   ${glyphs.guard} too near a limit`
    : w` ${glyphs.guard} this wrench cannot prove this window`;
  const low = shownLimit(window.lowerLimit, window.unit, 'lower');
  const high = shownLimit(window.upperLimit, window.unit, 'upper');
  const lowEnds = 1 + columnOf(window.lowerLimit, scale) + 1;
  const highStarts = 1 + columnOf(window.upperLimit, scale);
  const lowAt = lowEnds - low.length;
  const start = columnsOf(legend) + 2 <= lowAt ? fill(legend, lowAt, '') : ' '.repeat(Math.max(0, lowAt));
  return [{ text: start }, { text: low.padEnd(Math.max(1, highStarts - lowAt)) + high, bold: true }];
}

export function torqueLines(
  view: BenchView,
  columns: number,
  layout: Pick<Layout, 'bar' | 'scaleFigures'>,
  glyphs: Glyphs,
): Line[] {
  const torqueWindow = torqueWindowOf(view.job, view.job.torqueTarget);
  const scale = scaleFor(torqueWindow, columns - 2);
  const now = bar(view, scale, glyphs);
  return [
    heading(view, columns, glyphs),
    ...Array.from({ length: layout.bar }, () => now),
    scaleLine(torqueWindow, scale, glyphs),
    ...(layout.scaleFigures ? [figures(torqueWindow, scale, glyphs)] : []),
  ];
}
