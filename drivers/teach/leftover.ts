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

/** Bits that never changed must stay as they were: what they say when they change, the lesson did not show. */
export function constantBits(word: number, bits: readonly number[]): readonly Field[] {
  const runs: number[][] = [];
  for (const bit of bits.toSorted((one, other) => one - other)) {
    const run = runs.at(-1);
    if (run?.at(-1) === bit - 1) run.push(bit);
    else runs.push([bit]);
  }
  return runs.map(([bit = 0, ...more]) => {
    const width = more.length + 1;
    return { is: 'fixed', bit, bits: width, number: Math.floor(word / 2 ** bit) % 2 ** width };
  });
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
