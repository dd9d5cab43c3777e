/** The build gives the page its version. */
declare const PLUGMARK_VERSION: string;

/** This program, as an index names it. */
export const PROGRAM = `plugmark ${PLUGMARK_VERSION}`;
