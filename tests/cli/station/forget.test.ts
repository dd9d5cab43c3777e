/** Forgetting: the texts are gone from every byte of the station's log, and everything that was proven is proven still. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { openStationLog, type StationLogFile } from '../../../db/log.ts';
import { ask } from '../../../src/cli/audit/ask.ts';
import { showCapability } from '../../../src/cli/audit/capability.ts';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { verify } from '../../../src/cli/evidence/verify.ts';
import { forget } from '../../../src/cli/station/forget.ts';
import { listJobs, papersAgain, showJob, voidJob } from '../../../src/cli/station/jobs.ts';
import { checkpoint } from '../../../src/cli/station/log.ts';
import { check } from '../../../src/cli/station/log-check.ts';
import { recover } from '../../../src/cli/station/recover.ts';
import { personalTexts } from '../../../src/evidence/entry.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation, CAR, VAN } from '../audit/audit-station.ts';

const station = auditStation();
const at = (name: string) => join(station.data, name);
/** Every byte that the log lies in. */
const bytes = () =>
  ['station.db', 'station.db-wal', 'station.db-shm']
    .filter((name) => existsSync(at(name)))
    .map((name) => readFileSync(at(name)).toString('latin1'))
    .join('\n');
const go = (options: Omit<Parameters<typeof forget>[0], 'station' | 'data'>) =>
  said(() => forget({ ...station.scope(), yes: true, ...options }));
const trust = () => at('trusted-keys.json');

async function withLog<T>(work: (log: StationLogFile) => T): Promise<T> {
  const log = await openStationLog(at('station.db'));
  try {
    return work(log);
  } finally {
    log.close();
  }
}

describe('a plate that is forgotten', () => {
  beforeEach(async () => {
    await said(() => checkpoint({ ...station.scope(), out: at('kept.checkpoint') }));
    await said(() => papersAgain('J-2', station.scope()));
  });

  it('is said before: how many texts, in which jobs, and what will still hold it', async () => {
    const { text } = await go({ plate: CAR.plate });
    expect(text).toContain('To be deleted: plate (1).');
    expect(text).toContain('in 1 job: J-2');
    expect(text).toContain(
      '1 of these jobs was closed or declared void: whoever was given the record or a paper still has it (J-2).',
    );
    for (const file of ['J-2.record.json', 'J-2.pdf', 'J-2.csv']) expect(text).toContain(`  ${file}`);
    expect(text).not.toContain('J-1.');
    expect(text).toContain('A backup that is restored brings it back.');
    expect(text).toContain('Deleted: plate (1).');
  });

  it('names a job that was declared void while it was open: it has a record and papers too', async () => {
    await said(() => voidJob('J-4', { ...station.scope(), by: 'Owner One', because: 'wrong vehicle' }));
    expect((await go({ fleet: 'BUS-12' })).text).toContain(
      '3 of these jobs were closed or declared void: whoever was given the record or a paper still has it (J-1, J-3, J-4).',
    );
  });

  it('is in no byte of the log any more, nor beside it', async () => {
    expect(bytes()).toContain(CAR.plate);
    expect((await go({ plate: 'example-8' })).value).toBe(0);
    expect(bytes()).not.toContain(CAR.plate);
    expect(bytes()).toContain(VAN.plate);
    expect(bytes()).toContain(CAR.vin);
  });

  it('leaves log, checkpoints, records, papers, packages and questions as they were', async () => {
    const before = await said(() => showCapability({ ...station.scope(), per: 'specification', last: 100 }));
    await go({ plate: CAR.plate });
    const kept = await said(() => check([at('kept.checkpoint'), at('J-2.record.json')], station.scope()));
    expect(kept.value, kept.text).toBe(0);
    expect(
      (await said(() => showCapability({ ...station.scope(), per: 'specification', last: 100 }))).text,
    ).toBe(before.text);
    // A record from before still shows it; one that is sealed now says that it is withheld.
    expect((await said(() => verify(at('J-2.record.json'), { trust: trust() }))).text).not.toContain(
      'Withheld',
    );
    const again = await said(() => papersAgain('J-2', { ...station.scope(), out: at('again') }));
    expect(again.value).toBe(0);
    const verified = await said(() => verify(join(at('again'), 'J-2.record.json'), { trust: trust() }));
    expect(verified.value).toBe(0);
    expect(verified.text).toContain('Withheld: plate (1).');
    expect(readFileSync(join(at('again'), 'J-2.csv'), 'utf8')).toContain('withheld');
    expect((await said(() => ask({ ...station.scope(), vin: CAR.vin }))).text).toContain('withheld');
    expect((await said(() => ask({ ...station.scope(), csv: true }))).text).toContain('withheld');
    expect((await said(() => listJobs({ ...station.scope() }))).value).toBe(0);
    expect((await said(() => showJob('J-2', station.scope()))).value).toBe(0);
    const out = at('audit');
    await said(() => makePackage({ ...station.scope(), out, kept: at('kept.checkpoint'), papers: false }));
    const whole = await said(() => verify(out, { trust: trust(), kept: at('kept.checkpoint') }));
    expect(whole.value, whole.text).toBe(0);
  });

  it('is looked up no more, and never taken for another vehicle whose plate is gone too', async () => {
    await go({ plate: CAR.plate });
    await go({ plate: VAN.plate });
    expect((await said(() => ask({ ...station.scope(), plate: CAR.plate }))).text).not.toContain('J-2');
    const rows = await withLog((log) => log.history.jobsOf({}));
    const db = new Sqlite(at('station.db'), { readonly: true });
    const keys = db.prepare('SELECT DISTINCT plateKey FROM jobs').pluck().all();
    db.close();
    expect(rows).toHaveLength(4);
    expect(keys).toEqual([null]);
  });

  it('is an entry of the log that says where it was, and not what it said', async () => {
    await go({ plate: CAR.plate, by: 'Owner One', because: 'asked for it' });
    const [last] = await withLog((log) => log.stationEntries().slice(-1));
    expect(last).toMatchObject({
      by: 'Owner One',
      event: { type: 'texts-forgotten', texts: [{ kind: 'plate', text: 1 }], because: 'asked for it' },
    });
    expect(last === undefined ? [] : personalTexts(last).map(({ kind }) => kind)).toEqual(['person', 'note']);
    expect(JSON.stringify(last)).not.toContain(CAR.plate);
  });

  it('is not brought back by a recovery from records that were given away before', async () => {
    await go({ plate: CAR.plate });
    const out = at('saved.db');
    const { text } = await said(() => recover({ ...station.scope(), records: station.data, out }));
    expect(text).toContain('entries are in');
    expect(readFileSync(out).toString('latin1')).not.toContain(CAR.plate);
    expect(readFileSync(out).toString('latin1')).toContain(CAR.vin);
  });
});

describe('a person who is forgotten', () => {
  const person = { person: 'Technician Two' };
  it('is in no byte of the log, whatever he was in it, and the others are', async () => {
    expect(bytes()).toContain('Technician Two');
    const { value, text } = await go(person);
    expect(value).toBe(0);
    expect(text).toContain("in the station's own entries: 1");
    expect(bytes()).not.toContain('Technician Two');
    expect(bytes()).toContain('Technician One');
    expect((await said(() => check([], station.scope()))).value).toBe(0);
  });

  it('goes out of free text too, and out of the names of those who decided', async () => {
    await station.impact();
    await go({ person: 'Quality One', althoughHeld: true, by: 'Owner One', because: 'left the shop' });
    expect(bytes()).not.toContain('Quality One');
  });

  it('leaves statistics and answers, which say that the name is withheld', async () => {
    const before = await said(() => showCapability({ ...station.scope(), per: 'specification', last: 100 }));
    await go(person);
    expect(
      (await said(() => showCapability({ ...station.scope(), per: 'specification', last: 100 }))).text,
    ).toBe(before.text);
    const { text } = await said(() => ask({ ...station.scope(), csv: true }));
    expect(text).toContain('withheld');
    expect(text).not.toContain('Technician Two');
  });

  it('can work here again under the same name', async () => {
    await go(person);
    await withLog((log) =>
      log.appendStation(
        [{ by: 'station', event: { type: 'person-recorded', person: 'Technician Two', key: null } }],
        { at: '2026-12-01T08:00:00.000Z', monoUs: 0 },
      ),
    );
    expect((await said(() => check([], station.scope()))).value).toBe(0);
  });
});

describe('what is held', () => {
  it('by an open impact assessment is not forgotten, unless somebody answers for it', async () => {
    await station.impact();
    const held = await problemOf(() => go({ vin: VAN.vin }));
    expect(held.code).toBe('forget-held');
    expect(held.message).toContain('impact assessment IA-1 is not closed');
    expect(bytes()).toContain(VAN.vin);
    expect((await problemOf(() => go({ vin: VAN.vin, althoughHeld: true }))).code).toBe(
      'override-incomplete',
    );
    const { value, text } = await go({
      vin: VAN.vin,
      althoughHeld: true,
      by: 'Owner One',
      because: 'a court said so',
    });
    expect(value).toBe(0);
    expect(text).toContain('Held, and deleted all the same:');
    expect(bytes()).not.toContain(VAN.vin);
  });

  it('by being open is not forgotten', async () => {
    const held = await problemOf(() => go({ fleet: 'BUS-12' }));
    expect(held.message).toContain('J-4: the job is still open');
  });

  it('by the retention time of the shop is not forgotten', async () => {
    const file = at('station.json');
    const tool = {
      id: 'wrench',
      quantity: 'torque',
      permissibleDeviation: { kind: 'relative', percent: 2 },
      resolution: 0.01,
      basis: 'x',
      driver: { use: 'imds' },
    };
    writeFileSync(
      file,
      JSON.stringify({
        form: 'plugmark/station/1',
        station: 'Example bay',
        data: '.',
        retention: { years: 50 },
        tools: [
          tool,
          {
            ...tool,
            id: 'gauge',
            quantity: 'length',
            permissibleDeviation: { kind: 'absolute', amount: 0.01 },
          },
        ],
      }),
    );
    const held = await problemOf(() => said(() => forget({ station: file, plate: CAR.plate, yes: true })));
    expect(held.code).toBe('forget-held');
    expect(held.message).toContain('it is to be kept until 2076-03-11');
  });
});

describe('what is asked', () => {
  it.each([
    ['nothing', {}],
    ['two things', { plate: 'X', vin: 'Y' }],
    ['only spaces', { plate: ' - ' }],
  ])('is refused where it is %s', async (_what, named) => {
    expect((await problemOf(() => go(named))).code).toBe('option-not-valid');
  });

  it('is refused where the log has no such text', async () => {
    expect((await problemOf(() => go({ plate: 'NOT THERE' }))).code).toBe('nothing-matches');
    // Part of a name is nobody.
    expect((await problemOf(() => go({ person: 'Technician' }))).code).toBe('nothing-matches');
    expect((await problemOf(() => go({ person: '.*' }))).code).toBe('nothing-matches');
  });
});
