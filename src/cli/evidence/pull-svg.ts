import { ProblemError } from '../../problem.ts';
import { chartSvg } from '../../report/charts/chart.ts';
import { chartOf } from '../../report/job-text.ts';
import type { ReportModel } from '../../report/model.ts';
import { w } from '../../words/catalogue.ts';

const PICTURE = { width: 760, height: 420 } as const;

/** A picture of the pull that was named, else the last one that was judged. */
export function pullSvg(model: ReportModel, wanted: number | undefined): string {
  const all = model.plots.flatMap((plot) => plot.pulls.map((one) => ({ plot, one })));
  const judged = all.findLast(({ one }) => one.verdict !== 'not-judged');
  const chosen = wanted === undefined ? (judged ?? all.at(-1)) : all.find(({ one }) => one.pull === wanted);
  if (chosen === undefined)
    throw new ProblemError({
      code: 'pull-unknown',
      where: w`job ${model.job}`,
      message:
        wanted === undefined
          ? w`no pull was given to a cylinder`
          : w`no pull ${wanted} was given to a cylinder`,
      next:
        all.length === 0
          ? w`There is nothing to draw.`
          : w`Name one of these with --pull: ${all.map(({ one }) => one.pull).join(', ')}.`,
    });
  return chartSvg(chartOf(model, chosen.plot, chosen.one), PICTURE);
}
