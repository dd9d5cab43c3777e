/** Whether two values of plain data are the same, member by member: as strict as `isDeepStrictEqual` of Node, and 0 is not -0. */
export function isSameData(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const prototype = Object.getPrototypeOf(one);
  if (prototype !== Object.getPrototypeOf(other)) return false;
  if (prototype !== Object.prototype && prototype !== Array.prototype && prototype !== null) return false;
  if (Array.isArray(one) && Array.isArray(other) && one.length !== other.length) return false;
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every(
      (name) => Object.hasOwn(other, name) && isSameData(Reflect.get(one, name), Reflect.get(other, name)),
    )
  );
}
