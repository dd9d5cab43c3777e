/** As much of Node as the judges of closed editions ask for; they are never changed. Nothing else may import this. */
import { fromBase64, toBase64 } from '../evidence/platform/bytes.browser.ts';

export { isSameData as isDeepStrictEqual } from '../evidence/platform/same.ts';

const withText = (bytes: Uint8Array) => Object.assign(bytes, { toString: () => toBase64(bytes) });

/** Base64 alone, which the judges hold against its one writing: what is none comes back as nothing. */
export const Buffer = {
  from: (content: string | readonly number[]) =>
    withText(
      typeof content === 'string' ? (fromBase64(content) ?? new Uint8Array()) : Uint8Array.from(content),
    ),
};
