import { judgedAgain } from '../evidence/judged-again.ts';
import { EXIT_CODES, type VerificationReport, verifyRecord } from '../evidence/verify.ts';
import { type ExitCode, safeLine } from './exit.ts';
import { readBytes } from './input.ts';
import { readTrust } from './station.ts';

const MAX_RECORD_BYTES = 256 << 20;

const HEADLINE: Readonly<Record<VerificationReport['verdict'], string>> = {
  authentic: 'AUTHENTIC and complete, signed by a trusted station.',
  rejected: 'NOT authentic or NOT complete. Do not rely on it.',
  unreadable: 'This file is not a job record.',
  untrusted: 'Authentic and complete, but the station that signed is NOT on the trust list.',
};
const MARK = { passed: '[ok]  ', failed: '[FAIL]', 'not-applicable': '[-]   ' } as const;

/** Checks a record file and says in plain words what was checked. */
export async function verify(
  file: string,
  options: { readonly trust: string; readonly json?: true },
): Promise<ExitCode> {
  const bytes = await readBytes(file, 'record', MAX_RECORD_BYTES);
  const report = verifyRecord(bytes, await readTrust(options.trust), [judgedAgain]);
  process.stdout.write(
    options.json === true ? asJson(file, report) : `${reportLines(file, report).join('\n')}\n`,
  );
  return EXIT_CODES[report.verdict];
}

/** The findings as lines for people. */
export function reportLines(file: string, report: VerificationReport): string[] {
  const { record, checks, verdict } = report;
  return [
    `${safeLine(file)}: ${HEADLINE[verdict]}`,
    ...(record === null
      ? []
      : [
          `  job ${safeLine(record.job)}, station ${safeLine(record.station)}, ${record.entries.length} entries`,
        ]),
    ...checks.map(({ name, outcome, detail }) => `  ${MARK[outcome]} ${name.padEnd(13)} ${safeLine(detail)}`),
  ];
}

function asJson(file: string, { verdict, checks, signatures }: VerificationReport): string {
  return `${JSON.stringify({ file, verdict, checks, signatures }, null, 2)}\n`;
}
