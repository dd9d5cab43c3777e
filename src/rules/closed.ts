/** The closed editions, each a file that is never made again: SHA-256 of `edition-N/judge.js`, a line each in order. */
export const CLOSED: readonly string[] = [];
