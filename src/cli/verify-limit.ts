/** An hour with a tool that sends 100 samples a second takes 1.4 megabytes; a larger file is not read at all. */
export const MAX_RECORD_BYTES = 32 << 20;
