import { sentence } from '../../src/words/catalogue.ts';
import { CHECKSUM_KINDS, type ChecksumKind, checksumOf, checksumSize } from '../profile/checksum.ts';
import type { Candidate, Field, Unexplained } from './candidate.ts';
import type { Observed, Parts } from './observed.ts';
import { scalesOf } from './scale-search.ts';

/** A line as figures and what is between them; blanks at both ends of a part belong to nothing. */
interface Line {
  readonly between: readonly string[];
  readonly figures: readonly string[];
}

/** Every layout of lines that explains each character. */
export function textLayouts(observed: Observed, { rest, stated }: Parts): readonly Candidate[] | Unexplained {
  const frames = [...rest, ...stated.flatMap((part) => part.frames)];
  const sum = findSum(frames);
  const body = (frame: Buffer) =>
    frame.toString('latin1', 0, frame.length - (sum === undefined ? 0 : 2 * checksumSize(sum)));
  const lines = frames.map((frame) => lineOf(body(frame)));
  const [first] = lines;
  if (first === undefined || !lines.every(({ between }) => between.join('\0') === first.between.join('\0')))
    return { why: 'bytes-unexplained', bytes: [] };
  const parts = stated.map(({ figure, frames: own }) => ({
    figure,
    lines: own.map((frame) => lineOf(body(frame))),
  }));
  const still = rest.map((frame) => lineOf(body(frame)));
  const candidates: Candidate[] = [];
  for (const [n, sample] of first.figures.entries()) {
    const decimals = decimalsOf(sample);
    const points = parts.map(({ figure, lines: own }) => ({
      figure,
      number: extreme(
        observed,
        own.map((line) => numberOf(line.figures[n])),
      ),
    }));
    if (points.some(({ number }) => Number.isNaN(number))) continue;
    const largest = Math.max(...points.map(({ number }) => Math.abs(number)));
    if (
      observed.quantity === 'torque' &&
      still.some((line) => Math.abs(numberOf(line.figures[n])) > 0.03 * largest)
    )
      continue;
    const others = first.figures.map((_, i) =>
      i === n ? null : otherOf([still, ...parts.map((part) => part.lines)], i),
    );
    if (
      others.some((other) => other === undefined) ||
      lines.some((line) => decimalsOf(line.figures[n] ?? '') !== decimals)
    )
      continue;
    for (const { scale, unit } of scalesOf(
      observed,
      points.map(({ figure, number }) => ({ figure, number: number * 10 ** decimals })),
      true,
    )) {
      // Of a text the number itself is worth 1 of its unit.
      if (Number(scale) !== 10 ** -decimals) continue;
      const value = {
        is: 'value',
        unit,
        resolution: scale,
        ...(sample.includes(',') && { decimalMark: ',' }),
      };
      const fields = fieldsOf(first, n, value, others, sum);
      candidates.push({
        layout: { of: 'text', fields },
        summary: sentence`figure ${n + 1} of the line, in ${unit}`,
        size: n,
        isSigned: true,
        reads: `${n} ${unit}`,
      });
    }
  }
  return candidates.length > 0 ? candidates : { why: 'no-figure', bytes: [] };
}

function lineOf(text: string): Line {
  const between: string[] = [];
  const figures: string[] = [];
  let at = 0;
  for (const match of text.matchAll(/[+-]? *[0-9]+([.,][0-9]+)?/g)) {
    between.push(text.slice(at, match.index).trim());
    figures.push(match[0]);
    at = match.index + match[0].length;
  }
  return { between: [...between, text.slice(at).trim()], figures };
}

const numberOf = (figure: string | undefined) =>
  Number((figure ?? '').replaceAll(' ', '').replace(',', '.') || Number.NaN);
const decimalsOf = (figure: string) => figure.split(/[.,]/)[1]?.length ?? 0;

function extreme({ quantity }: Observed, numbers: readonly number[]): number {
  if (quantity === 'length') return numbers.at(-1) ?? Number.NaN;
  return numbers.reduce((most, number) => (Math.abs(number) > Math.abs(most) ? number : most), 0);
}

/** What another figure of the line is: always the same, or a counter of so many digits. */
function otherOf(parts: readonly (readonly Line[])[], i: number): Field | undefined {
  const texts = parts.flatMap((lines) => lines.map(({ figures }) => figures[i] ?? ''));
  const [first = ''] = texts;
  if (texts.every((text) => text === first)) return { is: 'text', text: first };
  if (!texts.every((text) => /^[0-9]+$/.test(text) && text.length === first.length)) return undefined;
  const span = 10 ** first.length;
  const rises = parts.every((lines) =>
    lines.every(
      ({ figures }, k) => k === 0 || Number(figures[i]) === (Number(lines[k - 1]?.figures[i]) + 1) % span,
    ),
  );
  return rises ? { is: 'counter', digits: first.length, counts: 'frames' } : undefined;
}

function fieldsOf(
  line: Line,
  n: number,
  value: Field,
  others: readonly (Field | null | undefined)[],
  sum: ChecksumKind | undefined,
): readonly Field[] {
  const fields: Field[] = [];
  for (const [i, text] of line.between.entries()) {
    if (i > 0 || text !== '') fields.push({ is: 'blanks' });
    if (text !== '') fields.push({ is: 'text', text });
    const other = others[i];
    if (i === n) fields.push(value);
    else if (other !== null && other !== undefined) fields.push({ is: 'blanks' }, other);
  }
  if (sum !== undefined) fields.push({ is: 'checksum', kind: sum });
  // A line begins with its first text, so that a piece of one shows.
  return fields[0]?.['is'] === 'blanks' ? fields.slice(1) : fields;
}

function findSum(frames: readonly Buffer[]): ChecksumKind | undefined {
  const distinct = new Set(frames.map((frame) => frame.toString('latin1')));
  if (distinct.size < 6) return undefined;
  return CHECKSUM_KINDS.find((kind) => {
    const digits = 2 * checksumSize(kind);
    const sum = checksumOf(kind);
    return frames.every((frame) => {
      const at = frame.length - digits;
      const text = frame.toString('latin1', at);
      return at > 0 && /^[0-9a-fA-F]+$/.test(text) && Number.parseInt(text, 16) === sum(frame, 0, at, at, at);
    });
  });
}
