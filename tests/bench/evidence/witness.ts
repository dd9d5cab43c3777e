import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { Agent, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';
import { openStationLog } from '../../../db/log.ts';
import { createWitnessFile, openWitnessFile } from '../../../db/witness.ts';
import { readCheckpoint, signCheckpoint } from '../../../src/evidence/checkpoint.ts';
import { keyBytes, publicJwk } from '../../../src/evidence/jwk.ts';
import { heldAgainst } from '../../../src/evidence/kept-checkpoints.ts';
import { treeRoot } from '../../../src/evidence/merkle.ts';
import { verifierKey } from '../../../src/evidence/note.ts';
import { holds, sign } from '../../../src/evidence/platform/signature.ts';
import type { JobEvent } from '../../../src/job/event.ts';
import { orThrow } from '../../../src/result.ts';
import { LOG_KEY, logOf } from '../../serve/logs.ts';
import type { Measurement, Terms } from '../measurement.ts';

const ASKING = 16;
const SIZE = 400;

/** What a witness gets through, and what a log pays before it signs. */
export const witness: Measurement = {
  name: 'witness',
  what: 'requests/s of a witness on one core; the check before signing [requests=4000 entries=1000000]',
  async run(terms) {
    const folder = mkdtempSync(join(tmpdir(), 'plugmark-bench-'));
    try {
      return [...(await requests(folder, terms)), ...(await beforeSigning(folder, terms))];
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
};

async function requests(folder: string, { number, progress }: Terms): Promise<readonly string[]> {
  const count = number('requests', 4000);
  const lines = [
    'cosignature          requests   seconds   CPU s   requests/s   on one core   of what OpenSSL takes',
  ];
  const crypto = cryptoS();
  for (const [kinds, name] of [
    [1, 'Ed25519'],
    [2, 'Ed25519, ML-DSA-44'],
  ] as const) {
    const path = join(folder, `witness-${kinds}.db`);
    const wanted = kinds === 1 ? count : Math.ceil(count / 10);
    const logs = Array.from({ length: ASKING }, (_, i) => logOf(SIZE, SIZE, LOG_KEY, `shop.example/${i}`));
    await createWitnessFile(path, { name: 'witness.example/one', kid: 'none' });
    const file = await openWitnessFile(path);
    for (const [i] of logs.entries()) {
      const origin = `shop.example/${i}`;
      file.addLog({ origin, vkey: verifierKey(origin, publicJwk(LOG_KEY)), at: '2026-09-21T12:00:00.000Z' });
    }
    file.close();
    const rounds = Math.ceil(wanted / ASKING);
    const bodies = logs.map((log) => Array.from({ length: rounds }, (_, i) => bodyOf(log, i)));
    const child = fork(new URL('./witness-child.ts', import.meta.url), [path, String(kinds)]);
    try {
      const { url } = z.object({ url: z.string() }).parse((await once(child, 'message'))[0]);
      const agent = new Agent({ keepAlive: true, maxSockets: ASKING });
      const before = await cpuS(child);
      const startMs = performance.now();
      await Promise.all(
        bodies.map(async (own) => {
          for (const [i, body] of own.entries()) {
            const status = await post(`${url}/add-checkpoint`, body, agent);
            if (status !== 200) throw new Error(`the witness answered ${status}`);
            progress(i / rounds, name);
          }
        }),
      );
      const seconds = (performance.now() - startMs) / 1000;
      const used = (await cpuS(child)) - before;
      agent.destroy();
      const done = rounds * ASKING;
      lines.push(
        `${name.padEnd(20)} ${String(done).padStart(8)} ${seconds.toFixed(2).padStart(9)} ${used.toFixed(2).padStart(7)} ${(done / seconds).toFixed(0).padStart(12)} ${(done / used).toFixed(0).padStart(13)} ${(used / done / crypto).toFixed(1).padStart(20)} x`,
      );
    } finally {
      child.kill();
    }
  }
  return lines;
}

/** Each asks from where the one before ended, and at last again and again from the end. */
function bodyOf(log: ReturnType<typeof logOf>, i: number): string {
  const at = (n: number) => Math.min(n, SIZE);
  return log.request(at(i), at(i + 1));
}

async function cpuS(child: ChildProcess): Promise<number> {
  const answer = once(child, 'message');
  child.send('cpu');
  return z.object({ cpuS: z.number() }).parse((await answer)[0]).cpuS;
}

function post(url: string, body: string, agent: Agent): Promise<number> {
  return new Promise((resolve, reject) => {
    const sent = request(url, { method: 'POST', agent }, (response) => {
      response.resume().on('end', () => resolve(response.statusCode ?? 0));
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

/** CPU time of one signature checked and one made: what no witness does without. */
function cryptoS(): number {
  const message = Buffer.alloc(200, 7);
  const jwk = publicJwk(LOG_KEY);
  const before = process.cpuUsage();
  for (let i = 0; i < 2000; i++) holds(keyBytes(jwk), message, sign(message, LOG_KEY));
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 2000 / 1e6;
}

const EVENT: JobEvent = {
  type: 'readings',
  tool: 'wrench',
  first: 1,
  count: 3,
  startUs: 1000,
  times: 'AAAA',
  counts: 'AAAA',
};

async function beforeSigning(folder: string, { number, progress }: Terms): Promise<readonly string[]> {
  const entries = number('entries', 1_000_000);
  const log = await openStationLog(join(folder, 'station.db'));
  const origin = 'shop.example/log';
  const keys = [publicJwk(LOG_KEY)];
  const lines = ['', '   entries   check before signing         of CPU   of a signature'];
  const signature = cryptoS();
  const batch = Array(500).fill({ by: 'station', event: EVENT });
  try {
    for (let target = Math.min(1000, entries); target <= entries; target *= 10) {
      while (log.size() < target) {
        log.append('job:A', batch.slice(0, target - log.size()), {
          at: '2026-03-02T09:30:00.000Z',
          monoUs: 1000,
        });
        progress(log.size() / entries, `${log.size()} entries`);
      }
      const size = log.size();
      const old = Math.max(1, Math.floor(size * 0.61));
      const note = signCheckpoint({ origin, size: old, root: treeRoot(log.tree, old) }, LOG_KEY);
      const kept = orThrow(readCheckpoint(note, 'kept'));
      const cpu = process.cpuUsage();
      const startMs = performance.now();
      for (let i = 0; i < 200; i++) {
        const [finding] = heldAgainst({ origin, size, tree: log.tree, keys }, [kept]);
        if (finding?.kind !== 'extends') throw new Error('the log does not extend itself');
      }
      const ms = (performance.now() - startMs) / 200;
      const { user, system } = process.cpuUsage(cpu);
      const cpuMs = (user + system) / 200 / 1000;
      lines.push(
        `${String(size).padStart(10)} ${ms.toFixed(3).padStart(19)} ms ${cpuMs.toFixed(3).padStart(11)} ms ${(cpuMs / 1000 / signature).toFixed(1).padStart(14)} x`,
      );
    }
  } finally {
    log.close();
  }
  return lines;
}
