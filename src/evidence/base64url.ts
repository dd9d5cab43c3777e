/** Base64url as JOSE wants it (RFC 7515, 2): no padding, no white space, unused last bits zero. */
export function toBase64url(bytes: Uint8Array | string): string {
  return Buffer.from(bytes).toString('base64url');
}

/** The bytes, or null for any text that is not the one encoding of its bytes. */
export function fromBase64url(text: string): Buffer | null {
  const bytes = Buffer.from(text, 'base64url');
  return bytes.toString('base64url') === text ? bytes : null;
}
