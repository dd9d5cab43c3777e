import type { Field } from './candidate.ts';
import type { Parts } from './observed.ts';

// What is beside the number: bytes and bits that never change, and counters.

export const allFrames = ({ rest, stated }: Parts): readonly Buffer[] => [
  ...rest,
  ...stated.flatMap(({ frames }) => frames),
];

export const isConstant = (frames: readonly Buffer[], at: number): boolean =>
  frames.every((frame) => frame[at] === frames[0]?.[at]);

/** Rises by one from frame to frame, within each part. */
export const isCounter = (parts: Parts, numberIn: (frame: Buffer) => number, span: number): boolean =>
  [parts.rest, ...parts.stated.map(({ frames }) => frames)].every((frames) =>
    frames.every((frame, i) => {
      const before = frames[i - 1];
      return before === undefined || numberIn(frame) === (numberIn(before) + 1) % span;
    }),
  );

/** A bit that was always set is taken for what makes the number count; one that was always clear stays undescribed. */
export function constantBits(word: number, bits: readonly number[]): readonly Field[] {
  return bits
    .filter((bit) => Math.floor(word / 2 ** bit) % 2 === 1)
    .map((bit) => ({ is: 'flag', bit, means: 'valid' }));
}

/** The other bits of a word; undefined where some change and are no counter. */
export function bitParts(
  parts: Parts,
  wordIn: (frame: Buffer) => number,
  width: number,
  own: { readonly bit: number; readonly bits: number },
): readonly Field[] | undefined {
  const words = allFrames(parts).map(wordIn);
  const bitOf = (word: number, bit: number) => Math.floor(word / 2 ** bit) % 2;
  const others = Array.from({ length: width }, (_, bit) => bit).filter(
    (bit) => bit < own.bit || bit >= own.bit + own.bits,
  );
  const changing = others.filter((bit) =>
    words.some((word) => bitOf(word, bit) !== bitOf(words[0] ?? 0, bit)),
  );
  const constant = constantBits(
    words[0] ?? 0,
    others.filter((bit) => !changing.includes(bit)),
  );
  const [lowest] = changing;
  if (lowest === undefined) return constant;
  const bits = (changing.at(-1) ?? lowest) - lowest + 1;
  const span = 2 ** bits;
  const counts = isCounter(parts, (frame) => Math.floor(wordIn(frame) / 2 ** lowest) % span, span);
  const isOwn = changing.length === bits;
  return counts && isOwn && bits >= 4
    ? [...constant, { is: 'counter', bit: lowest, bits, counts: 'frames' }]
    : undefined;
}
