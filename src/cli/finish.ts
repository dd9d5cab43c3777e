import { readFile } from 'node:fs/promises';
import type { StationKey } from '../../db/keyfile.ts';
import type { Stamp } from '../evidence/log.ts';
import { EXIT_CODES, verifyRecord } from '../evidence/verify.ts';
import { technicianOf } from '../job/hand-over.ts';
import type { ExitCode } from './exit.ts';
import { writePapers } from './papers.ts';
import { readTrust, type Station, stateOf, technicianKey } from './station.ts';
import { reportLines } from './verify.ts';

/**
 * Seals a closed job, writes its papers into `folder`, then reads the record back and verifies it as a stranger would.
 * A technician with a key of his own is asked for the PIN, unless the shop does without.
 */
export async function finish(
  station: Station,
  stream: string,
  folder: string,
  stamp: () => Stamp,
): Promise<ExitCode> {
  const technician = await signingTechnician(station, stream);
  const papers = await writePapers(station, stream, { folder, signedAt: stamp().at, technician });
  const report = verifyRecord(await readFile(papers.record), await readTrust(station.trustFile));
  const lines = ['', ...reportLines(papers.record, report), `  papers        ${papers.pdf}, ${papers.csv}`];
  process.stdout.write(`${lines.join('\n')}\n`);
  return EXIT_CODES[report.verdict];
}

function signingTechnician(station: Station, stream: string): Promise<StationKey | null> {
  const state = stateOf(station);
  const technician = technicianOf(station.log.entries(stream).map(({ event }) => event));
  if (state.technicians === 'do-not-sign' || technician === null) return Promise.resolve(null);
  return technicianKey(station.folder, technician, state.people.get(technician) ?? null);
}
