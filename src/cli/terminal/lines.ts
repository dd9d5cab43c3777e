import type { Readable } from 'node:stream';

/** Nothing that somebody types, and no tool that types, sends a longer line; reading one without an end would stop all else. */
export const LONGEST_LINE = 4096;

export interface Hearing {
  readonly line: (text: string) => void;
  /** A line that was longer, and is not taken. */
  readonly tooLong: () => void;
  readonly end?: () => void;
}

/** Lines of a stream as they come. The function returned stops listening. */
export function hearLines(input: Readable, { line, tooLong, end = () => {} }: Hearing): () => void {
  let rest = '';
  let skips = false;
  const take = (text: string, isWhole: boolean) => {
    if (!skips) rest += text.slice(0, LONGEST_LINE + 1 - rest.length);
    if (!skips && rest.length > LONGEST_LINE) {
      skips = true;
      rest = '';
      tooLong();
    }
    if (!isWhole) return;
    const whole = rest.replace(/\r$/, '');
    const isLine = !skips;
    rest = '';
    skips = false;
    if (isLine) line(whole);
  };
  const onData = (chunk: string) => {
    const parts = chunk.split('\n');
    for (const [i, part] of parts.entries()) take(part, i < parts.length - 1);
  };
  const onEnd = () => {
    if (rest !== '') take('', true);
    end();
  };
  // Somebody may have read the beginning, and paused it there.
  input.setEncoding('utf8').on('data', onData).on('end', onEnd).resume();
  return () => {
    input.off('data', onData).off('end', onEnd).pause();
  };
}
