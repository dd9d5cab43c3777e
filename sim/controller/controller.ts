/**
 * The virtual controller: one radio with its scanner, its initiator and its links, HCI above and the peripherals
 * below. It answers a host as a Bluetooth LE controller does; nothing in it knows what the host is.
 */
import { type Scheduler, taskGroup } from '../scheduler.ts';
import { type Advertiser, advertisingPayloads, createAdvertiser } from './advertising.ts';
import { type AclBuffers, type Connection, createConnections } from './connections.ts';
import type { PeripheralDefinition } from './definition.ts';
import { type ConnectionRequest, NO_FEATURES, type Radio, runCommand } from './hci-commands.ts';
import {
  advertisingReport,
  connectionComplete,
  connectionFailed,
  connectionUpdateComplete,
  encryptionChange,
  REPORT,
  remoteFeaturesComplete,
} from './hci-events.ts';
import { addressBytes, addressText, parseHostPacket, STATUS } from './hci-packets.ts';
import { type HciSocketClass, hciSocketClass } from './hci-socket.ts';
import { createPeripheral, type PeripheralPort, type VirtualPeripheral } from './peripheral.ts';

export interface ControllerOptions {
  readonly scheduler: Scheduler;
  /** The controller's own public address. */
  readonly address: string;
  /** Default: 8 buffers of 251 octets. */
  readonly acl?: AclBuffers;
  /** Asked for every notification and indication; true loses it. */
  readonly lose?: (peripheral: VirtualPeripheral, bytes: Buffer) => boolean;
}

export interface Controller {
  readonly HciSocket: HciSocketClass;
  /** @throws RangeError if the definition cannot be one, or its address is taken. */
  readonly addPeripheral: (definition: PeripheralDefinition) => VirtualPeripheral;
  /** Ends everything, without a word to the host; no task is left in the scheduler. */
  readonly close: () => void;
}

interface Station {
  readonly peripheral: PeripheralPort;
  readonly address: string;
  readonly payloads: ReturnType<typeof advertisingPayloads>;
  readonly advertiser: Advertiser;
}

export function createController(options: ControllerOptions): Controller {
  const { acl = { length: 251, count: 8 }, lose = () => false } = options;
  const address = addressText(addressBytes(options.address));
  const tasks = taskGroup(options.scheduler);
  const stations = new Map<string, Station>();
  let up = true;
  let activeScan = true;
  let scan: { readonly filterDuplicates: boolean; readonly seen: Set<string> } | undefined;
  let initiating: ConnectionRequest | undefined;
  let host: ((packet: Buffer) => void) | undefined;

  const emit = (packet: Buffer) => host?.(packet);
  // WHY a task of its own for each packet: between two packets noble needs a turn to write what it has awaited; a
  // disconnection in the same turn as a response makes it write to a link that it has already forgotten, and throw.
  const emitLater = (packet: Buffer) => void tasks.after(0, () => emit(packet));
  const updateAdvertisers = () => {
    for (const { advertiser } of stations.values()) advertiser.update();
  };
  const connections = createConnections(options.scheduler, acl, emit, emitLater);

  const connect = (
    { address: peer, peripheral }: Station,
    { addressType, parameters }: ConnectionRequest,
  ) => {
    const timing = { ...parameters, interval: parameters.maxInterval };
    const connection = connections.open(peripheral, timing);
    initiating = undefined;
    emit(connectionComplete(connection.handle, { address: peer, addressType }, timing));
    connections.begin(connection);
  };

  const report = ({ address: from, peripheral, payloads }: Station) => {
    if (scan === undefined || (scan.filterDuplicates && scan.seen.has(from))) return;
    scan.seen.add(from);
    const { addressType, rssi } = peripheral.handle.definition;
    const peer = { address: from, addressType };
    emit(advertisingReport(REPORT.connectable, peer, payloads.advertising, rssi));
    // WHY even when empty: an active scanner always gets one, and noble shows nobody a connectable device before it.
    if (activeScan) emitLater(advertisingReport(REPORT.scanResponse, peer, payloads.scanResponse, rssi));
  };

  const isWanted = (station: Station) =>
    up &&
    station.peripheral.awake() &&
    !station.peripheral.handle.connected() &&
    (scan !== undefined || initiating?.address === station.address);

  const onAdvertisingEvent = (station: Station) => {
    const { addressType } = station.peripheral.handle.definition;
    const called = initiating?.address === station.address && initiating.addressType === addressType;
    if (called && initiating !== undefined) connect(station, initiating);
    else report(station);
  };

  const withConnection = (handle: number, afterwards: (connection: Connection) => void) => {
    const connection = connections.get(handle);
    return connection === undefined
      ? { status: STATUS.unknownConnection }
      : { status: STATUS.success, afterwards: () => afterwards(connection) };
  };

  const radio: Radio = {
    address,
    acl,
    reset: () => {
      scan = undefined;
      initiating = undefined;
      connections.endAll();
      updateAdvertisers();
    },
    setScanParameters: (active) => {
      if (scan !== undefined) return STATUS.commandDisallowed;
      activeScan = active;
      return STATUS.success;
    },
    setScanEnabled: (enabled, filterDuplicates) => {
      scan = enabled ? { filterDuplicates, seen: new Set() } : undefined;
      updateAdvertisers();
    },
    createConnection: (request) => {
      if (initiating !== undefined) return { status: STATUS.commandDisallowed };
      const there = stations.get(request.address)?.peripheral.handle.connected();
      if (there === true) return { status: STATUS.connectionExists };
      initiating = request;
      return { status: STATUS.success, afterwards: updateAdvertisers };
    },
    cancelConnection: () => {
      if (initiating === undefined) return { status: STATUS.commandDisallowed };
      initiating = undefined;
      updateAdvertisers();
      return {
        status: STATUS.success,
        afterwards: () => emitLater(connectionFailed(STATUS.unknownConnection)),
      };
    },
    disconnect: (handle) =>
      withConnection(handle, (connection) => connections.end(connection, STATUS.localHostTerminated)),
    updateConnection: (handle, parameters) =>
      withConnection(handle, ({ link }) => {
        link.setInterval(parameters.maxInterval);
        emitLater(connectionUpdateComplete(handle, { ...parameters, interval: parameters.maxInterval }));
      }),
    readRemoteFeatures: (handle) =>
      withConnection(handle, () => emitLater(remoteFeaturesComplete(handle, NO_FEATURES))),
    startEncryption: (handle, key) =>
      withConnection(handle, ({ peripheral }) => {
        const agreed = peripheral.encrypt(key) ? STATUS.success : STATUS.keyMissing;
        emitLater(encryptionChange(agreed, handle));
      }),
    rssi: (handle) => connections.get(handle)?.peripheral.handle.definition.rssi,
  };

  const take = (bytes: Buffer) => {
    if (!up) return;
    const packet = parseHostPacket(bytes);
    if (packet.kind === 'acl') {
      connections.takeAcl(packet);
      return;
    }
    tasks.after(0, () => {
      const answer = runCommand(radio, packet);
      emit(answer.event);
      answer.afterwards?.();
    });
  };

  return {
    HciSocket: hciSocketClass({
      isUp: () => up,
      attach: (receive) => {
        host = receive;
      },
      detach: (receive) => {
        if (host === receive) host = undefined;
      },
      take,
    }),
    addPeripheral: (definition) => {
      const key = addressText(addressBytes(definition.address));
      if (stations.has(key)) throw new RangeError(`there is already a peripheral ${key}`);
      const peripheral = createPeripheral(definition, {
        lose,
        onAdvertisingChange: updateAdvertisers,
        central: addressBytes(address),
      });
      const advertiser = createAdvertiser(
        tasks,
        definition.advertisingIntervalMs,
        () => isWanted(station),
        () => onAdvertisingEvent(station),
      );
      const station = { peripheral, address: key, payloads: advertisingPayloads(definition), advertiser };
      stations.set(key, station);
      advertiser.update();
      return peripheral.handle;
    },
    close: () => {
      up = false;
      host = undefined;
      radio.reset();
      tasks.cancelAll();
    },
  };
}
