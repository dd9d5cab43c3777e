/** A station on which a gauge is studied, and somebody who sits down to it in plain lines. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { afterEach, beforeEach, onTestFinished, vi } from 'vitest';
import { openStationLog } from '../../../db/log.ts';
import { Gauge } from '../../../sim/physics/gauge.ts';
import { Random } from '../../../sim/random.ts';
import { runStudy, type StudyOptions } from '../../../src/cli/study/gauge-study.ts';
import { showStudy } from '../../../src/cli/study/study-list.ts';
import type { StationEvent } from '../../../src/evidence/station-event.ts';
import { said } from '../answers.ts';

export const GAUGE = {
  id: 'gauge',
  quantity: 'length',
  serial: 'EXAMPLE-G-01',
  resolution: 0.001,
  basis: 'data sheet',
  permissibleDeviation: { kind: 'absolute', amount: 0.01 },
  driver: { use: 'typed', unit: 'mm' },
};
export const SIZE = { tool: 'gauge', appraisers: 'Ann,Ben', parts: '3', trials: 2 };

/** A station with a gauge whose values are typed, a new one for each test. */
export function studyStation() {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'study-'));
    stationWith(GAUGE);
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const stationFile = () => join(folder, 'station.json');
  const logFile = () => join(folder, 'data', 'station.db');
  /** What the log holds of studies. */
  async function studyEvents() {
    const log = await openStationLog(logFile());
    try {
      return log.stationEntries().flatMap(({ event }) => ('study' in event ? [event] : []));
    } finally {
      log.close();
    }
  }
  /** Another program at the same station, as it stands there: it has read the log, and adds to it. */
  async function otherProgram() {
    const log = await openStationLog(logFile());
    onTestFinished(() => log.close());
    return (event: StationEvent) => {
      log.stationEntries();
      log.appendStation([{ by: 'station', event }], { at: '2026-11-25T16:00:00.000Z', monoUs: 0 });
    };
  }
  function stationWith(tool: object): void {
    const station = { form: 'plugmark/station/1', station: 'Example garage', data: 'data', tools: [tool] };
    writeFileSync(stationFile(), JSON.stringify(station));
  }

  /** Somebody who sits down in plain lines, and answers the lines that ask for a part; null ends the input. */
  async function sitting(
    answer: (part: string, asked: number) => string | null,
    more: Partial<StudyOptions> = SIZE,
  ) {
    const input = new PassThrough();
    let asked = 0;
    let text = '';
    const hear = (line: string) => {
      const part = /measure part (\S+)/.exec(line)?.[1];
      const typed = part === undefined ? '' : answer(part, ++asked);
      if (typed === null) input.end();
      else if (part !== undefined || line.startsWith('All is measured')) input.write(`${typed}\n`);
    };
    const spy = vi.spyOn(process.stdout, 'write').mockImplementation((chunk) => {
      text += String(chunk);
      for (const line of String(chunk).split('\n')) hear(line);
      return true;
    });
    const options = { station: stationFile(), parts: '10', trials: 3, plain: true, ...more } as const;
    const code = await runStudy(options, input).finally(() => spy.mockRestore());
    return { code, text };
  }

  const show = (study: string) => said(() => showStudy(study, { station: stationFile() }));

  return {
    at: (name: string) => join(folder, name),
    stationFile,
    stationWith,
    studyEvents,
    otherProgram,
    sitting,
    show,
  };
}

/** Presses the button of the simulated gauge on the part that a line asks for. */
export function gauging() {
  const gauge = new Gauge({ biasMm: 0, repeatabilityMm: 0.004, resolutionMm: 0.001 }, new Random(3));
  return (part: string) => String(gauge.measure(0.5 + 0.1 * Number(part)) / 10_000);
}

/** An input that is at its end. */
export function ended(): PassThrough {
  const input = new PassThrough();
  input.end();
  return input;
}
