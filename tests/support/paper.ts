/** An element as drawings make it: enough of a document to draw on where there is no browser. */
export class PaperNode {
  readonly children: (PaperNode | string)[] = [];
  readonly attributes = new Map<string, string>();
  readonly style = {setProperty: (): void => undefined};
  readonly dataset: Record<string, string> = {};
  constructor(readonly name: string) {}

  setAttribute(key: string, value: string): void {
    this.attributes.set(key, value);
  }

  append(...nodes: (PaperNode | string)[]): void {
    this.children.push(...nodes);
  }

  get(key: string): string | undefined {
    return this.attributes.get(key);
  }

  /** All elements below this one, in the order in which they are drawn. */
  all(): PaperNode[] {
    return this.children.flatMap((child) => (typeof child === "string" ? [] : [child, ...child.all()]));
  }

  /** Words of this element and all below it. */
  words(): string {
    return this.children.map((child) => (typeof child === "string" ? child : child.words())).join(" ");
  }
}

/** What a drawing draws, without a browser. The document is there while it draws, and gone again afterward. */
export function onPaper(draw: () => SVGSVGElement): PaperNode {
  const place = globalThis as {document?: unknown};
  const before = place.document;
  place.document = {createElementNS: (_: string, name: string) => new PaperNode(name), createElement: (name: string) => new PaperNode(name)};
  try {
    return draw() as unknown as PaperNode;
  } finally {
    if (before === undefined) delete place.document;
    else place.document = before;
  }
}

/** Corners of a path, px. */
export function cornersOf(node: PaperNode): [x: number, y: number][] {
  return [...(node.get("d") ?? "").matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

/** Width and height of what a path covers, px. */
export function sizeOf(node: PaperNode): [widthPx: number, heightPx: number] {
  const [xs, ys] = [cornersOf(node).map(([x]) => x), cornersOf(node).map(([, y]) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

/** A dimension as it is drawn: its direction, its length on the paper, and what stands beside it. */
export interface DrawnDimension {
  readonly axis: "x" | "y";
  readonly px: number;
  readonly value: string;
  readonly name: string | undefined;
}

/** Every dimension of a drawing: each string's lines in their order, with the texts in theirs. */
export function dimensionsOf(drawing: PaperNode): DrawnDimension[] {
  const groups = drawing.all().filter((node) => node.get("class") === "dimension");
  const lines = groups.flatMap((group) => group.all().filter((node) => node.get("class") === "line-thin"));
  const texts = drawing.all().filter((node) => node.name === "text" && node.get("class") === "text-value");
  if (lines.length !== texts.length) throw new Error(`${lines.length} dimensions, but ${texts.length} texts of such`);
  return lines.map((line, i): DrawnDimension => {
    const [[x0, y0], [x1, y1]] = cornersOf(line) as [[number, number], [number, number]];
    const [value, name] = (texts[i] as PaperNode).children.map((row) => (row as PaperNode).words());
    return {axis: y0 === y1 ? "x" : "y", px: Math.hypot(x1 - x0, y1 - y0), value: value ?? "", name};
  });
}

/** A length as drawings write it, in: 60'-0", 8 1/2", 3/4". */
export function inchesOf(text: string): number {
  const found = /^(-?)(?:(\d+)'-)?(?:(\d+)(?: |"))?(?:(\d+)\/(\d+))?"?$/.exec(text);
  if (!found) throw new Error(`no length: ${text}`);
  const [, sign, ft = "0", inch = "0", over = "0", under = "1"] = found;
  return (sign ? -1 : 1) * (12 * Number(ft) + Number(inch) + Number(over) / Number(under));
}
