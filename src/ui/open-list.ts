import type { OpenItem } from '../job/open-item.ts';
import { openWhat } from '../report/words/index.ts';
import { w } from '../words/catalogue.ts';

/** What is open, with the same thing said once for all the cylinders that it is true of. */
export function gathered(open: readonly OpenItem[]): readonly string[] {
  const lines = new Map<string, number[]>();
  for (const item of open) {
    const what = openWhat(item);
    const before = lines.get(what) ?? [];
    lines.set(what, 'cylinder' in item ? [...before, item.cylinder] : before);
  }
  return [...lines].map(([what, cylinders]) => {
    if (cylinders.length === 0) return what;
    const where =
      cylinders.length === 1 ? w`cylinder ${cylinders.join(', ')}` : w`cylinders ${cylinders.join(', ')}`;
    return w`${where}: ${what}`;
  });
}
