/**
 * What a station that wants two histories tries at a witness, what strangers try who reach it, and what is tried on those who
 * read cosigned notes (c2sp.org/tlog-witness, tlog-cosignature, tlog-policy).
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { connect } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { newKey, writeKeyFile } from '../../db/keyfile.ts';
import { createWitnessFile, openWitnessFile } from '../../db/witness.ts';
import { serveWitness } from '../../src/cli/witness/serve.ts';
import { readCheckpoint, type SignedCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { cosignatureLine, cosignaturesOn } from '../../src/evidence/cosignature.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { keyId, noteText } from '../../src/evidence/note.ts';
import { parsePolicy } from '../../src/evidence/policy.ts';
import { witnessedBy } from '../../src/evidence/witnessed.ts';
import { orThrow } from '../../src/result.ts';
import { problemOf } from '../cli/answers.ts';
import { folder } from '../cli/program.ts';
import { keyOfSeed } from '../evidence/sample-job.ts';
import { LOG_KEY, LOG_VKEY, logOf, ORIGIN } from '../serve/logs.ts';
import { witnessKeys } from '../serve/witness-keys.ts';
import { addTo, hashOfOrigin, WITNESS, witnessHere } from '../serve/witnesses.ts';

const log = logOf(40);
const STRANGER = keyOfSeed('c3'.repeat(32));
/** What the witness has of the log, by its own word. */
const kept = async (url: string) => {
  const response = await fetch(`${url}/${hashOfOrigin}/checkpoint`);
  return response.status === 200
    ? orThrow(readCheckpoint(await response.text(), 'kept')).size
    : response.status;
};

describe('a station that wants a second history', () => {
  it('an old size that was good before is answered with the size of now', async () => {
    const witness = await witnessHere();
    expect((await witness.post(log.request(0, 10))).status).toBe(200);
    expect((await witness.post(log.request(10, 20))).status).toBe(200);
    expect(await witness.post(log.request(10, 30))).toEqual({
      status: 409,
      type: 'text/x.tlog.size',
      text: '20\n',
    });
    expect(await witness.post(log.request(0, 10))).toMatchObject({ status: 409, text: '20\n' });
    expect(await kept(witness.url)).toBe(20);
  });

  it('another log of the same size is refused, and both notes are kept as proof', async () => {
    const witness = await witnessHere();
    await witness.post(log.request(0, 20));
    const forked = logOf(20, 12);
    expect((await witness.post(forked.request(20))).status).toBe(422);
    expect((await witness.post(forked.request(20))).status).toBe(422);
    expect(witness.file.logs()).toMatchObject([{ origin: ORIGIN, size: 20, forks: 1 }]);
    expect((await witness.post(log.request(20, 30))).status).toBe(200);
  });

  it.each([
    ['with the proof of its own tree', () => logOf(40, 12).request(20)],
    ['with the proof of the honest tree', () => log.request(20).replace(log.note(), logOf(40, 12).note())],
    ['with no proof', () => `old 20\n\n${logOf(40, 12).note()}`],
  ])('a larger log that does not go on from the one before is refused: %s', async (_how, request) => {
    const witness = await witnessHere();
    await witness.post(log.request(0, 20));
    expect((await witness.post(request())).status).toBe(422);
    expect(await kept(witness.url)).toBe(20);
  });

  it('a log that was cut back is told the size that the witness has, and cannot ask from there', async () => {
    const witness = await witnessHere();
    await witness.post(log.request(0, 30));
    expect(await witness.post(log.request(0, 20))).toMatchObject({ status: 409, text: '30\n' });
    expect((await witness.post(`old 30\n\n${log.note(20)}`)).status).toBe(400);
  });

  it('of 200 forks at once, to two programs with one file, one is cosigned', async () => {
    const one = await witnessHere();
    const two = await witnessHere({ path: one.path, isNew: false });
    const answers = await Promise.all(
      Array.from({ length: 200 }, (_, i) =>
        (i % 2 === 0 ? one : two).post(logOf(8 + (i % 20), i % 8).request(0)),
      ),
    );
    const statuses = answers.map(({ status }) => status);
    expect(statuses.filter((status) => status === 200)).toHaveLength(1);
    expect(statuses.every((status) => status === 200 || status === 409)).toBe(true);
    const size = await kept(one.url);
    expect(answers.filter(({ status }) => status === 409).every(({ text }) => text === `${size}\n`)).toBe(
      true,
    );
  });

  it('an empty log with another root than that of an empty log is refused', async () => {
    const witness = await witnessHere();
    const root = Buffer.from(log.tree.node(0, 0));
    const note = signCheckpoint({ origin: ORIGIN, size: 0, root }, LOG_KEY);
    expect((await witness.post(`old 0\n\n${note}`)).status).toBe(422);
    expect((await witness.post(logOf(0).request(0))).status).toBe(200);
  });

  it('a witness that is killed after it wrote and before it answered has written, and signs nothing else afterwards', async () => {
    const home = folder();
    const path = join(home, 'witness.db');
    const key = newKey();
    orThrow(writeKeyFile(join(home, 'key.pem'), key, null));
    await createWitnessFile(path, { name: WITNESS, kid: key.kid });
    const file = await openWitnessFile(path);
    addTo(file, LOG_VKEY);
    file.close();
    const script = fileURLToPath(new URL('witness-killed.mjs', import.meta.url));
    const child = spawn(process.execPath, [script, path, join(home, 'key.pem')]);
    const gone = once(child, 'close');
    const [url] = await once(child.stdout.setEncoding('utf8'), 'data');
    const post = { method: 'POST', body: log.request(0, 20) };
    await expect(fetch(`${String(url).trim()}/add-checkpoint`, post)).rejects.toThrow();
    expect(await gone).toEqual([null, 'SIGKILL']);
    const again = await witnessHere({ path, isNew: false });
    expect(await again.post(log.request(0, 20))).toMatchObject({ status: 409, text: '20\n' });
    expect((await again.post(logOf(20, 3).request(20))).status).toBe(422);
    expect((await again.post(log.request(20, 20))).status).toBe(200);
  });
});

describe('whoever reaches a witness', () => {
  it('a key that is not the log’s gets nothing cosigned', async () => {
    const witness = await witnessHere();
    expect((await witness.post(logOf(20, 20, STRANGER).request(0))).status).toBe(403);
    expect(await kept(witness.url)).toBe(404);
  });

  it('a good signature beside a wrong one of the same key is refused', async () => {
    const witness = await witnessHere();
    const wrong = Buffer.concat([keyId(ORIGIN, publicJwk(LOG_KEY)), Buffer.alloc(64)]).toString('base64');
    expect((await witness.post(`${log.request(0, 20)}— ${ORIGIN} ${wrong}\n`)).status).toBe(403);
  });

  it('lines of strangers under a good checkpoint are ignored, and not kept', async () => {
    const witness = await witnessHere();
    const line = `— stranger.example ${Buffer.alloc(4996, 7).toString('base64')}\n`;
    expect((await witness.post(log.request(0, 20) + line.repeat(8))).status).toBe(200);
    const note = await (await fetch(`${witness.url}/${hashOfOrigin}/checkpoint`)).text();
    expect(note).not.toContain('stranger');
    const read = orThrow(readCheckpoint(note, 'note'));
    expect(
      cosignaturesOn(
        read,
        witness.keys.map(({ key }) => key),
      ),
    ).toHaveLength(2);
  });

  it('a log that the witness does not know is refused, and its name is not in what the witness prints', async () => {
    const witness = await witnessHere();
    const other = logOf(20, 20, STRANGER, 'stranger.example/log');
    expect((await witness.post(other.request(0))).status).toBe(404);
    expect(witness.heard).toEqual(['404 -']);
  });

  it.each([
    ['nothing', ''],
    ['words', 'hello'],
    ['no proof and no note', 'old 0\n'],
    ['a size with a zero in front', log.request(0, 20).replace('old 0', 'old 00')],
    ['a size below zero', log.request(0, 20).replace('old 0', 'old -1')],
    ['a size beyond all', log.request(0, 20).replace('old 0', 'old 99999999999999999999')],
    ['a hash that is too short', `old 3\nAAAA\n\n${log.note()}`],
    ['sixty-four hashes', `old 3\n${`${Buffer.alloc(32).toString('base64')}\n`.repeat(64)}\n${log.note()}`],
    ['carriage returns', log.request(0, 20).replaceAll('\n', '\r\n')],
    ['bytes that are no text', Buffer.alloc(1000, 0xff)],
  ])('what is no request is refused: %s', async (_what, body) => {
    const witness = await witnessHere();
    expect((await witness.post(body)).status).toBe(400);
    expect(witness.heard).toEqual(['400 -']);
  });

  it('a huge body is refused before it is read', async () => {
    const witness = await witnessHere();
    expect((await witness.post('a'.repeat(200_000))).status).toBe(413);
    expect((await witness.post(log.request(0, 20))).status).toBe(200);
  });

  it('a client that sends slower than the witness waits is let go, and others are answered meanwhile', async () => {
    const witness = await witnessHere({ patienceMs: 300 });
    const { port } = new URL(witness.url);
    const slow = connect(Number(port), '127.0.0.1');
    slow.write('POST /add-checkpoint HTTP/1.1\r\nhost: a\r\ncontent-length: 1000\r\n\r\nold');
    const ended = once(slow, 'close');
    expect((await witness.post(log.request(0, 20))).status).toBe(200);
    let answer = '';
    slow.setEncoding('utf8').on('data', (text: string) => {
      answer += text;
    });
    await ended;
    expect(answer).toMatch(/^HTTP\/1\.1 408 /);
  });

  it('one address is answered only so many times a minute', async () => {
    const witness = await witnessHere({ requestsAMinute: 3 });
    const statuses: number[] = [];
    for (const size of [5, 10, 15, 20])
      statuses.push((await witness.post(log.request(size - 5, size))).status);
    expect(statuses).toEqual([200, 200, 200, 429]);
  });

  it('other computers are not let in without TLS, unless somebody says so', async () => {
    const data = folder();
    await createWitnessFile(join(data, 'witness.db'), { name: WITNESS, kid: 'none' });
    const code = (listen: string) =>
      problemOf(() => serveWitness({ data, listen })).then((problem) => problem.code);
    expect(await code('0.0.0.0:8017')).toBe('server-listens');
    expect(await code('[::]:8017')).toBe('server-listens');
    expect(await code('witness.example:8017')).toBe('server-listens');
    expect(await code('127.0.0.1')).toBe('option-not-valid');
  });
});

describe('whoever writes into a cosigned note', () => {
  const keys = witnessKeys(WITNESS, 'b2');
  const [ed25519, mlDsa] = keys;
  if (ed25519 === undefined || mlDsa === undefined) throw new Error('a witness has two keys');
  const policy = (...vkeys: readonly string[]) =>
    orThrow(
      parsePolicy(
        Buffer.from(
          `log ${LOG_VKEY}\n${vkeys.map((vkey, i) => `witness w${i} ${vkey}\n`).join('')}group all all ${vkeys.map((_, i) => `w${i}`).join(' ')}\nquorum all\n`,
        ),
        'policy',
      ),
    );
  const own = log.checkpoint(20);
  const cosigned = (atS: number, checkpoint: SignedCheckpoint = own): SignedCheckpoint =>
    orThrow(
      readCheckpoint(
        noteText(checkpoint) + keys.map((key) => cosignatureLine(checkpoint, key, atS)).join(''),
        'note',
      ),
    );
  const both = policy(ed25519.vkey, mlDsa.vkey);
  const found = (checkpoint: SignedCheckpoint, readAt = '2026-10-01T00:00:00.000Z') =>
    witnessedBy(both, checkpoint, readAt);

  it('a good note is cosigned by both, at the time that they signed', () => {
    expect(found(cosigned(1_790_000_000))).toEqual({
      by: [
        { witness: 'w0', at: '2026-09-21T14:13:20.000Z' },
        { witness: 'w1', at: '2026-09-21T14:13:20.000Z' },
      ],
      of: 2,
      enough: true,
      since: '2026-09-21T14:13:20.000Z',
    });
  });

  it('a cosignature from the future counts for nothing', () => {
    expect(found(cosigned(1_800_000_000))).toMatchObject({ by: [], enough: false, since: null });
  });

  it.each([
    ['of the future of all clocks', 2n ** 64n - 1n],
    ['of no time', 0n],
    ['of another time than the one that was signed', 1_780_000_000n],
  ])('a cosignature %s takes the whole note', (_which, timeS) => {
    const lines = cosigned(1_790_000_000).signatures.map((line) => {
      const signature = Buffer.from(line.signature);
      if (line.name === WITNESS) signature.writeBigUInt64BE(timeS);
      return { ...line, signature };
    });
    expect(found({ ...own, signatures: lines })).toBeNull();
  });

  it('a cosignature on another checkpoint takes the whole note', () => {
    const other = cosigned(1_790_000_000, log.checkpoint(21)).signatures.filter(
      ({ name }) => name === WITNESS,
    );
    expect(found({ ...own, signatures: [...own.signatures, ...other] })).toBeNull();
  });

  it('a cosignature on the same size and root of another log takes the whole note', () => {
    const other = logOf(20, 20, LOG_KEY, 'other.example/log').checkpoint();
    const lines = cosigned(1_790_000_000, other).signatures.filter(({ name }) => name === WITNESS);
    expect(found({ ...own, signatures: [...own.signatures, ...lines] })).toBeNull();
  });

  it('a stranger under the name of a witness is none', () => {
    const stranger = witnessKeys(WITNESS, 'd4').map((key) => cosignatureLine(own, key, 1_790_000_000));
    const note = orThrow(readCheckpoint(noteText(own) + stranger.join(''), 'note'));
    expect(found(note)).toMatchObject({ by: [], enough: false });
  });

  it('one witness that signs twice is one', () => {
    const [line = ''] = keys.map((key) => cosignatureLine(own, key, 1_790_000_000));
    const twice = orThrow(readCheckpoint(noteText(own) + line + line, 'note'));
    expect(found(twice)).toMatchObject({ by: [{ witness: 'w0' }], enough: false });
  });

  it('a key of small order is no witness', () => {
    const small = Buffer.concat([Buffer.of(4), Buffer.of(1), Buffer.alloc(31)]).toString('base64');
    expect(parsePolicy(Buffer.from(`witness w x+00000000+${small}\nquorum w\n`), 'policy').ok).toBe(false);
  });
});
