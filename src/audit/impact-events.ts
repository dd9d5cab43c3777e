/** What an impact assessment puts into the log: what the laboratory found, the assessment, and its end where every proof holds. */

import type { StationEvent } from '../evidence/station-event.ts';
import type { Certificate } from '../instrument/certificate.ts';
import { sourcesOf } from '../reading.ts';
import type { JudgedAgain } from './impact.ts';
import type { Assessment } from './impact-items.ts';
import type { Span } from './impact-span.ts';
import type { ImpactAssessment } from './impact-state.ts';

export interface AssessmentInput {
  /** The number of the assessment. */
  readonly assessment: string;
  readonly tool: string;
  readonly asFound: Certificate;
  /** SHA-256 of the file of what was found. */
  readonly digest: string;
  readonly span: Span;
  /** The earlier impact assessments on the same file. */
  readonly before: readonly ImpactAssessment[];
}

export function assessmentEvents(
  judged: readonly JudgedAgain[],
  { attempts, stillIn, doubtful, out, items }: Assessment,
  { assessment, tool, asFound, digest, span, before }: AssessmentInput,
): readonly StationEvent[] {
  const { serial, foundOn, lastGood } = span;
  const assessed: StationEvent = {
    type: 'assessment-made',
    assessment,
    tool,
    serial,
    asFound: asFound.number,
    digest,
    lastGood: lastGood && { number: lastGood.number, date: lastGood.date },
    foundOn,
    from: firstDay(judged, span, before),
    to: lastDay(judged, foundOn),
    sources: sourcesOf(judged.map(({ row }) => row.source)),
    attempts,
    stillIn,
    doubtful,
    out,
    items: [...items],
  };
  const recorded: StationEvent = { type: 'as-found-recorded', tool, asFound, digest };
  return items.length > 0
    ? [recorded, assessed]
    : [recorded, assessed, { type: 'assessment-closed', assessment }];
}

/** One that goes on from another starts with what it took up; one that looks further back starts with its check. */
function firstDay(
  judged: readonly JudgedAgain[],
  { from }: Span,
  before: readonly ImpactAssessment[],
): string {
  const goesOn = before.some(({ assessed }) => assessed.from <= from);
  return goesOn ? (judged.map(({ row }) => row.day).sort()[0] ?? from) : from;
}

/** A tool may have been used on under the old certificate after the finding. */
const lastDay = (judged: readonly JudgedAgain[], foundOn: string): string =>
  [foundOn, ...judged.map(({ row }) => row.day)].sort().at(-1) ?? foundOn;
