/**
 * Ed25519 keys in a device, by PKCS#11 3.0: the key is made in it and never leaves it. The folder of keys holds a file that says
 * where it is. The library for it compiles at installation and is nobody's dependency here: who wants it installs it beside.
 */

import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { z } from 'zod';
import { publicJwk, thumbprint } from '../src/evidence/jwk.ts';
import type { HardwareKey } from '../src/evidence/platform/signature.ts';
import { writeNewFile } from '../src/files/whole-file.ts';
import { type Problem, ProblemError } from '../src/problem.ts';
import { w } from '../src/words/catalogue.ts';
import type { StationKey } from './keyfile.ts';

/** The library, which whoever has such a device installs beside plugmark. */
export const LIBRARY = 'pkcs11js';

const deviceKeySchema = z.strictObject({
  form: z.literal('plugmark/device-key/1'),
  module: z.string().min(1),
  token: z.string().min(1),
  id: z.string().regex(/^[0-9a-f]{32}$/),
});
/** Where a key is: the module of the device's maker, the token by its label, the key by its identifier. */
export type DeviceKey = z.infer<typeof deviceKeySchema>;

const CKF_SERIAL_SESSION = 4;
const CKF_RW_SESSION = 2;
const CKU_USER = 1;
const CKO_PUBLIC_KEY = 2;
const CKO_PRIVATE_KEY = 3;
const CKA = {
  class: 0,
  token: 1,
  private: 2,
  label: 3,
  keyType: 0x100,
  id: 0x102,
  sensitive: 0x103,
  sign: 0x108,
  verify: 0x10a,
  extractable: 0x162,
  ecParams: 0x180,
  ecPoint: 0x181,
} as const;
const CKK_EC_EDWARDS = 0x40;
const CKM_EC_EDWARDS_KEY_PAIR_GEN = 0x1055;
const CKM_EDDSA = 0x1057;
/** The curve by its name (PKCS#11 3.0, 2.3.10): PrintableString. */
const EDWARDS25519 = Buffer.concat([Buffer.of(0x13, 12), Buffer.from('edwards25519')]);

interface Attribute {
  readonly type: number;
  readonly value?: Buffer | number | boolean | string;
}
/** What is used of the library. Handles are bytes. */
interface Pkcs11 {
  load(module: string): void;
  C_Initialize(): void;
  C_GetSlotList(withToken: boolean): readonly Buffer[];
  C_GetTokenInfo(slot: Buffer): { readonly label: string };
  C_GetMechanismList(slot: Buffer): readonly number[];
  C_OpenSession(slot: Buffer, flags: number): Buffer;
  C_Login(session: Buffer, user: number, pin: string): void;
  C_GenerateKeyPair(
    session: Buffer,
    mechanism: object,
    publicKey: readonly Attribute[],
    privateKey: readonly Attribute[],
  ): object;
  C_FindObjectsInit(session: Buffer, template: readonly Attribute[]): void;
  C_FindObjects(session: Buffer, most: number): readonly Buffer[];
  C_FindObjectsFinal(session: Buffer): void;
  C_GetAttributeValue(session: Buffer, key: Buffer, attributes: readonly Attribute[]): readonly Attribute[];
  C_SignInit(session: Buffer, mechanism: object, key: Buffer): void;
  C_Sign(session: Buffer, data: Buffer, signature: Buffer): Buffer;
}

interface Session {
  readonly library: Pkcs11;
  readonly handle: Buffer;
}

/** A new key in the token. Problems: `device-library`, `device`, `device-no-ed25519`. */
export function makeDeviceKey(
  { module, token }: Pick<DeviceKey, 'module' | 'token'>,
  pin: string,
): { readonly key: StationKey; readonly device: DeviceKey } {
  const id = randomBytes(16);
  const device: DeviceKey = { form: 'plugmark/device-key/1', module, token, id: id.toString('hex') };
  const session = opened(device, pin);
  const both = [
    { type: CKA.token, value: true },
    { type: CKA.id, value: id },
    { type: CKA.label, value: 'plugmark station' },
  ];
  asked(device, () =>
    session.library.C_GenerateKeyPair(
      session.handle,
      { mechanism: CKM_EC_EDWARDS_KEY_PAIR_GEN },
      [
        ...both,
        { type: CKA.class, value: CKO_PUBLIC_KEY },
        { type: CKA.keyType, value: CKK_EC_EDWARDS },
        { type: CKA.verify, value: true },
        { type: CKA.ecParams, value: EDWARDS25519 },
      ],
      [
        ...both,
        { type: CKA.class, value: CKO_PRIVATE_KEY },
        { type: CKA.keyType, value: CKK_EC_EDWARDS },
        { type: CKA.private, value: true },
        { type: CKA.sensitive, value: true },
        { type: CKA.extractable, value: false },
        { type: CKA.sign, value: true },
      ],
    ),
  );
  return { key: keyIn(session, device), device };
}

/** The key that a file says is in a device. Problems as of `makeDeviceKey`, and `key-form`. */
export const openDeviceKey = (file: string, pin: string): StationKey => {
  const device = readDeviceKey(file);
  return keyIn(opened(device, pin), device);
};

export function writeDeviceKey(file: string, device: DeviceKey): void {
  writeNewFile(file, `${JSON.stringify(device, null, 2)}\n`, { mode: 0o600 });
}

/** Problem: `key-form`. */
export function readDeviceKey(file: string): DeviceKey {
  try {
    return deviceKeySchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    throw new ProblemError({
      code: 'key-form',
      where: file,
      message: w`this file does not say in which device the key is`,
      next: w`Put it back from your copy of the folder keys.`,
    });
  }
}

/** Why the device cannot be asked at all; null where it can. Nobody logs in for that. */
export function deviceProblem(device: DeviceKey): Problem | null {
  try {
    slotOf(device);
    return null;
  } catch (cause) {
    if (cause instanceof ProblemError) return cause.problem;
    throw cause;
  }
}

function keyIn({ library, handle }: Session, device: DeviceKey): StationKey {
  const id = Buffer.from(device.id, 'hex');
  const found = (kind: number) =>
    asked(device, () => {
      library.C_FindObjectsInit(handle, [
        { type: CKA.class, value: kind },
        { type: CKA.id, value: id },
      ]);
      const [key] = library.C_FindObjects(handle, 1);
      library.C_FindObjectsFinal(handle);
      return key;
    });
  const [secret, shown] = [found(CKO_PRIVATE_KEY), found(CKO_PUBLIC_KEY)];
  if (secret === undefined || shown === undefined) throw refused(device, w`it does not have this key`);
  const [point] = asked(device, () => library.C_GetAttributeValue(handle, shown, [{ type: CKA.ecPoint }]));
  const privateKey: HardwareKey = {
    publicKey: pointIn(device, point?.value),
    sign: (message) =>
      asked(device, () => {
        library.C_SignInit(handle, { mechanism: CKM_EDDSA }, secret);
        return Uint8Array.from(library.C_Sign(handle, Buffer.from(message), Buffer.alloc(64)));
      }),
  };
  const jwk = publicJwk(privateKey);
  return { privateKey, jwk, kid: thumbprint(jwk) };
}

/** The public key stands in an octet string or by itself, as the device's maker reads the standard. */
function pointIn(device: DeviceKey, value: Attribute['value']): Uint8Array {
  if (Buffer.isBuffer(value) && value.length === 34 && value[0] === 4 && value[1] === 32)
    return value.subarray(2);
  if (Buffer.isBuffer(value) && value.length === 32) return value;
  throw refused(device, w`its public key cannot be read`);
}

function opened(device: DeviceKey, pin: string): Session {
  const { library, slot } = slotOf(device);
  const handle = asked(device, () => library.C_OpenSession(slot, CKF_SERIAL_SESSION | CKF_RW_SESSION));
  try {
    library.C_Login(handle, CKU_USER, pin);
  } catch (cause) {
    if (!isCode(cause, 'CKR_USER_ALREADY_LOGGED_IN')) throw refused(device, w`it does not take this PIN`);
  }
  return { library, handle };
}

function slotOf(device: DeviceKey): { readonly library: Pkcs11; readonly slot: Buffer } {
  const library = loaded(device);
  const slots = asked(device, () => library.C_GetSlotList(true));
  const slot = slots.find((one) => library.C_GetTokenInfo(one).label.trim() === device.token);
  if (slot === undefined) throw refused(device, w`there is no token "${device.token}" in it`);
  if (!asked(device, () => library.C_GetMechanismList(slot)).includes(CKM_EDDSA))
    throw new ProblemError({
      code: 'device-no-ed25519',
      where: device.module,
      message: w`this device does not sign with Ed25519, as a TPM does not`,
      next: w`Take another device, or keep the key in a file: plugmark keys lock`,
    });
  return { library, slot };
}

const modules = new Map<string, Pkcs11>();

function loaded(device: DeviceKey): Pkcs11 {
  const before = modules.get(device.module);
  if (before !== undefined) return before;
  if (!existsSync(device.module)) throw refused(device, w`the module is not there`);
  const library = newLibrary();
  asked(device, () => {
    library.load(device.module);
    library.C_Initialize();
  });
  modules.set(device.module, library);
  return library;
}

const librarySchema = z.object({
  PKCS11: z.custom<new () => Pkcs11>((value) => typeof value === 'function'),
});

function newLibrary(): Pkcs11 {
  const name: string = LIBRARY;
  try {
    const { PKCS11 } = librarySchema.parse(createRequire(import.meta.url)(name));
    return new PKCS11();
  } catch {
    throw new ProblemError({
      code: 'device-library',
      message: w`a key in a device needs the package ${LIBRARY}, which is not installed`,
      next: w`Install it beside plugmark: npm install --global ${LIBRARY}. It needs a compiler.`,
    });
  }
}

/** What a device refuses is said in the words of its module. */
function asked<T>(device: DeviceKey, ask: () => T): T {
  try {
    return ask();
  } catch (cause) {
    throw refused(device, w`it says: ${cause instanceof Error ? cause.message : w`no reason`}`);
  }
}

const isCode = (cause: unknown, code: string) => cause instanceof Error && cause.message.includes(code);

const refused = (device: DeviceKey, message: string) =>
  new ProblemError({
    code: 'device',
    where: w`${device.module}, token ${device.token}`,
    message: w`the device with the key cannot be used: ${message}`,
    next: w`Plug it in and try again. If it is lost: "plugmark keys rotate --lost".`,
  });
