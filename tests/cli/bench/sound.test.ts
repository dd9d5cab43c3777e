import { existsSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { soundPlayer } from '../../../src/cli/bench/sound.ts';
import { soundSchema } from '../../../src/ui/sound-commands.ts';

describe('the sound of a shop', () => {
  it('is its own command, each argument as it stands: no shell reads it', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'plugmark-sound-'));
    const wanted = join(folder, 'a $HOME `b`; c');
    soundPlayer({ ok: [process.execPath, '-e', 'fs.writeFileSync(process.argv[1],"")', wanted] })('ok');
    await vi.waitFor(() => expect(existsSync(wanted)).toBe(true), { timeout: 20_000, interval: 20 });
  });

  it('that cannot be started disturbs nothing', async () => {
    const play = soundPlayer({ notOk: ['/no/such/program'] });
    expect(() => play('notOk')).not.toThrow();
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(() => play('question')).not.toThrow();
  });

  it('is a list of strings, never one line for a shell', () => {
    expect(soundSchema.safeParse({ ok: 'beep; rm' }).success).toBe(false);
    expect(soundSchema.safeParse({ ok: [] }).success).toBe(false);
    expect(soundSchema.safeParse({ notOk: ['espeak', 'not OK'] }).success).toBe(true);
  });
});
