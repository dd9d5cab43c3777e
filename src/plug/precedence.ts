import type { Problem } from '../problem.ts';
import { phrases, w } from '../words/catalogue.ts';
import type { Source, Specification } from './specification.ts';

/** The engine maker goes before the plug's box, the box before a general table: every publisher says so. */
const RANK: Readonly<Record<Source['kind'], number>> = {
  'engine-maker': 3,
  'plug-box': 2,
  'general-table': 1,
  'invented-example': 0,
};

export const SOURCE_WORDS: Readonly<Record<Source['kind'], string>> = phrases({
  'engine-maker': 'the engine maker',
  'plug-box': 'the plug box',
  'general-table': 'a general table',
  'invented-example': 'an invented example',
});

/** The problem of an order that works to a source while a better one is set aside; null when there is none. */
export function outranked({ source, also = [] }: Specification): Problem | null {
  const at = also.findIndex((other) => RANK[other.source.kind] > RANK[source.kind]);
  const better = also[at];
  if (better === undefined) return null;
  return {
    code: 'source-outranked',
    where: `specification.also[${at}].source.kind`,
    message: w`${SOURCE_WORDS[better.source.kind]} says ${better.torque}, which takes precedence over ${SOURCE_WORDS[source.kind]}`,
    next: w`Use the better source. Put the other one under "also".`,
  };
}
