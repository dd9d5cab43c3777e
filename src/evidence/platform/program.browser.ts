/** The same as program.ts in a page, which has all of its files with it. */
const there = new Map<string, unknown>();

export const provide = (file: string, content: unknown): void => {
  there.set(file, content);
};

export function load(file: string, _from: string): unknown {
  if (!there.has(file)) throw new Error(`${file} is not in this page`);
  return there.get(file);
}
