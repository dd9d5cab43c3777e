import { marksOf } from '../job/proof.ts';
import { marksText } from '../report/words/index.ts';
import type { Glyphs } from './glyphs.ts';
import type { Size } from './layout.ts';
import { apart, type Line } from './line.ts';
import { printable } from './printable.ts';
import type { BenchView } from './view.ts';

/** Job, vehicle and technician; at the right SIMULATED or REPLAYED wherever figures prove nothing. */
export function titleLine(view: BenchView, size: Size, glyphs: Glyphs): Line {
  const { job, vehicle } = view.job.order;
  const clean = (text: string) => printable(text, 60, glyphs.ascii);
  const car = [vehicle.description ?? '', vehicle.plate ?? ''].map(clean).filter((text) => text !== '');
  const parts = [clean(job), ...car, clean(view.job.technician)];
  if (size.columns >= 100) parts.push(clean(view.station));
  const left: Line = [{ text: ` ${parts.join(glyphs.between)}`, inverse: true }];
  const marks = marksText(marksOf([...view.sources, ...view.job.sources]));
  const right: Line =
    marks === '' ? [] : [{ text: ` ${marks} `, bold: true, tone: 'attention', inverse: true }];
  return apart(left, right, size.columns, glyphs.cutMark);
}
