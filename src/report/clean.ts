import { WITHHELD } from '../personal.ts';

/**
 * Text from outside made safe to print: no control characters, no marks that turn the reading direction, no halves of
 * surrogate pairs; white space of any kind becomes one space.
 */
export function clean(text: string): string {
  return text
    .replaceAll(WITHHELD, 'withheld')
    .replace(/\p{Cs}/gu, '\uFFFD')
    .replace(/[\s\p{Zl}\p{Zp}]+/gu, ' ')
    .replace(/[\p{Cc}\u061C\u200B\u200E\u200F\u202A-\u202E\u2060-\u2069\uFEFF]/gu, '')
    .trim();
}
