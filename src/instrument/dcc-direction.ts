/** In which direction a wrench was calibrated: spark plugs are tightened clockwise. */
import type { Element } from '@xmldom/xmldom';

const BACK =
  /counter[\s_-]*clockwise|anti[\s_-]*clockwise|(?:^|[^a-z])a?ccw(?:[^a-z]|$)|left[\s_-]*hand|(?:gegen den|entgegen dem) uhrzeiger|linkslauf|linksgang|linksdreh/i;
const FORTH =
  /clockwise|(?:^|[^a-z])cw(?:[^a-z]|$)|right[\s_-]*hand|uhrzeigersinn|rechtslauf|rechtsgang|rechtsdreh/i;

/** Names of the element itself, in all languages. */
export function labelOf(element: Element): string {
  const texts: string[] = [];
  for (let child = element.firstChild; child !== null; child = child.nextSibling)
    if (child.localName === 'name') texts.push(child.textContent ?? '');
  return texts.join(' ');
}

/** What the nearest of the element and those around it says of the direction; null where none does. */
function directionOf(element: Element): 'forth' | 'back' | null {
  for (let at: Element | null = element; at !== null && at.localName !== 'measurementResults'; ) {
    const label = [at.getAttribute('refType'), at.getAttribute('id'), labelOf(at)].join(' ');
    if (BACK.test(label)) return 'back';
    if (FORTH.test(label)) return 'forth';
    const parent: Element['parentNode'] = at.parentNode;
    at = parent !== null && isElement(parent) ? parent : null;
  }
  return null;
}

const isElement = (node: { readonly nodeType: number }): node is Element => node.nodeType === 1;

export const turnsBack = (element: Element): boolean => directionOf(element) === 'back';
