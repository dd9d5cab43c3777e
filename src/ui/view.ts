import type { Forecast } from '../job/forecast.ts';
import type { JobState } from '../job/state.ts';
import type { LiveTorque } from '../pipeline/live.ts';
import type { FigureSource } from '../reading.ts';
import type { PullTimes } from './exceptions.ts';

export type { LiveTorque };

/** All that the screen shows; the screen computes nothing that a verdict rests on. */
export interface BenchView {
  readonly station: string;
  readonly job: JobState;
  readonly live: LiveTorque;
  /** What the wrench can prove, before the first pull. */
  readonly forecast: Forecast | null;
  /** Entries on disk: the screen says so because a verdict is worth what is kept. */
  readonly logEntries: number;
  /** When each pull was on disk. */
  readonly pullTimes: PullTimes;
  /** Another program holds the log: what came since is not shown yet. */
  readonly waits?: boolean;
  /** Where figures of the tools at the bench come from; the screen must say at all times what proves nothing. */
  readonly sources: readonly FigureSource[];
}
