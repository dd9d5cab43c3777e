/** Ed25519 private keys on disk: PKCS#8 PEM that only its owner may read. */
import { createPrivateKey, generateKeyPairSync, type KeyObject } from 'node:crypto';
import { closeSync, fchmodSync, fstatSync, fsyncSync, openSync, readFileSync, writeFileSync } from 'node:fs';
import { type PublicJwk, publicJwk, thumbprint } from '../src/evidence/jwk.ts';
import type { Problem } from '../src/problem.ts';
import { err, ok, type Result } from '../src/result.ts';

const OWNER_ONLY = 0o600;
/** Rights of group and others. */
const NOT_OWNER = 0o077;

/** A key pair; `kid` and `jwk` may be given to anybody. */
export interface StationKey {
  readonly privateKey: KeyObject;
  readonly jwk: PublicJwk;
  readonly kid: string;
}

/** Makes a key in a new file, never over an old one. Problems: `key-exists`, `key-path`. */
export function makeKeyFile(path: string): Result<StationKey> {
  const { privateKey } = generateKeyPairSync('ed25519');
  try {
    const file = openSync(path, 'wx', OWNER_ONLY);
    try {
      // The process's umask may have taken the owner's own rights away.
      if (process.platform !== 'win32') fchmodSync(file, OWNER_ONLY);
      writeFileSync(file, privateKey.export({ format: 'pem', type: 'pkcs8' }));
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  } catch (cause) {
    return err(pathProblem(cause, path));
  }
  return ok(stationKey(privateKey));
}

/** Reads a key. Problems: `key-path`, `key-open-to-others` (POSIX only), `key-form`. */
export function readKeyFile(path: string): Result<StationKey> {
  let pem: string;
  try {
    // One descriptor for both, so that what is checked is what is read.
    const file = openSync(path, 'r');
    try {
      if (process.platform !== 'win32' && (fstatSync(file).mode & NOT_OWNER) !== 0)
        return err(openToOthers(path));
      pem = readFileSync(file, 'utf8');
    } finally {
      closeSync(file);
    }
  } catch (cause) {
    return err(pathProblem(cause, path));
  }
  const key = privateKeyOf(pem);
  if (key?.asymmetricKeyType !== 'ed25519')
    return err({
      code: 'key-form',
      where: path,
      message: 'this is not an Ed25519 private key in PKCS#8 PEM form',
      next: 'Name the key file that the program made, or make a new key.',
    });
  return ok(stationKey(key));
}

function stationKey(privateKey: KeyObject): StationKey {
  const jwk = publicJwk(privateKey);
  return { privateKey, jwk, kid: thumbprint(jwk) };
}

function privateKeyOf(pem: string): KeyObject | null {
  try {
    return createPrivateKey(pem);
  } catch {
    return null;
  }
}

function openToOthers(path: string): Problem {
  return {
    code: 'key-open-to-others',
    where: path,
    message: 'other people on this machine may read the private key',
    next: 'Take their rights away (chmod 600); if somebody may have copied it, make a new key and take the old one off the trust lists.',
  };
}

/** Throws what is not about the file. */
function pathProblem(cause: unknown, where: string): Problem {
  const code = cause instanceof Error && 'code' in cause ? cause.code : undefined;
  switch (code) {
    case 'EEXIST':
      return {
        code: 'key-exists',
        where,
        message: 'a file is there already, and a key is never written over',
        next: 'Use the key that is there, or name another file.',
      };
    case 'ENOENT':
    case 'ENOTDIR':
      return {
        code: 'key-path',
        where,
        message: 'there is no such file or folder',
        next: 'Check the path, or make a key.',
      };
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
    case 'EISDIR':
    case 'ELOOP':
      return {
        code: 'key-path',
        where,
        message: 'the file cannot be opened',
        next: 'Check the path and the rights on it.',
      };
    default:
      throw cause;
  }
}
