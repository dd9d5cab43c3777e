/**
 * What nobody can catch in one record: whoever holds the station's own key can lie before he seals. Each is named under every
 * verdict, and what would have caught it does.
 */
import { copyFileSync, cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { verify } from '../../src/cli/evidence/verify.ts';
import { papersAgain } from '../../src/cli/station/jobs.ts';
import { checkpoint } from '../../src/cli/station/log.ts';
import { check } from '../../src/cli/station/log-check.ts';
import { workIn } from '../audit/shop.ts';
import { said } from '../cli/answers.ts';
import { auditStation, CAR, VAN } from '../cli/audit/audit-station.ts';
import { folder } from '../cli/program.ts';

const station = auditStation();
const at = (...names: string[]) => join(station.data, ...names);
const verified = async (file = at('J-9.record.json')) => {
  const { value, text } = await said(() => verify(file, { trust: at('trusted-keys.json') }));
  return { value, text: text.replaceAll(/\s+/g, ' ') };
};
const sealed = async (vehicle: typeof CAR) => {
  await workIn(station.data, [{ job: 'J-9', on: '2026-07-01', peaks: [27, 27, 27, 27], vehicle }]);
  await said(() => papersAgain('J-9', station.scope()));
};

describe('the holder of the key', () => {
  it('calls the readings of a test bench linked: named, and only a tool that signs its readings shows it', async () => {
    // The tools of this shop never were: its readings are made by the tests.
    await sealed(CAR);
    const { value, text } = await verified();
    expect(value).toBe(0);
    expect(text).toContain('where a figure came from: the station states it');
    expect(text).toContain('whoever holds its keys can write readings that no tool sent');
  });

  it('gives the job another plate before he seals it: named, and nothing in the record shows it', async () => {
    await sealed(VAN);
    const { value, text } = await verified();
    expect(value).toBe(0);
    expect(text).toContain(
      'which vehicle it was: VIN, plate and the other particulars of the order are as somebody typed them',
    );
  });

  it('does the job anew in another copy of the log: named, and a checkpoint that somebody kept shows it', async () => {
    const copy = join(folder(), 'copy');
    cpSync(station.data, copy, { recursive: true });
    await sealed(CAR);
    const kept = join(folder(), 'kept.checkpoint');
    await said(() => checkpoint({ ...station.scope(), out: kept }));
    // All that tells is turned back at once: database, last checkpoint, records.
    rmSync(station.data, { recursive: true });
    cpSync(copy, station.data, { recursive: true });
    await sealed(VAN);
    const { value, text } = await verified();
    expect(value).toBe(0);
    expect(text).toContain(
      'that the station keeps no other history: only witnesses, a checkpoint that somebody else kept, or a time stamp',
    );
    expect((await said(() => check([], station.scope()))).value).toBe(0);
    const held = await said(() => check([kept], station.scope()));
    expect(held.value).toBe(1);
    expect(held.text).toContain('DIVERGED');
  });

  it('does the same, and somebody has the first record: the two are named when they meet', async () => {
    const copy = join(folder(), 'copy');
    cpSync(station.data, copy, { recursive: true });
    await sealed(CAR);
    const given = folder();
    copyFileSync(at('J-9.record.json'), join(given, 'first.record.json'));
    rmSync(station.data, { recursive: true });
    cpSync(copy, station.data, { recursive: true });
    await sealed(VAN);
    writeFileSync(join(given, 'second.record.json'), readFileSync(at('J-9.record.json')));
    const { value, text } = await verified(given);
    expect(text).toContain('TWO HISTORIES');
    expect(value).toBe(1);
  });
});
