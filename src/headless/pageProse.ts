import slugify from "@sindresorhus/slugify";

/** A heading of a page with the prose below it, up to the next. */
export interface Section {
  readonly title: string;
  /** As the generator names headings; empty for the page's own. */
  readonly anchor: string;
  readonly text: string;
}

/** The sections of a page's Markdown, its title's first; code, numbers that are computed, and markup are left out. */
export function sectionsOf(markdown: string): Section[] {
  const lines = withoutExpressions(markdown.replace(/^---\n[\s\S]*?\n---\n/, "").replace(/^```[\s\S]*?^```$/gm, "")).split("\n");
  const sections: {title: string; anchor: string; text: string}[] = [];
  for (const line of lines) {
    const [, hashes, words] = /^(#{1,2}) (.+)$/.exec(line) ?? [];
    const [, id, marked] = /^<h2 id="([^"]+)">(.+)<\/h2>$/.exec(line) ?? [];
    const title = plain(words ?? marked ?? "");
    if (title) sections.push({title, anchor: hashes === "#" ? "" : id ?? slugify(title), text: ""});
    else {
      const last = sections.at(-1);
      if (last) last.text = `${last.text} ${plain(line)}`.trim();
    }
  }
  return sections;
}

/** A line without marks, tags and the addresses of links. */
function plain(line: string): string {
  return line.replace(/<[^>]*>/g, " ").replace(/\[([^\]]*)\]\([^)]*\)/g, "$1").replace(/\\\(.*?\\\)/g, " ").replace(/&[a-z]+;/g, " ").replace(/[*_`]/g, "").replace(/\s+/g, " ").trim();
}

/** A text without `${...}`, whatever braces and quotes stand inside; what an expression says in words is kept. */
function withoutExpressions(text: string): string {
  let out = "";
  for (let i = 0; i < text.length; i++) {
    if (!text.startsWith("${", i)) {
      out += text[i];
      continue;
    }
    const end = endOfExpression(text, i + 2);
    out += ` ${[...text.slice(i + 2, end).matchAll(/"((?:[^"\\]|\\.)*)"/g)].map(([, words]) => words as string).filter((words) => words.trim().split(/\s+/).length > 3).join(" ")} `;
    i = end;
  }
  return out;
}

/** Where the brace stands that ends an expression. */
function endOfExpression(text: string, from: number): number {
  let depth = 1;
  for (let i = from; i < text.length; i++) {
    if (text[i] === "{") depth += 1;
    else if (text[i] === "}") depth -= 1;
    if (depth === 0) return i;
  }
  return text.length;
}
