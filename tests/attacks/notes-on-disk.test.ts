/** Whoever holds the disk of a station writes into the files that lie beside its log: checkpoints and notes of witnesses. */
import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { verify } from '../../src/cli/evidence/verify.ts';
import { papersAgain } from '../../src/cli/station/jobs.ts';
import { checkpoint, printVerifierKey } from '../../src/cli/station/log.ts';
import { witnessLog } from '../../src/cli/station/log-witness.ts';
import { signatureLine } from '../../src/evidence/note.ts';
import { problemOf, said } from '../cli/answers.ts';
import { auditStation } from '../cli/audit/audit-station.ts';
import { exampleJson } from '../cli/program.ts';
import { type Answering, witnessHere } from '../serve/witnesses.ts';

const station = auditStation();
const at = (...names: string[]) => join(station.data, ...names);
const NOTE = 'J-1.record.json.witnessed';

/** A sealed job, a witness that knows the log, and a station file that names it. */
async function shop() {
  await said(() => papersAgain('J-1', station.scope()));
  const vkeys = [(await said(() => printVerifierKey(station.scope()))).text.trim()];
  const nowS = () => Math.floor(Date.now() / 1000);
  const witness = await witnessHere({ vkeys, nowS });
  const file = at('bay.json');
  const witnesses = [{ url: witness.url, keys: witness.keys.map(({ vkey }) => vkey) }];
  writeFileSync(file, JSON.stringify({ ...exampleJson('station.json'), data: '.', witnesses }));
  writeFileSync(at('policy'), `witness w ${witness.keys[0]?.vkey}\nquorum w\n`);
  const send = () => said(() => witnessLog({ station: file }));
  const verified = () =>
    said(() => verify(at('J-1.record.json'), { trust: at('trusted-keys.json'), policy: at('policy') }));
  return { witness, send, verified };
}

/** A line under the name and the key ID of the witness that nobody signed. */
const falseLine = ({ keys }: Answering): string => {
  const [own] = keys;
  if (own === undefined) throw new Error('a witness has a key');
  return signatureLine({ name: own.key.name, keyId: own.key.keyId, signature: Buffer.alloc(72, 1) });
};
const stranger = (i: number) =>
  signatureLine({
    name: `stranger.example/${i}`,
    keyId: Buffer.from([0, 0, 0, i]),
    signature: Buffer.alloc(72),
  });

describe('notes of witnesses on the disk', () => {
  it('with a false line in the place of a good one are written anew by the next sending', async () => {
    const { witness, send, verified } = await shop();
    await send();
    const note = JSON.parse(readFileSync(at(NOTE), 'utf8'));
    const [text = ''] = String(note.checkpoint).split('\n\n— ');
    const own = String(note.checkpoint)
      .split('\n')
      .find((line) => line.startsWith('— ') && !line.includes('witness'));
    const forged = `${text}\n\n${own}\n${falseLine(witness)}`;
    writeFileSync(at(NOTE), JSON.stringify({ ...note, checkpoint: forged }));
    writeFileSync(at('cosigned.checkpoint'), forged);
    expect((await verified()).text).toContain('the note was changed');
    expect((await send()).value).toBe(0);
    expect((await verified()).value).toBe(0);
  });

  it('with as many lines of strangers as a note may have do not stop the next sending', async () => {
    const { send, verified } = await shop();
    await send();
    const cosigned = readFileSync(at('cosigned.checkpoint'), 'utf8');
    const room = 64 - (cosigned.match(/^— /gm)?.length ?? 0);
    writeFileSync(
      at('cosigned.checkpoint'),
      cosigned + Array.from({ length: room }, (_, i) => stranger(i)).join(''),
    );
    rmSync(at(NOTE));
    expect((await send()).value).toBe(0);
    expect((await verified()).value).toBe(0);
  });

  it('that are a pipe keep nobody waiting', async () => {
    const { send, verified } = await shop();
    execFileSync('mkfifo', [at('cosigned.checkpoint')]);
    expect((await send()).value).toBe(0);
    expect((await verified()).value).toBe(0);
  });
});

describe('the last checkpoint on the disk', () => {
  const signing = () => problemOf(() => said(() => checkpoint(station.scope())));

  it.each<[string, (path: string) => void]>([
    ['a pipe', (path) => execFileSync('mkfifo', [path])],
    ['a folder', (path) => execFileSync('mkdir', [path])],
    ['larger than any checkpoint', (path) => writeFileSync(path, Buffer.alloc(1_000_000, 0x41))],
  ])('that is %s stops the station from signing, at once', async (_what, put) => {
    await said(() => checkpoint(station.scope()));
    rmSync(at('last.checkpoint'));
    put(at('last.checkpoint'));
    expect(await signing()).toMatchObject({ code: 'checkpoint-form', where: at('last.checkpoint') });
  });
});
