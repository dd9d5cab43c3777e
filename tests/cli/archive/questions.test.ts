/** Questions over all stations of a tenant, asked of an archive on the command line as they are asked of one station. */
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { gunzipSync, gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it, onTestFinished, vi } from 'vitest';
import { openSqlite } from '../../../db/archive/sqlite.ts';
import { archiveStore } from '../../../db/archive/store.ts';
import { tokenHash } from '../../../src/archive/enrolment.ts';
import type { ArchiveStore } from '../../../src/archive/store.ts';
import { canonical } from '../../../src/evidence/canonical.ts';
import { archiveServer } from '../../../src/serve/archive.ts';
import { keepStation } from '../../archive/kept-station.ts';
import { type ShopJob, workIn } from '../../audit/shop.ts';
import { witnessKeys } from '../../serve/witness-keys.ts';
import { typed } from '../answers.ts';
import { impactOn } from '../audit/audit-station.ts';

const NAME = 'archive.example';
/** Beside each answer, whose it is. */
const WORD =
  'This is the word of the archive archive.example, and no proof. What a station has not shipped yet is not in it.\n';
const VAN = { vin: 'ZZ9EXAMP1PM000104', plate: 'EXAMPLE 4', fleet: 'BUS-12' };
const BAY_1: readonly ShopJob[] = [
  { job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 29.2], vehicle: VAN },
  { job: 'J-2', on: '2026-03-11', peaks: [27, 27, 27, 27], technician: 'Technician Two' },
];
const BAY_2: readonly ShopJob[] = [
  { job: 'J-1', on: '2026-04-03', peaks: [27, 26, 24, 27], vehicle: VAN },
  { job: 'J-9', on: '2026-05-11', peaks: [27, 27, 27, 27], vehicle: { plate: 'EXAMPLE 9' } },
];

let root = '';
let url = '';
let store: ArchiveStore;
let stop: () => Promise<void>;
let bay2 = '';
beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  await workIn(join(root, 'bay-1'), BAY_1);
  await workIn(join(root, 'bay-2'), BAY_2);
  await workIn(join(root, 'other'), BAY_2);
  await impactOn(join(root, 'bay-2'));
  const identity = { form: 'plugmark/archive-folder/1', name: NAME, kid: 'none' };
  writeFileSync(join(root, 'archive.json'), JSON.stringify(identity));
  store = archiveStore(await openSqlite(join(root, 'archive.db')));
  await keepStation(store, join(root, 'bay-1'), { tenant: 'north', name: 'Bay 1' });
  bay2 = await keepStation(store, join(root, 'bay-2'), { tenant: 'north', name: 'Bay 2' });
  await keepStation(store, join(root, 'other'), { tenant: 'south', name: 'Far away' });
  const until = '2999-01-01T00:00:00.000Z';
  await store.readers.add(tokenHash('fleet'), { tenant: 'north', log: null, name: 'Auditor' }, until);
  await store.readers.add(tokenHash('bay'), { tenant: 'north', log: bay2, name: 'Foreman' }, until);
  await store.readers.add(tokenHash('south'), { tenant: 'south', log: null, name: 'Stranger' }, until);
  await store.readers.add(
    tokenHash('old'),
    { tenant: 'north', log: null, name: 'Auditor' },
    '2026-01-01T00:00:00.000Z',
  );
  const nowS = () => Math.floor(Date.now() / 1000);
  const server = await archiveServer(
    { name: NAME, store, keys: witnessKeys(NAME, 'e7'), nowS, heard: () => undefined },
    { tls: null, requestsAMinute: 10_000, patienceMs: 5000 },
  );
  url = await server.listen({ host: '127.0.0.1', port: 0 });
  stop = () => server.close();
}, 120_000);
afterAll(async () => {
  await stop();
  await store.close();
  rmSync(root, { recursive: true, force: true });
});

/** What the command says over the archive to whoever has this token. */
function asked(token: string, ...args: readonly string[]) {
  vi.stubEnv('PLUGMARK_READER', token);
  onTestFinished(() => void vi.unstubAllEnvs());
  return typed([...args, '--archive', url]);
}
const there = (folder: string, ...args: readonly string[]) => typed([...args, '--data', join(root, folder)]);

describe('a question to an archive', () => {
  it('finds the jobs of one vehicle in every bay, and says where each was', async () => {
    const { code, stdout } = await asked('fleet', 'ask', '--fleet', VAN.fleet);
    expect(code).toBe(0);
    expect(stdout).toMatch(/station +job +state/);
    expect(stdout).toMatch(/Bay 1 +J-1 +complete/);
    expect(stdout).toMatch(/Bay 2 +J-1 +NOT COMPLETE/);
    expect(stdout).toContain('2 jobs.');
    const exceptions = await asked('fleet', 'ask', '--vin', VAN.vin, '--exceptions');
    expect(exceptions.stdout).toContain('Bay 2, J-1:\n  closed with work open');
  });

  it('answers in JSON and CSV with the rows that the stations give', async () => {
    const all = async (answer: ReturnType<typeof there>, of: 'jobs' | 'attempts') =>
      JSON.parse((await answer).stdout)[of] as readonly Record<string, unknown>[];
    const bare = (rows: readonly Record<string, unknown>[]) =>
      rows.map(({ station: _station, ...row }) => row).sort((a, b) => (canonical(a) < canonical(b) ? -1 : 1));
    for (const args of [
      ['ask', '--json'],
      ['ask', '--json', '--technician', 'technician two'],
      ['ask', '--json', '--exceptions'],
    ])
      expect(bare(await all(asked('fleet', ...args), 'jobs'))).toEqual(
        bare([
          ...(await all(there('bay-1', ...args), 'jobs')),
          ...(await all(there('bay-2', ...args), 'jobs')),
        ]),
      );
    const args = ['ask', '--attempts', '--json', '--tool', 'EXAMPLE-W-1'];
    const rows = await all(asked('fleet', ...args), 'attempts');
    expect(new Set(rows.map(({ station }) => station))).toEqual(new Set(['Bay 1', 'Bay 2']));
    expect(bare(rows)).toEqual(
      bare([
        ...(await all(there('bay-1', ...args), 'attempts')),
        ...(await all(there('bay-2', ...args), 'attempts')),
      ]),
    );
    const csv = (await asked('fleet', 'ask', '--csv')).stdout.split('\r\n');
    expect([csv.length, csv[0]]).toEqual([6, expect.stringMatching(/^\W?Station,/)]);
  });

  it('shows what a process can do over all bays, and a wrench that went from bay to bay', async () => {
    const capability = await asked('fleet', 'capability', '--json');
    const [group] = JSON.parse(capability.stdout).groups;
    const [one] = JSON.parse((await there('bay-1', 'capability', '--json')).stdout).groups;
    expect(group.specificationKey).toBe(one.specificationKey);
    expect((await asked('fleet', 'capability')).stdout).toContain(NAME);
    const drift = await asked('fleet', 'drift', 'EXAMPLE-W-1', '--permissible', '2', '--json');
    expect([drift.code, drift.stderr]).toEqual([1, WORD]);
    expect(JSON.parse(drift.stdout)).toMatchObject({ tool: 'EXAMPLE-W-1', verdict: 'WARNING' });
    const calendar = await asked('fleet', 'calendar', '--json');
    const wrench = JSON.parse(calendar.stdout).tools.find(
      ({ serial }: { serial: string }) => serial === 'EXAMPLE-W-1',
    );
    expect(wrench.cycles).toBe(16);
    // Bay 2 found it out of tolerance; bay 1 has it on its list as well.
    expect(wrench.state).toBe('out-of-tolerance');
    const delivered = await asked('fleet', 'delivered', '--part', 'EXAMPLE-14G');
    expect(delivered.stdout).toMatch(/EXAMPLE-14G +\(none\) +16 +16/);
  });

  it('counts what must be kept over all bays, and holds by its own assessment what each bay has', async () => {
    // The wrench was out of tolerance for a proof of the one bay; the other has a job of the same number.
    await workIn(join(root, 'west-1'), BAY_1);
    await workIn(join(root, 'west-2'), BAY_2);
    await impactOn(join(root, 'west-1'));
    await keepStation(store, join(root, 'west-1'), { tenant: 'west', name: 'West 1' });
    await keepStation(store, join(root, 'west-2'), { tenant: 'west', name: 'West 2' });
    const until = '2999-01-01T00:00:00.000Z';
    await store.readers.add(tokenHash('west'), { tenant: 'west', log: null, name: 'Auditor' }, until);
    vi.useFakeTimers({ toFake: ['Date'], now: Date.parse('2030-01-01T00:00:00Z') });
    onTestFinished(() => void vi.useRealTimers());
    const rows = async (answer: ReturnType<typeof there>) =>
      JSON.parse((await answer).stdout).jobs as readonly Record<string, unknown>[];
    const args = ['retention', '--years', '1'];
    const all = await rows(asked('west', ...args, '--json'));
    const named = (station: string, jobs: readonly Record<string, unknown>[]) =>
      jobs.map((row) => ({ station, ...row }));
    expect(all).toEqual(
      expect.arrayContaining([
        ...named('West 1', await rows(there('west-1', ...args, '--json'))),
        ...named('West 2', await rows(there('west-2', ...args, '--json'))),
      ]),
    );
    expect(all).toHaveLength(4);
    expect(
      all.filter(({ job }) => job === 'J-1').map(({ station, standing }) => [station, standing]),
    ).toEqual([
      ['West 1', 'held'],
      ['West 2', 'may'],
    ]);
    expect((await asked('west', ...args)).stdout).toContain(
      'held: West 1, J-1, impact assessment IA-1 is not closed',
    );
    expect((await asked('west', ...args, '--csv')).stdout).toMatch(/^\W?Station,Job,/);
  });

  it('does not know the retention time of the shops of an archive: it is named', async () => {
    const { code, stderr } = await asked('fleet', 'retention');
    expect([code, stderr]).toEqual([2, expect.stringContaining('Then name it: --years 7.')]);
  });

  it('is noted with who asked it, and without the plate that was asked for', async () => {
    await asked('fleet', 'ask', '--plate', VAN.plate, '--from', '2026-01-01');
    const reads = await store.readers.reads(1000);
    expect(reads.map(({ reader, question }) => [reader, question])).toContainEqual([
      'Auditor',
      'jobs plate from=2026-01-01',
    ]);
    expect(JSON.stringify(reads)).not.toContain('EXAMPLE 4');
    expect((await typed(['archive', 'reads', '--data', root])).stdout).toContain(
      'jobs plate from=2026-01-01',
    );
  });

  it.each([
    ['nobody', 'a token that never was'],
    ['old', 'one whose time is over'],
  ])('is refused with %s: %s', async (token) => {
    const { code, stderr } = await asked(token, 'ask');
    expect(code).toBe(2);
    expect(stderr).toContain('does not know the token of this reader');
  });
});

describe('a wrench that was out of tolerance and went from bay to bay', () => {
  const survey = (token: string, ...args: readonly string[]) =>
    asked(token, 'impact', 'survey', 'EXAMPLE-W-1', '--as-found', join(root, 'bay-2', 'found.json'), ...args);

  it('is judged again over all bays in one go, with what each bay has recorded and decided', async () => {
    const csv = join(root, 'survey.csv');
    const { code, stdout, stderr } = await survey('fleet', '--out', csv);
    expect([code, stderr]).toEqual([1, expect.any(String)]);
    expect(stdout).toContain(
      'EXAMPLE-W-1, by what AF-1 of 2026-09-01 found: everything since CAL-1 of 2026-01-12',
    );
    expect(stdout).toContain('Used in that time at 2 of 2 stations.');
    expect(stdout).toMatch(/Bay 1 +8 +7 +0 +1 +1 +not yet/);
    expect(stdout).toMatch(/Bay 2 +8 +6 +0 +0 +0 +IA-1/);
    // As bay 2 counted when it recorded its own.
    const shown = JSON.parse((await there('bay-2', 'impact', 'show', 'IA-1', '--json')).stdout);
    expect(shown).toMatchObject({ attempts: 8, proofs: { stillIn: 6, doubtful: 0, out: 0 } });
    expect(stdout).toMatch(
      /Bay 1 +J-1 +2026-02-03 +ZZ9EXAMP1PM000104 +EXAMPLE 4 +BUS-12 +\S+ +4 +not recorded/,
    );
    expect(stdout).toContain(
      'Still to be recorded and decided at Bay 1: plugmark impact wrench --as-found FILE --by NAME',
    );
    expect(readFileSync(csv, 'utf8').split('\r\n')[1]).toMatch(/^Bay 1,J-1,/);
  });

  it('is no business of another tenant, and not that of the certificate of another wrench', async () => {
    const other = await survey('south');
    expect(other.stdout).not.toMatch(/Bay 1|Bay 2|IA-1/);
    const found = join(root, 'bay-2', 'found.json');
    const wrong = await asked('fleet', 'impact', 'survey', 'EXAMPLE-W-2', '--as-found', found);
    expect([wrong.code, wrong.stderr]).toEqual([2, expect.stringContaining('and not of EXAMPLE-W-2')]);
  });
});

describe('whoever has a token', () => {
  const COMMANDS: readonly (readonly string[])[] = [
    ['ask'],
    ['ask', '--attempts'],
    ['ask', '--vin', VAN.vin],
    ['ask', '--exceptions'],
    ['capability'],
    ['delivered'],
    ['drift', 'EXAMPLE-W-1', '--permissible', '2'],
    ['calendar'],
    ['retention', '--years', '7', '--csv'],
  ];
  it.each(COMMANDS)('of one log sees no other of its tenant: %s', async (...args) => {
    const { stdout } = await asked('bay', ...args);
    expect(stdout).not.toMatch(/Bay 1|Far away|Technician Two|J-2/);
  });
  it.each(COMMANDS)('of a tenant sees nothing of another: %s', async (...args) => {
    const mine = await asked('south', ...args);
    expect(mine.stdout).not.toMatch(/Bay 1|Bay 2|Technician Two|J-2|IA-1/);
    const theirs = await asked('fleet', ...args);
    expect(theirs.stdout).not.toMatch(/Far away/);
  });

  it('names what it likes, and gets nothing of another tenant for it', async () => {
    const question = async (token: string, body: unknown) => {
      const response = await fetch(`${url}/ask`, {
        method: 'POST',
        headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json' },
        body: JSON.stringify(body),
      });
      return { status: response.status, text: await response.text() };
    };
    const empty = async (body: unknown) => {
      const { status, text } = await question('south', body);
      return [status, text];
    };
    const [nothing] = [await empty({ ask: 'attempts', filter: { log: bay2 } })];
    expect(nothing[0]).toBe(200);
    for (const body of [
      { ask: 'process', filter: { log: bay2 } },
      { ask: 'jobs', filter: { log: bay2 } },
      { ask: 'jobs', filter: { plate: VAN.plate, log: bay2 } },
      { ask: 'attempts-in', jobs: [`${bay2} job:J-1`, 'x', ' '] },
    ])
      expect(await empty(body)).toEqual(nothing);
    for (const body of [
      null,
      { ask: 'everything' },
      { ask: 'jobs', filter: { tenant: 'north' } },
      { ask: 'jobs', filter: { from: "2026-01-01' OR 1=1" } },
      { ask: 'attempts-in', jobs: Array(501).fill('a') },
    ])
      expect((await question('south', body)).status).toBe(400);
    expect((await question("' OR 1=1 --", { ask: 'stations' })).status).toBe(401);
  });

  it('gets each job once, however often it is named: one question would be 500 answers', async () => {
    const jobs = [`${bay2} job:J-1`];
    const scope = { tenant: 'north', log: null };
    const single = await store.readers.records(scope).attemptsIn(jobs.map((stream) => ({ stream })));
    const often = Array<string>(500).fill(jobs[0] ?? '');
    expect(single).not.toEqual([]);
    expect(await store.readers.records(scope).attemptsIn(often.map((stream) => ({ stream })))).toEqual(
      single,
    );
  });
});

describe('an archive that does not answer as one', () => {
  /** A server that calls itself an archive and answers each question with this. */
  async function answering(answer: (question: { readonly ask: string }, real: string) => Buffer) {
    const other = createServer(async (request, response) => {
      if (request.url === '/') response.end(JSON.stringify({ archive: NAME, form: 'plugmark/archive/1' }));
      else {
        const body = await text(request);
        const real = await fetch(`${url}/ask`, {
          method: 'POST',
          headers: { authorization: 'Bearer fleet', 'content-type': 'application/json' },
          body,
        });
        const unpacked = gunzipSync(Buffer.from(await real.arrayBuffer())).toString();
        response.end(answer(JSON.parse(body), unpacked));
      }
    }).listen(0, '127.0.0.1');
    await once(other, 'listening');
    onTestFinished(() => void other.close());
    const address = other.address();
    return `http://127.0.0.1:${typeof address === 'object' ? address?.port : ''}`;
  }
  const askedOf = (at: string, ...args: readonly string[]) => {
    vi.stubEnv('PLUGMARK_READER', 'fleet');
    onTestFinished(() => void vi.unstubAllEnvs());
    return typed([...args, '--archive', at]);
  };
  const NOT_READ = 'what the archive answered is not what this version of the program reads';

  it('is not listened to for ever: a million lines without a word in them lie in a kilobyte', async () => {
    const bomb = gzipSync(Buffer.alloc(32_000_000, '\n'));
    const { code, stderr } = await askedOf(await answering(() => bomb), 'ask');
    expect([code, stderr]).toEqual([2, expect.stringContaining(NOT_READ)]);
    const long = gzipSync(Buffer.from('0\n'.repeat(1_200_000)));
    const more = await askedOf(await answering(() => long), 'ask');
    expect([more.code, more.stderr]).toEqual([2, expect.stringContaining(NOT_READ)]);
  });

  it('is no fault of the program here: by a survey without what the jobs were judged by, nothing is judged', async () => {
    const nothing = gzipSync('{"end":0,"behind":[]}\n');
    const at = await answering(({ ask }, real) => (ask === 'setups' ? nothing : gzipSync(real)));
    const found = join(root, 'bay-2', 'found.json');
    const { code, stderr } = await askedOf(at, 'impact', 'survey', 'EXAMPLE-W-1', '--as-found', found);
    expect([code, stderr]).toEqual([2, expect.stringContaining(NOT_READ)]);
  });
});

describe('the readers of an archive', () => {
  it('get a token for some time, are listed without it, and can be dismissed', async () => {
    const made = await typed([
      'archive',
      'reader',
      '--data',
      root,
      '--tenant',
      'north',
      '--reader',
      'Insurer',
    ]);
    const token = made.stdout.trim();
    expect(made.stderr).toContain('names and plates with them');
    expect((await asked(token, 'ask')).stdout).toContain('4 jobs.');
    const listed = (await typed(['archive', 'readers', '--data', root])).stdout;
    expect(listed).toMatch(/north +Insurer +all stations/);
    expect(listed).not.toContain(token);
    expect(readFileSync(join(root, 'archive.db')).includes(token)).toBe(false);
    await typed(['archive', 'dismiss', '--data', root, '--tenant', 'north', '--reader', 'Insurer']);
    expect((await asked(token, 'ask')).code).toBe(2);
  });

  it.each([
    ['a tenant that nobody joined', ['--tenant', 'nobody']],
    ['a log of another tenant', ['--tenant', 'north', '--log', 'example.com/other']],
    ['more than a year', ['--tenant', 'north', '--days', '401']],
  ])('are refused for %s', async (_what, args) => {
    const { code } = await typed(['archive', 'reader', '--data', root, '--reader', 'X', ...args]);
    expect(code).toBe(2);
  });
});

it('a station whose entries are damaged at the archive silences nobody, and is named', async () => {
  const copy = join(root, 'damaged.db');
  const damaged = archiveStore(await openSqlite(copy));
  onTestFinished(() => damaged.close());
  await keepStation(damaged, join(root, 'bay-1'), { tenant: 'north', name: 'Bay 1' });
  const log = await keepStation(damaged, join(root, 'bay-2'), { tenant: 'north', name: 'Bay 2' });
  const text = 'no entry at all\n';
  const bundles = [{ number: 0, hashes: [Buffer.alloc(32)], text }];
  await damaged.change(log, () => ({ answer: 0, writes: { bundles } }));
  const until = '2999-01-01T00:00:00.000Z';
  await damaged.readers.add(tokenHash('t'), { tenant: 'north', log: null, name: 'Auditor' }, until);
  const heard: string[] = [];
  const server = await archiveServer(
    {
      name: NAME,
      store: damaged,
      keys: witnessKeys(NAME, 'e7'),
      nowS: () => 1_800_000_000,
      heard: (line) => void heard.push(line),
    },
    { tls: null, requestsAMinute: 1000, patienceMs: 5000 },
  );
  const address = await server.listen({ host: '127.0.0.1', port: 0 });
  onTestFinished(() => server.close());
  vi.stubEnv('PLUGMARK_READER', 't');
  onTestFinished(() => void vi.unstubAllEnvs());
  const { code, stdout, stderr } = await typed(['ask', '--archive', address]);
  expect(code).toBe(0);
  expect(stdout).toContain('2 jobs.');
  expect(stderr).toBe(
    `Not in the answer: the newest entries of Bay 2. Have it looked at by whoever runs the archive: plugmark archive check.\n${WORD}`,
  );
  expect(heard.join('\n')).toContain(`500 history ${log}`);
  expect(heard.join('\n')).not.toMatch(/Bay 2|J-1|EXAMPLE/);
});

it('every job was judged on arrival, and the archive says how it came out', async () => {
  const { code, stdout } = await typed(['archive', 'judge', '--data', root]);
  expect(stdout).toMatch(/north {2}Bay 1: 2 jobs judged again, 2 with the same verdicts/);
  expect(stdout).toMatch(/south {2}Far away: 2 jobs judged again, 2 with the same verdicts/);
  expect(code).toBe(0);
});
