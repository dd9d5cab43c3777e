import { type Problem, problemFromZod } from '../../src/problem.ts';
import type { Reading } from '../../src/reading.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { FORM, type Header, headerSchema, type Line, lineSchema } from './schema.ts';

/** A recording as it was read back; see schema.ts for the form of the file. */
export interface Recording {
  readonly header: Header;
  readonly readings: readonly Reading[];
}

const CODE = 'recording-line';
const NEXT = 'Repair the named line or record again; nothing of the file was used.';

/** `file` is only named in problems, as `file:line`. The first fault ends it: half a recording is none. */
export function parseRecording(text: string, file: string): Result<Recording, Problem> {
  const lines = text.split('\n');
  if (lines.at(-1) === '') lines.pop();
  const header = parseHeader(lines[0] ?? '', `${file}:1`);
  if (!header.ok) return header;

  const readings: Reading[] = [];
  let lastUs = Number.NEGATIVE_INFINITY;
  for (const [index, source] of lines.entries()) {
    if (index === 0) continue;
    const where = `${file}:${index + 1}`;
    const line = parseLine(source, where);
    if (!line.ok) return line;
    if (line.value.kind === 'end') {
      return finish(header.value, readings, line.value.readings, lines.length - index - 1, where);
    }
    for (const reading of readingsOf(line.value)) {
      const fault =
        orderFault(reading, readings.length + 1, lastUs) ?? angleFault(reading, header.value.description);
      if (fault !== undefined) return err({ code: CODE, where, message: fault, next: NEXT });
      readings.push(reading);
      lastUs = reading.atUs;
    }
  }
  return err({
    code: 'recording-cut-short',
    where: `${file}:${lines.length}`,
    message: `the recording has no end line; at least ${readings.length} readings were recorded`,
    next: `Record again, or accept what is there by adding the line {"kind":"end","readings":${readings.length}}.`,
  });
}

function parseHeader(source: string, where: string): Result<Header, Problem> {
  const json = parseJson(source, where);
  if (!json.ok) return json;
  const { value } = json;
  const form = typeof value === 'object' && value !== null && 'form' in value ? value.form : undefined;
  if (form !== FORM) {
    return err({
      code: 'recording-form',
      where,
      message: `this is not a recording of the form ${FORM}`,
      next: 'Choose a file that plugmark recorded, or use the version of plugmark that wrote this one.',
    });
  }
  const parsed = headerSchema.safeParse(value);
  return parsed.success ? ok(parsed.data) : err(problemFromZod(parsed.error, where, CODE, NEXT));
}

function parseLine(source: string, where: string): Result<Line, Problem> {
  const json = parseJson(source, where);
  if (!json.ok) return json;
  const parsed = lineSchema.safeParse(json.value);
  return parsed.success ? ok(parsed.data) : err(problemFromZod(parsed.error, where, CODE, NEXT));
}

function parseJson(source: string, where: string): Result<unknown, Problem> {
  try {
    return ok(JSON.parse(source));
  } catch {
    return err({ code: CODE, where, message: 'the line is not JSON', next: NEXT });
  }
}

function readingsOf(line: Exclude<Line, { kind: 'end' }>): readonly Reading[] {
  if (line.kind !== 'values') return [line];
  // The schema has made sure that both lists are equally long.
  return line.counts.map((counts, i) => {
    const angleCounts = line.angleCounts?.[i];
    return {
      kind: 'value',
      n: line.n + i,
      atUs: line.atUs[i] ?? Number.NaN,
      counts,
      ...(angleCounts !== undefined && { angleCounts }),
    };
  });
}

function orderFault(reading: Reading, n: number, lastUs: number): string | undefined {
  if (reading.n !== n) return `Expected reading number ${n}, found ${reading.n}.`;
  if (reading.atUs < lastUs)
    return `Reading ${n} is stamped ${reading.atUs} µs, before the one in front of it.`;
  if (reading.kind === 'missed' && reading.fromUs > reading.atUs)
    return `The gap of reading ${n} ends before it begins.`;
  return undefined;
}

function angleFault(reading: Reading, { angle }: Header['description']): string | undefined {
  return angle === undefined && 'angleCounts' in reading
    ? `Reading ${reading.n} has an angle, but the description of the tool names none.`
    : undefined;
}

function finish(
  header: Header,
  readings: readonly Reading[],
  declared: number,
  linesAfter: number,
  where: string,
): Result<Recording, Problem> {
  const fault =
    linesAfter > 0
      ? `Expected nothing after the end line, found ${linesAfter} more lines.`
      : `The end line counts ${declared} readings, but ${readings.length} are there.`;
  return linesAfter === 0 && declared === readings.length
    ? ok({ header, readings })
    : err({ code: CODE, where, message: fault, next: NEXT });
}
