import { join } from 'node:path';
import type { Command } from 'commander';
import { outputFolder, writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { spokenLanguage, w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { commandsPage } from './commands-page.ts';
import type { Page } from './page.ts';
import { manName, manSection, roffOfPage } from './page-roff.ts';
import { textOfPage } from './page-text.ts';
import { isTopic, TOPICS, topicPage } from './topics.ts';
import { programVersion } from './version.ts';

interface ManualOptions {
  readonly roff?: true;
  readonly out?: string;
}

/** The page of the commands stands beside the topics. */
const COMMANDS = 'commands';

/** Prints a topic, or the list of topics; with `--roff` as a page for man, with `--out` all pages into a folder. */
export async function manual(
  program: Command,
  topic: string | undefined,
  { roff, out }: ManualOptions,
): Promise<ExitCode> {
  if (out !== undefined) return await writePages(program, out);
  if (topic === undefined && roff !== true) {
    process.stdout.write(topicList(program));
    return EXIT.done;
  }
  const page = pageNamed(program, topic ?? COMMANDS);
  process.stdout.write(
    roff === true
      ? roffOfPage(page, programVersion())
      : inEnglish() + textOfPage(page, { columns: process.stdout.columns || 80, bold: showsBold() }),
  );
  return EXIT.done;
}

const showsBold = () =>
  process.stdout.isTTY === true &&
  process.env['TERM'] !== 'dumb' &&
  (process.env['NO_COLOR'] === undefined || process.env['NO_COLOR'] === '');

/** All pages: those of the topics, then that of the commands. */
export const allPages = (program: Command): readonly Page[] => [
  ...TOPICS.map(topicPage),
  commandsPage(program),
];

/** To whoever reads another language; the topics are long, and change with the program. */
const inEnglish = () =>
  spokenLanguage() === 'en'
    ? ''
    : `${w`The topics of the manual are in English. The help of every command (--help) is not.`}\n\n`;

function topicList(program: Command): string {
  const pages = allPages(program);
  const widest = Math.max(...pages.map(({ name }) => name.length));
  const rows = pages.map(({ name, about }) => `  ${name.padEnd(widest)}  ${about}`);
  return `${inEnglish()}plugmark ${programVersion()}\n\nplugmark manual TOPIC\n\n${rows.join('\n')}\n\n${w`Every command also has --help.`}\n`;
}

function pageNamed(program: Command, name: string): Page {
  if (name === COMMANDS) return commandsPage(program);
  if (isTopic(name)) return topicPage(name);
  throw new ProblemError({
    code: 'option-not-valid',
    message: w`the manual has no topic "${name}"`,
    next: w`Choose one of: ${[...TOPICS, COMMANDS].join(', ')}.`,
  });
}

/** Where man looks for them: man1/plugmark.1, man7/plugmark-TOPIC.7. */
function writePages(program: Command, folder: string): ExitCode {
  for (const page of allPages(program)) {
    const section = manSection(page);
    const place = join(folder, `man${section}`);
    outputFolder(place);
    writeWhole(join(place, `${manName(page)}.${section}`), roffOfPage(page, programVersion()));
  }
  process.stdout.write(w`Written to ${folder}: ${TOPICS.length + 1} pages.\n`);
  return EXIT.done;
}
