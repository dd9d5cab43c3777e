/** The files of a process: its paper as PDF and its charts as SVG; of several groups each in a folder of its own. */

import { join } from 'node:path';
import type { ProcessGroup } from '../../audit/capability.ts';
import { outputFolder } from '../../files/output.ts';
import { chartSvg } from '../../report/charts/chart.ts';
import type { Paper } from '../../report/paper.ts';
import { writePaper } from '../../report/paper-pdf.ts';
import { type ProcessCharts, processCharts, processPaper } from '../../report/process-paper.ts';
import { madeFor, type PaperReader } from '../../report/reader.ts';
import { w } from '../../words/catalogue.ts';
import { programVersion } from '../help/version.ts';
import { now } from '../station/clock.ts';
import { progress } from '../terminal/progress.ts';
import { PICTURE, writeFiles } from './papers.ts';

/** A group as it is printed and written. */
export interface ProcessWork {
  readonly paper: Paper;
  readonly charts: ProcessCharts;
}

/** `station`: whose readings they are. `most` of them are on a control chart. */
export function workOf(station: string, group: ProcessGroup, most: number): ProcessWork {
  const charts = processCharts(group, most);
  const paper = processPaper(group, charts, {
    station,
    program: `plugmark ${programVersion()}`,
    madeAt: now(),
  });
  return { paper, charts };
}

/** Every group in a folder of its own, in the order of the table. */
export async function writeGroups(
  folder: string,
  groups: readonly ProcessGroup[],
  reader: PaperReader,
  work: (group: ProcessGroup) => ProcessWork,
): Promise<readonly string[]> {
  outputFolder(folder);
  const names = groupFolders(groups);
  const bar = progress(w`groups written`, groups.length);
  const lines: string[] = [];
  for (const [i, group] of groups.entries()) {
    lines.push(...(await writeGroup(join(folder, names[i] ?? ''), reader, () => work(group))));
    bar.at(i + 1);
  }
  bar.end();
  return lines;
}

/**
 * The names of the groups' folders: the key, then the wrench, technician or cylinder, in letters and digits that every
 * file system takes. A number is added to a name that is taken.
 */
export function groupFolders(
  groups: readonly Pick<ProcessGroup, 'specificationKey' | 'member' | 'mark'>[],
): readonly string[] {
  const taken = new Set<string>();
  return groups.map(({ specificationKey, member, mark }) => {
    const name = slug(`${specificationKey} ${member}${mark === null ? '' : ` ${mark}`}`);
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
  reader: PaperReader,
  work: () => ProcessWork,
): Promise<readonly string[]> {
  const pictures = madeFor(reader, () => {
    const { histogram, control } = work().charts;
    return [
      ['histogram.svg', chartSvg(histogram, PICTURE)] as const,
      ...(control.ok
        ? [
            ['individuals.svg', chartSvg(control.value.individuals, PICTURE)] as const,
            ['ranges.svg', chartSvg(control.value.ranges, PICTURE)] as const,
          ]
        : []),
    ];
  });
  const pdf = await writePaper(() => work().paper, { reader });
  return writeFiles(folder, [['capability.pdf', pdf], ...pictures]);
}
