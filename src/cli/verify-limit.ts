/** A job of an hour with all its samples takes a few megabytes; a larger file is not read at all. */
export const MAX_RECORD_BYTES = 32 << 20;
