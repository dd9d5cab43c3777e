/** Keys in a device. SoftHSM2 stands for it; the library for it compiles, so that this part is run on demand (npm run test:device). */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { LIBRARY } from '../../db/hardware-key.ts';
import { newKey } from '../../db/keyfile.ts';
import { verify } from '../../src/cli/evidence/verify.ts';
import { stationHealth } from '../../src/cli/station/health/station.ts';
import { papersAgain } from '../../src/cli/station/jobs.ts';
import { rotateKey } from '../../src/cli/station/rotate.ts';
import { toBase64url } from '../../src/evidence/platform/bytes.ts';
import { sign } from '../../src/evidence/platform/signature.ts';
import { problemOf, said } from '../cli/answers.ts';
import { auditStation } from '../cli/audit/audit-station.ts';
import { folder } from '../cli/program.ts';

const MODULE = '/usr/lib/softhsm/libsofthsm2.so';
const hasLibrary = (() => {
  try {
    createRequire(import.meta.url).resolve(LIBRARY);
    return true;
  } catch {
    return false;
  }
})();
const station = auditStation();
const keyFiles = () => readdirSync(join(station.data, 'keys'));

describe('a key that never leaves its device', () => {
  const { privateKey, jwk } = newKey();
  const publicKey = Buffer.from(jwk.x, 'base64url');

  it('signs like one in a file', () => {
    const message = Buffer.from('a message');
    const device = { publicKey, sign: (text: Uint8Array) => sign(text, privateKey) };
    expect(toBase64url(sign(message, device))).toBe(toBase64url(sign(message, privateKey)));
  });

  it('is held against what it signed: a device that answers anything else signs nothing', () => {
    for (const wrong of [new Uint8Array(64), new Uint8Array(0), sign(Buffer.from('another'), privateKey)])
      expect(() => sign(Buffer.from('a message'), { publicKey, sign: () => wrong })).toThrow('did not sign');
  });
});

it.runIf(!hasLibrary)('without the library nothing is changed, and it is said what to install', async () => {
  vi.stubEnv('PLUGMARK_TOKEN_PIN', '1234');
  const before = keyFiles();
  const module = join(folder(), 'module.so');
  writeFileSync(module, '');
  const problem = await problemOf(() => rotateKey({ ...station.scope(), pkcs11: module, token: 'bay 1' }));
  expect(problem).toMatchObject({ code: 'device-library', next: expect.stringContaining('pkcs11js') });
  expect(keyFiles()).toEqual(before);
  vi.unstubAllEnvs();
});

it('half of where it is is not enough', async () => {
  expect((await problemOf(() => rotateKey({ ...station.scope(), token: 'bay 1' }))).code).toBe(
    'option-not-valid',
  );
});

describe.runIf(hasLibrary && existsSync(MODULE))('in SoftHSM2', () => {
  beforeAll(() => {
    const tokens = mkdtempSync(join(tmpdir(), 'tokens-'));
    writeFileSync(
      `${tokens}.conf`,
      `directories.tokendir = ${tokens}\nobjectstore.backend = file\nlog.level = ERROR\n`,
    );
    // SoftHSM reads the environment of the process, not that of Node.
    process.env['SOFTHSM2_CONF'] = `${tokens}.conf`;
    execFileSync('softhsm2-util', [
      '--init-token',
      '--free',
      '--label',
      'bay 1',
      '--so-pin',
      '5678',
      '--pin',
      '1234',
    ]);
    return () => rmSync(tokens, { recursive: true });
  });
  beforeEach(() => vi.stubEnv('PLUGMARK_TOKEN_PIN', '1234'));
  const rotated = (token = 'bay 1') => said(() => rotateKey({ ...station.scope(), pkcs11: MODULE, token }));
  const findings = async () => (await stationHealth(station.data)).findings;

  it('the station signs with it: the old key names it, records are authentic, and no file holds it', async () => {
    await rotated();
    expect(keyFiles().filter((name) => name.startsWith('station.'))).toEqual([
      expect.stringMatching(/^station\.[\w-]{43}\.device\.json$/),
    ]);
    const [file = ''] = keyFiles();
    expect(readFileSync(join(station.data, 'keys', file), 'utf8')).not.toContain('1234');
    await said(() => papersAgain('J-2', station.scope()));
    const { value } = await said(() =>
      verify(join(station.data, 'J-2.record.json'), { trust: join(station.data, 'trusted-keys.json') }),
    );
    expect(value).toBe(0);
    expect((await findings()).find(({ name }) => name === 'key')).toMatchObject({
      state: 'good',
      text: expect.stringContaining('in the token bay 1'),
    });
  });

  it('it names the next one, which may be in a file again', async () => {
    await rotated();
    const { text } = await said(() => rotateKey(station.scope()));
    expect(text.replaceAll(/\s+/g, ' ')).toContain('still in its device');
    expect(keyFiles().some((name) => name.endsWith('.pem'))).toBe(true);
  });

  it('a token that is not there is said', async () => {
    expect(await problemOf(() => rotated('bay 9'))).toMatchObject({
      code: 'device',
      message: expect.stringContaining('no token "bay 9"'),
    });
  });
});
