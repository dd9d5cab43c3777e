import { z } from 'zod';
import { w } from '../../src/words/catalogue.ts';

/** How the device of a profile is reached, and what is written to it so that it sends. */

/** Short, lower case and without dashes, as the radio port has them; UUIDs of the Bluetooth base become short. */
export const uuidSchema = z
  .string()
  .regex(
    /^([0-9a-fA-F]{4}|[0-9a-fA-F]{8}-([0-9a-fA-F]{4}-){3}[0-9a-fA-F]{12})$/,
    'expected a UUID of 4 digits, or of 32 with dashes',
  )
  .transform((text) => {
    const hex = text.replaceAll('-', '').toLowerCase();
    return /^0000([0-9a-f]{4})00001000800000805f9b34fb$/.exec(hex)?.[1] ?? hex;
  });

export const hexSchema = z
  .string()
  .regex(/^([0-9a-fA-F]{2}){1,512}$/, { error: () => w`expected whole bytes in hexadecimal digits` })
  .transform((text) => text.toLowerCase());

const place = {
  service: uuidSchema.describe('Its service.'),
  characteristic: uuidSchema.describe('Its characteristic.'),
};
const hex = hexSchema.describe('The bytes.');
const everyMs = z.int().min(20).max(60_000).describe('How often.');
const again = z
  .enum(['nothing', 'reading'])
  .exactOptional()
  .describe(
    'What the same bytes again are: `nothing` new, or another `reading`. `nothing` unless given; a counter decides where there is one.',
  );

const bluetoothSchema = z
  .strictObject({
    kind: z.literal('bluetooth-le'),
    advertised: uuidSchema.describe('The service by which the device is found.'),
    ...place,
    by: z
      .discriminatedUnion('how', [
        z.strictObject({ how: z.literal('notify') }).describe('The device sends them.'),
        z.strictObject({ how: z.literal('poll'), everyMs, again }).describe('The device is read.'),
        z
          .strictObject({
            how: z.literal('ask'),
            everyMs,
            again,
            request: z.strictObject({ ...place, hex }).describe('What is written to ask.'),
          })
          .describe('The device is asked, and sends its answer.'),
      ])
      .describe('How readings come.'),
    start: z
      .array(z.strictObject({ ...place, hex }))
      .max(8)
      .exactOptional()
      .describe('What is written once the readings are subscribed to, in this order.'),
    keepAlive: z
      .strictObject({ ...place, hex, everyMs })
      .exactOptional()
      .describe('What is written again and again, so that the device goes on.'),
    memory: z
      .strictObject({
        ...place,
        request: z.strictObject({ ...place, hex }).describe('What is written to ask for them.'),
      })
      .exactOptional()
      .describe(
        'Where the device keeps readings while it is out of reach. They come in the same frames; each is taken to be handed out once.',
      ),
  })
  .describe('A Bluetooth tool. `service` and `characteristic` are where its readings come from.');
export type BluetoothLink = z.infer<typeof bluetoothSchema>;

const serialSchema = z
  .strictObject({
    kind: z.literal('serial'),
    baud: z.int().min(110).max(4_000_000).describe('Bits a second.'),
    dataBits: z
      .union([z.literal(7), z.literal(8)])
      .default(8)
      .describe('Bits in a byte, 7 or 8; 8 unless given.'),
    parity: z.enum(['none', 'even', 'odd']).default('none').describe('The parity bit. `none` unless given.'),
    stopBits: z
      .union([z.literal(1), z.literal(2)])
      .default(1)
      .describe('Stop bits, 1 or 2; 1 unless given.'),
    by: z
      .discriminatedUnion('how', [
        z.strictObject({ how: z.literal('sent') }).describe('The device sends them.'),
        z
          .strictObject({ how: z.literal('ask'), everyMs, again, hex })
          .describe('The device is asked, and sends its answer.'),
      ])
      .describe('How readings come.'),
    start: z
      .array(z.strictObject({ hex }))
      .max(8)
      .exactOptional()
      .describe('What is written once the port is open.'),
    keepAlive: z
      .strictObject({ hex, everyMs })
      .exactOptional()
      .describe('What is written again and again, so that the device goes on.'),
  })
  .describe('A tool on a serial port, a virtual one over USB, or Bluetooth SPP.');
export type SerialLink = z.infer<typeof serialSchema>;

export const linkSchema = z.discriminatedUnion('kind', [bluetoothSchema, serialSchema]);
