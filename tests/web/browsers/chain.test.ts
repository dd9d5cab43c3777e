/**
 * The whole chain with the built program: two stations ship to an archive in PostgreSQL and ask an outside witness; the archive
 * judges their jobs and answers for both; one station loses its log, has it back from the archive, and what is packed from
 * that holds for the command, the page and the independent verifier.
 */
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, onTestFinished, vi } from 'vitest';
import { parseTrustList } from '../../../src/evidence/trust.ts';
import { OF_PACKAGE } from '../../../src/report/verification.ts';
import { orThrow } from '../../../src/result.ts';
import { postgresPrograms, startPostgres } from '../../archive/postgres.ts';
import { workIn } from '../../audit/shop.ts';
import { exampleJson, folder, run, start } from '../../cli/program.ts';
import { missingPython, verifiedByPython } from '../../independent/python.ts';
import { browsersHere, give, opened, saidOf, started } from './browsers.ts';
import { zipOf } from './zip-of.ts';

const bin = postgresPrograms();
if (bin === null && process.env['ALL_TESTS'] === '1')
  throw new Error('PostgreSQL is missing: apt-get install postgresql');

const VAN = { vin: 'ZZ9EXAMP1PM000104', plate: 'EXAMPLE 4' };
const JOBS = {
  'bay-1': [
    { job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 27], vehicle: VAN },
    { job: 'J-2', on: '2026-03-11', peaks: [27, 26.5, 27, 27], vehicle: { plate: 'EXAMPLE 8' } },
  ],
  'bay-2': [{ job: 'J-1', on: '2026-04-03', peaks: [27, 27, 24, 27], vehicle: VAN }],
} as const;

it.runIf(bin !== null && missingPython() === null)('from the bay to whoever asks years later', async () => {
  const root = folder();
  const at = (...names: readonly string[]) => join(root, ...names);
  const done = async (...args: readonly string[]) => {
    const ended = await run(args, { cwd: root });
    expect(ended, `${args.join(' ')}\n${ended.stdout}${ended.stderr}`).toMatchObject({ code: 0 });
    return ended.stdout;
  };
  const withSecret = async (name: string, value: string, ...args: readonly string[]) => {
    vi.stubEnv(name, value);
    try {
      return await done(...args);
    } finally {
      vi.unstubAllEnvs();
    }
  };
  const serving = async (...args: readonly string[]) => {
    const server = start([...args, '--listen', '127.0.0.1:0'], { cwd: root });
    await server.says(' listens on http');
    const url = /listens on (http:\S+)/.exec(server.output())?.[1]?.replace(/[.,]$/, '') ?? '';
    return { server, url };
  };

  const database = await startPostgres(bin ?? '');
  onTestFinished(database.stop);
  const archive = ['--data', at('archive'), '--database', database.url];
  await done('archive', 'init', '--data', at('archive'), '--name', 'fleet.example/archive');
  const { server, url } = await serving('archive', 'serve', ...archive);
  await done('witness', 'init', '--data', at('witness'), '--name', 'outside.example/witness');

  const stations = Object.entries(JOBS);
  for (const [bay, jobs] of stations) await workIn(at(bay), jobs);
  const vkeys = new Map<string, string>();
  for (const [bay] of stations) {
    const vkey = (await done('log', 'vkey', '--data', at(bay))).trim();
    vkeys.set(bay, vkey);
    await done('witness', 'add', vkey, '--data', at('witness'));
    const token = (await done('archive', 'enrol', '--tenant', 'fleet', ...archive)).trim();
    await withSecret('PLUGMARK_ENROLMENT', token, 'archive', 'join', url, '--data', at(bay));
  }
  const outside = await serving('witness', 'serve', '--data', at('witness'));
  const keysIn = (name: string) => readFileSync(at(name, 'verifier-keys.txt'), 'utf8').trim().split('\n');
  for (const [bay] of stations) {
    await done('archive', 'ship', '--data', at(bay));
    const witnesses = [{ url: outside.url, keys: keysIn('witness') }];
    const file = { ...exampleJson('station.json'), data: '.', witnesses };
    writeFileSync(at(bay, 'bay.json'), JSON.stringify(file));
    await done('log', 'witness', '--station', at(bay, 'bay.json'));
  }

  // The archive answers for both, to whoever may ask.
  const reader = (
    await done('archive', 'reader', '--tenant', 'fleet', '--reader', 'Auditor', ...archive)
  ).trim();
  const asked = await withSecret('PLUGMARK_READER', reader, 'ask', '--vin', VAN.vin, '--archive', url);
  expect(asked).toContain('2 jobs.');
  expect(await done('archive', 'judge', ...archive)).toContain(
    '2 jobs judged again, 2 with the same verdicts',
  );
  expect(await done('archive', 'check', ...archive)).not.toContain('DAMAGED');

  // The disk of bay 1 is gone, but for the copy of its keys.
  for (const name of readdirSync(at('bay-1'))) if (name.startsWith('station.db')) rmSync(at('bay-1', name));
  const origin = vkeys.get('bay-1')?.split('+')[0] ?? '';
  const back = (await done('archive', 'give-back', '--log', origin, ...archive)).trim();
  await withSecret(
    'PLUGMARK_ENROLMENT',
    back,
    ...['restore', '--from-archive', url, '--station', at('bay-1', 'bay.json')],
  );
  server.child.kill('SIGTERM');
  expect(await server.ended).toMatchObject({ code: 0 });

  // Nobody is there any more but the package and what the reader trusts.
  await done('package', '--data', at('bay-1'), '--out', at('package'), '--no-papers');
  const policy = [
    `log ${vkeys.get('bay-1')}`,
    `witness fleet ${keysIn('archive')[0]}`,
    `witness outside ${keysIn('witness')[0]}`,
    'group both all fleet outside',
    'quorum both',
  ].join('\n');
  writeFileSync(at('insurer.policy'), `${policy}\n`);
  const trust = at('bay-1', 'trusted-keys.json');
  expect(await done('verify', at('package'), '--policy', at('insurer.policy'))).toContain(
    'Cosigned by 2 of 2',
  );

  const files = readdirSync(at('package'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .map((path) => ({ name: path.slice(at('package').length + 1), content: readFileSync(path) }));
  writeFileSync(at('package.zip'), zipOf(files));
  const browser = await started(browsersHere[0] ?? 'chrome');
  onTestFinished(() => browser.close());
  const { page } = await opened(browser);
  await give(page, 'trust-file', trust);
  await give(page, 'files', at('package.zip'), at('insurer.policy'));
  const said = await saidOf(page);
  expect(said.sentence).toContain(OF_PACKAGE.authentic);
  expect(said.checks.find((check) => check.includes(' witnesses: '))).toMatch(/^passed/);

  const list = orThrow(parseTrustList(readFileSync(trust), 'trust'));
  const records = files
    .filter(({ name }) => name.endsWith('.record.json'))
    .map(({ name }) => at('package', name));
  const [whole, ...single] = verifiedByPython([at('package'), ...records], { trust: list });
  expect(whole).toMatchObject({ verdict: 'authentic', trusted: true });
  expect(single.map(({ verdict }) => verdict)).toEqual(['authentic', 'authentic']);
});
