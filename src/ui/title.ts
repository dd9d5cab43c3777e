import type { Glyphs } from './glyphs.ts';
import type { Size } from './layout.ts';
import { apart, type Line } from './line.ts';
import { printable } from './printable.ts';
import type { BenchView } from './view.ts';
import { SIMULATED } from './words.ts';

/** Job, vehicle and technician; the word SIMULATED at the right whenever the tools are not real. */
export function titleLine(view: BenchView, size: Size, glyphs: Glyphs): Line {
  const { job, vehicle } = view.job.order;
  const clean = (text: string) => printable(text, 60, glyphs.ascii);
  const car = [vehicle.description ?? '', vehicle.plate ?? ''].map(clean).filter((text) => text !== '');
  const parts = [clean(job), ...car, clean(view.job.technician)];
  if (size.columns >= 100) parts.push(clean(view.station));
  const left: Line = [{ text: ` ${parts.join(glyphs.between)}`, inverse: true }];
  const right: Line =
    view.simulated || view.job.simulated
      ? [{ text: ` ${SIMULATED} `, bold: true, tone: 'attention', inverse: true }]
      : [];
  return apart(left, right, size.columns, glyphs.cutMark);
}
