/** What a text leaves out: what only acts on the page, and pictures. */
const LEFT_OUT = ".control, .no-print, button, script, style, svg, [hidden], .record-line";

/** A part of the page as Markdown: headings, paragraphs, lists, facts, tables and worked steps; pictures are left out. */
export function markdownOf(root: Element): string {
  return `${blocks(root, 0).join("\n\n").replace(/\n{3,}/g, "\n\n").trim()}\n`;
}

function blocks(node: Element, depth: number): string[] {
  return [...node.children].flatMap((child) => block(child, depth)).filter((text) => text !== "");
}

function block(node: Element, depth: number): string[] {
  if (node.matches(LEFT_OUT)) return [];
  const heading = /^H([1-6])$/.exec(node.tagName);
  // The record's own name is its second heading on the page and the first of its file.
  if (heading) return [`${"#".repeat(Math.max(1, Number(heading[1]) - 1))} ${inline(node)}`];
  switch (node.tagName) {
    case "P":
      return [inline(node)];
    case "UL":
    case "OL":
      return [[...node.children].map((item, i) => listItem(item, node.tagName === "OL" ? `${i + 1}.` : "-", depth)).filter(Boolean).join("\n")];
    case "DL":
      return [[...node.querySelectorAll("dt")].map((term) => `- **${inline(term)}**: ${term.nextElementSibling ? inline(term.nextElementSibling) : ""}`).join("\n")];
    case "TABLE":
      return [table(node as HTMLTableElement)];
    case "BLOCKQUOTE":
      return [blocks(node, depth).join("\n\n").replace(/^/gm, "> ")];
    default:
      return node.querySelector("p, ul, ol, dl, table, h2, h3, h4, h5, section") ? blocks(node, depth) : [inline(node)];
  }
}

function listItem(item: Element, mark: string, depth: number): string {
  if (item.matches(LEFT_OUT)) return "";
  const label = item.querySelector(":scope > .step-label");
  if (!label) return `${"  ".repeat(depth)}${mark} ${inline(item)}`;
  const [name, source] = [label.querySelector("span:not(.step-source)"), label.querySelector(".step-source")].map((part) => (part ? inline(part) : ""));
  const note = item.querySelector(":scope > .step-note");
  const equation = item.querySelector<HTMLElement>(".step-equation")?.dataset["plain"] ?? "";
  // Beside an equation in its code's units its result in the reader's.
  const si = item.querySelector(":scope > .step-si")?.textContent;
  return `${mark} **${name}** (${source}): \`${equation}\`${si ? ` ${si}` : ""}${note ? `. ${inline(note)}` : ""}`;
}

/** A table whose first row names the whole of it has that name above, for Markdown has one row of heads. */
function table(node: HTMLTableElement): string {
  const rows = [...node.rows].map((row) => [...row.cells].flatMap((cell) => [inline(cell).replace(/\|/g, "\\|"), ...Array.from({length: cell.colSpan - 1}, () => "")]));
  const named = node.rows[0]?.cells.length === 1 && rows.length > 1;
  const title = named ? `**${rows.shift()?.[0] ?? ""}**\n\n` : "";
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  const [head = [], ...body] = rows;
  return `${title}${[line(head), line(head.map(() => "---")), ...body.map(line)].join("\n")}`;
}

function inline(node: Node): string {
  return [...node.childNodes].map((child) => {
    if (child.nodeType === Node.TEXT_NODE) return (child.textContent ?? "").replace(/([\\`*_<>[\]])/g, "\\$1");
    if (!(child instanceof Element) || child.matches(LEFT_OUT)) return "";
    // A blank that waits for a pen says what it is to those who listen, and to those who read a text.
    if (child.matches("[role=img][aria-label]:empty")) return `*${child.getAttribute("aria-label")}*`;
    const words = inline(child).trim();
    if (words === "") return "";
    // White space within a mark would undo it.
    if (child.matches("strong, b")) return `${leading(child)}**${words}**${trailing(child)}`;
    if (child.matches("em, i")) return `${leading(child)}*${words}*${trailing(child)}`;
    return child.matches("br") ? " " : inline(child);
  }).join("").replace(/\s+/g, " ").trim();
}

const leading = (node: Element): string => (/^\s/.test(node.textContent ?? "") ? " " : "");
const trailing = (node: Element): string => (/\s$/.test(node.textContent ?? "") ? " " : "");
