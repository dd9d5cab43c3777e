/**
 * Sources, read: C2SP signed-note.md, tlog-checkpoint.md and tlog-proof.md (github.com/C2SP/C2SP); golang.org/x/mod/sumdb/note
 * (the first description of signed notes); heads of the Go checksum database as they were published, with its published key
 * (as in the tests of github.com/transparency-dev and in many go.sum tools).
 */

import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { isSignedBy, readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import type { PublicJwk } from '../../src/evidence/jwk.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { keyId, noteText, readNote, signersOf, signNote, verifierKey } from '../../src/evidence/note.ts';
import { toHex } from '../../src/evidence/platform/bytes.ts';
import { orThrow } from '../../src/result.ts';
import { keyOfSeed } from '../evidence/sample-job.ts';

/** A verifier key as it was published; its key ID is not taken from it. */
function published(vkey: string): { readonly name: string; readonly id: string; readonly jwk: PublicJwk } {
  const [name = '', id = '', ...rest] = vkey.split('+');
  const bytes = Buffer.from(rest.join('+'), 'base64');
  expect(bytes[0]).toBe(0x01);
  return { name, id, jwk: { kty: 'OKP', crv: 'Ed25519', x: bytes.subarray(1).toString('base64url') } };
}

const NEUMANN = published('PeterNeumann+c74f20a3+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW');
const SUMDB = published('sum.golang.org+033de0ae+Ac4zctda0e5eza+HJyk9SxEdh+s3Ux18htTTAD8OuAn8');

const NEUMANN_NOTE =
  "If you think cryptography is the answer to your problem,\nthen you don't know what your problem is.\n\n" +
  '— PeterNeumann x08go/ZJkuBS9UG/SffcvIAQxVBtiFupLLr8pAcElZInNIuGUgYN1FFYC2pZSNXgKvqfqdngotpRZb6KE6RyyBwJnAM=\n';
const HEADS = [
  'go.sum database tree\n6476701\nmb8QLQIs0Z0yP5Cstq6guj87oXWeC9gEM8oVikmm9Wk=\n\n' +
    '— sum.golang.org Az3grsLX85Gz+s1SiTbgkuqxgItqFq7gsMUEyVnrsa9LM7Us9S+1xbFIGu95949rj4nPRYfvimWEPWL+o3GeoWwOoAw=\n',
  'go.sum database tree\n65209736\n5+uGFjx6xBZG8ip1+wi77v+grwbhhukIrxEUS8PXvRo=\n\n' +
    '— sum.golang.org Az3grnbssgK7ubgFX36gVETtNv0U23qxyAhAMai2QUfeGa3nB/akvkMdlUErfcZz7l/R3cVtYspg3dxXABkGZZKdsQ8=\n',
  // With the signature of a witness that nobody here knows.
  'go.sum database tree\n15067302\ngJyioq6dwR9n+NjEWORfYmH+ubeYm3kH42BBQ0bTpYI=\n\n' +
    '— sum.golang.org Az3grp1rvWOs5NKlr/xR4GLN/CDyzzakmt1o61uSxYKpK1SerqOP2ClbX/peKUZjYnyomH5Xz7GZG3TpB7OeKn4E2ww=\n' +
    '— test.example.com qTGhC/xIPQ0AXKHK6Y+9ypRfuvMZWPjRXM8NiOg5M1WREn07VQXyuIXM3NRNav3ieVFLUqDRK77PWDmL6w8w84UqeAw=\n',
];

const read = (note: string) => {
  const found = readNote(note);
  if (found === null) throw new Error('not a note');
  return found;
};

describe('notes as they were published', () => {
  it.each([NEUMANN, SUMDB])(
    'the key of $name has the key ID and the verifier key that ours computes',
    ({ name, id, jwk }) => {
      expect(toHex(keyId(name, jwk))).toBe(id);
      expect(published(verifierKey(name, jwk))).toEqual({ name, id, jwk });
    },
  );

  it('the note of the documentation holds, and not with a letter changed', () => {
    expect(signersOf(read(NEUMANN_NOTE), NEUMANN.name, [NEUMANN.jwk])).toEqual([NEUMANN.jwk]);
    expect(signersOf(read(NEUMANN_NOTE.replace('you', 'You')), NEUMANN.name, [NEUMANN.jwk])).toEqual([]);
  });

  it.each(HEADS)('a head of the Go checksum database, whose origin has spaces: %#', (note) => {
    const head = orThrow(readCheckpoint(note, 'head'));
    expect(head.origin).toBe('go.sum database tree');
    expect(signersOf(head, SUMDB.name, [SUMDB.jwk])).toEqual([SUMDB.jwk]);
    expect(noteText(head)).toBe(note);
    // Its key signs under a name of its own, and not as this log.
    expect(isSignedBy(head, [SUMDB.jwk])).toBe(false);
  });

  it.each([
    'Ognuno sta solo sul cuor della terra\ntrafitto da un raggio di sole:\n\ned è subito sera.\n\n— quasimodo.example/salvatore NnugSzTjtVAewIS+Z/iJhUPeFDkO/5QQ2i5ddnGITLlC+EhfLW9oJKONrMouFSQU0xMcXxj99ihAQwaqP3ZekRwNtIc=\n',
  ])('the example of signed-note is split at its last empty line', (note) => {
    const { text, signatures } = read(note);
    expect(text.endsWith('ed è subito sera.\n')).toBe(true);
    expect(signatures).toMatchObject([{ name: 'quasimodo.example/salvatore' }]);
  });

  it('the example of tlog-checkpoint is a checkpoint', () => {
    const note =
      'example.com/behind-the-sofa\n20852163\nCsUYapGGPo4dkMgIAUqom/Xajj7h2fB2MPA3j2jxq2I=\n\n' +
      '— example.com/behind-the-sofa Az3grlgtzPICa5OS8npVmf1Myq/5IZniMp+ZJurmRDeOoRDe4URYN7u5/Zhcyv2q1gGzGku9nTo+zyWE+xeMcTOAYQ8=\n';
    expect(orThrow(readCheckpoint(note, 'note'))).toMatchObject({
      origin: 'example.com/behind-the-sofa',
      size: 20_852_163,
    });
  });
});

describe('what signed-note and tlog-checkpoint ask of a reader', () => {
  const key = keyOfSeed('55'.repeat(32));
  const jwk = publicJwk(key);
  const origin = 'example.com/log';
  const root = createHash('sha256').digest();
  const note = signCheckpoint({ origin, size: 0, root }, key);
  const line = (name: string, bytes: number, fill = 7) =>
    `— ${name} ${Buffer.alloc(bytes, fill).toString('base64')}\n`;
  const holds = (text: string) => {
    const checkpoint = readCheckpoint(text, 'note');
    return checkpoint.ok && isSignedBy(checkpoint.value, [jwk]);
  };

  it.each([
    ['one ML-DSA-44 cosignature', line('witness.example/one', 4 + 8 + 2420)],
    ['sixteen of them', line('witness.example/one', 4 + 8 + 2420).repeat(16)],
    ['one of nearly 5 kB', line('witness.example/two', 4996)],
    ['one under the name of the log by a key that nobody knows', line(origin, 68)],
    ['one with a name of another script', line('свидетель.example', 68)],
  ])('signatures of unknown keys are ignored: %s', (_what, added) => {
    expect(holds(note + added)).toBe(true);
  });

  it('one wrong signature of a known key takes the whole note', () => {
    const wrong = Buffer.concat([keyId(origin, jwk), Buffer.alloc(64)]).toString('base64');
    expect(holds(`${note}— ${origin} ${wrong}\n`)).toBe(false);
    const [text = '', good = ''] = note.split('\n\n');
    expect(holds(`${text}\n\n— ${origin} ${wrong}\n${good}`)).toBe(false);
    expect(holds(`${note}— ${origin}.other ${wrong}\n`)).toBe(true);
  });

  it('extension lines are read, and are signed with the rest', () => {
    const text = `${origin}\n0\n${root.toString('base64')}\nextension one\nextension two\n`;
    const extended = signNote(text, origin, key);
    expect(holds(extended)).toBe(true);
    expect(holds(extended.replace('extension two', 'extension 2'))).toBe(false);
    expect(holds(signNote(`${text}\nafter an empty line\n`, origin, key))).toBe(false);
  });

  it.each([
    ['a control character in the origin', note.replace('example', 'exam\u0001ple')],
    ['a carriage return', note.replaceAll('\n', '\r\n')],
    ['a tab', `${note}—\tx AAAAAAAA\n`],
    ['half a surrogate pair', note.replace('example', 'exam\ud800ple')],
    ['a next-line character in a name', note + line('wit\u0085ness', 68)],
    ['a space of another script in a name', note + line('wit\u3000ness', 68)],
    ['a plus in a name', note + line('wit+ness', 68)],
    ['an empty name', note + line('', 68)],
    ['a signature of four bytes', note + line('witness', 4)],
    ['base64 with unused bits', `${note}— witness AAAAAAB=\n`],
    ['no line feed at its end', note.slice(0, -1)],
    ['no signature', note.slice(0, note.indexOf('\u2014'))],
    ['sixty-five signatures', note + line('w', 8).repeat(64)],
    ['no origin', `\n0\n${root.toString('base64')}\n\n${line(origin, 68)}`],
  ])('a note with %s is none', (_what, text) => {
    expect(readCheckpoint(text, 'note')).toMatchObject({ ok: false, error: { code: 'checkpoint-form' } });
  });

  it('bytes that are no UTF-8 are no note', () => {
    const bytes = Buffer.from(`${note}${line('wXtness', 68)}`);
    expect(readNote(bytes)).not.toBeNull();
    bytes[bytes.lastIndexOf('X')] = 0xff;
    expect(readNote(bytes)).toBeNull();
  });
});
