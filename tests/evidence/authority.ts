/** Time-stamping authorities on this machine, made by openssl for a test; no network. */
import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export const hasOpenssl = spawnSync('openssl', ['version']).status === 0;

const CONFIG = `
[req]
distinguished_name = dn
[dn]
[stamps]
extendedKeyUsage = critical,timeStamping
[serves]
extendedKeyUsage = critical,timeStamping,serverAuth
[optional]
extendedKeyUsage = timeStamping
[tsa]
default_tsa = tsa_config
[tsa_config]
serial = serial
default_policy = 1.2.3.4.1
digests = sha1, sha256
signer_digest = sha256
accuracy = secs:1
`;

export interface Certified {
  readonly usage?: 'stamps' | 'serves' | 'optional';
  readonly subject?: string;
  readonly serial?: string;
  /** The key of another authority here. */
  readonly key?: string;
}

/** Works in a folder of its own. */
export function authorities(folder: string) {
  const at = (name: string) => join(folder, name);
  const openssl = (...args: readonly string[]) =>
    execFileSync('openssl', [...args], { cwd: folder, stdio: 'pipe' });
  writeFileSync(at('tsa.cnf'), CONFIG);
  writeFileSync(at('serial'), '01\n');
  return {
    openssl,
    /** A root that certifies authorities. */
    makeRoot(name: string, key: 'ed25519' | 'rsa:2048' = 'ed25519'): void {
      const files = ['-keyout', `${name}-ca.key`, '-out', `${name}-ca.pem`];
      openssl(
        'req',
        '-x509',
        '-newkey',
        key,
        '-nodes',
        ...files,
        '-subj',
        `/CN=${name} root`,
        '-days',
        '3650',
      );
    },
    /** A certificate of this root for somebody who stamps times. */
    certify(
      name: string,
      root: string,
      { usage = 'stamps', subject = name, serial, key }: Certified = {},
    ): void {
      if (key === undefined) openssl('genrsa', '-out', `${name}.key`, '2048');
      else writeFileSync(at(`${name}.key`), readFileSync(at(`${key}.key`)));
      const config = ['-subj', `/CN=${subject}`, '-config', 'tsa.cnf'];
      openssl('req', '-new', '-key', `${name}.key`, '-out', `${name}.csr`, ...config);
      const by = ['-CA', `${root}-ca.pem`, '-CAkey', `${root}-ca.key`];
      const number = serial === undefined ? ['-CAcreateserial'] : ['-set_serial', serial];
      const extensions = ['-extfile', 'tsa.cnf', '-extensions', usage];
      openssl(
        'x509',
        '-req',
        '-in',
        `${name}.csr`,
        ...by,
        ...number,
        ...extensions,
        '-out',
        `${name}.pem`,
        '-days',
        '3000',
      );
    },
    /** The answer of this authority to a request. */
    stamped(query: Uint8Array, name: string): Buffer {
      writeFileSync(at('in.tsq'), query);
      const config = ['-config', 'tsa.cnf', '-section', 'tsa_config', '-queryfile', 'in.tsq'];
      openssl(
        'ts',
        '-reply',
        ...config,
        '-signer',
        `${name}.pem`,
        '-inkey',
        `${name}.key`,
        '-out',
        'out.tsr',
      );
      return readFileSync(at('out.tsr'));
    },
    /** What an authority would answer that signs this `TSTInfo` (DER) without looking at it. */
    signed(info: Uint8Array, name: string): Buffer {
      writeFileSync(at('info'), info);
      const form = ['-binary', '-nodetach', '-outform', 'DER', '-cades', '-md', 'sha256'];
      const type = ['-econtent_type', '1.2.840.113549.1.9.16.1.4'];
      const by = ['-signer', `${name}.pem`, '-inkey', `${name}.key`];
      openssl('cms', '-sign', '-in', 'info', ...form, ...type, ...by, '-out', 'token');
      const content = Buffer.concat([Buffer.from('3003020100', 'hex'), readFileSync(at('token'))]);
      return Buffer.concat([Buffer.of(0x30, 0x82, content.length >> 8, content.length & 0xff), content]);
    },
  };
}
