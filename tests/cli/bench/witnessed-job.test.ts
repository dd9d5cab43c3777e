import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { createServer, type Socket } from 'node:net';
import { join } from 'node:path';
import { expect, it, onTestFinished, vi } from 'vitest';
import { z } from 'zod';
import { turningPull } from '../../pull/shapes.ts';
import { witnessKeys } from '../../serve/witness-keys.ts';
import { addTo, witnessHere } from '../../serve/witnesses.ts';
import { example, folder, run, start } from '../program.ts';
import { replayedStation, rest } from './replayed-station.ts';

/** A loaded machine takes its time. */
const PATIENCE = { timeout: 60_000, interval: 50 };

/** Takes what is sent, and never says a word. */
async function silentWitness(): Promise<{ readonly url: string; readonly asked: Promise<Socket> }> {
  const server = createServer();
  const asked = once(server, 'connection').then(([socket]) => socket);
  await once(server.listen(0, '127.0.0.1'), 'listening');
  onTestFinished(async () => {
    (await asked).destroy();
    server.close();
  });
  const { port } = z.object({ port: z.int() }).parse(server.address());
  return { url: `http://127.0.0.1:${port}`, asked };
}

it('a job that is closed is sent to the witnesses by itself, and does not wait for one that says nothing', async () => {
  const dir = folder();
  const one = await witnessHere({ vkeys: [] });
  const silent = await silentWitness();
  const witnesses = [
    { url: one.url, keys: one.keys.map(({ vkey }) => vkey) },
    { url: silent.url, keys: [witnessKeys('silent.example/w', 'f1')[0]?.vkey] },
  ];
  const pulls = [1000, 5000, 9000, 13_000].flatMap((at) => turningPull(at, 700, 27, 22, 22));
  const station = replayedStation(dir, [rest, ...pulls], [0.75, 0.75, 0.75, 0.75], { witnesses });
  const job = start(['job', '--order', example('order-4.json'), '--station', station, '--plain']);
  await job.says('cylinder 1  torque  OK');
  const vkey = (await run(['log', 'vkey', '--station', station])).stdout.trim();
  addTo(one.file, vkey);
  await job.says('cylinder 4  torque  OK');
  job.type('s');
  const ended = await job.ended;
  expect(ended.stderr).toBe('');
  expect(ended.stdout).toContain('Authentic and complete');
  // The program that sends is still waiting for the silent one.
  expect((await silent.asked).destroyed).toBe(false);
  await vi.waitFor(() => expect(one.heard.join('\n')).toMatch(/^200 /m), PATIENCE);
  (await silent.asked).destroy();
  const records = join(dir, 'example-bay');
  await vi.waitFor(() => expect(existsSync(join(records, 'cosigned.checkpoint'))).toBe(true), PATIENCE);
  const sent = await run(['log', 'check', '--station', station]);
  expect(sent.code).toBe(0);
}, 90_000);
