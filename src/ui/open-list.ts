const OF_CYLINDER = /^cylinder (\d+): (.+)$/;

/** What is open, with the same thing said once for all the cylinders that it is true of. */
export function gathered(open: readonly string[]): readonly string[] {
  const lines = new Map<string, string[]>();
  for (const text of open) {
    const [, cylinder, what] = OF_CYLINDER.exec(text) ?? [];
    const key = what ?? text;
    const before = lines.get(key) ?? [];
    lines.set(key, cylinder === undefined ? before : [...before, cylinder]);
  }
  return [...lines].map(([what, cylinders]) => {
    if (cylinders.length === 0) return what;
    return `${cylinders.length === 1 ? 'cylinder' : 'cylinders'} ${cylinders.join(', ')}: ${what}`;
  });
}
