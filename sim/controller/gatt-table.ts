/**
 * Lays a declared peripheral out as the flat table of attributes that ATT serves (Core, Vol 3 Part G 2.5 and 3):
 * service declaration, then for each characteristic declaration, value, configuration and descriptors.
 */
import { MAX_VALUE_LENGTH, u16 } from './att-pdu.ts';
import type {
  CharacteristicDefinition,
  PeripheralDefinition,
  Property,
  ServiceDefinition,
} from './definition.ts';
import { type Uuid, uuidBytes, uuidKey } from './uuid.ts';

export const PRIMARY_SERVICE = 0x2800;
export const SECONDARY_SERVICE = 0x2801;
const CHARACTERISTIC = 0x2803;
const CLIENT_CONFIGURATION = 0x2902;

/** Bits of a Client Characteristic Configuration. */
export const NOTIFY_BIT = 0x0001;
export const INDICATE_BIT = 0x0002;

const PROPERTY_BITS: Readonly<Record<Property, number>> = {
  read: 0x02,
  writeWithoutResponse: 0x04,
  write: 0x08,
  notify: 0x10,
  indicate: 0x20,
};

type Content =
  | { readonly kind: 'fixed'; readonly value: Buffer }
  | { readonly kind: 'value'; readonly characteristic: CharacteristicDefinition }
  | {
      readonly kind: 'configuration';
      readonly characteristic: CharacteristicDefinition;
      readonly allowed: number;
    };

export interface Attribute {
  readonly handle: number;
  /** UUID as on air, 2 or 16 octets. */
  readonly type: Buffer;
  readonly content: Content;
  /** The last handle of the group that this attribute opens; its own handle if it opens none. */
  readonly groupEnd: number;
}

/** Where a characteristic that can notify or indicate keeps its value and its configuration. */
interface Source {
  readonly uuid: Uuid;
  readonly valueHandle: number;
  readonly configurationHandle: number;
}

export interface GattTable {
  /** In order of handle; the attribute with handle `n` is at `n - 1`. */
  readonly attributes: readonly Attribute[];
  /** By {@link uuidKey} of the characteristic. */
  readonly sources: ReadonlyMap<string, Source>;
}

const fixed = (type: number | Buffer, value: Uint8Array) => ({
  type: typeof type === 'number' ? u16(type) : type,
  content: { kind: 'fixed', value: Buffer.from(value) } satisfies Content,
});

function characteristicRows(characteristic: CharacteristicDefinition, handle: number) {
  const { uuid, properties, value, descriptors = [] } = characteristic;
  for (const bytes of [value, ...descriptors.map((descriptor) => descriptor.value)]) {
    if (bytes !== undefined && bytes.length > MAX_VALUE_LENGTH) {
      throw new RangeError(`a value of ${uuid} has ${bytes.length} octets, more than ${MAX_VALUE_LENGTH}`);
    }
  }
  const bits = properties.reduce((sum, property) => sum | PROPERTY_BITS[property], 0);
  const allowed =
    (properties.includes('notify') ? NOTIFY_BIT : 0) | (properties.includes('indicate') ? INDICATE_BIT : 0);
  const type = uuidBytes(uuid);
  return [
    fixed(CHARACTERISTIC, Buffer.concat([Buffer.from([bits]), u16(handle + 1), type])),
    { type, content: { kind: 'value', characteristic } satisfies Content },
    ...(allowed === 0
      ? []
      : [
          {
            type: u16(CLIENT_CONFIGURATION),
            content: { kind: 'configuration', characteristic, allowed } satisfies Content,
          },
        ]),
    ...descriptors.map((descriptor) => fixed(uuidBytes(descriptor.uuid), descriptor.value)),
  ];
}

function genericServices({ name, appearance }: PeripheralDefinition): ServiceDefinition[] {
  return [
    {
      uuid: 0x1800,
      characteristics: [
        { uuid: 0x2a00, properties: ['read'], value: Buffer.from(name, 'utf8') },
        { uuid: 0x2a01, properties: ['read'], value: u16(appearance) },
      ],
    },
    { uuid: 0x1801, characteristics: [] },
  ];
}

/** @throws RangeError where the definition breaks the protocol's limits. */
export function gattTable(peripheral: PeripheralDefinition): GattTable {
  const attributes: Attribute[] = [];
  const sources = new Map<string, Source>();
  for (const service of [...genericServices(peripheral), ...peripheral.services]) {
    const serviceHandle = attributes.length + 1;
    const rows: { readonly type: Buffer; readonly content: Content }[] = [
      fixed(PRIMARY_SERVICE, uuidBytes(service.uuid)),
    ];
    for (const characteristic of service.characteristics) {
      const declarationHandle = serviceHandle + rows.length;
      const added = characteristicRows(characteristic, declarationHandle);
      if (added.some((row) => row.content.kind === 'configuration')) {
        sources.set(uuidKey(characteristic.uuid), {
          uuid: characteristic.uuid,
          valueHandle: declarationHandle + 1,
          configurationHandle: declarationHandle + 2,
        });
      }
      rows.push(...added);
    }
    const groupEnd = serviceHandle + rows.length - 1;
    rows.forEach((row, index) => {
      const handle = serviceHandle + index;
      attributes.push({ ...row, handle, groupEnd: index === 0 ? groupEnd : handle });
    });
  }
  return { attributes, sources };
}
