/** The last good check before a finding, by the certificates in the log. */
import type { Certificate } from '../instrument/certificate.ts';
import type { Problem } from '../problem.ts';
import type { ProblemCode } from '../problem-code.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';

/** One time that the tool was entered into the log. */
export interface Use {
  /** ISO day. */
  readonly on: string;
  readonly serial: string | null;
  readonly certificate: Certificate | null;
  readonly quantity: 'torque' | 'length';
}

/**
 * The last check from before the finding, or the one that `since` names: by its number, or where that is not enough by
 * "NUMBER of DATE". Null where there is none. Problems: `certificate-unknown`, and `certificates-overlap` where the log
 * leaves open which one it was.
 */
export function lastGoodCheck(
  uses: readonly Use[],
  asFound: Certificate,
  since: string | null,
): Result<Certificate | null> {
  const held = uses.flatMap(({ certificate }) => certificate ?? []);
  const before = distinct(held.filter(({ date }) => date < asFound.date));
  return since === null ? latest(before, uses, asFound) : named(before, since, asFound);
}

function latest(
  before: readonly Certificate[],
  uses: readonly Use[],
  asFound: Certificate,
): Result<Certificate | null> {
  const day = before
    .map(({ date }) => date)
    .sort()
    .at(-1);
  const [last, ...others] = before.filter(({ date }) => date === day);
  if (last === undefined) return ok(null);
  if (others.length > 0) {
    const which = [last, ...others];
    return err(
      overlap(asFound, w`certificates ${listed(which, before)} are of one day, ${day ?? ''}`, which, before),
    );
  }
  const since = uses.findIndex(({ certificate }) => certificate !== null && same(certificate, last));
  const older = uses
    .slice(since)
    .find(({ certificate }) => certificate !== null && certificate.date < last.date)?.certificate;
  if (older === undefined || older === null) return ok(last);
  const message = w`certificate ${older.number} of ${older.date} was taken up again after ${last.number} of ${last.date}`;
  return err(overlap(asFound, message, [older, last], before));
}

function named(
  before: readonly Certificate[],
  since: string,
  asFound: Certificate,
): Result<Certificate | null> {
  const matching = before.filter((one) => spellings(one).includes(since));
  const [only, ...others] = matching;
  if (only === undefined)
    return err(
      asFoundProblem(
        'certificate-unknown',
        asFound,
        'date',
        w`the log has no certificate ${since} of this tool from before ${asFound.date}`,
        w`It has: ${before.map(({ number, date }) => `${number} of ${date}`).join(', ') || w`none`}.`,
      ),
    );
  if (others.length === 0) return ok(only);
  return err(
    overlap(asFound, w`--since "${since}" may mean ${listed(matching, before, w` or `)}`, matching, before),
  );
}

function overlap(
  asFound: Certificate,
  message: string,
  which: readonly Certificate[],
  among: readonly Certificate[],
): Problem {
  const options = which.map((one) => `--since "${spelling(one, among)}"`).join(w` or `);
  return asFoundProblem(
    'certificates-overlap',
    asFound,
    'last good check',
    w`${message}, so nobody can tell which was the last good check`,
    w`Say which one counts: ${options}. An earlier one looks back further.`,
  );
}

/** A number alone may stand for many: some laboratories take the serial number or the year for it. */
const spellings = ({ number, date, laboratory }: Certificate) => [
  number,
  `${number} of ${date}`,
  `${number} of ${date} by ${laboratory}`,
];

/** The shortest that means this one only. */
function spelling(one: Certificate, among: readonly Certificate[]): string {
  const isClear = (text: string) =>
    among.every((other) => same(other, one) || !spellings(other).includes(text));
  return spellings(one).find(isClear) ?? one.number;
}

const listed = (which: readonly Certificate[], among: readonly Certificate[], between = w` and `) =>
  which.map((one) => spelling(one, among)).join(between);

/** Of one tool, whose serial number they all have. */
const same = (a: Certificate, b: Certificate) =>
  a.number === b.number && a.date === b.date && a.laboratory === b.laboratory;

/** One that was recorded again with other figures counts as recorded last. */
function distinct(all: readonly Certificate[]): readonly Certificate[] {
  return all.filter((one, i) => !all.slice(i + 1).some((later) => same(one, later)));
}

/** A problem with what was found, and its field. */
export function asFoundProblem(
  code: ProblemCode,
  asFound: Certificate,
  field: string,
  message: string,
  next: string,
): Problem {
  return { code, where: `as-found ${asFound.number}: ${field}`, message, next };
}
