/** What somebody, or the station itself, could make of a package. */
import { createHash } from 'node:crypto';
import { readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { canonical, canonicalBytes } from '../../../src/evidence/canonical.ts';
import { signCheckpoint } from '../../../src/evidence/checkpoint.ts';
import { disclosureOf } from '../../../src/evidence/disclosures.ts';
import { publicJwk, thumbprint } from '../../../src/evidence/jwk.ts';
import { addSignature, disclosuresIn, signatureOf, withDisclosures } from '../../../src/evidence/jws.ts';
import { toBase64url } from '../../../src/evidence/platform/bytes.ts';
import type { PrivateKey } from '../../../src/evidence/platform/signature.ts';
import { signIndex } from '../../../src/package/format.ts';
import { fileOf, jwsOf } from '../../evidence/forge.ts';
import { keyOfSeed } from '../../evidence/sample-job.ts';
import type { Content } from './forged.ts';

export const STRANGER = keyOfSeed('31'.repeat(32));

/** A copy of a package in the hands of whoever changes it; `key` is the station's own. */
export interface Hands {
  readonly folder: string;
  readonly key: PrivateKey;
  read(path: string): Buffer;
  /** Writes a file, and signs an index that fits it where `signed`. */
  write(path: string, content: Uint8Array | string, signed?: boolean): void;
  json(path: string): Content;
  /** Changes the index, and signs it with the station's key. */
  index(change: (index: Content) => void): void;
}

export function handsOn(folder: string, key: PrivateKey): Hands {
  const at = (path: string) => join(folder, path);
  const read = (path: string) => readFileSync(at(path));
  const json = (path: string) => JSON.parse(read(path).toString('utf8'));
  const index: Hands['index'] = (change) => {
    const content = json('index.json');
    change(content);
    const bytes = canonicalBytes(content);
    writeFileSync(at('index.json'), bytes);
    writeFileSync(at('index.jws'), signIndex(bytes, key));
  };
  return {
    folder,
    key,
    read,
    json,
    index,
    write(path, content, signed = true) {
      const bytes = Buffer.from(content);
      writeFileSync(at(path), bytes);
      if (!signed) return;
      index(({ files }) => {
        const file = files.find((one: Content) => one.path === path);
        const sha256 = createHash('sha256').update(bytes).digest('hex');
        Object.assign(file, { bytes: bytes.length, sha256 });
      });
    },
  };
}

export type Expected = 'authentic' | 'not authentic' | 'unreadable';
export type Change = (hands: Hands) => void;

const RECORD = 'records/J-1.record.json';
const ENTRIES = 'station-entries.json';
const changed =
  (path: string, change: (content: Content) => void): Change =>
  (hands) => {
    const content = hands.json(path);
    change(content);
    hands.write(path, canonicalBytes(content));
  };
const text =
  (path: string, change: (text: string) => string, signed = true): Change =>
  (hands) => {
    const before = hands.read(path).toString('utf8');
    const after = change(before);
    if (after === before) throw new Error(`nothing was changed in ${path}`);
    hands.write(path, after, signed);
  };
/** index.jws with another header, signed by this key over the index as it is. */
const signedBy =
  (key: PrivateKey | null, header: (own: Content) => string): Change =>
  (hands) => {
    const [head = ''] = hands.read('index.jws').toString('utf8').split('.');
    const raw = toBase64url(header(JSON.parse(Buffer.from(head, 'base64url').toString('utf8'))));
    const mark = signatureOf(raw, toBase64url(hands.read('index.json')), key ?? hands.key);
    hands.write('index.jws', `${raw}..${mark}\n`, false);
  };
const note =
  (change: (hands: Hands, lines: readonly string[]) => string): Change =>
  (hands) => {
    hands.write('log.checkpoint', change(hands, hands.read('log.checkpoint').toString('utf8').split('\n')));
  };
const record =
  (change: (jws: ReturnType<typeof jwsOf>, hands: Hands) => Buffer): Change =>
  (hands) =>
    hands.write(RECORD, change(jwsOf(hands.read(RECORD)), hands));

export const UNREADABLE: Readonly<Record<string, Change>> = {
  'no index': ({ folder }) => rmSync(join(folder, 'index.json')),
  'an index with a space': text('index.json', (index) => index.replace(',', ', '), false),
  'an index with a line feed': text('index.json', (index) => `${index}\n`, false),
  'an index with a name twice': text('index.json', (index) => index.replace('{', '{"at":"x",'), false),
  'an index of another form': ({ index }) => index((one) => (one.form = 'plugmark/package/0')),
  'an index with a member more': ({ index }) => index((one) => (one.note = 'x')),
  'an index with a path out of the folder': ({ index }) => index((one) => (one.files[0].path = '../x')),
  'an index with a file twice': ({ index }) => index((one) => one.files.push(one.files[0])),
  'an index with itself': ({ index }) =>
    index((one) => one.files.push({ path: 'index.json', bytes: 1, sha256: 'a'.repeat(64) })),
  'an index with a record of no job': ({ index }) => index((one) => one.jobs.pop()),
  'an index with a job without its file': ({ index }) => index((one) => (one.jobs[0].record = 'records/x')),
  'an index with one record for two jobs': ({ index }) =>
    index((one) => (one.jobs[1].record = one.jobs[0].record)),
};

export const REFUSED: Readonly<Record<string, Change>> = {
  'a bit of the index turned': text(
    'index.json',
    (index) => index.replace('"station":"E', '"station":"F'),
    false,
  ),
  'no signature': ({ folder }) => rmSync(join(folder, 'index.jws')),
  'a signature without a line feed': text('index.jws', (jws) => jws.trimEnd(), false),
  'a signature with two line feeds': text('index.jws', (jws) => `${jws}\n`, false),
  'a signature with its payload': text('index.jws', (jws) => jws.replace('..', '.e30.'), false),
  'a signature by a stranger': signedBy(STRANGER, (header) => canonical(header)),
  'a signature by a stranger under a key of his own': (hands) =>
    hands.write('index.jws', signIndex(hands.read('index.json'), STRANGER), false),
  'a header with alg EdDSA': signedBy(null, (header) => canonical({ ...header, alg: 'EdDSA' })),
  'a header of a record': signedBy(null, (header) => canonical({ ...header, typ: 'plugmark-record+json' })),
  'a header with a member more': signedBy(null, (header) => canonical({ ...header, x: 1 })),
  'a header with another kid': signedBy(null, (header) => canonical({ ...header, kid: 'x' })),
  'a header that is not canonical': signedBy(null, (header) => JSON.stringify(header, null, 1)),
  'a file added': ({ folder }) => writeFileSync(join(folder, 'note.txt'), 'x'),
  'a file added below': ({ folder }) => writeFileSync(join(folder, 'records', 'J-9.record.json'), 'x'),
  'a file missing': ({ folder }) => rmSync(join(folder, 'trusted-keys.json')),
  'a file changed': text('trusted-keys.json', (list) => `${list} `, false),
  'a file of another size in the index': ({ index }) => index((one) => one.files[0].bytes++),
  'a link for a file': ({ folder }) => {
    rmSync(join(folder, 'trusted-keys.json'));
    const outside = join(folder, '..', 'outside.json');
    writeFileSync(outside, 'x');
    symlinkSync(outside, join(folder, 'trusted-keys.json'));
  },
  'a checkpoint of another log': note(() =>
    signCheckpoint({ origin: 'plugmark/log/x', size: 9, root: Buffer.alloc(32) }, STRANGER),
  ),
  'a checkpoint by a stranger': note((_hands, [origin = '', size, root = '']) =>
    signCheckpoint({ origin, size: Number(size), root: Buffer.from(root, 'base64') }, STRANGER),
  ),
  'a checkpoint of another root': note(({ key }, [origin = '', size]) =>
    signCheckpoint({ origin, size: Number(size), root: Buffer.alloc(32) }, key),
  ),
  'a checkpoint that is none': note(() => 'x'),
  'a proof of the entries with a hash less': changed('proofs.json', ({ station: proof }) => proof.pop()),
  'a proof of the entries with a hash more': changed('proofs.json', ({ station: proof }) =>
    proof.push(Buffer.alloc(32).toString('base64')),
  ),
  'no proof of consistency': changed('proofs.json', (proofs) => (proofs.consistency = [])),
  'another proof of consistency': changed('proofs.json', ({ consistency }) => consistency[0].path.reverse()),
  'proofs with a member more': changed('proofs.json', (proofs) => (proofs.note = 'x')),
  'proofs that are not canonical': text('proofs.json', (proofs) => `${proofs}\n`),
  'an entry of the station dropped': changed(ENTRIES, ({ entries }) => entries.splice(2, 1)),
  'an entry of the station changed': changed(
    ENTRIES,
    ({ entries }) => (entries[0].event.station = 'Other bay'),
  ),
  'entries of the station in another order': changed(ENTRIES, ({ entries }) => entries.reverse()),
  'a disclosure of nothing': changed(ENTRIES, ({ disclosures }) =>
    disclosures.push(disclosureOf('A'.repeat(22), 'x')),
  ),
  'a disclosure twice': changed(ENTRIES, ({ disclosures }) => disclosures.push(disclosures[0])),
  'a disclosure with a short salt': changed(ENTRIES, ({ disclosures }) =>
    disclosures.push(toBase64url('["AAAA","value","x"]')),
  ),
  'a name in the open': changed(ENTRIES, ({ entries }) => {
    const { event } = entries.find((one: Content) => one.event.type === 'person-recorded');
    event.person = 'Technician One';
  }),
  'an older checkpoint that is none': text('auditor.checkpoint', () => 'x\n'),
  'an older checkpoint of another root': text('auditor.checkpoint', (kept) =>
    kept.replace(/\n[^\n]{44}\n/, `\n${Buffer.alloc(32).toString('base64')}\n`),
  ),
  'a record under the name of another job': ({ index }) => index((one) => (one.jobs[0].job = 'J-9')),
  'a record in the place of another': (hands) => hands.write(RECORD, hands.read('records/J-2.record.json')),
  'a record without its signature': record((jws) => fileOf({ ...jws, signatures: [] })),
  'a record that is none': (hands) => hands.write(RECORD, 'x'),
  'a record with a disclosure of nothing': record((jws) =>
    fileOf(withDisclosures(jws, [...disclosuresIn(jws), disclosureOf('A'.repeat(22), 'x')])),
  ),
  'a record with another content, signed by the station': record(({ payload }, { key }) => {
    const content = Buffer.from(payload, 'base64url')
      .toString('utf8')
      .replace('"platform":"test"', '"platform":"x"');
    const signer = { privateKey: key, role: 'station', signedAt: '2026-02-03T12:00:00.000Z' } as const;
    return fileOf(addSignature({ payload: toBase64url(content), signatures: [] }, signer));
  }),
  'an impact that the entries do not tell': ({ index }) =>
    index((one) => one.jobs[0].impacts.push({ assessment: 'IA-9', sort: 'out', decided: null })),
  'an impact left out': ({ index }) =>
    index((one) => {
      for (const job of one.jobs) job.impacts = [];
    }),
};

export const FINE: Readonly<Record<string, Change>> = {
  'nothing done to it': () => {},
  'another purpose, signed by the station': ({ index }) => index((one) => (one.purpose = 'dispute')),
  'a record without its texts': record((jws) => fileOf(withDisclosures(jws, []))),
  'the texts of the station taken away': changed(ENTRIES, (file) => (file.disclosures = [])),
  // Nobody is trusted by a list in the package, and nobody is distrusted by it.
  'a trust list that names a stranger alone': (hands) =>
    hands.write(
      'trusted-keys.json',
      JSON.stringify({ keys: [{ ...publicJwk(STRANGER), kid: thumbprint(publicJwk(STRANGER)) }] }),
    ),
  'a trust list on which the key of the station is revoked': (hands) => {
    const { keys } = hands.json('trusted-keys.json');
    const revoked = { from: '2020-01-01T00:00:00.000Z', reason: 'compromised' };
    hands.write(
      'trusted-keys.json',
      JSON.stringify({ keys: keys.map((key: Content) => ({ ...key, revoked })) }),
    );
  },
  'papers changed together with the index': (hands) => hands.write('jobs.csv', 'x'),
};
