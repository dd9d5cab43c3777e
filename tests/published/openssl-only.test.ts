/**
 * What the manual tells an adjuster who has openssl and a POSIX shell and nothing else: the commands are taken out of the
 * topic `verify` and run as they are there. Independent oracle: openssl.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { topicFile } from '../../src/cli/help/topics.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { fileOf, jwsOf, recordOf, signedTextOf } from '../evidence/forge.ts';
import { logOf, seal, station, stranger, wholeJob } from '../evidence/sample-job.ts';

const hasOpenssl = spawnSync('sh', ['-c', 'openssl version']).status === 0;
const topic = readFileSync(topicFile('verify'), 'utf8');
/** The indented lines of the section. */
const commands = (/## With openssl alone.*?\n\n((?: {4}[^\n]*\n|\n(?= {4}))+)/s.exec(topic)?.[1] ?? '')
  .split('\n')
  .map((line) => line.slice(4))
  .join('\n');

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'adjuster-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const bytes = seal(logOf(wholeJob()));
const { x } = publicJwk(station.privateKey);

/** Runs the commands on a record and a station's key, in a shell that stops at the first that fails. */
function adjuster(record: Buffer, key = x) {
  writeFileSync(join(folder, 'J.record.json'), record);
  const script = commands.replaceAll('J-1001.record.json', 'J.record.json').replace('THE-X-OF-THE-KEY', key);
  return spawnSync('sh', ['-ec', script], { cwd: folder, encoding: 'utf8' });
}

describe.runIf(hasOpenssl)('an adjuster who follows the manual', () => {
  it('finds commands there', () => {
    expect(commands).toContain('openssl pkeyutl -verify');
    expect(commands).toContain('THE-X-OF-THE-KEY');
  });

  it('sees that the station signed, and reads what it signed', () => {
    const { status, stdout } = adjuster(bytes);
    expect(stdout).toContain('Signature Verified Successfully');
    expect(status).toBe(0);
    expect(readFileSync(join(folder, 'content.json'), 'utf8')).toBe(signedTextOf(recordOf(bytes)));
  });

  it.each([1, 2])('whatever the length of the content leaves at the end of base64 (%i more)', (more) => {
    const { stdout } = adjuster(
      seal(logOf(wholeJob(`WO-1${'x'.repeat(more)}`), `job:WO-1${'x'.repeat(more)}`)),
    );
    expect(stdout).toContain('Signature Verified Successfully');
  });

  it('sees that a changed record is not what the station signed', () => {
    const jws = jwsOf(bytes);
    const middle = jws.payload.length >> 1;
    const changed = `${jws.payload.slice(0, middle)}A${jws.payload.slice(middle + 1)}`;
    expect(changed).not.toBe(jws.payload);
    const { status, stdout } = adjuster(fileOf({ ...jws, payload: changed }));
    expect(stdout).not.toContain('Successfully');
    expect(status).not.toBe(0);
  });

  it('sees that another key did not sign it', () => {
    expect(adjuster(bytes, publicJwk(stranger.privateKey).x).status).not.toBe(0);
  });

  it('gets the same key as openssl writes it', () => {
    adjuster(bytes);
    const text = execFileSync('openssl', [
      'pkey',
      '-pubin',
      '-in',
      join(folder, 'key.pem'),
      '-outform',
      'DER',
    ]);
    expect(text.subarray(-32).toString('base64url')).toBe(x);
  });
});
