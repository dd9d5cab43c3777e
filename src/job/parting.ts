/** Where a job as it was recorded and the same job judged again part. */
import type { Problem } from '../problem.ts';
import { w } from '../words/catalogue.ts';
import type { JobEvent } from './event.ts';

/** Each edition of the rules gives these for ever; a later one may add some. */
export const PARTINGS = [
  'no-opening',
  'event-not-known',
  'not-to-be-opened',
  'other-windows',
  'from-nothing',
  'other-than-readings',
  'left-out',
  'readings-not-in-order',
  'source-not-of-link',
  'not-an-input',
  'not-to-be-accepted',
  'other-than-input',
  'other-close',
] as const;
export type PartingCode = (typeof PARTINGS)[number];

export interface Parting {
  /** Number of the event among those of the job, from 1; one beyond the last where something is missing at the end. */
  readonly position: number;
  readonly code: PartingCode;
  /** Type of the event that is there, or that is missing. */
  readonly event: string;
}

/** The same as a problem of whoever wants to go on with the job. */
export interface PartedProblem extends Problem {
  readonly parting: Parting;
}

const WORDS: { readonly [C in PartingCode]: (event: string) => string } = {
  'no-opening': () => w`the job does not start with its opening`,
  'event-not-known': (event) => w`these rules know no ${event}`,
  'not-to-be-opened': () => w`it could not have been opened so`,
  'other-windows': () => w`its windows are not what the order and the instruments give`,
  'from-nothing': (event) => w`${event}, but the readings give nothing here`,
  'other-than-readings': (event) => w`${event} is not what the readings give`,
  'left-out': (event) => w`${event} is missing here`,
  'readings-not-in-order': (event) => w`the readings in ${event} do not follow the last ones`,
  'source-not-of-link': (event) => w`the source in ${event} does not fit the kind of its link`,
  'not-an-input': (event) => w`${event} cannot have come from a tool`,
  'not-to-be-accepted': (event) => w`${event} would have been refused here`,
  'other-than-input': (event) => w`${event} is not what the job writes here`,
  'other-close': () => w`the close of the job does not follow from its events`,
};

export const partingText = ({ code, event }: Pick<Parting, 'code' | 'event'>): string => WORDS[code](event);

/** `because` is what the rules themselves had to say, where they did. */
export function partedProblem(
  position: number,
  code: PartingCode,
  event: JobEvent['type'],
  because?: string,
): PartedProblem {
  const text = partingText({ code, event });
  return {
    code: 'judged-otherwise',
    where: w`event ${position}`,
    message: because === undefined ? text : `${text}: ${because}`,
    next: w`Do not rely on this record; keep it and ask the station for its log.`,
    parting: { position, code, event },
  };
}
