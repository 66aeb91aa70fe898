import type MarkdownIt from "markdown-it";
import {mathMarkup} from "../components/worked.js";

/** Sets TeX between `\\(` and `\\)` in a page's text as MathML when the site is built, so that no page waits for a typesetter. */
export function mathInText(markdown: MarkdownIt): MarkdownIt {
  // Before the rule that takes a backslash for an escape.
  markdown.inline.ruler.before("escape", "math in text", (state, silent) => {
    if (!state.src.startsWith("\\(", state.pos)) return false;
    const end = state.src.indexOf("\\)", state.pos);
    if (end < 0) return false;
    if (!silent) state.push("html_inline", "", 0).content = `<span class="math">${mathMarkup(state.src.slice(state.pos + 2, end))}</span>`;
    state.pos = end + 2;
    return true;
  });
  return markdown;
}
