/** Bytes as text that may stand in a page: five characters for four bytes, so that it is smaller than base64. */

/** What means something in HTML is left out. */
const ALPHABET = Array.from({ length: 94 }, (_, i) => String.fromCharCode(0x21 + i))
  .filter((one) => !'"&\'<>\\`'.includes(one))
  .slice(0, 85);
const GROUP = 5;

export function toBase85(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 4) {
    const four = bytes.subarray(at, at + 4);
    let number = [0, 1, 2, 3].reduce((sum, i) => sum * 256 + (four[i] ?? 0), 0);
    const characters: string[] = [];
    for (let i = 0; i < GROUP; i++) {
      characters.unshift(ALPHABET[number % 85] ?? '');
      number = Math.floor(number / 85);
    }
    text += characters.slice(0, four.length + 1).join('');
  }
  return text;
}

/** Of what {@link toBase85} gave. */
export function fromBase85(text: string): Uint8Array<ArrayBuffer> {
  const digits = new Map(ALPHABET.map((one, i) => [one, i]));
  const bytes = new Uint8Array(Math.floor((text.length * 4) / GROUP));
  const last = ALPHABET.length - 1;
  for (let at = 0, to = 0; at < text.length; at += GROUP, to += 4) {
    let number = 0;
    for (let i = 0; i < GROUP; i++) number = number * 85 + (digits.get(text[at + i] ?? '') ?? last);
    for (let i = 0; i < 4; i++) bytes[to + i] = Math.floor(number / 256 ** (3 - i)) % 256;
  }
  return bytes;
}
