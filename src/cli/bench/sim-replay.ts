import { setTimeout as sleep } from 'node:timers/promises';
import { AIR } from '../../../drivers/radio/air.ts';
import { type Capture, parseCapture } from '../../../drivers/replay/capture.ts';
import { realScheduler } from '../../../sim/scheduler.ts';
import { addressOf, busiest, capturedOnAir, playPackets, unlisted } from '../../../sim/serve/captured.ts';
import { readBytes } from '../../files/input.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { pseudoTerminal } from './pseudo-terminal.ts';
import { openAir } from './sim-serve.ts';

export interface ReplayOptions {
  /** Of a capture from a serial port. */
  readonly port: string;
  /** Of a Bluetooth capture. */
  readonly air: string;
  readonly serial: string;
  readonly advertised?: string;
  /** Seconds until a serial port begins to send, so that somebody can open it. */
  readonly wait: number;
}

const MOST_BYTES = 1 << 28;

/** Plays a capture back as the device that sent it. */
export async function replay(file: string, options: ReplayOptions): Promise<ExitCode> {
  const bytes = await readBytes(file, w`capture`, MOST_BYTES);
  const capture = orThrow(parseCapture(Buffer.from(bytes).toString('utf8'), file));
  if (capture.packets.length === 0)
    throw new ProblemError({
      code: 'capture-line',
      where: file,
      message: w`the capture holds no packets`,
      next: w`Record the device while it sends.`,
    });
  const stranger = unlisted(capture);
  if (stranger !== undefined)
    throw new ProblemError({
      code: 'capture-line',
      where: `${file}:1`,
      message: w`the characteristic ${stranger} sent packets, and the capture does not list it as one that sends`,
      next: w`Record the device again.`,
    });
  const stop = new AbortController();
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => stop.abort());
  const from = busiest(capture);
  if (from === null) await onPort(capture, options, stop.signal);
  else await onAir(capture, { ...options, ...presented(options, from.service) }, stop.signal);
  return EXIT.done;
}

const LONGEST_SERIAL = 64;

function presented({ serial, advertised = '' }: ReplayOptions, busy: string) {
  const uuid = advertised === '' ? busy : advertised.replaceAll('-', '').toLowerCase();
  if (!/^([0-9a-f]{4}|[0-9a-f]{32})$/.test(uuid))
    throw wrongOption('--advertised', w`this is no UUID of 4 or 32 digits`);
  if (serial.length > LONGEST_SERIAL) throw wrongOption('--serial', w`this is longer than any serial number`);
  return { serial, advertised: uuid };
}

const wrongOption = (where: string, message: string) =>
  new ProblemError({
    code: 'option-not-valid',
    where,
    message,
    next: w`Give it as "plugmark devices scan" shows it.`,
  });

const say = (line: string) => process.stdout.write(`${safeLine(line)}\n`);

async function onPort(capture: Capture, { port, wait }: ReplayOptions, signal: AbortSignal): Promise<void> {
  const terminal = pseudoTerminal(port);
  await terminal.plug();
  try {
    say(w`${capture.header.address} on ${port}; it sends in ${wait} s`);
    await sleep(wait * 1_000, undefined, { signal }).catch(() => {});
    if (signal.aborted) return;
    await new Promise<void>((resolve) => {
      const end = playPackets(capture, realScheduler(), {
        send: ({ bytes }) => terminal.send(bytes),
        over: resolve,
      });
      signal.addEventListener('abort', () => {
        end();
        resolve();
      });
    });
    say(w`${capture.packets.length} packets sent`);
    // What was written last is on its way through the pseudo-terminal.
    await sleep(500, undefined, { signal }).catch(() => {});
  } finally {
    terminal.close();
  }
}

async function onAir(
  capture: Capture,
  { air: path, serial, advertised }: ReplayOptions & { readonly advertised: string },
  signal: AbortSignal,
): Promise<void> {
  const scheduler = realScheduler();
  const air = await openAir(path, scheduler);
  try {
    const words = {
      plays: w`somebody listens: it plays from the beginning`,
      over: w`${capture.packets.length} packets sent`,
      'broken-off': w`the link ended before all was sent`,
    } as const;
    const device = capturedOnAir(air.controller, capture, { serial, advertised }, scheduler, (what) =>
      say(words[what]),
    );
    say(w`${capture.header.name ?? w`the device`} at ${addressOf(capture)}, serial number ${serial}`);
    say(w`Reach it with ${`${AIR}=${path}`} in front of a command. Ctrl-C ends it.`);
    await new Promise<void>((resolve) => signal.addEventListener('abort', () => resolve()));
    device.close();
  } finally {
    await air.close();
  }
}
