/** A record as the page shows it: the words are those of the command. */

import { type Check, checkName } from '../../evidence/check.ts';
import { readCheckpoint } from '../../evidence/checkpoint.ts';
import { toHex } from '../../evidence/platform/bytes.ts';
import { TECHNICIAN_WORDS } from '../../evidence/signers.ts';
import type { Verdict } from '../../evidence/verdict.ts';
import type { VerificationReport } from '../../evidence/verify.ts';
import type { AttemptRow, CylinderRow } from '../../report/attempts.ts';
import { clean } from '../../report/clean.ts';
import { figure } from '../../report/figures.ts';
import type { ReportModel } from '../../report/model.ts';
import { modelOf } from '../../report/of-record.ts';
import { VERDICT_WORD } from '../../report/verdict.ts';
import { headlineOf, VERIFICATION, worthText } from '../../report/verification.ts';
import type { WindowText } from '../../report/window-text.ts';
import {
  checkText,
  noted,
  notProvenByRecord,
  outOfOrderWord,
  stampText,
  withheldText,
} from '../../report/words/index.ts';
import { w } from '../../words/catalogue.ts';
import type { AttemptShown, CheckShown, CylinderShown, JobShown, RecordShown, Tone } from './shown.ts';

export const TONES: Readonly<Record<Verdict, Tone>> = {
  authentic: 'good',
  incomplete: 'caution',
  unproven: 'caution',
  'other-rules': 'caution',
  untrusted: 'caution',
  newer: 'caution',
  unreadable: 'bad',
  rejected: 'bad',
};

export function recordShown(file: string, bytes: Uint8Array, report: VerificationReport): RecordShown {
  const { verdict, record, checks, withheld } = report;
  const believed = record !== null && verdict !== 'rejected' ? record : null;
  const job = believed === null ? null : jobShown(modelOf(bytes, believed));
  return {
    kind: 'record',
    file: clean(file),
    verdict,
    tone: toneOf(report, job),
    word: VERIFICATION[verdict].word,
    sentence: clean(headlineOf(report)),
    about:
      record === null
        ? ''
        : clean(
            w`Job ${record.job}, station ${record.station}, ${record.entries.length} entries; ${TECHNICIAN_WORDS[record.technicianSignature]}`,
          ),
    worth: clean(worthText(report)),
    advice: verdict === 'untrusted' ? adviceText() : '',
    checks: checks.map(checkShown),
    log: logLine(believed?.log.checkpoint ?? null),
    withheld: withheldText(withheld),
    notProven: notProvenByRecord(report).map(clean),
    job,
  };
}

/** The record out of a PDF: the reader has pages in hand that nobody compared with it. */
export const insidePdf = (shown: RecordShown): RecordShown => ({
  ...shown,
  tone: shown.tone === 'good' ? 'caution' : shown.tone,
  sentence: `${shown.sentence} ${notCompared()}`,
  checks: [
    {
      outcome: 'doubtful',
      name: w`paper`,
      text: `${notCompared()} ${w`They could show anything: what is shown here comes from the record inside, which is what counts. "plugmark verify" on the PDF compares them.`}`,
    },
    ...shown.checks,
  ],
});

const notCompared = () => w`The pages of this PDF were NOT compared with the record inside.`;

/** Nobody should take green for more than it says: it is for jobs in which every cylinder is OK and nothing is in doubt. */
function toneOf({ verdict, checks }: VerificationReport, job: JobShown | null): Tone {
  const allOk = job?.cylinders.every((one) => one.verdict === 'ok') === true;
  const inDoubt = checks.some(({ outcome }) => outcome === 'doubtful');
  return verdict === 'authentic' && !(allOk && !inDoubt) ? 'caution' : TONES[verdict];
}

const adviceText = () =>
  w`Ask the shop for its trust list (trusted-keys.json) by another way than the one by which this came, or compare the key that is named below with one that you have from the shop. Then add the list here.`;

export const checkShown = (check: Check): CheckShown => ({
  outcome: check.outcome,
  name: checkName(check.name),
  text: clean(checkText(check)),
});

function logLine(note: string | null): string {
  const checkpoint = note === null ? null : readCheckpoint(note, 'checkpoint');
  if (checkpoint === null || !checkpoint.ok) return '';
  const { origin, size, root } = checkpoint.value;
  return clean(
    w`In the log ${origin} of ${size} entries, root ${toHex(root).slice(0, 16)}. The station signed it; nobody else has witnessed it here.`,
  );
}

function jobShown(model: ReportModel): JobShown {
  const { torqueWindow, gapWindow, marks } = model;
  return {
    job: model.job,
    status: model.status,
    outOfOrder: model.outOfOrder,
    jobFacts: model.jobFacts,
    specificationFacts: model.specificationFacts,
    torqueWindow,
    gapWindow,
    exceptions: model.exceptions,
    around: model.around,
    instruments: model.instruments,
    proves: model.proves,
    cautions: model.cautions,
    cylinders: model.cylinders.map((row) => cylinderShown(row, model)),
    digest: model.fingerprint.digest,
    stamp: stampText(marks),
    window: [torqueSentence(torqueWindow), ...(gapWindow === null ? [] : [gapSentence(gapWindow)])],
  };
}

const torqueSentence = ({ limits, acceptance, figures }: WindowText): string =>
  figures.decidable
    ? w`Every plug must end within ${limits}. Allowing for what this wrench may be off, a reading proves that only within ${acceptance}.`
    : w`Every plug must end within ${limits}. No reading of this wrench proves that: it is too coarse.`;

const gapSentence = ({ limits, acceptance, figures }: WindowText): string =>
  figures.decidable
    ? w`Every gap must be within ${limits}. Allowing for what this gauge may be off, a reading proves that only within ${acceptance}.`
    : w`Every gap must be within ${limits}. No reading of this gauge proves that: it is too coarse.`;

const cylinderShown = (row: CylinderRow, { plots, grades }: ReportModel): CylinderShown => ({
  cylinder: row.cylinder,
  verdict: row.verdict,
  word: VERDICT_WORD[row.verdict],
  plots: plots.filter((plot) => plot.cylinder === row.cylinder),
  attempts: [...row.gaps, ...row.pulls].map((attempt) => attemptShown(attempt, grades)),
});

function attemptShown(row: AttemptRow, grades: boolean): AttemptShown {
  const { quantity, value, valueText, expandedUncertainty, releaseNm, verdict, verdictWord, source, grade } =
    row;
  const [name, unit] = quantity === 'gap' ? (['mm', 'mm'] as const) : (['N·m', 'N.m'] as const);
  const u = expandedUncertainty === null ? '' : ` ± ${figure(expandedUncertainty, unit)}`;
  const word = source === null || verdict === 'not-judged' ? verdictWord : noted(verdictWord, source);
  const graded = grades && grade !== '' ? ` (${grade})` : '';
  return {
    at: row.at,
    what: quantity === 'gap' ? w`Gap` : w`Pull ${row.pull ?? ''}, ${row.kind}`,
    value: `${valueText}${u} ${name}`,
    verdict,
    word: `${word}${graded}${row.outOfOrder === '' ? '' : `, ${outOfOrderWord()}`}`,
    quantity,
    judged: verdict === 'not-judged' ? null : value,
    click: quantity === 'torque' && releaseNm !== null ? w`click ${figure(releaseNm, unit)}` : '',
  };
}
