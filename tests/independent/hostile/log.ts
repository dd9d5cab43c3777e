/** Proofs, checkpoints, entries, and the part of the log that explains who signed. */
import { signCheckpoint } from '../../../src/evidence/checkpoint.ts';
import { digestOf } from '../../../src/evidence/disclosures.ts';
import { publicJwk } from '../../../src/evidence/jwk.ts';
import { kidOf, station, stranger, technician } from '../../evidence/sample-job.ts';
import { type Content, contentOf, type Forging, forged } from './forged.ts';
import { AMONG_OTHERS, WHOLE } from './valid.ts';
import { nextSign, shifted, variants } from './variant.ts';

export const log = () => {
  const whole = contentOf(AMONG_OTHERS);
  const note = (change: (lines: string[]) => void) => {
    const lines: string[] = whole.log.checkpoint.split('\n');
    change(lines);
    return lines.join('\n');
  };
  const withNote = (what: string, checkpoint: string) => ({
    [`log: ${what}`]: forged(AMONG_OTHERS, (c) => (c.log.checkpoint = checkpoint), { keepLog: true }),
  });
  const withProof = (what: string, change: (proof: string[]) => void) => ({
    [`log: ${what}`]: forged(AMONG_OTHERS, (c) => change(c.log.proof), { keepLog: true }),
  });
  const withEntries = (what: string, change: (content: Content) => void, given?: Forging) => ({
    [`entries: ${what}`]: forged(AMONG_OTHERS, change, given),
  });
  const [origin = '', size = '', root = ''] = whole.log.checkpoint.split('\n');
  const by = (signer: typeof station, of = origin) =>
    signCheckpoint({ origin: of, size: Number(size), root: Buffer.from(root, 'base64') }, signer.privateKey);
  const foreignLine = by(stranger).split('\n')[4];
  const kept = { keepLog: true } as const;
  return [
    ...variants({
      ...withProof('a hash more in the proof', (proof) => proof.push(Buffer.alloc(32).toString('base64'))),
      ...withProof('a hash less', (proof) => proof.pop()),
      ...withProof('no proof', (proof) => proof.splice(0)),
      ...withProof('hashes in another order', (proof) => proof.reverse()),
      ...withProof('a hash changed', (proof) => (proof[0] = Buffer.alloc(32, 9).toString('base64'))),
      ...withProof('a short hash', (proof) => (proof[0] = 'AAAA')),
      ...withProof('unused bits in a hash', (proof) => {
        proof[0] = `${proof[0]?.slice(0, 42)}${nextSign(proof[0]?.slice(0, 43) ?? '')}=`;
      }),
      ...withNote(
        'another size',
        note((lines) => (lines[1] = String(Number(size) + 1))),
      ),
      ...withNote(
        'a zero in front of the size',
        note((lines) => (lines[1] = `0${size}`)),
      ),
      ...withNote(
        'a size beyond 2^53',
        note((lines) => (lines[1] = '9999999999999999')),
      ),
      ...withNote(
        'another root',
        note((lines) => (lines[2] = Buffer.alloc(32).toString('base64'))),
      ),
      ...withNote(
        'another origin',
        note((lines) => (lines[0] = 'plugmark/log/other')),
      ),
      ...withNote('another origin that is signed', by(station, 'plugmark/log/other')),
      ...withNote(
        'an extension line',
        note((lines) => lines.splice(3, 0, 'extension')),
      ),
      ...withNote(
        'no signature',
        note((lines) => lines.splice(4, 1)),
      ),
      ...withNote('signed by a stranger', by(stranger)),
      ...withNote(
        'signed under another name',
        note((lines) => (lines[4] = lines[4]?.replace(origin, 'other') ?? '')),
      ),
      ...withNote(
        'another key hash',
        note(
          (lines) =>
            (lines[4] =
              lines[4]?.replace(/ (\S)(\S+)$/, (_all, one, rest) => ` ${nextSign(one)}${rest}`) ?? ''),
        ),
      ),
      ...withNote(
        'a hyphen for a dash',
        note((lines) => (lines[4] = lines[4]?.replace('—', '-') ?? '')),
      ),
      ...withNote('no line feed at the end', whole.log.checkpoint.trimEnd()),
      ...withEntries('one dropped', (c) => c.entries.splice(4, 1)),
      ...withEntries('the last dropped, proof and all as they were', (c) => c.entries.pop(), kept),
      ...withEntries('two exchanged', (c) => c.entries.splice(1, 2, c.entries[2], c.entries[1])),
      ...withEntries('one twice', (c) => c.entries.splice(3, 0, c.entries[3])),
      ...withEntries('one of another job', (c) => (c.entries[3].stream = 'job:WO-2')),
      ...withEntries(
        'one by somebody else',
        (c) => (c.entries[3].by = c.entries[3].by === 'station' ? 'technician' : 'station'),
        kept,
      ),
      ...withEntries('all at other places', (c) => shifted(c.entries, 'seq'), kept),
      ...withEntries('a place of the background', (c) => (c.entries[0].seq = c.background.at(-1).seq)),
      ...withEntries('numbers from 2', (c) => shifted(c.entries, 'n')),
      ...withEntries('a number of a stream wrong', (c) => (c.entries[5].n = 7)),
    }),
    ...variants(
      withNote('a signature of somebody else beside it', `${whole.log.checkpoint}${foreignLine}\n`),
      'authentic',
    ),
  ];
};

export const background = () => {
  const one = (what: string, change: (content: Content) => void, given?: Forging) => ({
    [`background: ${what}`]: forged(WHOLE, change, given),
  });
  const moved = (content: Content, by: number) => {
    for (const entry of content.entries) entry.seq += by;
  };
  const insert = (content: Content, event: object) => {
    const last = content.background.at(-1);
    moved(content, 1);
    content.background.push({ ...structuredClone(last), seq: last.seq + 1, n: last.n + 1, event });
  };
  return variants({
    ...one('in another order', (c) => c.background.reverse()),
    ...one('the first missing', (c) => c.background.shift()),
    ...one('the first of a later number', (c) => shifted(c.background, 'n')),
    ...one('numbers that rise by more than the log', (c) => (c.background.at(-1).n += 1000)),
    ...one('set up twice', (c) => insert(c, c.background[0].event)),
    ...one('of another stream', (c) => (c.background[1].stream = 'job:WO-1')),
    ...one('another name of the station', (c) => (c.station = 'bay 9')),
    ...one('no word of the technician', (c) => (c.technicianSignature = 'no-key')),
    ...one('no key of the technician', (c) => (c.background[1].event.key = null)),
    ...one("a stranger's key for the technician", (c) => {
      c.background[1].event.key = publicJwk(stranger.privateKey);
    }),
    ...one('the key revoked', (c) =>
      insert(c, {
        type: 'key-revoked',
        kid: kidOf(station),
        from: '2026-01-01T00:00:00.000Z',
        reason: 'lost',
        because: { _sd: [digestOf('x')] },
      }),
    ),
    ...one('another key since', (c) =>
      insert(c, {
        type: 'key-replaced',
        key: publicJwk(stranger.privateKey),
        because: { _sd: [digestOf('x')] },
      }),
    ),
    ...one('an instrument missing', (c) =>
      c.background.splice(
        c.background.findIndex(({ event }: Content) => event.type === 'instrument-recorded'),
        1,
      ),
    ),
    ...one('an instrument otherwise', (c) => {
      c.entries[0].event.instruments[0].resolution = 0.0001;
    }),
    ...one('an instrument recorded only afterwards', (c) => {
      const at = c.background.findLastIndex(({ event }: Content) => event.type === 'instrument-recorded');
      const [late] = c.background.splice(at, 1);
      c.background.push(Object.assign(late, { seq: c.entries.at(-1).seq + 1, n: c.background.at(-1).n + 2 }));
    }),
    ...one('signed by a stranger throughout', () => {}, { signers: [stranger, technician] }),
  });
};
