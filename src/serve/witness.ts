/** A witness over HTTP (c2sp.org/tlog-witness): takes checkpoints of the logs that it knows, and cosigns those that go on. */
import type { FastifyInstance } from 'fastify';
import type { SignedCheckpoint } from '../evidence/checkpoint.ts';
import { type CosigningKey, cosignatureLine } from '../evidence/cosignature.ts';
import type { PublicJwk } from '../evidence/jwk.ts';
import { noteText, signaturesOf } from '../evidence/note.ts';
import {
  type AddCheckpoint,
  answerTo,
  type Deciding,
  MAX_REQUEST_BYTES,
  readAddCheckpoint,
  signerIn,
  type WitnessAnswer,
} from '../evidence/witness.ts';
import { limitedServer, PLAIN, type ServeOptions } from './server.ts';

/** Where the witness keeps what it cosigned. */
export interface WitnessStore {
  /** The one key that signs the log now; null for a log that it does not know. */
  keyOf(origin: string): PublicJwk | null;
  /** Decides and writes one after the other, while nobody else writes; on disk when it returns. */
  advance<T>(all: readonly Deciding<T>[]): readonly T[];
  /** By the SHA-256 of the origin, in hex; null where there is none. */
  noteOf(originHash: string): string | null;
}

export interface Witness {
  readonly store: WitnessStore;
  readonly keys: readonly CosigningKey[];
  /** Seconds since 1970. */
  readonly nowS: () => number;
  /** Hears what became of each request: never who sent it, and nothing of what a stranger wrote. */
  readonly heard: (line: string) => void;
}

export const USUAL_LIMITS = { requestsAMinute: 60, patienceMs: 10_000 } as const;

/** Built and not listening yet. `close` lets the requests at hand be answered. */
export async function witnessServer(witness: Witness, options: ServeOptions): Promise<FastifyInstance> {
  const server = await limitedServer(options, MAX_REQUEST_BYTES, witness.heard);
  server.addContentTypeParser('*', { parseAs: 'string' }, (_request, body, done) => done(null, body));
  const decided = together(witness.store);
  server.post<{ Body: unknown }>('/add-checkpoint', async ({ body }, reply) => {
    const { status, type, text } = await addCheckpoint(
      witness,
      decided,
      typeof body === 'string' ? body : '',
    );
    return reply.code(status).type(type).send(text);
  });
  server.get<{ Params: { hash: string } }>('/:hash/checkpoint', ({ params }, reply) => {
    const note = /^[0-9a-f]{64}$/.test(params.hash) ? witness.store.noteOf(params.hash) : null;
    return reply
      .code(note === null ? 404 : 200)
      .type(PLAIN)
      .send(note ?? 'no checkpoint of this log was cosigned\n');
  });
  return server;
}

interface HttpAnswer {
  readonly status: number;
  readonly type: string;
  readonly text: string;
}

type Decided = (one: Deciding<HttpAnswer>) => Promise<HttpAnswer>;

/** Requests that came while another one was written are written together: they share the wait for the disk. */
function together(store: WitnessStore): Decided {
  let waiting: {
    one: Deciding<HttpAnswer>;
    done: (answer: HttpAnswer) => void;
    failed: (cause: unknown) => void;
  }[] = [];
  const write = () => {
    const all = waiting;
    waiting = [];
    try {
      const answers = store.advance(all.map(({ one }) => one));
      for (const [i, answer] of answers.entries()) all[i]?.done(answer);
    } catch (cause) {
      for (const { failed } of all) failed(cause);
    }
  };
  return (one) =>
    new Promise((done, failed) => {
      if (waiting.length === 0) setImmediate(write);
      waiting.push({ one, done, failed });
    });
}

/** One request, answered once what it changes is on disk. */
async function addCheckpoint(witness: Witness, decided: Decided, body: string): Promise<HttpAnswer> {
  const request = readAddCheckpoint(body);
  if (request === null) {
    witness.heard('400 -');
    return refused(400, 'expected: old and a size, the hashes of the proof, an empty line, and a checkpoint');
  }
  const { origin, size } = request.checkpoint;
  const signer = signerIn(request, witness.store.keyOf(origin));
  const answer =
    'status' in signer ? httpAnswer(signer, '') : await decided(deciding(witness, request, signer));
  // The name of a log that the witness does not know is a stranger's text.
  witness.heard(answer.status === 404 ? '404 -' : `${answer.status} ${origin} ${request.oldSize} ${size}`);
  return answer;
}

function deciding(witness: Witness, request: AddCheckpoint, signer: PublicJwk): Deciding<HttpAnswer> {
  const { checkpoint } = request;
  const { origin } = checkpoint;
  return {
    origin,
    decide: (newest) => {
      // Another program may have added a new key since the signature was looked at; now none can.
      const key = witness.store.keyOf(origin);
      const now = key?.x === signer.x ? signer : signerIn(request, key);
      if ('status' in now) return { answer: httpAnswer(now, ''), keep: null };
      const note = ownNote(checkpoint, now);
      const answer = answerTo(request, newest);
      const nowS = witness.nowS();
      const at = new Date(nowS * 1000).toISOString();
      if (answer.status === 422 && answer.fork)
        return { answer: httpAnswer(answer, ''), keep: { as: 'fork', note, at } };
      if (answer.status !== 200) return { answer: httpAnswer(answer, ''), keep: null };
      const lines = witness.keys.map((key) => cosignatureLine(checkpoint, key, nowS)).join('');
      return {
        answer: httpAnswer(answer, lines),
        keep: { as: 'newest', checkpoint, note: note + lines, at },
      };
    },
  };
}

/** The note with no other signature than that of the key that signs the log now. */
function ownNote(checkpoint: SignedCheckpoint, signer: PublicJwk): string {
  return noteText({
    text: checkpoint.text,
    signatures: signaturesOf(checkpoint, checkpoint.origin, [signer]),
  });
}

function httpAnswer(answer: WitnessAnswer, lines: string): HttpAnswer {
  switch (answer.status) {
    case 200:
      return { status: 200, type: PLAIN, text: lines };
    case 409:
      return { status: 409, type: 'text/x.tlog.size', text: `${answer.size}\n` };
    default:
      return refused(answer.status, answer.why);
  }
}

const refused = (status: number, why: string): HttpAnswer => ({ status, type: PLAIN, text: `${why}\n` });
