import { DOMParser, type Element } from '@xmldom/xmldom';

/** What a strict XML parser finds in a picture; it throws on anything that is not well-formed. */
export interface Elements {
  readonly name: string;
  count(tag: string): number;
  texts(tag: string): readonly string[];
  /** All corners of lines and centres of marks. */
  points(): readonly (readonly [x: number, y: number])[];
}

export function elements(source: string): Elements {
  const root = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  }).parseFromString(source, 'image/svg+xml').documentElement;
  if (root === null) throw new Error('no element');
  const all = (tag: string): Element[] => [...root.getElementsByTagName(tag)];
  const number = (element: Element, name: string) => Number(element.getAttribute(name));
  return {
    name: root.tagName,
    count: (tag) => all(tag).length,
    texts: (tag) => all(tag).map(({ textContent }) => textContent ?? ''),
    points: () => [
      ...all('circle').map((circle) => [number(circle, 'cx'), number(circle, 'cy')] as const),
      ...[...all('polyline'), ...all('polygon')].flatMap((line) =>
        (line.getAttribute('points') ?? '')
          .split(' ')
          .filter((pair) => pair !== '')
          .map((pair) => {
            const [x, y] = pair.split(',').map(Number);
            return [x ?? Number.NaN, y ?? Number.NaN] as const;
          }),
      ),
    ],
  };
}
