import { writeNew } from '../../files/output.ts';
import { viewOfWindow, type WindowView } from '../../job/window-view.ts';
import { parseTorque } from '../../quantity/range.ts';
import { newtonMetres } from '../../quantity/torque.ts';
import { chartSvg } from '../../report/charts/chart.ts';
import { windowChart } from '../../report/charts/window-chart.ts';
import { orThrow } from '../../result.ts';
import { glyphsFor } from '../../ui/glyphs.ts';
import { windowLines } from '../../ui/window-lines.ts';
import { windowPlot } from '../../ui/window-plot.ts';
import { printJson } from '../answers/answer.ts';
import { windowAnswered } from '../answers/window.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { print } from '../terminal/wrapped.ts';
import { dayOf, orderFrom, type WindowOptions, wrenchFrom } from './window-input.ts';

const WIDEST_PLOT = 100;
const PICTURE = { width: 760, height: 300 } as const;

/** Prints the torque window of an order or of a typed specification, with guard band, budget and, on a terminal, a plot. */
export async function printWindow(typed: string | undefined, options: WindowOptions): Promise<ExitCode> {
  const view = await windowView(typed, options, dayOf(options));
  const { stdout } = process;
  const columns = stdout.isTTY ? Math.min(WIDEST_PLOT, stdout.columns) : null;
  if (options.svg !== undefined) {
    const { value, budget } = view.measured;
    const chart = windowChart(view.window, { value, standard: budget.standard });
    writeNew(options.svg, Buffer.from(chartSvg(chart, PICTURE)));
  }
  if (options.json === true) printJson(windowAnswered(view));
  else print(windowText(view, columns, !speaksUtf8()));
  return view.window.decidable && view.refusals.length === 0 ? EXIT.done : EXIT.failed;
}

/** All lines; without columns there is no plot. */
export function windowText(view: WindowView, columns: number | null, ascii: boolean): string[] {
  const glyphs = glyphsFor(ascii);
  const lines = windowLines(view, glyphs);
  if (columns === null) return lines;
  const { value, budget } = view.measured;
  return [
    ...lines,
    '',
    ...windowPlot(view.window, { value, standard: budget.standard }, columns - 1, glyphs),
  ];
}

/** The window that was asked for, on the day that was named. */
export async function windowView(
  typed: string | undefined,
  options: WindowOptions,
  on: string,
): Promise<WindowView> {
  const order = await orderFrom(typed, options);
  const { wrench, decision } = await wrenchFrom(options);
  const { reading, spread, rate } = options;
  return orThrow(
    viewOfWindow(
      { order, wrench, decision, on },
      {
        ...(reading !== undefined && { readingNm: torqueOption(reading) }),
        ...(spread !== undefined && { spreadNm: spread }),
        ...(rate !== undefined && { perSecond: rate }),
      },
    ),
  );
}

function torqueOption(text: string): number {
  const torque = orThrow(parseTorque(text));
  return newtonMetres(torque.figure, torque.unit);
}
