/** Whoever wants a record to look older than it is, with a token that says so. openssl makes the tokens. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { SignedData, TimeStampResp } from 'pkijs';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { timeStamp, trustedTime } from '../../src/cli/evidence/time-stamp.ts';
import { areCertificates, readTimeToken, timeQuery } from '../../src/evidence/time-token.ts';
import { problemOf } from '../cli/answers.ts';
import { authorities, hasOpenssl } from '../evidence/authority.ts';

const data = Buffer.from('what was sealed');
const other = Buffer.from('what was sealed later');

describe.runIf(hasOpenssl)('a token', () => {
  let folder = '';
  let here: ReturnType<typeof authorities>;
  const at = (name: string) => join(folder, name);
  const ca = (name = 'one') => readFileSync(at(`${name}-ca.pem`), 'latin1');
  const nonce = Uint8Array.of(0x41, 2, 3, 4, 5, 6, 7, 8);
  const token = async (by = 'one', over: Uint8Array = data) => here.stamped(await timeQuery(over, nonce), by);
  const read = (answer: Uint8Array, over: readonly Uint8Array[] = [data]) =>
    readTimeToken(answer, ca(), over);
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'tsa-'));
    here = authorities(folder);
    here.makeRoot('one');
    here.makeRoot('two', 'rsa:2048');
    here.certify('one', 'one', { serial: '7' });
    here.certify('two', 'two');
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('holds where nobody did anything, and says by when, by which policy and over which bytes', async () => {
    const found = await read(await token(), [other, data]);
    expect(found).toMatchObject({ policy: '1.2.3.4.1', over: 1, nonce: '4102030405060708' });
    if (typeof found === 'string') throw new Error(found);
    expect(Math.abs(Date.parse(found.before) - Date.now())).toBeLessThan(60_000);
    const rsa = await readTimeToken(await token('two'), ca('two'), [data]);
    expect(rsa).toMatchObject({ over: 0 });
  });

  it('over something else does not hold', async () =>
    expect(await read(await token('one', other))).toBe('other-data'));

  it('of an authority that the reader did not name does not hold', async () =>
    expect(await read(await token('two'))).toBe('not-trusted'));

  it('over a hash by SHA-1 does not hold', async () => {
    writeFileSync(at('data'), data);
    here.openssl('ts', '-query', '-data', 'data', '-sha1', '-cert', '-out', 'sha1.tsq');
    expect(await read(here.stamped(readFileSync(at('sha1.tsq')), 'one'))).toBe('weak-hash');
  });

  it.each(['stamps', 'serves', 'optional'] as const)(
    'holds by a certificate that is for time alone, and says so as critical, and by no other: %s',
    async (usage) => {
      here.certify(usage, 'one', { usage });
      const found = await read(here.signed(infoIn(await token()), usage));
      if (usage === 'stamps') expect(found).toMatchObject({ over: 0 });
      else expect(found).toBe('not-for-time');
    },
  );

  it('that says a time at which its certificate was not valid does not hold, though its own authority signed it', async () => {
    const info = infoIn(await token()).toString('latin1');
    const older = Buffer.from(info.replace(/\x18\x0f\d{4}/, '\x18\x0f2019'), 'latin1');
    expect(older.toString('latin1')).not.toBe(info);
    expect(await read(here.signed(older, 'one'))).toBe('not-trusted');
  });

  it('in which somebody wrote another time does not hold', async () => {
    const good = await token();
    const year = String(new Date().getUTCFullYear());
    const text = good.toString('latin1');
    const place = text.indexOf(`\x18\x0f${year}`);
    expect(place).toBeGreaterThan(0);
    const older = Buffer.from(`${text.slice(0, place + 2)}2019${text.slice(place + 6)}`, 'latin1');
    expect(await read(older)).toBe('not-signed');
  });

  it('with another certificate for the same key in it does not hold: the signature names the one', async () => {
    here.certify('eno', 'one', { key: 'one', serial: '7', subject: 'eno' });
    const swapped = inPlaceOf(await token(), der(at('one.pem')), der(at('eno.pem')));
    if (swapped === null) throw new Error('two certificates of one length');
    expect(await read(swapped)).toBe('not-bound');
  });

  it('that its authority refused holds for nothing', async () => {
    const refused = here.stamped(Buffer.from('no request at all'), 'one');
    expect(await read(refused)).toBe('not-granted');
  });

  it('with any byte changed holds for nothing and ends nothing', async () => {
    const good = await token();
    const found: unknown[] = [];
    for (let i = 0; i < good.length; i += 7) {
      const damaged = Uint8Array.from(good);
      damaged[i] = (damaged[i] ?? 0) ^ 0x15;
      found.push(await read(damaged));
    }
    // What nobody signed may change: the words of the answer, and certificates beside the signer's.
    expect(found.filter((one) => typeof one === 'string').length).toBeGreaterThan(found.length * 0.9);
    for (const one of found)
      if (typeof one === 'object')
        expect(one).toMatchObject({ policy: '1.2.3.4.1', nonce: '4102030405060708' });
    expect(await read(good.subarray(0, good.length - 1))).toBe('unreadable');
    expect(await read(Buffer.from('paid in full'))).toBe('unreadable');
  });

  it('is never believed by a file that holds no certificate', async () => {
    expect(areCertificates('paid in full')).toBe(false);
    expect(areCertificates('-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----')).toBe(false);
    writeFileSync(at('none.pem'), 'paid in full');
    writeFileSync(at('good.tsr'), await token());
    expect(
      (await problemOf(() => trustedTime(data, { time: at('good.tsr'), ca: at('none.pem') }))).code,
    ).toBe('time-ca');
  });

  it('that was made for an earlier request is not kept', async () => {
    const old = await token();
    const server = createServer((_request, response) => response.end(old));
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    vi.spyOn(process.stdout, 'write').mockReturnValue(true);
    writeFileSync(at('a.record.json'), data);
    const authority = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
    const problem = await problemOf(() =>
      timeStamp(at('a.record.json'), { authority, ca: at('one-ca.pem') }),
    );
    server.close();
    expect(problem).toMatchObject({ code: 'time-stamp', message: 'it answered another question' });
  });
});

/** The `TSTInfo` in a token. */
function infoIn(answer: Buffer): Buffer {
  const { timeStampToken } = TimeStampResp.fromBER(Uint8Array.from(answer).buffer);
  const { eContent } = new SignedData({ schema: timeStampToken?.content }).encapContentInfo;
  return Buffer.from(new Uint8Array(eContent?.getValue() ?? new ArrayBuffer(0)));
}

const der = (file: string) =>
  Buffer.from(readFileSync(file, 'latin1').replace(/-----[^-]*-----/g, ''), 'base64');

/** The same bytes with one certificate in place of another; null where the two have not one length. */
function inPlaceOf(answer: Buffer, from: Buffer, to: Buffer): Buffer | null {
  const place = answer.indexOf(from);
  if (place < 0) throw new Error('the certificate is not in the token');
  if (to.length !== from.length) return null;
  return Buffer.concat([answer.subarray(0, place), to, answer.subarray(place + from.length)]);
}
