import { createInterface } from 'node:readline';
import { Writable } from 'node:stream';

/** Where a passphrase or PIN comes from where nobody can type: a variable of the environment. */
export const SECRETS = {
  passphrase: 'PLUGMARK_PASSPHRASE',
  pin: 'PLUGMARK_PIN',
  token: 'PLUGMARK_TOKEN_PIN',
  enrolment: 'PLUGMARK_ENROLMENT',
  reader: 'PLUGMARK_READER',
} as const;

/** A passphrase, a PIN or a token: from the environment, else typed without being shown; null where there is neither, or it is empty. */
export async function askSecret(which: keyof typeof SECRETS, prompt: string): Promise<string | null> {
  const given = process.env[SECRETS[which]];
  if (given !== undefined) return given === '' ? null : given;
  if (process.stdin.isTTY !== true || process.stderr.isTTY !== true) return null;
  process.stderr.write(prompt);
  // The screen, when it was there before, left the input so that it keeps no program waiting.
  process.stdin.ref();
  const silent = new Writable({ write: (_chunk, _encoding, done) => done() });
  const keyboard = createInterface({ input: process.stdin, output: silent, terminal: true });
  const typed = await new Promise<string>((resolve) => {
    keyboard.once('line', resolve);
    keyboard.once('close', () => resolve(''));
  });
  keyboard.close();
  process.stderr.write('\n');
  return typed === '' ? null : typed;
}
