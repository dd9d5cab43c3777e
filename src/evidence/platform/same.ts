/** Whether two values of plain data are the same, member by member: as strict as `isDeepStrictEqual` of Node, and 0 is not -0. */
export function isSameData(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (!isPlain(one) || Object.getPrototypeOf(one) !== Object.getPrototypeOf(other)) return false;
  if (Array.isArray(one) && Array.isArray(other) && one.length !== other.length) return false;
  const [mine, yours] = [Object.entries(one), new Map(Object.entries(other))];
  return (
    mine.length === yours.size &&
    mine.every(([name, value]) => yours.has(name) && isSameData(value, yours.get(name)))
  );
}

const isPlain = (value: object): boolean =>
  Array.isArray(value) || [Object.prototype, null].includes(Object.getPrototypeOf(value));
