/** A package, or many records, as the page shows them. */
import type { SignedCheckpoint } from '../../evidence/checkpoint.ts';
import { agreed } from '../../evidence/platform/signature.browser.ts';
import type { Policy } from '../../evidence/policy.ts';
import { addedUp } from '../../evidence/sharing.ts';
import type { TrustList } from '../../evidence/trust.ts';
import { type PackageVerdict, VERDICTS } from '../../evidence/verdict.ts';
import { marksOf } from '../../job/proof.ts';
import { type Finding, unprovenIn, unreadable } from '../../package/finding.ts';
import type { NewProgress } from '../../package/folder.ts';
import { PACKAGE_FILES } from '../../package/format.ts';
import { historiesText, twoHistories } from '../../package/histories.ts';
import { type PackageReport, verifyPackage } from '../../package/verify.ts';
import { clean } from '../../report/clean.ts';
import {
  leftOutText,
  notProven,
  packageText,
  questionHeadline,
  questionLines,
  recordsText,
} from '../../report/package-words.ts';
import { doubtsIn, OF_PACKAGE, VERIFICATION } from '../../report/verification.ts';
import { checkText, marksText, unprovenText, withheldText } from '../../report/words/index.ts';
import { type Sentence, sentence, w } from '../../words/catalogue.ts';
import type { ByReader, VerifyAll } from './findings.ts';
import { folderOf } from './folder.ts';
import type { Given } from './given.ts';
import { checkReadings, PAPERS_NOT_COMPARED } from './readings.ts';
import { checkShown, TONES } from './record.ts';
import type { PackageShown, RecordsShown, RowShown, Tone } from './shown.ts';

export interface Reading {
  readonly trust: TrustList;
  /** Which logs and witnesses the reader asks for; null for a trust list alone. */
  readonly policy: Policy | null;
  /** The file of it, for those who read it again. */
  readonly policyFile: Uint8Array | null;
  /** Proofs and notes of witnesses that were given by themselves. */
  readonly loose: readonly Given[];
  /** Why nobody is trusted; null where the reader gave a list, or a policy that names logs. */
  readonly trustFault: Sentence | null;
  readonly kept: SignedCheckpoint | null;
  readonly readAt: string;
  readonly verifyAll: VerifyAll;
  readonly progress: NewProgress;
}

const byReader = ({ trust, policyFile, readAt }: Reading): ByReader => ({
  trust,
  policy: policyFile,
  readAt,
});

const byFile = (a: Finding, b: Finding) => (a.file < b.file ? -1 : 1);

const SUFFIX = '.record.json';

/** Drawn again when the reader chooses another language, of what was found once. */
export type Draw<T> = () => T;

/** Every record among the files; the gravest verdict stands above them. */
export async function recordsShown(
  name: string | null,
  files: readonly Given[],
  reading: Reading,
): Promise<Draw<RecordsShown> | null> {
  const records = files.filter(({ path, isPlain }) => isPlain && path.endsWith(SUFFIX));
  if (records.length === 0) return null;
  const findings: Finding[] = [];
  const bar = reading.progress('records', records.length);
  await reading.verifyAll(records, { files, loose: reading.loose }, byReader(reading), (finding) => {
    findings.push(finding);
    bar.at(findings.length);
  });
  bar.end();
  findings.sort(byFile);
  return () => recordsFound(name, findings);
}

function recordsFound(name: string | null, findings: readonly Finding[]): RecordsShown {
  const histories = twoHistories(findings);
  const worst = VERDICTS.find((verdict) => findings.some((one) => one.verdict === verdict)) ?? 'unreadable';
  const counts = VERDICTS.toReversed().flatMap((verdict) => {
    const count = findings.filter((one) => one.verdict === verdict).length;
    return count === 0 ? [] : [`${count} ${VERIFICATION[verdict].word}`];
  });
  return {
    kind: 'records',
    file: clean(name ?? w`these files`),
    tone: histories.length > 0 ? 'bad' : TONES[worst],
    word: VERIFICATION[worst].word,
    sentence: w`${recordsText(findings.length)}: ${counts.join(', ')}.`,
    rows: findings.map(rowOf),
    remarks: [
      ...histories.map((one) => `${clean(historiesText(one))}.`),
      withheldText(addedUp(findings.flatMap(({ withheld }) => withheld))),
      unprovenText(unprovenIn(findings)),
    ].filter((text) => text !== ''),
  };
}

function rowOf({ file, verdict, stated, fault, open, doubt }: Finding): RowShown {
  const marks = marksText(marksOf(stated?.sources ?? []));
  const what = fault === null ? [marks, doubt ?? ''] : [checkText({ detail: fault, open })];
  return {
    file,
    tone: TONES[verdict],
    word: VERIFICATION[verdict].word,
    job: clean(stated?.job ?? ''),
    what: clean(what.filter((text) => text !== '').join('. ')),
  };
}

const TONE_OF_PACKAGE: Readonly<Record<PackageVerdict, Tone>> = {
  authentic: 'good',
  'other-rules': 'caution',
  newer: 'caution',
  untrusted: 'caution',
  rejected: 'bad',
};

/** Throws the problems of an index that cannot be read. */
export async function packageShown(
  name: string,
  files: readonly Given[],
  reading: Reading,
): Promise<Draw<PackageShown>> {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const findings: Finding[] = [];
  const report = await agreed(() =>
    verifyPackage(folderOf(files), {
      ...reading,
      checkReadings: (index, log) => checkReadings(files, index, log),
      async verifyRecords(paths, take) {
        findings.length = 0;
        const records = paths.flatMap((path) => byPath.get(path) ?? []);
        // Witnesses see the log of the package, and with it every record.
        const by = { ...byReader(reading), policy: null };
        await reading.verifyAll(records, { files, loose: reading.loose }, by, (finding) => {
          findings.push(finding);
          take([finding]);
        });
        for (const path of paths.filter((one) => !byPath.has(one))) {
          const finding = unreadable(path, sentence`it is missing`);
          findings.push(finding);
          take([finding]);
        }
        findings.sort(byFile);
      },
    }),
  );
  return () => shownOf(name, report, findings.map(rowOf));
}

function shownOf(name: string, report: PackageReport, rows: readonly RowShown[]): PackageShown {
  const { index, verdict, checks } = report;
  const questions = questionLines(report);
  const isBelieved = verdict !== 'rejected';
  const inDoubt = checks.some(({ outcome }) => outcome === 'doubtful');
  // What else was compared is among the checks.
  const notCompared = PAPERS_NOT_COMPARED();
  const doubts = doubtsIn(
    checks.map((check) =>
      check.outcome === 'doubtful' && check.detail.startsWith(notCompared)
        ? { ...check, detail: notCompared }
        : check,
    ),
  );
  const sentence = [
    `${OF_PACKAGE[verdict]}${questions.length > 0 && isBelieved ? ` ${questionHeadline(report)}` : ''}${doubts}`,
    isBelieved ? unprovenText(report.unproven) : '',
  ];
  return {
    kind: 'package',
    file: clean(name),
    tone: verdict === 'authentic' && (questions.length > 0 || inDoubt) ? 'caution' : TONE_OF_PACKAGE[verdict],
    word: verdict === 'authentic' ? w`authentic and whole` : VERIFICATION[verdict].word,
    sentence: clean(sentence.filter((text) => text !== '').join(' ')),
    about: packageText(index),
    advice:
      verdict === 'untrusted'
        ? w`Compare the key that is named below with the one that the station gave you by another way. If it is the same, take ${PACKAGE_FILES.trust} out of the package and add it here.`
        : '',
    checks: checks.map(checkShown),
    questions,
    leftOut: index.leftOut.map(leftOutText),
    withheld: withheldText(report.withheld),
    notProven: isBelieved ? notProven(report).map(clean) : [],
    rows,
  };
}
