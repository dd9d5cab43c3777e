/** Names of a station for the completion of a shell. Somebody waits with a finger on the key: it is quick, or it says nothing. */
import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { jobNames, stationEvents } from '../../../db/names.ts';
import { logPath, usualFolder } from '../station/station-log.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { NAME_KINDS, type NameKind } from './offers.ts';

const MOST = 300;
const LONGEST = 120;
/** A name that could steer the terminal, or be read as several lines, is not offered. */
const UNSAFE = /[\p{C}\p{Zl}\p{Zp}]/u;

/** Prints the names of a kind, one a line; `words` are those of the command line so far. Nothing where anything is wrong. */
export async function complete(kind: string, words: readonly string[]): Promise<ExitCode> {
  const wanted = NAME_KINDS.find((one) => one === kind);
  const names = wanted === undefined ? [] : await namesOf(wanted, words).catch(() => []);
  const safe = [...new Set(names)].filter(isFit).slice(0, MOST);
  if (safe.length > 0) process.stdout.write(`${safe.join('\n')}\n`);
  return EXIT.done;
}

const isFit = (name: string) =>
  name !== '' && name.length <= LONGEST && !name.startsWith('-') && !UNSAFE.test(name);

async function namesOf(kind: NameKind, words: readonly string[]): Promise<readonly string[]> {
  const stationFile = optionValue('--station', words) ?? 'station.json';
  if (kind === 'tool') return toolsIn(stationFile);
  const log = logPath(optionValue('--data', words) ?? folderOf(stationFile));
  if (kind === 'job' || kind === 'open-job') return jobNames(log, kind === 'job' ? 'all' : 'open');
  const { thumbprint } = await import('../../evidence/jwk.ts');
  return (await stationEvents(log)).flatMap((event) => {
    if (kind === 'person' && event.type === 'person-recorded') return [event.person];
    if (kind === 'impact' && event.type === 'assessment-made') return [event.assessment];
    if (kind === 'study' && event.type === 'gauge-study-started') return [event.study];
    if (kind === 'kid' && 'key' in event && event.key !== null) return [thumbprint(event.key)];
    return [];
  });
}

/** `--option value`, `--option=value`, and what bash makes of that: three words. Quotes are as they were typed. */
function optionValue(option: string, words: readonly string[]): string | undefined {
  const at = words.findIndex((word) => word === option || word.startsWith(`${option}=`));
  if (at === -1) return undefined;
  const own = words[at]?.slice(option.length + 1);
  const next = words[at + 1] === '=' ? words[at + 2] : words[at + 1];
  return (own || next)?.replace(/^(["'])(.*)\1$/, '$2').replace(/\\(.)/g, '$1');
}

function toolsIn(stationFile: string): readonly string[] {
  const { tools } = fieldsOf(JSON.parse(readFileSync(stationFile, 'utf8')));
  return (Array.isArray(tools) ? tools : []).flatMap((tool) => fieldsOf(tool)['id']).filter(isText);
}

function folderOf(stationFile: string): string {
  const { data, station } = fieldsOf(JSON.parse(readFileSync(stationFile, 'utf8')));
  if (isText(data)) return resolve(dirname(resolve(stationFile)), data);
  return usualFolder(isText(station) ? station : '');
}

/** As far as it is one: what is no station file has no names. */
const fieldsOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value)) : {};
const isText = (value: unknown): value is string => typeof value === 'string';
