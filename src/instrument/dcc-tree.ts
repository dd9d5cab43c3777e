import type { Element } from '@xmldom/xmldom';

const NAMESPACES = { dcc: 'https://ptb.de/dcc', si: 'https://ptb.de/si' } as const;
type Prefix = keyof typeof NAMESPACES;

/** All elements of that name under `parent`, in document order. */
export function all(parent: Element, prefix: Prefix, name: string): Element[] {
  return Array.from(parent.getElementsByTagNameNS(NAMESPACES[prefix], name));
}

export function first(parent: Element, prefix: Prefix, name: string): Element | null {
  return parent.getElementsByTagNameNS(NAMESPACES[prefix], name).item(0);
}

/** The text of an element without the space around it; null for none or nothing. */
export function textOf(element: Element | null): string | null {
  const text = element?.textContent?.trim() ?? '';
  return text === '' ? null : text;
}
