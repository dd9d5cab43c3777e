/** The records of one station, as questions are asked of them. */
import type { StationLogFile } from '../../../db/log.ts';
import type { Records } from '../../audit/records.ts';
import { stationOf } from '../../evidence/station.ts';

export function recordsOf(log: Pick<StationLogFile, 'history' | 'stationEntries'>): Records {
  const { history } = log;
  /** What throws at once is a promise that is refused. */
  const asked = <T>(answer: () => T): Promise<T> => new Promise((resolve) => resolve(answer()));
  return {
    stations: () =>
      asked(() => {
        const entries = log.stationEntries();
        return [{ log: null, name: stationOf(entries)?.name ?? '', entries }];
      }),
    attemptsOf: (filter) => asked(() => history.attemptsOf(filter)),
    attemptsIn: (jobs) =>
      asked(() => jobs.flatMap(({ stream }) => history.attemptsOf({ job: stream.replace(/^job:/, '') }))),
    processOf: (filter) => asked(() => history.processOf(filter)),
    jobsOf: (filter) => asked(() => history.jobsOf(filter)),
    setupsOf: (keys) => asked(() => new Map([...keys].map((key) => [key, history.setupOf(key)]))),
    specifications: () => asked(() => history.specifications()),
    toolUse: (tool, from) => asked(() => history.useSince(tool, from)),
  };
}
