/** An archive over HTTP: stations ship their logs to it, and it cosigns what it has whole and never otherwise. */
import { promisify } from 'node:util';
import { gunzip } from 'node:zlib';
import type { FastifyInstance, FastifyReply } from 'fastify';
import { MAX_REQUEST_BYTES, readShipment } from '../archive/bundle.ts';
import { readEnrolment, tokenHash } from '../archive/enrolment.ts';
import { jsonIn } from '../archive/json.ts';
import type { KeptLog } from '../archive/kept-log.ts';
import { logKeyOf, takeKey } from '../archive/keys.ts';
import { LOG_ID, logId } from '../archive/log-id.ts';
import { enrolRequestSchema, keyRequestSchema } from '../archive/message.ts';
import { type MirrorAnswer, takeCheckpoint, takeEntries } from '../archive/mirror.ts';
import type { ArchiveStore } from '../archive/store.ts';
import { checkpointSigners, readCheckpoint } from '../evidence/checkpoint.ts';
import { type CosigningKey, cosignatureLine } from '../evidence/cosignature.ts';
import type { PublicJwk } from '../evidence/jwk.ts';
import { noteText, signaturesOf } from '../evidence/note.ts';
import { MAX_REQUEST_BYTES as MAX_CHECKPOINT_BYTES, readAddCheckpoint } from '../evidence/witness.ts';
import { asking } from './archive-ask.ts';
import { judging } from './archive-judging.ts';
import { giveBack } from './archive-return.ts';
import { limitedServer, PLAIN, type ServeOptions } from './server.ts';

export interface OwnCosigningKey extends CosigningKey {
  readonly vkey: string;
}

export interface Archive {
  readonly name: string;
  readonly store: ArchiveStore;
  readonly keys: readonly OwnCosigningKey[];
  /** Seconds since 1970. */
  readonly nowS: () => number;
  /** Hears what became of each request: never who sent it, nothing of what a stranger wrote, and no personal data. */
  readonly heard: (line: string) => void;
}

/** A station that comes back after weeks sends a request after the other. */
export const USUAL_LIMITS = { requestsAMinute: 600, patienceMs: 120_000 } as const;

const inflate = promisify(gunzip);
const isoOf = (seconds: number) => new Date(seconds * 1000).toISOString();

/** Built and not listening yet. */
export async function archiveServer(archive: Archive, options: ServeOptions): Promise<FastifyInstance> {
  const counts = new Map<string, number>();
  const heard = (line: string) => {
    const status = line.slice(0, 3);
    counts.set(status, (counts.get(status) ?? 0) + 1);
    archive.heard(line);
  };
  const server = await limitedServer(options, MAX_CHECKPOINT_BYTES, heard);
  server.addContentTypeParser(
    'application/gzip',
    { parseAs: 'buffer', bodyLimit: MAX_REQUEST_BYTES },
    (_r, body, done) => done(null, body),
  );
  server.addContentTypeParser('application/json', { parseAs: 'string' }, (_r, body, done) =>
    done(null, body),
  );
  server.addContentTypeParser('text/plain', { parseAs: 'string' }, (_r, body, done) => done(null, body));

  const oneAtATime = inTurn();
  const judge = judging(archive.store, archive.heard);
  server.addHook('onReady', async () => {
    for (const { id } of await archive.store.logs()) judge.wake(id);
  });
  server.addHook('onClose', () => judge.end());
  const wakened = (id: string, answer: MirrorAnswer | null) => {
    if (answer?.status === 200) judge.wake(id);
    return answer;
  };

  server.get('/', (_request, reply) => reply.send({ archive: archive.name, form: 'plugmark/archive/1' }));
  server.get('/health', async (_request, reply) => {
    await archive.store.log(logId(''));
    return reply.type(PLAIN).send('well\n');
  });
  server.get('/metrics', async (_request, reply) =>
    reply.type(OPEN_METRICS).send(await metrics(archive.store, counts, judge.counts)),
  );
  server.post<{ Body: unknown }>('/enrol', async ({ body }, reply) => enrol(archive, body, reply, heard));
  server.post<{ Params: Params; Body: unknown }>('/logs/:log/key', async ({ params, body }, reply) =>
    addKey(archive, params.log, body, reply, heard),
  );
  server.post<{ Params: Params; Body: unknown }>(
    '/logs/:log/add-checkpoint',
    async ({ params, body }, reply) =>
      answered(reply, params.log, wakened(params.log, await addCheckpoint(archive, params.log, body)), heard),
  );
  server.post<{ Params: Params; Body: unknown }>(
    '/logs/:log/entries',
    {
      bodyLimit: MAX_REQUEST_BYTES,
      // Of a log that nobody enrolled, nothing is received.
      onRequest: async ({ params }, reply) => {
        if ((await logOf(archive.store, params.log)) === null) return refuse(reply, heard, 404, NOT_KNOWN);
      },
    },
    async ({ params, body }, reply) => {
      const answer = await oneAtATime(() => addEntries(archive, params.log, body));
      return answered(reply, params.log, wakened(params.log, answer), heard);
    },
  );
  const ask = asking(archive, { heard, refuse: (reply, status, why) => refuse(reply, heard, status, why) });
  server.post<{ Body: unknown }>('/ask', ({ headers, body }, reply) =>
    ask.answer(headers.authorization, jsonOf(body), reply),
  );
  server.post<{ Body: unknown }>('/return', async ({ body }, reply) => {
    const given = await giveBack(archive, jsonOf(body));
    if (given === null) return refuse(reply, heard, 403, TOKEN_NOT_VALID);
    heard(`200 return ${given.log}`);
    return reply.type('application/gzip').send(given.stream);
  });
  server.get<{ Params: Params }>('/logs/:log/checkpoint', async ({ params }, reply) => {
    const log = await logOf(archive.store, params.log);
    const note = log?.head?.note ?? null;
    return reply
      .code(note === null ? 404 : 200)
      .type(PLAIN)
      .send(note ?? 'no checkpoint of this log was cosigned\n');
  });
  return server;
}

interface Params {
  readonly log: string;
}
type Heard = (line: string) => void;

const OPEN_METRICS = 'application/openmetrics-text; version=1.0.0; charset=utf-8';

/** Counts alone: no name of a station, a tenant or a person. */
async function metrics(
  store: ArchiveStore,
  counts: ReadonlyMap<string, number>,
  judged: ReadonlyMap<string, number>,
): Promise<string> {
  const logs = await store.logs();
  const sum = (of: (log: KeptLog) => number) => logs.reduce((total, log) => total + of(log), 0);
  const gauge = (name: string, help: string, value: number) =>
    `# TYPE ${name} gauge\n# HELP ${name} ${help}\n${name} ${value}\n`;
  const requests = [...counts]
    .sort()
    .map(([status, count]) => `plugmark_requests_total{status="${status}"} ${count}\n`)
    .join('');
  const outcomes = [...judged]
    .sort()
    .map(([as, count]) => `plugmark_jobs_judged_total{as="${as}"} ${count}\n`)
    .join('');
  return [
    gauge('plugmark_logs', 'Logs that are enrolled.', logs.length),
    gauge(
      'plugmark_logs_frozen',
      'Logs with two histories.',
      sum(({ standing }) => Number(standing === 'frozen')),
    ),
    gauge(
      'plugmark_entries',
      'Entries that are kept.',
      sum(({ entries }) => entries),
    ),
    `# TYPE plugmark_requests counter\n# HELP plugmark_requests Requests, by status.\n${requests}`,
    `# TYPE plugmark_jobs_judged counter\n# HELP plugmark_jobs_judged Jobs judged again, by outcome.\n${outcomes}`,
    '# EOF\n',
  ].join('');
}

async function enrol(
  { store, name, keys, nowS }: Archive,
  body: unknown,
  reply: FastifyReply,
  heard: Heard,
): Promise<FastifyReply> {
  const request = enrolRequestSchema.safeParse(jsonOf(body));
  const said = request.success ? readEnrolment(request.data.statement) : null;
  const hash = request.success ? tokenHash(request.data.token) : '';
  if (!request.success || said === null || said.token !== hash || said.archive !== name)
    return refuse(
      reply,
      heard,
      400,
      'expected a token, and a statement by the key of the log for this archive',
    );
  // The token is gone in any case: whoever tries one may try it once.
  const use = await store.takeToken(hash, isoOf(nowS()));
  if (use?.use !== 'enrol') return refuse(reply, heard, 403, TOKEN_NOT_VALID);
  const { origin, station, vkey } = said;
  if (use.origin !== null && use.origin !== origin)
    return refuse(reply, heard, 403, 'this token is for another log');
  const id = logId(origin);
  const { tenant } = use;
  if (!(await store.enrol({ id, tenant, origin, station, vkey }))) {
    // The answer may have been lost, or the station its link: the same key of the same tenant joins again.
    const there = await store.log(id);
    if (there?.tenant !== tenant || there.keys.at(-1)?.vkey !== vkey)
      return refuse(reply, heard, 409, 'this log is enrolled already, by another tenant or with another key');
  }
  heard(`200 enrol ${id}`);
  return reply.send({ archive: name, log: id, vkeys: keys.map((key) => key.vkey) });
}

const NOT_TAKEN = {
  'not-named': 'the newest key that the archive has for this log did not name this one',
  'named-earlier': 'the newest key named one that the log had before, and such a key does not come back',
  'named-another':
    'the key that signed this had named another one before: somebody works with a copy of this log',
} as const;

async function addKey(
  { store, nowS }: Archive,
  id: string,
  body: unknown,
  reply: FastifyReply,
  heard: Heard,
): Promise<FastifyReply> {
  const request = keyRequestSchema.safeParse(jsonOf(body));
  const { statement } = request.success ? request.data : { statement: '' };
  const answer = LOG_ID.test(id)
    ? await store.change(id, (log) => takeKey(log, statement, isoOf(nowS())))
    : null;
  if (answer === null) return refuse(reply, heard, 404, NOT_KNOWN);
  if (answer !== 'taken') return refuse(reply, heard, 403, NOT_TAKEN[answer]);
  heard(`200 key ${id}`);
  return reply.type(PLAIN).send('taken\n');
}

const EXPECTED = 'expected: old and a size, the hashes of the proof, an empty line, and a checkpoint';
const TOKEN_NOT_VALID = 'this token is not valid: it was used, its time is over, or it never was';
const NOT_KNOWN = 'this archive does not know the log';

const logOf = async (store: ArchiveStore, id: string): Promise<KeptLog | null> =>
  LOG_ID.test(id) ? store.log(id) : null;

/** The key by which the log is signed now. Those before it sign nothing more. */
function keysOf({ keys }: KeptLog): readonly PublicJwk[] {
  const key = logKeyOf(keys.at(-1)?.vkey ?? '');
  return key === null ? [] : [key];
}

function addCheckpoint(archive: Archive, id: string, body: unknown): Promise<MirrorAnswer | null> {
  const request = readAddCheckpoint(typeof body === 'string' ? body : '');
  if (request === null) return Promise.resolve({ status: 400, why: EXPECTED });
  const { checkpoint } = request;
  if (!LOG_ID.test(id) || logId(checkpoint.origin) !== id) return Promise.resolve(null);
  const { nowS } = archive;
  return archive.store.change(id, (log) => {
    const signers = checkpointSigners(checkpoint, keysOf(log));
    if (signers.length === 0) {
      const why = 'the key by which this log is signed now did not sign the checkpoint';
      return { answer: { status: 403, why }, writes: null };
    }
    const note = noteText({
      text: checkpoint.text,
      signatures: signaturesOf(checkpoint, checkpoint.origin, signers),
    });
    return takeCheckpoint(log, request, { note, at: isoOf(nowS()), cosign: cosigner(archive) });
  });
}

async function addEntries(archive: Archive, id: string, body: unknown): Promise<MirrorAnswer | null> {
  const text = body instanceof Uint8Array ? await inflated(body) : null;
  const shipment = text === null ? null : readShipment(text);
  if (shipment === null) return { status: 400, why: 'expected bundles of entries, packed by gzip' };
  if (!LOG_ID.test(id)) return null;
  return archive.store.change(id, (log) => takeEntries(log, shipment, cosigner(archive)));
}

/** Little can unpack to much: one request is unpacked at a time, so that many of them do not take the memory. */
function inTurn(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = last.then(work);
    last = mine.catch(() => undefined);
    return mine;
  };
}

async function inflated(body: Uint8Array): Promise<string | null> {
  try {
    const bytes = await inflate(body, { maxOutputLength: MAX_REQUEST_BYTES });
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** The archive's cosignatures on a checkpoint that it has whole. */
const cosigner =
  ({ keys, nowS }: Archive) =>
  (note: string) => {
    const checkpoint = readCheckpoint(note, 'checkpoint');
    if (!checkpoint.ok) throw new Error('a checkpoint that was kept cannot be read');
    return keys.map((key) => cosignatureLine(checkpoint.value, key, nowS())).join('');
  };

function answered(reply: FastifyReply, id: string, answer: MirrorAnswer | null, heard: Heard): FastifyReply {
  if (answer === null) return refuse(reply, heard, 404, NOT_KNOWN);
  heard(`${answer.status} ${id}`);
  switch (answer.status) {
    case 200:
      return reply.type(PLAIN).send(answer.note);
    case 202:
      return reply.code(202).send({ next: answer.next });
    case 409:
      return reply.code(409).type('text/x.tlog.size').send(`${answer.size}\n`);
    default:
      return reply.code(answer.status).type(PLAIN).send(`${answer.why}\n`);
  }
}

function refuse(reply: FastifyReply, heard: Heard, status: number, why: string): FastifyReply {
  heard(`${status} -`);
  return reply.code(status).type(PLAIN).send(`${why}\n`);
}

const jsonOf = (body: unknown): unknown => jsonIn(typeof body === 'string' ? body : '');
