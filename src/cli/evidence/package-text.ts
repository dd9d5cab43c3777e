import { PACKAGE_FILES, type PackageIndex } from '../../package/format.ts';
import { noRecordText } from '../../report/words/index.ts';
import { plural, w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';

/** Longer lists stand whole in the index. */
const MOST_LINES = 20;

/** The first lines of a list, and how many more there are. */
export const someOf = (lines: readonly string[], where: string): readonly string[] =>
  lines.length <= MOST_LINES
    ? lines
    : [...lines.slice(0, MOST_LINES), `    ${w`and ${lines.length - MOST_LINES} more: see ${where}`}`];

/** How a package that was made is told of. */
export function madeLines(folder: string, index: PackageIndex): readonly string[] {
  const { files, leftOut, jobs } = index;
  const papers = jobs.filter(({ paper }) => paper !== null).length;
  const questioned = jobs.filter(({ impacts }) => impacts.length > 0).length;
  const left = leftOut.map((one) => w`  left out: job ${safeLine(one.job)}, ${noRecordText(one)}`);
  return [
    w`${safeLine(folder)}: ${records(jobs.length)}, ${papers === 0 ? w`no papers` : paperCount(papers)}, ${files.length} files, and an index that the station signed.`,
    ...(questioned === 0
      ? []
      : [
          w`  ${plural(questioned, { one: '# job', other: '# jobs' })} in it put in question by a later impact assessment; the index says which.`,
        ]),
    ...someOf(left, PACKAGE_FILES.index),
    w`  Check it with: plugmark verify ${safeLine(folder)} --trust YOUR-LIST`,
    w`  YOUR-LIST is the station's ${PACKAGE_FILES.trust}, had by another way; the one in the package is no trust.`,
  ];
}

export const records = (count: number) => plural(count, { one: '# record', other: '# records' });
const paperCount = (count: number) => plural(count, { one: '# paper', other: '# papers' });
