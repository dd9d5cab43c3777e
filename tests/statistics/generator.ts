/** Independent standard normal values, the same for the same seed: a 32-bit counter well mixed, then Box and Muller. */
export function normals(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return (((mixed ^ (mixed >>> 16)) >>> 0) + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
