import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { impact } from '../../src/cli/audit/impact.ts';
import { makePackage } from '../../src/cli/evidence/package.ts';
import { checkpoint } from '../../src/cli/station/log.ts';
import { openStationFolder } from '../../src/cli/station/station.ts';
import { EXIT, guarded } from '../../src/cli/terminal/exit.ts';
import { fileProblem } from '../../src/files/file-problem.ts';
import { makeFolder, outputFile, outputFolder, writeInPlace, writeWhole } from '../../src/files/output.ts';
import { certificate } from '../audit/shop.ts';
import { problemOf, said } from '../cli/answers.ts';
import { auditStation } from '../cli/audit/audit-station.ts';
import { folder } from '../cli/program.ts';

const CODES =
  'EACCES EPERM EROFS ENOSPC EDQUOT EIO EISDIR ENOTDIR ENOENT EEXIST ENOTEMPTY ENAMETOOLONG ELOOP EMFILE ENFILE';
const refusedBy = (code: string, more: object) => Object.assign(new Error(code), { code, ...more });

describe('what the file system refuses', () => {
  it.each(CODES.split(' '))(
    '%s is a problem with its place and a next step, and exit code 2',
    async (code) => {
      const errors = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
      try {
        const fault = refusedBy(code, { syscall: 'open', path: 'papers/J-1.pdf' });
        expect(await guarded(() => Promise.reject(fault))).toBe(EXIT.badInput);
        const text = errors.mock.calls.map(([chunk]) => String(chunk)).join('');
        expect(text).toMatch(/^plugmark: papers\/J-1\.pdf: .+\n {2}.+\.\n$/);
        expect(text).not.toContain('fault in the program');
      } finally {
        errors.mockRestore();
      }
    },
  );

  it('is told of a disk that fills up in the middle of a file, which names no path', () => {
    expect(fileProblem(refusedBy('ENOSPC', { syscall: 'write' }))).toMatchObject({
      message: 'the disk is full',
    });
  });

  it('is no program that is missing, and nothing that names no place', () => {
    expect(fileProblem(refusedBy('ENOENT', { syscall: 'spawn openssl', path: 'openssl' }))).toBeNull();
    expect(fileProblem(refusedBy('EACCES', { syscall: 'connect', address: '127.0.0.1' }))).toBeNull();
    expect(fileProblem(new Error('ENOENT'))).toBeNull();
  });
});

describe('a place for output', () => {
  it('is made with all folders above it, and nothing is left of the trial', () => {
    const place = join(folder(), 'a', 'b');
    outputFolder(place);
    outputFolder(place);
    expect(readdirSync(place)).toEqual([]);
  });

  it('is refused below a file, and where a file system takes no folders, at once', async () => {
    const file = join(folder(), 'file');
    writeFileSync(file, 'kept');
    expect(await problemOf(() => outputFolder(file))).toMatchObject({ code: 'file-system', where: file });
    expect((await problemOf(() => outputFolder(join(file, 'x')))).code).toBe('file-system');
    if (process.platform === 'linux')
      expect((await problemOf(() => makeFolder('/proc/plugmark/impact assessment'))).code).toBe(
        'file-system',
      );
    expect(readFileSync(file, 'utf8')).toBe('kept');
  });

  it('for a file is no folder, and in a folder that is there', async () => {
    const where = folder();
    outputFile(join(where, 'new'));
    expect(readdirSync(where)).toEqual([]);
    expect((await problemOf(() => outputFile(where))).message).toContain('is a folder');
    const nowhere = join(where, 'none', 'file');
    expect((await problemOf(() => outputFile(nowhere))).where).toBe(nowhere);
    expect((await problemOf(() => writeInPlace(nowhere, ''))).where).toBe(nowhere);
  });

  it('that takes no file keeps no part of one', async () => {
    const where = folder();
    const taken = join(where, 'taken');
    mkdirSync(taken);
    expect(await problemOf(() => writeWhole(taken, 'text'))).toMatchObject({ where: taken });
    expect(readdirSync(where)).toEqual(['taken']);
  });

  it.skipIf(process.getuid?.() === 0)('that may not be written to is refused', async () => {
    const where = folder();
    chmodSync(where, 0o500);
    expect((await problemOf(() => outputFolder(where))).message).toContain('permission');
    expect((await problemOf(() => outputFile(join(where, 'x')))).message).toContain('permission');
  });
});

describe('a command whose output cannot be written', () => {
  const station = auditStation();
  const sizes = async () => {
    const { log } = await openStationFolder(station.data);
    try {
      return { entries: log.size(), checkpoints: log.checkpoints().length };
    } finally {
      log.close();
    }
  };

  it.each([
    ['impact', (out: string) => impact('wrench', { ...station.scope(), ...found(), out })],
    ['package', (out: string) => makePackage({ ...station.scope(), out })],
    ['log checkpoint', (out: string) => checkpoint({ ...station.scope(), out: join(out, 'log.checkpoint') })],
  ])('leaves the log as it was: %s', async (_, command) => {
    const before = await sizes();
    const file = join(station.data, 'a-file');
    writeFileSync(file, '');
    await said(async () => {
      expect(await problemOf(() => command(file))).toMatchObject({ code: 'file-system' });
    });
    expect(await sizes()).toEqual(before);
  });

  const found = () => {
    const asFound = join(station.data, 'found.json');
    const { ...as } = certificate('AF-1', '2026-09-01', { error: -1.1 });
    writeFileSync(asFound, JSON.stringify({ form: 'plugmark/certificate/1', ...as }));
    expect(existsSync(asFound)).toBe(true);
    return { asFound, by: 'Quality One' };
  };
});

it('a folder without a name is a slip of the hand, and no fault of the program', () => {
  expect(() => makeFolder('')).toThrow(
    expect.objectContaining({ problem: expect.objectContaining({ code: 'option-not-valid' }) }),
  );
});
