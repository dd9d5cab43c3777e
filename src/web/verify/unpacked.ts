/** What a packed stream gives, up to so many bytes: more is not kept, however little was sent. */
export async function unpacked(
  packed: Blob,
  format: CompressionFormat,
  maxBytes: number,
): Promise<Uint8Array | 'too-large' | 'damaged'> {
  const reader = packed.stream().pipeThrough(new DecompressionStream(format)).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      length += value.length;
      if (length > maxBytes) {
        await reader.cancel();
        return 'too-large';
      }
      parts.push(value);
    }
  } catch {
    return 'damaged';
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
