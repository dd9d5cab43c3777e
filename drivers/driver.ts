import type { Observable } from 'rxjs';
import type { Problem } from '../src/problem.ts';
import type {
  DeviceRefusal,
  FigureSource,
  LinkState,
  Quantity,
  Reading,
  ToolDescription,
  ToolId,
} from '../src/reading.ts';
import type { Result } from '../src/result.ts';

export type { LinkState } from '../src/reading.ts';

/** What a driver can promise of the readings' time stamps. */
export interface Timing {
  /** `arrival`: stamped when the packet came in; `device`: the tool's own clock; `none`: typed by hand. */
  readonly stamps: 'arrival' | 'device' | 'none';
  /** Worst usual error of a stamp, in milliseconds; undefined when nobody knows. */
  readonly jitterMs?: number;
}

/** One tool of the station, joined through one driver. */
export interface Tool {
  readonly id: ToolId;
  readonly driver: string;
  readonly quantity: Quantity;
  /** Where its figures come from, as far as the driver knows. */
  readonly source: FigureSource;
  readonly timing: Timing;
  /** Hot; replays the latest state to a late subscriber. */
  readonly link$: Observable<LinkState>;
  /** Hot; completes when the tool is closed. Subscribe before `connect`, nothing is buffered. */
  readonly readings$: Observable<Reading>;
  /** Hot; devices that were not taken for the tool although they look like it, each with the reason. */
  readonly refusals$?: Observable<DeviceRefusal>;
  /** Starts seeking; resolves at the first link, or with the problem that makes every further attempt useless. */
  connect(): Promise<Result<ToolDescription, Problem>>;
  /** Ends the link and completes the streams; harmless when called twice. */
  close(): Promise<void>;
}

/** The station's monotonic clock. A simulation puts its own in its place. */
export interface Clock {
  /** Whole microseconds since an arbitrary origin. */
  readonly nowUs: () => number;
}
