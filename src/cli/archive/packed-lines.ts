/** Answers of an archive that are lines of text, packed by gzip. */
import { Readable } from 'node:stream';
import { createGunzip } from 'node:zlib';
import { MAX_REQUEST_BYTES } from '../../archive/bundle.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';

/** A line that is silent for so long is broken. */
const PATIENCE_MS = 120_000;

/** Breaks off where nothing comes for long. */
export async function* patiently(
  body: AsyncIterable<Uint8Array>,
  broken: AbortController,
): AsyncIterable<Uint8Array> {
  const silent = () => broken.abort(new DOMException(w`silent for too long`, 'TimeoutError'));
  let timer = setTimeout(silent, PATIENCE_MS);
  try {
    for await (const part of body) {
      clearTimeout(timer);
      yield part;
      timer = setTimeout(silent, PATIENCE_MS);
    }
  } finally {
    clearTimeout(timer);
  }
}

/** The lines of what is packed; none is longer than a request with it could have been. */
export async function* linesOf(
  packed: AsyncIterable<Uint8Array>,
  otherwise: { readonly broken: Problem; readonly tooLong: Problem },
): AsyncGenerator<string, void> {
  const text = Readable.from(packed).pipe(createGunzip());
  let parts: Uint8Array[] = [];
  let bytes = 0;
  try {
    for await (const part of text as AsyncIterable<Uint8Array>) {
      let from = 0;
      for (let end = part.indexOf(LINE_FEED); end >= 0; end = part.indexOf(LINE_FEED, from)) {
        yield Buffer.concat([...parts, part.subarray(from, end)]).toString('utf8');
        parts = [];
        bytes = 0;
        from = end + 1;
      }
      parts.push(part.subarray(from));
      bytes += part.length - from;
      if (bytes > MAX_REQUEST_BYTES) throw new ProblemError(otherwise.tooLong);
    }
  } catch (cause) {
    throw cause instanceof ProblemError ? cause : new ProblemError(otherwise.broken, { cause });
  }
}
const LINE_FEED = 0x0a;
