import { PassThrough, Writable } from 'node:stream';

/** A terminal of a given size that keeps what was written to it, write by write. */
export class FakeScreen extends Writable {
  readonly isTTY = true;
  columns = 80;
  rows = 24;
  readonly writes: string[] = [];

  override _write(chunk: Buffer, _encoding: string, done: () => void): void {
    this.writes.push(chunk.toString());
    done();
  }

  get text(): string {
    return this.writes.join('');
  }

  resize(columns: number, rows: number): void {
    this.columns = columns;
    this.rows = rows;
    this.emit('resize');
  }
}

/** A keyboard in raw mode. */
export class FakeKeyboard extends PassThrough {
  readonly isTTY = true;
  raw = false;

  setRawMode(raw: boolean): this {
    this.raw = raw;
    return this;
  }
  ref(): this {
    return this;
  }
  unref(): this {
    return this;
  }
}

/** Types as Ink wants them; the fakes have all that it uses. */
export const asStreams = (screen: FakeScreen, keyboard: FakeKeyboard) => ({
  stdout: screen as unknown as NodeJS.WriteStream,
  stdin: keyboard as unknown as NodeJS.ReadStream,
});
