/** Answers questions over the stations of a tenant, for whoever has a token for that. Every question is noted first. */
import { pipeline, Readable } from 'node:stream';
import { createGzip } from 'node:zlib';
import type { FastifyReply } from 'fastify';
import { type AnswerEnd, answerLines, noteOf, questionSchema } from '../archive/questions.ts';
import { bringUpToDate } from '../archive/read-history.ts';
import { type Reader, TooMuch } from '../archive/readers.ts';
import { type Asker, mayAsk } from '../archive/roles.ts';
import type { ArchiveStore } from '../archive/store.ts';
import { askerOf, noted } from './asker.ts';

/** How a request is refused. */
type Refuse = (reply: FastifyReply, status: number, why: string) => FastifyReply;

export interface Asking {
  /** `authorization` is the header; `body` the question. */
  readonly answer: (
    authorization: string | undefined,
    body: unknown,
    reply: FastifyReply,
  ) => Promise<FastifyReply>;
}

export function asking(
  { store, nowS }: { readonly store: ArchiveStore; readonly nowS: () => number },
  { refuse, heard }: { readonly refuse: Refuse; readonly heard: (line: string) => void },
): Asking {
  const inTurn = oneEach();
  const nowIso = () => new Date(nowS() * 1000).toISOString();
  return {
    answer: async (authorization, body, reply) => {
      const identified = await askerOf(store.readers, authorization, nowIso());
      if (identified === null) {
        reply.header('www-authenticate', 'Bearer');
        return refuse(reply, 401, 'expected the token of a reader, whose time is not over');
      }
      const { asker, by } = identified;
      const { tenant } = asker;
      const log = logAskedFor(asker);
      if (!mayAsk(asker, { asked: 'records', tenant, log }))
        return refuse(reply, 403, 'whoever has this token may not ask that');
      const question = questionSchema.safeParse(body);
      if (!question.success) return refuse(reply, 400, 'expected a question');
      await noted(store.readers, asker, { at: nowIso(), question: noteOf(question.data) });
      try {
        const { lines, behind } = await inTurn(by, async () => {
          const behind = await stillBehind(store, { tenant, log }, heard);
          return { lines: await answerLines(store.readers.records({ tenant, log }), question.data), behind };
        });
        heard(`200 ask ${question.data.ask}`);
        const packed = createGzip();
        pipeline(Readable.from(textOf(lines, behind)), packed, () => undefined);
        return reply.type('application/gzip').send(packed);
      } catch (cause) {
        if (!(cause instanceof TooMuch)) throw cause;
        return refuse(reply, 413, 'the answer would be too long; ask for a shorter time, or for less');
      }
    },
  };
}

/** A question is about all of the tenant, or about the one log of whoever has no more. */
const logAskedFor = ({ shops }: Asker): string | null => (shops?.length === 1 ? (shops[0] ?? null) : null);

/** Brings the histories up to date; the names of stations where that cannot be done. One broken log silences nobody else. */
async function stillBehind(
  store: ArchiveStore,
  reader: Pick<Reader, 'tenant' | 'log'>,
  heard: (line: string) => void,
): Promise<readonly string[]> {
  const names: string[] = [];
  for (const log of await store.history.behind(reader.tenant)) {
    if (reader.log !== null && reader.log !== log) continue;
    try {
      await bringUpToDate(store, log);
    } catch (cause) {
      heard(`500 history ${log} ${cause instanceof Error ? cause.name : 'fault'}`);
      names.push((await store.log(log))?.station ?? log);
    }
  }
  return names;
}

/** Lines that a writer takes at once. */
const LINES_AT_ONCE = 500;

function* textOf(lines: readonly unknown[], behind: readonly string[]): Generator<string> {
  for (let from = 0; from < lines.length; from += LINES_AT_ONCE)
    yield lines
      .slice(from, from + LINES_AT_ONCE)
      .map((line) => `${JSON.stringify(line)}\n`)
      .join('');
  yield `${JSON.stringify({ end: lines.length, behind: [...behind] } satisfies AnswerEnd)}\n`;
}

/** One question of a reader after the other: what one of them asks for is bounded, and nobody else waits for it. */
function oneEach(): <T>(who: string, work: () => Promise<T>) => Promise<T> {
  const last = new Map<string, Promise<unknown>>();
  return (who, work) => {
    const before = last.get(who) ?? Promise.resolve();
    const mine = before.then(work, work);
    const settled = mine.catch(() => undefined);
    last.set(who, settled);
    void settled.then(() => {
      if (last.get(who) === settled) last.delete(who);
    });
    return mine;
  };
}
