/** Bytes as text that may stand in a page: two characters for thirteen bits, so that it is smaller than base64. */

/** What HTML reads as the start of something else is left out, and the backslash. */
const ALPHABET = Array.from({ length: 94 }, (_, i) => String.fromCharCode(0x21 + i)).filter(
  (one) => !'<&\\'.includes(one),
);
const BASE = ALPHABET.length;
/** 91 x 91 is more than 2^13; one character alone holds 6 bits. */
const PAIR_BITS = 13;
const ALONE_BITS = 6;

export function toBase91(bytes: Uint8Array): string {
  const characters: (string | undefined)[] = [];
  let [bits, held] = [0, 0];
  for (const byte of bytes) {
    bits |= byte << held;
    held += 8;
    if (held < PAIR_BITS) continue;
    const pair = bits & ((1 << PAIR_BITS) - 1);
    characters.push(ALPHABET[pair % BASE], ALPHABET[Math.floor(pair / BASE)]);
    bits >>= PAIR_BITS;
    held -= PAIR_BITS;
  }
  if (held > 0) characters.push(ALPHABET[bits % BASE]);
  if (held > ALONE_BITS) characters.push(ALPHABET[Math.floor(bits / BASE)]);
  return characters.join('');
}

/** Of what {@link toBase91} gave. */
export function fromBase91(text: string): Uint8Array<ArrayBuffer> {
  const digits = new Map(ALPHABET.map((one, i) => [one, i]));
  const digit = (at: number) => digits.get(text[at] ?? '') ?? 0;
  const isOdd = text.length % 2 === 1;
  const bytes = new Uint8Array(
    Math.floor((Math.floor(text.length / 2) * PAIR_BITS + (isOdd ? ALONE_BITS : 0)) / 8),
  );
  let [bits, held, to] = [0, 0, 0];
  for (let at = 0; at < text.length; at += 2) {
    bits |= (digit(at) + digit(at + 1) * BASE) << held;
    for (held += PAIR_BITS; held >= 8; held -= 8) {
      if (to < bytes.length) bytes[to++] = bits & 255;
      bits >>= 8;
    }
  }
  return bytes;
}
