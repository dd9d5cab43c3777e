/** What whoever holds a key that a log had before tries at a witness that was given the new one. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { newKey } from '../../db/keyfile.ts';
import { createWitnessFile, openWitnessFile } from '../../db/witness.ts';
import { storeOf } from '../../src/cli/witness/witness-folder.ts';
import { readCheckpoint } from '../../src/evidence/checkpoint.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { keyId, verifierKey } from '../../src/evidence/note.ts';
import { orThrow } from '../../src/result.ts';
import { witnessServer } from '../../src/serve/witness.ts';
import { typed } from '../cli/answers.ts';
import { folder } from '../cli/program.ts';
import { keyOfSeed } from '../evidence/sample-job.ts';
import { LOG_KEY, LOG_VKEY, logOf, ORIGIN } from '../serve/logs.ts';
import { addTo, hashOfOrigin, WITNESS, witnessHere } from '../serve/witnesses.ts';

const NEW_KEY = keyOfSeed('a2'.repeat(32));
const NEW_VKEY = verifierKey(ORIGIN, publicJwk(NEW_KEY));
const OTHER = 'other.example/log';
const byOld = logOf(40);
const byNew = logOf(40, 40, NEW_KEY);

/** The line of a signature that this log put under its checkpoint. */
const lineOf = (log: typeof byOld, size: number) => `${log.note(size).trimEnd().split('\n').at(-1)}\n`;

/** A witness that cosigned 10 entries by the old key, and then was given the new one. */
async function rotated() {
  const witness = await witnessHere();
  expect((await witness.post(byOld.request(0, 10))).status).toBe(200);
  expect(addTo(witness.file, NEW_VKEY)).toBe('new-key');
  return witness;
}

const kept = async (url: string) => {
  const response = await fetch(`${url}/${hashOfOrigin}/checkpoint`);
  return orThrow(readCheckpoint(await response.text(), 'kept'));
};

describe('whoever holds the key that a log had before', () => {
  it('gets nothing cosigned by it alone, neither a fork nor the honest log', async () => {
    const witness = await rotated();
    expect((await witness.post(byOld.request(10, 20))).status).toBe(403);
    expect((await witness.post(logOf(30, 10).request(10))).status).toBe(403);
    expect((await kept(witness.url)).size).toBe(10);
    expect((await witness.post(byNew.request(10, 20))).status).toBe(200);
  });

  it('makes the witness keep no fork: what a retired key signed proves nothing against the station', async () => {
    const witness = await rotated();
    expect((await witness.post(logOf(10, 3).request(10))).status).toBe(403);
    expect(witness.file.logs()).toMatchObject([{ origin: ORIGIN, forks: 0, keysRetired: 1 }]);
  });

  it('gets nothing cosigned beside a wrong signature under the new key', async () => {
    const witness = await rotated();
    const wrong = Buffer.concat([keyId(ORIGIN, publicJwk(NEW_KEY)), Buffer.alloc(64)]).toString('base64');
    expect((await witness.post(`${byOld.request(10, 20)}— ${ORIGIN} ${wrong}\n`)).status).toBe(403);
  });

  it('gets nothing cosigned beside the signature that the new key put under another checkpoint', async () => {
    const witness = await rotated();
    const body = byOld.request(10, 20) + lineOf(byNew, 21);
    expect((await witness.post(body)).status).toBe(403);
    expect((await kept(witness.url)).size).toBe(10);
  });

  it('cannot be added again, neither once nor after one more key', async () => {
    const witness = await rotated();
    expect(addTo(witness.file, LOG_VKEY)).toBe('retired');
    expect(addTo(witness.file, verifierKey(ORIGIN, publicJwk(keyOfSeed('a3'.repeat(32)))))).toBe('new-key');
    expect(addTo(witness.file, LOG_VKEY)).toBe('retired');
    expect(addTo(witness.file, NEW_VKEY)).toBe('retired');
    expect((await witness.post(byOld.request(10, 20))).status).toBe(403);
    expect((await witness.post(byNew.request(10, 20))).status).toBe(403);
  });

  it('gets nothing of this log cosigned by being added for another one', async () => {
    const witness = await rotated();
    expect(addTo(witness.file, verifierKey(OTHER, publicJwk(LOG_KEY)))).toBe('new-log');
    expect((await witness.post(byOld.request(10, 20))).status).toBe(403);
    expect((await witness.post(logOf(20, 20, LOG_KEY, OTHER).request(0))).status).toBe(200);
    expect((await kept(witness.url)).size).toBe(10);
  });

  it('gets nothing cosigned after the witness was ended and started again', async () => {
    const witness = await rotated();
    await witness.stop();
    const again = await witnessHere({ path: witness.path, isNew: false, vkeys: [] });
    expect((await again.post(byOld.request(10, 20))).status).toBe(403);
    expect((await again.post(byNew.request(10, 20))).status).toBe(200);
  });

  it('gets nothing cosigned by a witness that runs while another program adds the new key', async () => {
    const witness = await witnessHere();
    await witness.post(byOld.request(0, 10));
    const file = await openWitnessFile(witness.path);
    expect(addTo(file, NEW_VKEY)).toBe('new-key');
    file.close();
    expect((await witness.post(byOld.request(10, 20))).status).toBe(403);
  });

  it('gets nothing cosigned where the new key comes between the look at the signature and the writing', async () => {
    const path = join(folder(), 'witness.db');
    const witness = await witnessHere({ path });
    await witness.post(byOld.request(0, 10));
    const other = await openWitnessFile(path);
    const store = storeOf(witness.file);
    const late: ReturnType<typeof storeOf> = {
      ...store,
      advance: (all) => {
        addTo(other, NEW_VKEY);
        return store.advance(all);
      },
    };
    const server = await witnessServer(
      { store: late, keys: witness.keys, nowS: () => 1_790_000_000, heard: () => {} },
      { tls: null, requestsAMinute: 1000, patienceMs: 1000 },
    );
    const answer = await server.inject({
      method: 'POST',
      url: '/add-checkpoint',
      payload: byOld.request(10, 20),
      headers: { 'content-type': 'text/plain' },
    });
    await server.close();
    other.close();
    expect(answer.statusCode).toBe(403);
    expect((await kept(witness.url)).size).toBe(10);
  });
});

describe('a station that rotates its key', () => {
  const both = (old: number, size: number) => byOld.request(old, size) + lineOf(byNew, size);

  it('gets a checkpoint of both keys cosigned before the witness has the new one, and after', async () => {
    const witness = await witnessHere();
    expect((await witness.post(both(0, 10))).status).toBe(200);
    expect(addTo(witness.file, NEW_VKEY)).toBe('new-key');
    expect((await witness.post(both(10, 20))).status).toBe(200);
  });

  it('finds in what the witness keeps the signature of the key of now alone', async () => {
    const witness = await rotated();
    await witness.post(both(10, 20));
    const names = (await kept(witness.url)).signatures.map(
      ({ name, keyId: id }) => `${name} ${Buffer.from(id).toString('hex')}`,
    );
    const own = names.filter((name) => name.startsWith(`${ORIGIN} `));
    expect(own).toEqual([`${ORIGIN} ${Buffer.from(keyId(ORIGIN, publicJwk(NEW_KEY))).toString('hex')}`]);
  });

  it('is held to the history that the old key signed', async () => {
    const witness = await rotated();
    expect((await witness.post(logOf(20, 5, NEW_KEY).request(10))).status).toBe(422);
    expect((await witness.post(logOf(10, 5, NEW_KEY).request(10))).status).toBe(422);
    expect(witness.file.logs()).toMatchObject([{ forks: 1 }]);
  });
});

describe('whoever runs a witness', () => {
  const witnessFolder = async (kid = 'none') => {
    const data = folder();
    await createWitnessFile(join(data, 'witness.db'), { name: WITNESS, kid });
    return data;
  };

  it('is told by "witness add" what became of the key before', async () => {
    const data = await witnessFolder();
    const add = (vkey: string) => typed(['witness', 'add', vkey, '--data', data]);
    expect((await add(LOG_VKEY)).stdout).toContain('is known now');
    expect((await add(NEW_VKEY)).stdout).toContain('its key of before signs is not cosigned any more');
    const again = await add(LOG_VKEY);
    expect(again.code).toBe(2);
    expect(again.stderr).toContain('it does not come back');
    const list = await typed(['witness', 'list', '--data', data]);
    expect(list.stdout).toContain(`key ${NEW_VKEY.split('+')[1]} since`);
    expect(list.stdout).toContain('the one before it retired');
  });

  it('cannot make it the witness of its own log', async () => {
    const key = newKey();
    const data = await witnessFolder(key.kid);
    const answer = await typed(['witness', 'add', verifierKey(ORIGIN, key.jwk), '--data', data]);
    expect(answer.code).toBe(2);
    expect(answer.stderr).toContain('nobody is his own witness');
  });
});
