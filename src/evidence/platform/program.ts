import { createRequire } from 'node:module';

/** A file of the program itself that is loaded only when it is needed, as seen from the file that asks. */
export const load = (file: string, from: string): unknown => createRequire(from)(file);
