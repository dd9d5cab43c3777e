import { describe, expect, it } from 'vitest';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { kidOf, station, technician, trusting } from './sample-job.ts';

const read = (value: unknown) => parseTrustList(Buffer.from(JSON.stringify(value)), 'trust.json');
const [key] = trusting(station).keys;

describe('a trust list', () => {
  it('is a JSON Web Key set as other tools write it', () => {
    const list = {
      keys: [{ ...key, alg: 'Ed25519', use: 'sig', role: 'station', validFrom: '2026-01-01T00:00:00Z' }],
    };
    expect(read(list)).toEqual({ ok: true, value: list });
    expect(read({ keys: [] })).toEqual({ ok: true, value: { keys: [] } });
  });

  it.each([
    ['a private key', { ...key, d: 'AAAA' }, 'trust.json: keys[0]'],
    ['the kid of another key', { ...key, kid: kidOf(technician) }, 'trust.json: keys[0].kid'],
    ['no kid', publicJwk(station.privateKey), 'trust.json: keys[0].kid'],
    ['another curve', { ...key, crv: 'X25519' }, 'trust.json: keys[0].crv'],
    ['a key that is too short', { ...key, x: 'AAAA' }, 'trust.json: keys[0].x'],
    ['padding in the key', { ...key, x: `${key?.x}=` }, 'trust.json: keys[0].x'],
    ['a date that is none', { ...key, validUntil: 'soon' }, 'trust.json: keys[0].validUntil'],
    ['an unknown role', { ...key, role: 'boss' }, 'trust.json: keys[0].role'],
  ])('%s is refused, and the problem names the place', (_what, bad, where) => {
    expect(read({ keys: [bad] })).toMatchObject({ ok: false, error: { code: 'trust-list', where } });
  });

  it('names no key twice', () => {
    expect(read({ keys: [key, key] })).toMatchObject({ ok: false, error: { message: 'a key stands twice' } });
  });

  it('is strict JSON', () => {
    const twice = Buffer.from('{"keys":[],"keys":[]}');
    expect(parseTrustList(twice, 'trust.json')).toMatchObject({
      ok: false,
      error: { code: 'json-duplicate-name' },
    });
  });
});
