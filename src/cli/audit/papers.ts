/** A paper of the audit desk on the terminal, and its files in a folder. */
import { join } from 'node:path';
import { outputFolder, writeWhole } from '../../files/output.ts';
import type { Paper } from '../../report/paper.ts';
import { paperLines } from '../../report/paper-text.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { screenColumns } from '../terminal/wrapped.ts';

/** How large the SVG pictures of charts are. */
export const PICTURE = { width: 900, height: 320 } as const;

export function printPaper(paper: Paper): void {
  const lines = paperLines(paper, { columns: screenColumns(), ascii: !speaksUtf8() });
  process.stdout.write(`${lines.join('\n')}\n`);
}

/** Writes files by their names; the lines that say where they are. */
export function writeFiles(
  folder: string,
  files: readonly (readonly [name: string, content: string | Uint8Array])[],
): readonly string[] {
  outputFolder(folder);
  for (const [name, content] of files) writeWhole(join(folder, name), content);
  return ['', w`Written into ${safeLine(folder)}: ${files.map(([name]) => name).join(', ')}`];
}
