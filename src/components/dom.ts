type Child = Node | string | number | false | null | undefined;
type Attributes = Readonly<Record<string, string | number | boolean | undefined | ((event: never) => void)>>;

/** Makes an element. A function is a listener (`onclick`), true an empty attribute, false and undefined none. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  return fill(document.createElement(tag), attributes, children);
}

/** The same for a drawing's element. */
export function svgElement<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[K] {
  return fill(document.createElementNS("http://www.w3.org/2000/svg", tag), attributes, children);
}

function fill<T extends Element>(node: T, attributes: Attributes, children: readonly Child[]): T {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") node.addEventListener(name.replace(/^on/, ""), value as EventListener);
    else if (value === true) node.setAttribute(name, "");
    else if (value !== undefined && value !== false) node.setAttribute(name, String(value));
  }
  for (const child of children) {
    if (child === false || child === null || child === undefined) continue;
    node.append(typeof child === "number" ? String(child) : child);
  }
  return node;
}

/** A list of sentences. */
export function bulletList(sentences: readonly string[]): HTMLElement {
  return element("ul", {}, ...sentences.map((sentence) => element("li", {}, sentence)));
}

let made = 0;

/** A name for an element that no other element of the page has. */
export function uniqueId(prefix: string): string {
  made += 1;
  return `${prefix}-${made}`;
}
