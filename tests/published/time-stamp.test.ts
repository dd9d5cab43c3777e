/** RFC 3161 by a library against openssl: an authority on this machine only, made for the test; no network. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { timeStamp, trustedTime } from '../../src/cli/evidence/time-stamp.ts';
import { addSignature, withDisclosures } from '../../src/evidence/jws.ts';
import { countersignRecord } from '../../src/evidence/record.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { authorities, hasOpenssl } from '../evidence/authority.ts';
import { fileOf, jwsOf } from '../evidence/forge.ts';
import { AT, logOf, seal, station, stranger, trusting, wholeJob } from '../evidence/sample-job.ts';

let folder: string;
let authority: Server;
let url: string;
let run = 0;
const at = (name: string) => join(folder, name);
let here: ReturnType<typeof authorities>;
const openssl = (...args: string[]) => here.openssl(...args);

describe.runIf(hasOpenssl)('trusted time', () => {
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'tsa-'));
    here = authorities(folder);
    for (const name of ['one', 'two']) {
      here.makeRoot(name);
      here.certify(name, name);
    }
    authority = createServer((request, response) => {
      const parts: Buffer[] = [];
      request.on('data', (part: Buffer) => parts.push(part));
      request.on('end', () => {
        if (request.url === '/down') return response.writeHead(503).end();
        const answer =
          request.url === '/nonsense' ? Buffer.from('no') : here.stamped(Buffer.concat(parts), 'one');
        response.writeHead(200, { 'content-type': 'application/timestamp-reply' }).end(answer);
      });
    });
    await new Promise<void>((resolve) => authority.listen(0, '127.0.0.1', resolve));
    url = `http://127.0.0.1:${(authority.address() as AddressInfo).port}`;
  });
  afterAll(() => {
    authority.close();
    rmSync(folder, { recursive: true });
  });
  let record: string;
  const bytes = seal(logOf(wholeJob()));
  const withoutTexts = fileOf(withDisclosures(jwsOf(bytes), []));
  beforeEach(() => {
    vi.spyOn(process.stdout, 'write').mockReturnValue(true);
    record = at(`${++run}.record.json`);
    writeFileSync(record, bytes);
  });
  const stamp = (path = '') => timeStamp(record, { authority: `${url}${path}`, ca: at('one-ca.pem') });
  const found = (file: string, token: string, ca = 'one-ca.pem') =>
    trustedTime(readFileSync(file), { time: token, ca: at(ca) });

  it('is fetched, kept beside the record, and found again', async () => {
    const before = Date.now() - 2000;
    expect(await stamp()).toBe(0);
    const time = await found(record, `${record}.tsr`);
    expect(Date.parse(time?.before ?? '')).toBeGreaterThan(before);
    const report = verifyRecord(bytes, trusting(station), time);
    expect(report.verdict).toBe('authentic');
    expect(report.checks.at(-1)).toMatchObject({ name: 'trusted time', outcome: 'passed' });
  });

  it('holds for the record as it was sealed, once somebody countersigned it', async () => {
    await stamp();
    const signed = countersignRecord(bytes, { privateKey: stranger.privateKey, signedAt: AT });
    if (!signed.ok) throw new Error('the record cannot be countersigned');
    writeFileSync(at('countersigned.record.json'), signed.value);
    expect((await found(at('countersigned.record.json'), `${record}.tsr`))?.before).not.toBeNull();
  });

  it('over a hash by SHA-1 is refused, though its authority signed it: another record may have the same', async () => {
    writeFileSync(at('bare'), withoutTexts);
    const query = at('sha1.tsq');
    openssl('ts', '-query', '-data', 'bare', '-sha1', '-cert', '-out', query);
    writeFileSync(at('sha1.tsr'), here.stamped(readFileSync(query), 'one'));
    const checked = openssl('ts', '-verify', '-data', 'bare', '-in', 'sha1.tsr', '-CAfile', 'one-ca.pem');
    expect(checked.toString()).toContain('Verification: OK');
    const time = await found(record, at('sha1.tsr'));
    expect(time?.before).toBeNull();
    expect(time?.detail()).toContain('SHA-1');
    expect(verifyRecord(bytes, trusting(station), time).verdict).toBe('rejected');
  });

  it("of a good record stays good beside a stranger's countersignature, whole or broken", async () => {
    await stamp();
    const { payload, signatures } = jwsOf(bytes);
    const [added] = addSignature(
      { payload, signatures: [] },
      { ...stranger, role: 'countersigner' },
    ).signatures;
    for (const one of [added, { ...added, signature: signatures[0]?.signature }]) {
      const file = fileOf({ payload, signatures: [...signatures, one] });
      writeFileSync(at('strange.record.json'), file);
      const time = await found(at('strange.record.json'), `${record}.tsr`);
      expect(time).toMatchObject({ before: expect.any(String), ofWholeFile: false });
      expect(verifyRecord(file, trusting(station), time).verdict).toBe('authentic');
    }
  });

  it('does not hold for another record, under another authority, or with a bit turned', async () => {
    await stamp();
    const other = at('other.record.json');
    writeFileSync(other, seal(logOf(wholeJob('WO-2'), 'job:WO-2')));
    const token = `${record}.tsr`;
    expect((await found(other, token))?.before).toBeNull();
    expect((await found(record, token, 'two-ca.pem'))?.before).toBeNull();
    const turned = readFileSync(token);
    const last = turned.length - 5;
    turned[last] = (turned[last] ?? 0) ^ 1;
    writeFileSync(at('turned.tsr'), turned);
    const time = await found(record, at('turned.tsr'));
    expect(time?.before).toBeNull();
    expect(verifyRecord(bytes, trusting(station), time).verdict).toBe('rejected');
  });

  it.each(['/down', '/nonsense'])('is not kept from an authority that answers %s', async (path) => {
    await expect(stamp(path)).rejects.toMatchObject({ problem: { code: 'time-stamp' } });
    expect(() => readFileSync(`${record}.tsr`)).toThrow();
  });

  it('holds for the same record with its personal texts withheld', async () => {
    await stamp();
    writeFileSync(at('bare.record.json'), withoutTexts);
    expect((await found(at('bare.record.json'), `${record}.tsr`))?.before).not.toBeNull();
  });

  it('is checked by an adjuster with openssl alone, on the record without its texts', async () => {
    await stamp();
    writeFileSync(at('J.record.json'), withoutTexts);
    const said = openssl(
      'ts',
      '-verify',
      '-data',
      'J.record.json',
      '-in',
      `${record}.tsr`,
      '-CAfile',
      'one-ca.pem',
    );
    expect(said.toString()).toContain('Verification: OK');
  });
});
