/** Elements of the page. Text is only ever text: nothing from a file becomes markup. */
type Child = Node | string | null | false;
type Attributes = Readonly<Record<string, string | number | boolean | null>>;

export function h<T extends keyof HTMLElementTagNameMap>(
  tag: T,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[T] {
  return filled(document.createElement(tag), attributes, children);
}

export function svg<T extends keyof SVGElementTagNameMap>(
  tag: T,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[T] {
  return filled(document.createElementNS('http://www.w3.org/2000/svg', tag), attributes, children);
}

function filled<T extends Element>(element: T, attributes: Attributes, children: readonly Child[]): T {
  for (const [name, value] of Object.entries(attributes))
    if (value !== null && value !== false) element.setAttribute(name, value === true ? '' : String(value));
  element.append(...children.filter((child) => child !== null && child !== false));
  return element;
}

export function byId<T extends Element>(id: string, kind: new () => T): T {
  const element = document.getElementById(id);
  if (!(element instanceof kind)) throw new Error(`the page has no ${id}`);
  return element;
}

/** A part of the page under its heading; null where it would be empty. */
export const part = (title: string, ...children: readonly Child[]): HTMLElement | null =>
  children.every((child) => child === null || child === false)
    ? null
    : h('section', { class: 'part' }, h('h2', {}, title), ...children);

export const list = (texts: readonly string[], className = ''): HTMLElement | null =>
  texts.length === 0
    ? null
    : h('ul', { class: className || null }, ...texts.map((text) => h('li', {}, text)));
