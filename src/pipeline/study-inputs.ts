import { map, merge, mergeMap, type Observable } from 'rxjs';
import type { SittingInput } from '../audit/gauge-sitting.ts';
import { createPullDetector } from '../pull/detector.ts';
import type { DetectedPull } from '../pull/pull.ts';
import type { PullDetector } from '../pull/pull-detector.ts';
import { settingsFor } from '../pull/settings.ts';
import { type LinkState, type Reading, scaled, type ToolDescription } from '../reading.ts';
import { w } from '../words/catalogue.ts';
import type { JobTool } from './run-job.ts';

/**
 * Nobody reaches the next part sooner. A send key pressed twice, or a wrench clicked twice, would give the second reading to
 * the wrong part, and shift all that follow. Practice, no source.
 */
const NEXT_GAUGED_US = 1_000_000;
const NEXT_PULLED_US = 2_000_000;

/** A joined tool; every driver's tool fits. */
export type StudyTool = Pick<JobTool, 'source' | 'link$' | 'readings$'>;

/**
 * What a tool sends, as a study takes it: its link, each reading of a gauge, the peak of each pull of a wrench that pulls to
 * about `atNm`, and the torque meanwhile. Subscribe before the tool is connected.
 */
export function studyInputs(tool: StudyTool, atNm: number): Observable<SittingInput> {
  let linked: { readonly description: ToolDescription; readonly detector: PullDetector } | null = null;
  let isStopped = false;
  let takenUs = Number.NEGATIVE_INFINITY;
  const onLink = (link: LinkState): SittingInput => {
    if (link.state === 'linked') {
      isStopped = false;
      const { description } = link;
      linked = { description, detector: createPullDetector(settingsFor(atNm, description)) };
    } else if (link.state === 'lost') linked = null;
    return { kind: 'link', link };
  };
  const taken = (value: number, fromUs: number, toUs: number, leastUs: number): SittingInput => {
    if (fromUs - takenUs < leastUs) return refused(w`Too soon after the last reading: not taken.`);
    takenUs = toUs;
    return { kind: 'value', value, source: tool.source };
  };
  const ofPull = (pull: DetectedPull): SittingInput => {
    const { cut, saturated, peakNm, startUs, endUs } = pull;
    if (cut !== null) return refused(w`The pull was cut off. Pull again.`);
    if (saturated) return refused(w`The pull reached the end of the tool's scale. Pull again.`);
    if (peakNm < 0) return refused(w`That pull loosened: not taken.`);
    return taken(peakNm, startUs, endUs, NEXT_PULLED_US);
  };
  const onReading = (reading: Reading): readonly SittingInput[] => {
    if (linked === null) return [];
    const { description, detector } = linked;
    const gauge = description.quantity === 'length';
    if (reading.kind === 'contradicted') isStopped = true;
    if (isStopped) return [refused(w`The tool does not send what its profile says: not taken.`)];
    if (reading.kind === 'raw') return [refused(w`This is not a figure.`)];
    if (reading.kind === 'stored')
      return [
        refused(w`A reading from the memory of the tool is not taken: nobody saw which part it belongs to.`),
      ];
    if (reading.kind === 'not-known')
      return gauge ? [refused(w`The tool sent no value. Measure again.`)] : [];
    if (reading.kind !== 'value') return [];
    const { atUs, counts } = reading;
    const value = scaled(counts, description.exponent + (gauge ? 3 : 0));
    // What somebody types may come as fast as it likes.
    if (tool.source === 'typed') return [{ kind: 'value', value, source: tool.source }];
    if (gauge) return [taken(value, atUs, atUs, NEXT_GAUGED_US)];
    const pull = detector.push(atUs, value);
    const { nowNm, pulling } = detector.live();
    return [{ kind: 'live', nowNm: nowNm ?? 0, pulling }, ...(pull === null ? [] : [ofPull(pull)])];
  };
  return merge(tool.link$.pipe(map(onLink)), tool.readings$.pipe(mergeMap(onReading)));
}

const refused = (words: string): SittingInput => ({ kind: 'refused', words });
