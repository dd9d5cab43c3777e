/** An archive over HTTP, as stations and strangers reach it. */
import { gzipSync } from 'node:zlib';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openSqlite } from '../../db/archive/sqlite.ts';
import { archiveStore } from '../../db/archive/store.ts';
import { stateEnrolment, tokenHash } from '../../src/archive/enrolment.ts';
import { logId } from '../../src/archive/log-id.ts';
import { type Line, type Reply, ship } from '../../src/archive/outbox.ts';
import { readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { cosignaturesOn } from '../../src/evidence/cosignature.ts';
import { treeRoot } from '../../src/evidence/merkle.ts';
import { readVerifierKey } from '../../src/evidence/verifier-key.ts';
import { orThrow } from '../../src/result.ts';
import { archiveServer } from '../../src/serve/archive.ts';
import { type TestLog, testLog } from '../archive/logs.ts';
import { folder } from '../cli/program.ts';
import { keyOfSeed } from '../evidence/sample-job.ts';
import { witnessKeys } from './witness-keys.ts';

const NAME = 'archive.example';
const UNTIL = '2999-01-01T00:00:00.000Z';
const LOG = testLog(300);
const ID = logId(LOG.origin);

async function archiveHere() {
  const store = archiveStore(await openSqlite(`${folder()}/archive.db`));
  const keys = witnessKeys(NAME, 'e7');
  const heard: string[] = [];
  const server = await archiveServer(
    { name: NAME, store, keys, nowS: () => 1_790_000_000, heard: (line) => void heard.push(line) },
    { tls: null, requestsAMinute: 600, patienceMs: 5000 },
  );
  const url = await server.listen({ host: '127.0.0.1', port: 0 });
  onTestFinished(async () => {
    await server.close();
    await store.close();
  });
  const post = async (path: string, type: string, body: string | Uint8Array<ArrayBuffer>): Promise<Reply> => {
    const response = await fetch(url + path, { method: 'POST', body, headers: { 'content-type': type } });
    return { status: response.status, text: await response.text() };
  };
  const entries = (content: string | Uint8Array<ArrayBuffer>, id = ID) =>
    post(`/logs/${id}/entries`, 'application/gzip', Uint8Array.from(gzipSync(content)));
  const line: Line = {
    checkpoint: (text) => post(`/logs/${ID}/add-checkpoint`, 'text/plain', text),
    entries: (text) => entries(text),
    key: (statement) => post(`/logs/${ID}/key`, 'application/json', JSON.stringify({ statement })),
    shipped: () => undefined,
  };
  /** The station joins by a token of this tenant. */
  const join = async (token: string, { tenant = 'north', key = LOG.key, archive = NAME } = {}) => {
    await store.addToken(tokenHash(token), { use: 'enrol', tenant, origin: null }, UNTIL);
    return enrol(token, stated(token, key, archive));
  };
  const enrol = (token: string, statement: string) =>
    post('/enrol', 'application/json', JSON.stringify({ token, statement }));
  return { url, store, keys, heard, line, entries, join, enrol };
}

const stated = (token: string, key: TestLog['key'], archive = NAME) =>
  stateEnrolment({ archive, origin: LOG.origin, station: 'Bay 1', token: tokenHash(token) }, key);

describe('a station', () => {
  it('joins, ships, and gets a receipt for what is kept', async () => {
    const { line, join, keys, store, heard } = await archiveHere();
    expect((await join('one')).status).toBe(200);
    const shipped = await ship(LOG.outbox(), line, 0);
    if (shipped.as !== 'kept') throw new Error(shipped.as);
    const named = keys.map(({ vkey }) => readVerifierKey(vkey)).filter((key) => key !== null);
    const cosigning = named.flatMap((key) => (key.kind === 'log' ? [] : [key]));
    expect(cosignaturesOn(orThrow(readCheckpoint(shipped.note, 'receipt')), cosigning)).toHaveLength(2);
    expect(await store.log(ID)).toMatchObject({ entries: 300, head: { size: 300 }, pending: null });
    expect(heard.join('\n')).not.toContain('Bay 1');
  });

  it('joins again where the answer was lost, by a new token of its tenant and with its key', async () => {
    const { join } = await archiveHere();
    const first = await join('one');
    expect(await join('two')).toEqual(first);
    expect((await join('three', { tenant: 'south' })).status).toBe(409);
    expect((await join('four', { key: keyOfSeed('c3'.repeat(32)) })).status).toBe(409);
  });

  it('joins by a token once, and by none that another archive was meant to get', async () => {
    const { join, enrol } = await archiveHere();
    expect((await join('one')).status).toBe(200);
    expect((await enrol('one', stated('one', LOG.key))).status).toBe(403);
    expect((await join('two', { archive: 'elsewhere.example' })).status).toBe(400);
  });

  it('whose old copy has an old key hears that the archive has more of its log', async () => {
    const { line, join } = await archiveHere();
    await join('one');
    await ship(LOG.outbox(), line, 0);
    const old = LOG.outbox(200);
    const root = treeRoot(old.tree, 200);
    const note = signCheckpoint({ origin: LOG.origin, size: 200, root }, keyOfSeed('c3'.repeat(32)));
    expect(await ship({ ...old, note }, line, 300)).toEqual({ as: 'ahead', size: 300 });
  });

  it('that shows two histories of one size is taken nothing more of', async () => {
    const { line, join, store } = await archiveHere();
    await join('one');
    await ship(LOG.outbox(), line, 0);
    const fork = testLog(301, { ...LOG, bodies: LOG.bodies.slice(0, 290) });
    fork.bodies[295] = '{"n":295,"text":"another"}';
    expect((await ship(fork.outbox(), line, 300)).as).toBe('parted');
    expect(await store.faults(ID)).toMatchObject([{ kind: 'not-extending' }]);
    expect((await ship(fork.outbox(300), line, 300)).as).toBe('parted');
    expect(await store.log(ID)).toMatchObject({ standing: 'frozen', head: { size: 300 } });
  });
});

describe('a stranger', () => {
  it('sends nothing to a log that nobody enrolled', async () => {
    const { entries } = await archiveHere();
    expect((await entries('\n'.repeat(1 << 20), logId('nobody.example/log'))).status).toBe(404);
  });

  const head = (count: number) =>
    `${JSON.stringify({ form: 'plugmark/bundles/1', size: 300, bundles: [{ number: 0, entries: count, proof: [] }] })}\n`;
  it.each([
    ['beyond what a request may unpack to', Buffer.alloc(97 << 20, '\n')],
    ['millions of lines behind a head', Buffer.from(head(1) + '[]\n'.repeat(20 << 20))],
    ['a head that never ends', Buffer.alloc(64 << 20, '[')],
    ['a list of millions of nothings', Buffer.from(`${head(1)}{}\n[${'[],'.repeat(20 << 20)}[]]\n`)],
  ])('sends a few kB that unpack to %s, and the memory stays', async (_what, text) => {
    const { entries, join, url } = await archiveHere();
    await join('one');
    const before = process.memoryUsage().heapUsed;
    const answers = await Promise.all(Array.from({ length: 3 }, () => entries(text)));
    expect(answers.map(({ status }) => status)).toEqual([400, 400, 400]);
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(600e6);
    expect((await fetch(`${url}/health`)).status).toBe(200);
  });
});
