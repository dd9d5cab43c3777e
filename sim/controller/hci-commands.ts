/** The HCI commands the controller knows (Core, Vol 4 Part E 7.1 to 7.8): how each is read and how it is answered. */
import { u16 } from './att-pdu.ts';
import type { AclBuffers } from './connections.ts';
import type { ConnectionParameters } from './definition.ts';
import { commandComplete, commandStatus } from './hci-events.ts';
import { addressBytes, addressText, type CommandPacket, OPCODE, STATUS } from './hci-packets.ts';
import type { LinkKey } from './pairing.ts';

export interface ConnectionRequest {
  readonly address: string;
  readonly addressType: 'public' | 'random';
  readonly parameters: ConnectionParameters;
}

/** What commands act on. */
export interface Radio {
  readonly address: string;
  readonly acl: AclBuffers;
  readonly reset: () => void;
  readonly setScanParameters: (active: boolean) => number;
  readonly setScanEnabled: (enabled: boolean, filterDuplicates: boolean) => void;
  readonly createConnection: (request: ConnectionRequest) => Outcome;
  readonly cancelConnection: () => Outcome;
  readonly disconnect: (handle: number) => Outcome;
  readonly updateConnection: (handle: number, parameters: ConnectionParameters) => Outcome;
  readonly readRemoteFeatures: (handle: number) => Outcome;
  /** With the key that the host has agreed on with the device, now or on an earlier link. */
  readonly startEncryption: (handle: number, key: LinkKey) => Outcome;
  /** dBm, or undefined if there is no such link. */
  readonly rssi: (handle: number) => number | undefined;
}

interface Outcome {
  readonly status: number;
  /** What happens after the host was told the status. */
  readonly afterwards?: () => void;
}

export interface Answer {
  readonly event: Buffer;
  readonly afterwards?: () => void;
}

/** LE features that a host may rely on: none. */
export const NO_FEATURES: Uint8Array = new Uint8Array(8);

/** Bluetooth 5.0; noble calls anything before 4.0 (6) unsupported. Company 0xFFFF is the one for internal tests. */
const VERSION = Buffer.from([9, 0, 0, 9, 0xff, 0xff, 0, 0]);

interface Command {
  readonly length: number;
  readonly run: (radio: Radio, parameters: Buffer) => Reply;
}

/** `complete`: a Command Complete with these return parameters; `status`: a Command Status. */
type Reply =
  | { readonly kind: 'complete'; readonly returned: Uint8Array; readonly afterwards?: () => void }
  | { readonly kind: 'status'; readonly outcome: Outcome };

const complete = (status: number, ...returned: readonly Uint8Array[]): Reply => ({
  kind: 'complete',
  returned: Buffer.concat([Buffer.from([status]), ...returned]),
});
const success = (): Reply => complete(STATUS.success);
const status = (outcome: Outcome): Reply => ({ kind: 'status', outcome });

const connectionParameters = (bytes: Buffer, at: number): ConnectionParameters => ({
  minInterval: bytes.readUInt16LE(at),
  maxInterval: bytes.readUInt16LE(at + 2),
  latency: bytes.readUInt16LE(at + 4),
  timeout: bytes.readUInt16LE(at + 6),
});

/** The ranges of Core, Vol 4 Part E 7.8.12: the supervision timeout outlasts two missed, latent intervals. */
function validParameters({ minInterval, maxInterval, latency, timeout }: ConnectionParameters): boolean {
  return (
    minInterval >= 6 &&
    minInterval <= maxInterval &&
    maxInterval <= 3200 &&
    latency <= 499 &&
    timeout >= 10 &&
    timeout <= 3200 &&
    timeout * 10 > (1 + latency) * maxInterval * 1.25 * 2
  );
}

function createConnection(radio: Radio, bytes: Buffer): Reply {
  const parameters = connectionParameters(bytes, 13);
  if (bytes.readUInt8(4) !== 0) return status({ status: STATUS.unsupportedParameter });
  if (!validParameters(parameters)) return status({ status: STATUS.invalidParameters });
  const addressType = bytes.readUInt8(5) === 0x01 ? 'random' : 'public';
  return status(
    radio.createConnection({ address: addressText(bytes.subarray(6, 12)), addressType, parameters }),
  );
}

function updateConnection(radio: Radio, bytes: Buffer): Reply {
  const parameters = connectionParameters(bytes, 2);
  if (!validParameters(parameters)) return status({ status: STATUS.invalidParameters });
  return status(radio.updateConnection(bytes.readUInt16LE(0), parameters));
}

function readRssi(radio: Radio, bytes: Buffer): Reply {
  const handle = bytes.readUInt16LE(0);
  const rssi = radio.rssi(handle);
  return complete(
    rssi === undefined ? STATUS.unknownConnection : STATUS.success,
    u16(handle),
    Buffer.from([(rssi ?? 0) & 0xff]),
  );
}

const COMMANDS: ReadonlyMap<number, Command> = new Map([
  [OPCODE.disconnect, { length: 3, run: (radio, bytes) => status(radio.disconnect(bytes.readUInt16LE(0))) }],
  [OPCODE.setEventMask, { length: 8, run: success }],
  [
    OPCODE.reset,
    {
      length: 0,
      run: (radio) => {
        radio.reset();
        return success();
      },
    },
  ],
  [OPCODE.readLeHostSupport, { length: 0, run: () => complete(STATUS.success, Buffer.from([1, 0])) }],
  [OPCODE.writeLeHostSupport, { length: 2, run: success }],
  [OPCODE.readLocalVersion, { length: 0, run: () => complete(STATUS.success, VERSION) }],
  [
    OPCODE.readBufferSize,
    // WHY the LE buffers again: a controller for LE alone has no others, and noble asks only if LE reported none.
    {
      length: 0,
      run: ({ acl }) => complete(STATUS.success, u16(acl.length), Buffer.from([0]), u16(acl.count), u16(0)),
    },
  ],
  [OPCODE.readAddress, { length: 0, run: ({ address }) => complete(STATUS.success, addressBytes(address)) }],
  [OPCODE.readRssi, { length: 2, run: readRssi }],
  [OPCODE.leSetEventMask, { length: 8, run: success }],
  [
    OPCODE.leReadBufferSize,
    // WHY it must not be 0: noble holds back all ACL data until it knows these two, and asks only on a raw channel,
    // so that over a user channel its first request (the MTU) is never sent.
    { length: 0, run: ({ acl }) => complete(STATUS.success, u16(acl.length), Buffer.from([acl.count])) },
  ],
  [OPCODE.leReadLocalFeatures, { length: 0, run: () => complete(STATUS.success, NO_FEATURES) }],
  [OPCODE.leSetRandomAddress, { length: 6, run: success }],
  [
    OPCODE.leSetScanParameters,
    { length: 7, run: (radio, bytes) => complete(radio.setScanParameters(bytes.readUInt8(0) === 1)) },
  ],
  [
    OPCODE.leSetScanEnable,
    {
      length: 2,
      run: (radio, bytes) => {
        radio.setScanEnabled(bytes.readUInt8(0) === 1, bytes.readUInt8(1) === 1);
        return success();
      },
    },
  ],
  [OPCODE.leCreateConnection, { length: 25, run: createConnection }],
  [
    OPCODE.leCancelConnection,
    {
      length: 0,
      run: (radio) => {
        const { status: code, ...rest } = radio.cancelConnection();
        return { ...complete(code), ...rest };
      },
    },
  ],
  [OPCODE.leUpdateConnection, { length: 14, run: updateConnection }],
  [
    OPCODE.leReadRemoteFeatures,
    { length: 2, run: (radio, bytes) => status(radio.readRemoteFeatures(bytes.readUInt16LE(0))) },
  ],
  [
    OPCODE.leStartEncryption,
    {
      length: 28,
      run: (radio, bytes) =>
        status(
          radio.startEncryption(bytes.readUInt16LE(0), {
            random: bytes.subarray(2, 10),
            diversifier: bytes.subarray(10, 12),
            key: bytes.subarray(12, 28),
          }),
        ),
    },
  ],
] satisfies [number, Command][]);

/**
 * Runs one command. Unknown ones, all of extended advertising among them, get a Command Status "unknown command".
 * noble never tries extended commands of itself, and if told to (`extended: true`) it has no way back: it then waits
 * for a `poweredOn` that does not come.
 */
export function runCommand(radio: Radio, { opcode, parameters }: CommandPacket): Answer {
  const command = COMMANDS.get(opcode);
  if (command === undefined) return { event: commandStatus(opcode, STATUS.unknownCommand) };
  if (parameters.length !== command.length) return { event: commandStatus(opcode, STATUS.invalidParameters) };
  const reply = command.run(radio, parameters);
  const afterwards = reply.kind === 'complete' ? reply.afterwards : reply.outcome.afterwards;
  const event =
    reply.kind === 'complete'
      ? commandComplete(opcode, reply.returned)
      : commandStatus(opcode, reply.outcome.status);
  return afterwards === undefined ? { event } : { event, afterwards };
}
