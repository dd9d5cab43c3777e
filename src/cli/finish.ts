import { readFile } from 'node:fs/promises';
import { judgedAgain } from '../evidence/judged-again.ts';
import { EXIT_CODES, verifyRecord } from '../evidence/verify.ts';
import type { ExitCode } from './exit.ts';
import { writePapers } from './papers.ts';
import { readTrust, type Station } from './station.ts';
import { reportLines } from './verify.ts';

/** Writes a closed job's papers, then reads the record back and verifies it as a stranger would. */
export async function finish(
  station: Station,
  stream: string,
  folder: string,
  signedAt: string,
): Promise<ExitCode> {
  const papers = await writePapers(station, stream, folder, signedAt);
  const report = verifyRecord(await readFile(papers.record), await readTrust(station.trustFile), [
    judgedAgain,
  ]);
  const lines = ['', ...reportLines(papers.record, report), `  papers        ${papers.pdf}, ${papers.csv}`];
  process.stdout.write(`${lines.join('\n')}\n`);
  return EXIT_CODES[report.verdict];
}
