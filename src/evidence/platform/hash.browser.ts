/** WebCrypto's SHA-256 makes every caller wait; a record takes about 10 ms of this one. */
export { sha256 } from '@noble/hashes/sha2.js';
