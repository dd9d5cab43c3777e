/** What is written of a process: a PDF and its charts as SVG, of each group in a folder of its own where there are several. */
import { join } from 'node:path';
import { type ProcessGroup, valuesOf } from '../../audit/capability.ts';
import { outputFolder, writeWhole } from '../../files/output.ts';
import { individualsDrawing, rangesDrawing } from '../../report/charts/control.ts';
import { controlSvg } from '../../report/charts/control-svg.ts';
import { histogramSvg } from '../../report/charts/histogram-svg.ts';
import { writePaper } from '../../report/paper.ts';
import { chartTitle, type ProcessCharts, processCharts, processPaper, unitOf } from '../../report/process.ts';
import type { Result } from '../../result.ts';
import { programVersion } from '../help/version.ts';
import { type StationFolder, stateOf } from '../station/station.ts';
import { safeLine } from '../terminal/exit.ts';
import { progress } from '../terminal/progress.ts';

const PICTURE = { width: 900, height: 320 } as const;

export const limitsOf = ({ lowerLimit, upperLimit }: ProcessGroup) => ({
  lower: lowerLimit,
  upper: upperLimit,
});
export const captionOf = (group: ProcessGroup) => ({ title: chartTitle(group), unit: unitOf(group) });

/** Every group in a folder of its own, in the order of the table; `most` readings on a chart. */
export async function writeGroups(
  folder: string,
  stationFolder: StationFolder,
  groups: readonly ProcessGroup[],
  most: number,
): Promise<readonly string[]> {
  outputFolder(folder);
  const names = groupFolders(groups);
  const bar = progress('groups written', groups.length);
  const lines: string[] = [];
  for (const [i, group] of groups.entries()) {
    lines.push(
      ...(await writeGroup(join(folder, names[i] ?? ''), stationFolder, group, processCharts(group, most))),
    );
    bar.at(i + 1);
  }
  bar.end();
  return lines;
}

/**
 * The names of the groups' folders: key, and whom or what a group was told apart by, in letters and digits that every file
 * system takes. A number makes a name its own that is there already.
 */
export function groupFolders(
  groups: readonly Pick<ProcessGroup, 'specificationKey' | 'member' | 'simulated'>[],
): readonly string[] {
  const taken = new Set<string>();
  return groups.map(({ specificationKey, member, simulated }) => {
    const name = slug(`${specificationKey} ${member}${simulated ? ' simulated' : ''}`);
    let free = name;
    for (let i = 2; taken.has(free); i++) free = `${name}-${i}`;
    taken.add(free);
    return free;
  });
}

const slug = (text: string) =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 80) || 'group';

/** Returns the lines that say so. */
export async function writeGroup(
  folder: string,
  stationFolder: StationFolder,
  group: ProcessGroup,
  charts: Result<ProcessCharts>,
): Promise<readonly string[]> {
  outputFolder(folder);
  const paper = processPaper(group, charts, {
    station: stateOf(stationFolder).name,
    program: `plugmark ${programVersion()}`,
    madeAt: new Date().toISOString(),
  });
  const readings = valuesOf(group.process.rows);
  const files: (readonly [string, string | Uint8Array])[] = [
    ['capability.pdf', await writePaper(paper)],
    ['histogram.svg', histogramSvg(readings, limitsOf(group), captionOf(group), PICTURE)],
  ];
  if (charts.ok) {
    const { individuals, caption } = charts.value;
    files.push(
      ['individuals.svg', controlSvg(individualsDrawing(individuals, caption), PICTURE)],
      ['ranges.svg', controlSvg(rangesDrawing(individuals, caption), PICTURE)],
    );
  }
  for (const [name, content] of files) await writeWhole(join(folder, name), content);
  return ['', `Written into ${safeLine(folder)}: ${files.map(([name]) => name).join(', ')}`];
}
