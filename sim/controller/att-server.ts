/**
 * The ATT/GATT server of one link: takes request octets, gives response octets, and makes notifications and
 * indications for what the client subscribed to. It knows nothing of HCI, of L2CAP or of time.
 */
import {
  ATT,
  ATT_ERROR,
  type AttErrorCode,
  attError,
  DEFAULT_MTU,
  MAX_VALUE_LENGTH,
  u16,
} from './att-pdu.ts';
import {
  type AttState,
  findByTypeValue,
  findInformation,
  type Responder,
  read,
  readBlob,
  readByGroupType,
  readByType,
  securityError,
} from './att-requests.ts';
import { type Attribute, type GattTable, INDICATE_BIT, NOTIFY_BIT } from './gatt-table.ts';
import { type Uuid, uuidKey } from './uuid.ts';

export interface AttServerHooks {
  /** A characteristic's configuration went from zero to not zero, or back. */
  readonly onSubscription?: (characteristic: Uuid, subscribed: boolean) => void;
  /** The client confirmed the outstanding indication. */
  readonly onConfirmation?: () => void;
}

export interface AttServer {
  /** The response to one PDU from the client; undefined where the protocol asks for silence. Never throws. */
  readonly receive: (pdu: Buffer) => Buffer | undefined;
  /** A Handle Value Notification cut to ATT_MTU - 3, or undefined if the client is not subscribed. */
  readonly notification: (characteristic: Uuid, bytes: Uint8Array) => Buffer | undefined;
  /** The same for an indication; also undefined while an earlier one is not confirmed. */
  readonly indication: (characteristic: Uuid, bytes: Uint8Array) => Buffer | undefined;
  readonly subscriptions: () => readonly Uuid[];
  /** From now on the link is encrypted. */
  readonly setEncrypted: () => void;
}

interface Rule {
  readonly fits: (length: number) => boolean;
  readonly respond: Responder;
}

const exactly = (length: number) => (given: number) => given === length;

const RULES: ReadonlyMap<number, Rule> = new Map([
  [ATT.findInformationRequest, { fits: exactly(5), respond: findInformation }],
  [ATT.findByTypeValueRequest, { fits: (length: number) => length >= 7, respond: findByTypeValue }],
  [ATT.readByTypeRequest, { fits: (length: number) => length === 7 || length === 21, respond: readByType }],
  [ATT.readRequest, { fits: exactly(3), respond: read }],
  [ATT.readBlobRequest, { fits: exactly(5), respond: readBlob }],
  [
    ATT.readByGroupTypeRequest,
    { fits: (length: number) => length === 7 || length === 21, respond: readByGroupType },
  ],
] satisfies [number, Rule][]);

/** Bit 6 of an opcode: a command, which is never answered. */
const COMMAND_FLAG = 0x40;

/** PDUs that only a server sends: nothing was asked, so there is nothing to answer. */
const FROM_SERVERS: ReadonlySet<number> = new Set([
  0x01, 0x03, 0x05, 0x07, 0x09, 0x0b, 0x0d, 0x0f, 0x11, 0x13, 0x17, 0x19, 0x1b, 0x1d, 0x21, 0x23,
]);

export function attServer(table: GattTable, maxMtu: number, hooks: AttServerHooks = {}): AttServer {
  const state: AttState = { mtu: DEFAULT_MTU, encrypted: false, configurations: new Map() };
  let unconfirmed = false;

  const exchangeMtu = (request: Buffer): Buffer => {
    state.mtu = Math.max(DEFAULT_MTU, Math.min(request.readUInt16LE(1), maxMtu));
    // WHY our own limit and not the agreed one: the response carries the server's limit and both sides take the
    // lesser. noble takes this number as agreed though it asked for 256, so above 256 it cuts its long reads short.
    return Buffer.concat([Buffer.from([ATT.exchangeMtuRequest + 1]), u16(maxMtu)]);
  };

  const configure = ({ handle, content }: Attribute, bytes: Buffer): AttErrorCode | undefined => {
    if (content.kind !== 'configuration') return ATT_ERROR.writeNotPermitted;
    if (bytes.length !== 2) return ATT_ERROR.invalidAttributeValueLength;
    const next = bytes.readUInt16LE(0);
    if ((next & ~content.allowed) !== 0) return ATT_ERROR.valueNotAllowed;
    const before = state.configurations.get(handle) ?? 0;
    state.configurations.set(handle, next);
    if ((before === 0) !== (next === 0)) hooks.onSubscription?.(content.characteristic.uuid, next !== 0);
    return undefined;
  };

  const write = (pdu: Buffer, property: 'write' | 'writeWithoutResponse'): AttErrorCode | undefined => {
    const attribute = table.attributes[pdu.readUInt16LE(1) - 1];
    const bytes = Buffer.from(pdu.subarray(3));
    if (attribute === undefined) return ATT_ERROR.invalidHandle;
    if (attribute.content.kind !== 'value') return configure(attribute, bytes);
    const { characteristic } = attribute.content;
    if (!characteristic.properties.includes(property)) return ATT_ERROR.writeNotPermitted;
    const refusal = securityError(characteristic, state);
    if (refusal !== undefined) return refusal;
    if (bytes.length > MAX_VALUE_LENGTH) return ATT_ERROR.invalidAttributeValueLength;
    characteristic.write?.(bytes);
    return undefined;
  };

  const receive = (pdu: Buffer): Buffer | undefined => {
    const opcode = pdu[0];
    if (opcode === undefined || FROM_SERVERS.has(opcode)) return undefined;
    if (opcode === ATT.handleValueConfirmation) {
      if (unconfirmed) {
        unconfirmed = false;
        hooks.onConfirmation?.();
      }
      return undefined;
    }
    if (opcode === ATT.writeCommand && pdu.length >= 3) write(pdu, 'writeWithoutResponse');
    if ((opcode & COMMAND_FLAG) !== 0) return undefined;
    // WHY only for what is truly malformed: noble drops an "invalid PDU" error and waits for ever.
    const malformed = () => attError(opcode, 0, ATT_ERROR.invalidPdu);
    if (opcode === ATT.exchangeMtuRequest) return pdu.length === 3 ? exchangeMtu(pdu) : malformed();
    if (opcode === ATT.writeRequest) {
      if (pdu.length < 3) return malformed();
      const refusal = write(pdu, 'write');
      if (refusal !== undefined) return attError(opcode, pdu.readUInt16LE(1), refusal);
      return Buffer.from([ATT.writeRequest + 1]);
    }
    const rule = RULES.get(opcode);
    if (rule === undefined) return attError(opcode, 0, ATT_ERROR.requestNotSupported);
    return rule.fits(pdu.length) ? rule.respond(table, state, pdu) : malformed();
  };

  const handleValue = (opcode: number, bit: number, characteristic: Uuid, bytes: Uint8Array) => {
    const source = table.sources.get(uuidKey(characteristic));
    if (source === undefined)
      throw new RangeError(`${characteristic} is no characteristic that notifies or indicates`);
    if (((state.configurations.get(source.configurationHandle) ?? 0) & bit) === 0) return undefined;
    return Buffer.concat([Buffer.from([opcode]), u16(source.valueHandle), bytes.subarray(0, state.mtu - 3)]);
  };

  return {
    receive,
    notification: (characteristic, bytes) =>
      handleValue(ATT.handleValueNotification, NOTIFY_BIT, characteristic, bytes),
    indication: (characteristic, bytes) => {
      if (unconfirmed) return undefined;
      const pdu = handleValue(ATT.handleValueIndication, INDICATE_BIT, characteristic, bytes);
      unconfirmed = pdu !== undefined;
      return pdu;
    },
    setEncrypted: () => {
      state.encrypted = true;
    },
    subscriptions: () =>
      [...table.sources.values()]
        .filter(({ configurationHandle }) => (state.configurations.get(configurationHandle) ?? 0) !== 0)
        .map(({ uuid }) => uuid),
  };
}
