/** A record changed in one place at a time, at every place, by a station that writes log and signatures anew. */
import { type Content, contentOf, forged } from './forged.ts';

type Place = readonly (string | number)[];

/** All figures, texts, truths and empty objects and lists in it. */
function placesIn(value: Content, place: Place = []): readonly Place[] {
  if (typeof value !== 'object' || value === null) return [place];
  return Object.entries(value).flatMap(([name, item]) =>
    placesIn(item, [...place, Array.isArray(value) ? Number(name) : name]),
  );
}

/** Another value of the same sort, or the member taken away, in turn. */
function changedAt(content: Content, place: Place, turn: number): void {
  const last = place.at(-1) ?? '';
  const parent = place.slice(0, -1).reduce((at, step) => at[step], content);
  const value = parent[last];
  if (turn % 4 === 3 && !Array.isArray(parent)) delete parent[last];
  else if (typeof value === 'number') parent[last] = value + (turn % 2 === 0 ? 1 : -0.5);
  else if (typeof value === 'boolean') parent[last] = !value;
  else if (typeof value === 'string') parent[last] = turn % 2 === 0 ? `${value}x` : `A${value.slice(1)}`;
  else parent[last] = 0;
}

/** By place; every `stride`th of them. */
export function withOneLeafChanged(bytes: Uint8Array, stride: number): Readonly<Record<string, Uint8Array>> {
  const places = placesIn(contentOf(bytes)).filter(([first]) => first !== 'log');
  const some = places.map((place, i) => [place, i] as const).filter(([, i]) => i % stride === 0);
  return Object.fromEntries(
    some.map(([place, i]) => [
      place.join('.'),
      forged(bytes, (content) => changedAt(content, place, i / stride)),
    ]),
  );
}
