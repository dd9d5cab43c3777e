import { hash } from 'node:crypto';

export const sha256 = (bytes: Uint8Array): Uint8Array => hash('sha256', bytes, 'buffer');
