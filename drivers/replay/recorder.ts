import type { Reading } from '../../src/reading.ts';
import type { Header, Line } from './schema.ts';

/** Value readings that may share a line: few enough that a crash loses little, enough to keep the file small. */
const BATCH = 100;

export interface Recorder {
  /** Readings in the order of their numbers, from 1. */
  add(reading: Reading): void;
  /** Writes what is held back and the end line; without it the recording counts as cut short. */
  end(): void;
}

/** Readings that follow each other, all with an angle or none. */
interface Batch {
  readonly n: number;
  readonly atUs: number[];
  readonly counts: number[];
  readonly angleCounts?: number[];
}

/** Writes a recording line by line; `write` gets each line with its line feed. See schema.ts for the form. */
export function recorder(header: Header, write: (line: string) => void): Recorder {
  const put = (line: Header | Line) => write(`${JSON.stringify(line)}\n`);
  let held: Batch | undefined;
  let readings = 0;
  const flush = () => {
    if (held !== undefined) put({ kind: 'values', ...held });
    held = undefined;
  };
  put(header);
  return {
    add: (reading) => {
      readings += 1;
      if (reading.kind !== 'value') {
        flush();
        put(reading);
        return;
      }
      const { n, atUs, counts, angleCounts } = reading;
      if ((held?.angleCounts === undefined) !== (angleCounts === undefined)) flush();
      held ??= { n, atUs: [], counts: [], ...(angleCounts === undefined ? {} : { angleCounts: [] }) };
      held.atUs.push(atUs);
      held.counts.push(counts);
      if (angleCounts !== undefined) held.angleCounts?.push(angleCounts);
      if (held.counts.length === BATCH) flush();
    },
    end: () => {
      flush();
      put({ kind: 'end', readings });
    },
  };
}
