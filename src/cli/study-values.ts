import { filter, finalize, map, merge, type Observable } from 'rxjs';
import type { Tool } from '../../drivers/driver.ts';
import { createPullDetector } from '../pull/detector.ts';
import type { FoundPull } from '../pull/pull.ts';
import type { PullDetector } from '../pull/pull-detector.ts';
import { settingsFor } from '../pull/settings.ts';
import { type LinkState, type Reading, scaled, type ToolDescription } from '../reading.ts';

/** What a tool gives to a study: a value in N·m or mm, or words about one that cannot be taken. */
export type StudyValue =
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'said'; readonly words: string };

/**
 * The values of a tool as a study takes them: each reading of a gauge, the peak of each pull of a wrench whose pulls come to
 * about `atNm`. Subscribe before the tool is connected.
 */
export function studyValues(tool: Tool, atNm: number): Observable<StudyValue> {
  let linked: { readonly description: ToolDescription; readonly detector: PullDetector } | null = null;
  const onLink = (link: LinkState): StudyValue | null => {
    if (link.state === 'linked') {
      const { description } = link;
      linked = { description, detector: createPullDetector(settingsFor(atNm, description)) };
      return said('The tool is there.');
    }
    if (link.state !== 'lost') return null;
    linked = null;
    return said(`The tool is lost: ${link.reason}. Waiting for it.`);
  };
  const onReading = (reading: Reading): StudyValue | null => {
    if (linked === null) return null;
    if (reading.kind === 'raw') return said('That is no figure that can be read.');
    if (reading.kind !== 'value') return null;
    const { description, detector } = linked;
    if (description.quantity === 'length') return value(scaled(reading.counts, description.exponent + 3));
    const nm = scaled(reading.counts, description.exponent);
    if (description.link.kind === 'keyboard') return value(nm);
    const found = detector.push(reading.atUs, nm);
    return found === null ? null : ofPull(found);
  };
  return merge(tool.link$.pipe(map(onLink)), tool.readings$.pipe(map(onReading))).pipe(
    filter((one) => one !== null),
    finalize(() => {
      linked = null;
    }),
  );
}

function ofPull({ cut, saturated, peakNm }: FoundPull): StudyValue {
  if (cut !== null) return said('The pull was cut off: once more.');
  return saturated ? said("The pull went to the end of the tool's scale: once more.") : value(peakNm);
}

const value = (one: number): StudyValue => ({ kind: 'value', value: one });
const said = (words: string): StudyValue => ({ kind: 'said', words });
