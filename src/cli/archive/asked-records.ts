/** The records of all stations of a tenant, as an archive answers questions about them over the network. */
import type { z } from 'zod';
import { jsonIn } from '../../archive/json.ts';
import {
  askedJobSchema,
  attemptRowSchema,
  endSchema,
  keyedSetupSchema,
  NAMED_AT_ONCE,
  processRowSchema,
  type Question,
  specificationUseSchema,
  stationsIn,
  toolUseSchema,
} from '../../archive/questions.ts';
import type { Records } from '../../audit/records.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { SECRETS } from '../terminal/secret.ts';
import { notReached } from './archive-link.ts';
import { linesOf, patiently } from './packed-lines.ts';

/** Problems of every question: `archive-not-reached`, `archive-refused`. */
export function askedRecords(url: string, token: string): Records {
  const named = new Set<string>();
  const lines = async (question: Question) => {
    const { lines: all, behind } = await answerTo(url, token, question);
    const news = behind.filter((name) => !named.has(name));
    for (const name of news) named.add(name);
    if (news.length > 0)
      process.stderr.write(
        `${safeLine(w`Not in the answer: the newest entries of ${news.join(', ')}. Have it looked at by whoever runs the archive: plugmark archive check.`)}\n`,
      );
    return all;
  };
  const rows = async <T>(schema: z.ZodType<T, unknown>, question: Question): Promise<readonly T[]> =>
    (await lines(question)).map((line) => {
      const row = schema.safeParse(line);
      if (row.success) return row.data;
      throw new ProblemError(notUnderstood(url), { cause: row.error });
    });
  /** A question that names many things is asked in parts. */
  const inParts = async <T>(
    names: readonly string[],
    ask: (some: readonly string[]) => Promise<readonly T[]>,
  ) => {
    const all: T[] = [];
    for (let from = 0; from < names.length; from += NAMED_AT_ONCE)
      for (const one of await ask(names.slice(from, from + NAMED_AT_ONCE))) all.push(one);
    return all;
  };
  return {
    stations: async () => {
      const stations = stationsIn(await lines({ ask: 'stations' }));
      if (stations === null) throw new ProblemError(notUnderstood(url));
      return stations;
    },
    attemptsOf: (filter) => rows(attemptRowSchema, { ask: 'attempts', filter }),
    attemptsIn: (jobs) =>
      inParts(
        jobs.map(({ stream }) => stream),
        (some) => rows(attemptRowSchema, { ask: 'attempts-in', jobs: [...some] }),
      ),
    processOf: (filter) => rows(processRowSchema, { ask: 'process', filter }),
    jobsOf: (filter) => rows(askedJobSchema, { ask: 'jobs', filter }),
    setupsOf: async (wanted) => {
      const keys = [...wanted];
      const setups = await inParts(keys, (some) =>
        rows(keyedSetupSchema, { ask: 'setups', keys: [...some] }),
      );
      const found = new Map(setups.map(({ key, setup }) => [key, setup]));
      // Each was named by an attempt of this archive.
      if (keys.some((key) => !found.has(key))) throw new ProblemError(notUnderstood(url));
      return found;
    },
    specifications: () => rows(specificationUseSchema, { ask: 'specifications' }),
    toolUse: async (tool, from) => {
      const [use] = await rows(toolUseSchema, { ask: 'tool-use', tool, from });
      if (use === undefined) throw new ProblemError(notUnderstood(url));
      return use;
    },
  };
}

/** No archive answers with more. A few bytes of gzip can hold any number of lines, and all of them would be kept here. */
const MOST_LINES = 1_100_000;
const MOST_TEXT = 1_000_000_000;

async function answerTo(
  url: string,
  token: string,
  question: Question,
): Promise<{ readonly lines: readonly unknown[]; readonly behind: readonly string[] }> {
  const broken = new AbortController();
  const response = await fetch(`${url.replace(/\/$/, '')}/ask`, {
    method: 'POST',
    body: JSON.stringify(question),
    headers: { 'content-type': 'application/json', authorization: `Bearer ${token}` },
    redirect: 'error',
    signal: broken.signal,
  }).catch((cause: unknown) => {
    throw notReached(url, cause);
  });
  if (response.status !== 200 || response.body === null)
    throw new ProblemError(refused(url, response.status));
  const lines: unknown[] = [];
  let length = 0;
  const packed = patiently(response.body, broken);
  for await (const text of linesOf(packed, { broken: cutShort(url), tooLong: notUnderstood(url) })) {
    const line = jsonIn(text);
    length += text.length;
    if (line === undefined || lines.length > MOST_LINES || length > MOST_TEXT)
      throw new ProblemError(notUnderstood(url));
    lines.push(line);
  }
  const end = endSchema.safeParse(lines.pop());
  if (!end.success || end.data.end !== lines.length) throw new ProblemError(cutShort(url));
  return { lines, behind: end.data.behind };
}

function refused(where: string, status: number): Problem {
  const code = 'archive-refused';
  switch (status) {
    case 401:
      return {
        code,
        where,
        message: w`the archive does not know the token of this reader, or its time is over`,
        next: w`Ask whoever runs the archive for one (plugmark archive reader), and give it in ${SECRETS.reader}.`,
      };
    case 413:
      return {
        code,
        where,
        message: w`the answer would be too long`,
        next: w`Ask for a shorter time with --from and --to, or for less.`,
      };
    case 429:
      return {
        code,
        where,
        message: w`too many questions were asked in a short time`,
        next: w`Try again in a minute.`,
      };
    default:
      return {
        code,
        where,
        message: safeLine(w`the archive did not answer the question: it answered ${status}`),
        next: w`Have it looked at by whoever runs the archive.`,
      };
  }
}

const cutShort = (where: string): Problem => ({
  code: 'archive-not-reached',
  where,
  message: w`its answer broke off`,
  next: w`Ask again.`,
});

const notUnderstood = (where: string): Problem => ({
  code: 'archive-refused',
  where,
  message: w`what the archive answered is not what this version of the program reads`,
  next: w`Bring the program here and at the archive to the same version.`,
});
