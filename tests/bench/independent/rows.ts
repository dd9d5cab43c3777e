/** Rows of a table that count up, and the table as text. */

export class Rows<T> {
  readonly #rows = new Map<string, T>();
  readonly #fresh: () => T;

  constructor(fresh: () => T) {
    this.#fresh = fresh;
  }

  row(name: string): T {
    const row = this.#rows.get(name) ?? this.#fresh();
    this.#rows.set(name, row);
    return row;
  }

  with(name: string, row: T): this {
    this.#rows.set(name, row);
    return this;
  }

  table(title: string, columns: Readonly<Record<string, (row: T) => string>>): string[] {
    const names = Object.keys(columns);
    const lines = [
      [title, ...names],
      ...[...this.#rows].map(([name, row]) => [name, ...names.map((column) => columns[column]?.(row) ?? '')]),
    ];
    const widths = lines[0]?.map((_, i) => Math.max(...lines.map((line) => (line[i] ?? '').length))) ?? [];
    return lines.map((line) =>
      line
        .map((text, i) => (i === 0 ? text.padEnd(widths[i] ?? 0) : text.padStart(widths[i] ?? 0)))
        .join('  '),
    );
  }
}

export const percent = (part: number, of: number, digits = 0): string =>
  of === 0 ? '-' : ((100 * part) / of).toFixed(digits);

export const ratio = (part: number, of: number): string => (of === 0 ? '-' : (part / of).toFixed(2));

export const mean = (values: readonly number[]): number =>
  values.reduce((a, b) => a + b, 0) / Math.max(1, values.length);

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
