import { z } from 'zod';
import { type Problem, problemFromZod } from '../../src/problem.ts';
import type { Quantity, ToolId } from '../../src/reading.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { type Arrival, ReadingCounter } from '../bluetooth/counter.ts';
import { FORMATS } from '../imds/numbers.ts';
import { decodeValue } from '../imds/value.ts';
import { aboutOf } from '../profile/language.ts';
import type { Profile } from '../profile/schema.ts';
import { FrameStream, SERIAL } from '../profile/stream.ts';
import type { Recording } from './recording.ts';

/*
 * What a device sent, byte by byte, form `plugmark/capture/1`: newline-delimited JSON in UTF-8, written by
 * `plugmark devices record`, so that a profile can be tried on it without the device.
 *
 *   {"form":"plugmark/capture/1","address":"c2:00:00:00:00:01","name":"…","characteristics":[…]}
 *   {"atUs":1000,"service":"185a","characteristic":"2c0b","hex":"c4090000"}
 *   {"packets":1}
 *
 * Stamps never go back; the last line counts the packets, so that a capture that was cut short is known for one.
 */

export const CAPTURE_FORM = 'plugmark/capture/1';

const uuid = z
  .string()
  .regex(/^([0-9a-f]{4}|[0-9a-f]{32})$/, 'expected a UUID in small digits without dashes');

const headerSchema = z.strictObject({
  form: z.literal(CAPTURE_FORM),
  address: z.string().max(64).describe('Address of the device, or its serial port.'),
  name: z.string().max(248).exactOptional().describe('Its name.'),
  characteristics: z
    .array(
      z.strictObject({
        service: uuid.describe('The service.'),
        uuid: uuid.describe('The characteristic.'),
        properties: z.array(z.string().max(32)).max(16).describe('What may be done with it.'),
      }),
    )
    .max(512)
    .describe('What it offers.'),
});

const packetSchema = z.strictObject({
  atUs: z.int().min(0).describe('Stamp in microseconds.'),
  service: uuid.exactOptional().describe('The service; absent of a serial port.'),
  characteristic: uuid
    .exactOptional()
    .describe('The characteristic that the bytes came from; absent of a serial port.'),
  hex: z
    .string()
    .regex(/^([0-9a-f]{2}){0,512}$/, 'expected whole bytes in small hexadecimal digits')
    .describe('The bytes.'),
});
export type CapturedPacket = z.infer<typeof packetSchema>;

const endSchema = z.strictObject({ packets: z.int().min(0).describe('How many packets the file holds.') });

/** A line of a capture: the first, a packet, or the last. */
export const captureLineSchema = z.union([headerSchema, packetSchema, endSchema]);

/** How the packets of a capture are to be read. */
export interface Meaning {
  readonly tool: ToolId;
  readonly quantity: Quantity;
  /** Left out: as the Bluetooth SIG's own service. */
  readonly profile?: Profile;
}

export interface Capture {
  readonly header: z.infer<typeof headerSchema>;
  readonly packets: readonly CapturedPacket[];
}

/** `file` is only named in problems, as `file:line`. */
export function parseCapture(text: string, file: string): Result<Capture, Problem> {
  const lines = text.split('\n');
  if (lines.at(-1) === '') lines.pop();
  const header = parseLine(lines[0] ?? '', headerSchema, `${file}:1`);
  if (!header.ok) return header;
  const last = lines.length;
  const end = parseLine(lines[last - 1] ?? '', endSchema, `${file}:${last}`);
  if (!end.ok) return wrongLine(`${file}:${last}`, 'The capture has no end line; it was cut short.');
  const packets: CapturedPacket[] = [];
  for (const [index, source] of lines.slice(1, -1).entries()) {
    const where = `${file}:${index + 2}`;
    const packet = parseLine(source, packetSchema, where);
    if (!packet.ok) return packet;
    if (packet.value.atUs < (packets.at(-1)?.atUs ?? 0))
      return wrongLine(where, 'The packet is stamped before the one in front of it.');
    packets.push(packet.value);
  }
  return end.value.packets === packets.length
    ? ok({ header: header.value, packets })
    : wrongLine(
        `${file}:${last}`,
        `The end line counts ${end.value.packets} packets, but ${packets.length} are there.`,
      );
}

/** The readings that the packets make, as a driver would have made them when they came. */
export function recordingOf({ header, packets }: Capture, meaning: Meaning): Recording {
  const { quantity, profile } = meaning;
  const counter = new ReadingCounter();
  const readings: Recording['readings'][number][] = [];
  const put = (arrival: Arrival) => void readings.push(...counter.take(arrival));
  const { take, end } = profile === undefined ? imdsPackets(quantity, put) : profilePackets(profile, put);
  for (const packet of packets) take(packet);
  end();
  const format = FORMATS[quantity];
  const about =
    profile === undefined
      ? {
          quantity,
          unit: format.unit,
          exponent: format.exponent,
          samplingFunction: 'unspecified' as const,
        }
      : aboutOf(profile);
  return {
    header: {
      form: 'plugmark/readings/1',
      tool: meaning.tool,
      timing: { stamps: 'arrival' },
      description: {
        ...about,
        link: { kind: 'bluetooth-le', address: header.address, authenticated: false },
      },
    },
    readings,
  };
}

interface Taking {
  readonly take: (packet: CapturedPacket) => void;
  /** Nothing more comes. */
  readonly end: () => void;
}

function imdsPackets(quantity: Quantity, put: (arrival: Arrival) => void): Taking {
  const format = FORMATS[quantity];
  return {
    take: ({ atUs, characteristic, hex }) => {
      if (characteristic !== format.characteristic) return;
      const decoded = decodeValue(format, Buffer.from(hex, 'hex'));
      put(decoded.ok ? { ...decoded.value, atUs } : { kind: 'raw', atUs, source: characteristic, hex });
    },
    end: () => {},
  };
}

function profilePackets(profile: Profile, put: (arrival: Arrival) => void): Taking {
  const { link } = profile;
  const streams = [
    { from: link.kind === 'serial' ? {} : link, kind: 'value' as const },
    ...(link.kind === 'serial' || link.memory === undefined
      ? []
      : [{ from: link.memory, kind: 'stored' as const }]),
  ].map(({ from, kind }) => {
    const { service, characteristic } = { service: undefined, characteristic: undefined, ...from };
    const source = characteristic ?? SERIAL;
    return { service, characteristic, stream: new FrameStream(profile, put, { source, openedUs: 0, kind }) };
  });
  return {
    take: (packet) => {
      const own = streams.find(
        ({ service, characteristic }) =>
          service === packet.service && characteristic === packet.characteristic,
      );
      own?.stream.take(Buffer.from(packet.hex, 'hex'), packet.atUs);
    },
    end: () => {
      for (const { stream } of streams) stream.pause();
    },
  };
}

const CODE = 'capture-line';
const NEXT = 'Record again; nothing of the file was used.';

function parseLine<T extends z.ZodType>(
  source: string,
  schema: T,
  where: string,
): Result<z.infer<T>, Problem> {
  let value: unknown;
  try {
    value = JSON.parse(source);
  } catch {
    return wrongLine(where, 'The line is not JSON.');
  }
  const parsed = schema.safeParse(value);
  return parsed.success ? ok(parsed.data) : err(problemFromZod(parsed.error, where, CODE, NEXT));
}

function wrongLine(where: string, message: string): Result<never, Problem> {
  return err({ code: CODE, where, message, next: NEXT });
}
