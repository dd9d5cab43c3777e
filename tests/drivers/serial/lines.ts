import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Null where socat is there; else the line to skip with. */
export const NO_LINE =
  spawnSync('socat', ['-V']).status === 0
    ? null
    : 'SKIPPED: socat is not installed; no serial line was tried';
if (NO_LINE !== null && process.env['ALL_TESTS'] !== undefined) throw new Error(NO_LINE);

/** A serial line of a pseudo-terminal: the station has one end, the test is the device at the other. */
export class Line {
  readonly port: string;
  readonly #folder: string;
  #socat: ChildProcess | undefined;
  #heard = '';

  constructor() {
    this.#folder = mkdtempSync(join(tmpdir(), 'line-'));
    this.port = join(this.#folder, 'station');
  }

  /** The device is plugged in: what it hears goes to `heard`, and `say` sends. */
  async plug(): Promise<void> {
    const socat = spawn('socat', [`PTY,link=${this.port},raw,echo=0`, 'STDIO'], {
      stdio: ['pipe', 'pipe', 'ignore'],
    });
    this.#socat = socat;
    socat.stdout.setEncoding('latin1');
    socat.stdout.on('data', (text: string) => {
      this.#heard += text;
    });
    await until(() => existsSync(this.port), 'the pseudo-terminal');
  }

  get heard(): string {
    return this.#heard;
  }

  say(bytes: string | Buffer): void {
    this.#socat?.stdin?.write(typeof bytes === 'string' ? Buffer.from(bytes, 'latin1') : bytes);
  }

  async unplug(): Promise<void> {
    const socat = this.#socat;
    if (socat === undefined) return;
    this.#socat = undefined;
    const gone = new Promise((resolve) => socat.once('exit', resolve));
    socat.kill('SIGKILL');
    await gone;
    rmSync(this.port, { force: true });
  }

  async end(): Promise<void> {
    await this.unplug();
    rmSync(this.#folder, { recursive: true, force: true });
  }
}

/** Waits for something that another process does; the limit only names what did not come. */
export async function until(happened: () => boolean, what: string): Promise<void> {
  for (let i = 0; i < 500; i++) {
    if (happened()) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`${what} did not come`);
}
