/** Who may ask an archive for what, over HTTP: every route that the server has, asked by nobody, and what the log says of it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openSqlite } from '../../db/archive/sqlite.ts';
import { archiveStore } from '../../db/archive/store.ts';
import { tokenHash } from '../../src/archive/enrolment.ts';
import { archiveServer } from '../../src/serve/archive.ts';
import { witnessKeys } from './witness-keys.ts';

const UNTIL = '2999-01-01T00:00:00.000Z';
const LOG = 'a'.repeat(64);
const VIN = 'WVWZZZ1JZXW000001';

/** What each route answers to whoever shows nothing. A route that is not here fails the test. */
const NOBODY: Readonly<Record<string, number>> = {
  'GET /': 200,
  'GET /health': 200,
  'GET /metrics': 200,
  'POST /enrol': 400,
  'POST /ask': 401,
  'POST /return': 403,
  'POST /logs/:log/key': 404,
  'POST /logs/:log/add-checkpoint': 400,
  'POST /logs/:log/entries': 404,
  'GET /logs/:log/checkpoint': 404,
};

const heard: string[] = [];
const folder = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
const store = archiveStore(await openSqlite(join(folder, 'archive.db')));
const server = await archiveServer(
  {
    name: 'archive.example',
    store,
    keys: witnessKeys('archive.example', 'e7'),
    nowS: () => 1_790_000_000,
    heard: (line) => void heard.push(line),
  },
  { tls: null, requestsAMinute: 10_000, patienceMs: 5000 },
);
let url = '';
beforeAll(async () => {
  await store.readers.add(tokenHash('north'), { tenant: 'north', log: null, name: 'A. Uditor' }, UNTIL);
  await store.readers.add(tokenHash('south'), { tenant: 'south', log: LOG, name: 'F. Oreman' }, UNTIL);
  url = await server.listen({ host: '127.0.0.1', port: 0 });
});
afterAll(async () => {
  await server.close();
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

/** As fastify prints them: one a line, with its methods. */
function routes(): readonly string[] {
  const printed = server.printRoutes({ commonPrefix: false });
  const path: string[] = [];
  return printed.split('\n').flatMap((line) => {
    const [, indent = '', piece = '', methods] = /^([│├└─ ]*)(\S*)(?: \(([A-Z, ]+)\))?$/.exec(line) ?? [];
    if (indent === '') return [];
    path.splice(indent.length / 4 - 1, path.length, piece);
    return (methods ?? '')
      .split(', ')
      .filter((method) => method !== '' && method !== 'HEAD' && method !== 'OPTIONS')
      .map((method) => `${method} ${path.join('')}`);
  });
}

const send = (route: string, headers: Readonly<Record<string, string>> = {}) => {
  const [method = '', path = ''] = route.split(' ');
  return fetch(url + path.replace(':log', LOG), {
    method,
    headers: method === 'POST' ? { 'content-type': 'application/json', ...headers } : headers,
    ...(method === 'POST' ? { body: '{"ask":"stations"}' } : {}),
  });
};

describe('whoever shows nothing', () => {
  it('has an answer written down for every route that the server has', () => {
    expect([...routes()].sort()).toEqual(Object.keys(NOBODY).sort());
  });

  it.each(Object.entries(NOBODY))(
    'gets from %s the answer %i, and not a word of what is kept',
    async (route, status) => {
      const answer = await send(route);
      const text = await answer.text();
      expect([answer.status, text]).toEqual([status, expect.not.stringMatching(/Uditor|Oreman|north|south/)]);
    },
  );

  it.each([
    'Bearer wrong',
    'Bearer ',
    'Basic bm9ydGg6',
    'bearer north',
    'Bearer north south',
    `Bearer ${'x'.repeat(500)}`,
  ])('is nobody with "%s" too', async (authorization) => {
    const answer = await send('POST /ask', { authorization });
    await answer.arrayBuffer();
    expect([answer.status, answer.headers.get('www-authenticate')]).toEqual([401, 'Bearer']);
  });
});

describe('what is asked', () => {
  const ask = async (token: string, question: unknown) => {
    const answer = await fetch(`${url}/ask`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${token}` },
      body: JSON.stringify(question),
    });
    await answer.arrayBuffer();
    return answer.status;
  };

  it('is noted under whoever asked, without what was looked for of a vehicle; what was refused is not', async () => {
    expect(await ask('north', { ask: 'jobs', filter: { vin: VIN } })).toBe(200);
    expect(await ask('south', { ask: 'stations' })).toBe(200);
    expect(await ask('nobody', { ask: 'stations' })).toBe(401);
    const reads = await store.readers.reads(10);
    expect(reads.map(({ tenant, reader, question }) => [tenant, reader, question]).sort()).toEqual([
      ['north', 'A. Uditor', 'jobs vin'],
      ['south', 'F. Oreman', 'stations'],
    ]);
  });

  it('is never in the log of the server with a token, a name or a VIN', () => {
    expect(heard).toContain('200 ask jobs');
    expect(heard.join('\n')).not.toMatch(new RegExp(`north|south|Uditor|Oreman|${VIN}|Bearer`));
  });
});
