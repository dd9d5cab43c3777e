/** Gauge studies as the log has them, built by hand. */
import type { StudyFinished, StudyStarted } from '../../src/audit/gauge-log.ts';
import type { StationEntry } from '../../src/evidence/log.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { stationEntry } from '../evidence/entries.ts';

/** Two appraisers, three parts, two trials. */
export const startedStudy = (order: number[][], more: Partial<StudyStarted> = {}): StudyStarted => ({
  type: 'gauge-study-started',
  study: 'GS-1',
  tool: 'gauge',
  serial: 'EXAMPLE-G-01',
  measures: { quantity: 'length', unit: 'mm' },
  appraisers: ['Ann', 'Ben'],
  parts: ['1', '2', '3'],
  trials: 2,
  order,
  ...more,
});

export const finishedStudy = (readings: number[][][], more: Partial<StudyFinished> = {}): StudyFinished => ({
  type: 'gauge-study-finished',
  study: 'GS-1',
  tool: 'gauge',
  serial: 'EXAMPLE-G-01',
  unit: 'mm',
  appraisers: ['Ann', 'Ben'],
  parts: ['1', '2', '3'],
  readings,
  ...more,
});

/** Entries as the log gives them back. */
export const logged = (events: readonly StationEvent[]): readonly StationEntry[] =>
  events.map((event, i) =>
    stationEntry(event, {
      seq: i + 1,
      at: `2026-11-25T16:00:00.${String(i % 1000).padStart(3, '0')}Z`,
      monoUs: i,
    }),
  );
