import {FileAttachment} from "observablehq:stdlib";
import {makeCard, type Card} from "./card.js";
import {termIndex} from "./findTerms.js";
import {markTerms} from "./marks.js";
import type {TermForms} from "./termList.js";
import {wordsWanted} from "./wanted.js";

/** How long a pointer rests on a word before its meaning opens, and how long it may take to the card, ms. */
const REST_MS = 350;
const WAY_MS = 300;
/** The same for the focus, which passes over many words on its way. */
const FOCUS_MS = 200;

/** Marks the words of the trade in a page's prose; each opens what it means under the pointer, the focus or a tap. */
export async function startWords(main: HTMLElement): Promise<void> {
  if (!wordsWanted.get()) return;
  const terms = (await FileAttachment("../../data/terms.json").json()) as TermForms[];
  const unmark = markTerms(main, termIndex(terms, pageName()));
  let card: Card | undefined;
  let open: HTMLElement | undefined;
  /** Whether the card stays when the pointer leaves the word: it was opened by a press. */
  let pressed = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const soon = (run: () => void, ms: number) => {
    clearTimeout(timer);
    timer = setTimeout(run, ms);
  };

  const close = () => {
    clearTimeout(timer);
    if (!open || !card) return;
    open.setAttribute("aria-expanded", "false");
    open.removeAttribute("aria-describedby");
    open = undefined;
    if (card.node.matches(":popover-open")) card.node.hidePopover();
  };
  /** Back to the word, where the focus would be lost with the card. */
  const leave = () => {
    const word = card?.node.contains(document.activeElement) ? open : undefined;
    close();
    word?.focus({preventScroll: true});
    clearTimeout(timer);
  };
  const show = async (mark: HTMLElement, by: "press" | "rest") => {
    clearTimeout(timer);
    if (!card) {
      card = makeCard(terms, () => {
        wordsWanted.set(false);
        close();
        unmark();
      }, () => open && card && place(card.node, open));
      follow(card);
    }
    if (open !== mark) close();
    open = mark;
    pressed = by === "press";
    mark.setAttribute("aria-expanded", "true");
    mark.setAttribute("aria-describedby", card.meaningId);
    await card.show(mark.dataset["term"] ?? "");
    if (open !== mark) return;
    if (!mark.isConnected) return close();
    if (!card.node.matches(":popover-open")) card.node.showPopover();
    place(card.node, mark);
  };

  const markOf = (target: EventTarget | null) => (target instanceof Element ? target.closest<HTMLElement>(".term") : null);
  main.addEventListener("pointerover", (event) => {
    const mark = markOf(event.target);
    if (mark && event.pointerType === "mouse" && mark !== open) soon(() => void show(mark, "rest"), REST_MS);
    else if (mark) clearTimeout(timer);
  });
  main.addEventListener("pointerout", (event) => {
    if (markOf(event.target) && event.pointerType === "mouse" && (!open || !pressed)) soon(close, WAY_MS);
  });
  main.addEventListener("focusin", (event) => {
    const mark = markOf(event.target);
    // A press brings the focus too, and opens by itself.
    if (mark?.matches(":focus-visible")) soon(() => void show(mark, "rest"), FOCUS_MS);
  });
  main.addEventListener("focusout", (event) => {
    if (markOf(event.target) && !card?.node.contains(event.relatedTarget as Node | null)) close();
  });
  main.addEventListener("click", (event) => {
    const mark = markOf(event.target);
    if (!mark) return;
    if (mark === open && pressed) close();
    else void show(mark, "press");
  });
  main.addEventListener("keydown", (event) => {
    const mark = markOf(event.target);
    if (!mark || (event.key !== "Enter" && event.key !== " ")) return;
    event.preventDefault();
    void show(mark, "press").then(() => card?.focus());
  });
  document.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || !open) return;
    event.stopPropagation();
    leave();
  }, true);
  document.addEventListener("pointerdown", (event) => {
    if (open && event.target instanceof Node && !card?.node.contains(event.target) && !open.contains(event.target)) close();
  });
  window.addEventListener("scroll", () => open && !card?.node.contains(document.activeElement) && close(), {passive: true});

  function follow({node}: Card): void {
    node.addEventListener("pointerenter", () => clearTimeout(timer));
    node.addEventListener("pointerleave", () => {
      if (!pressed && !node.contains(document.activeElement)) soon(close, WAY_MS);
    });
    node.addEventListener("focusout", (event) => {
      // To nowhere is where the window itself has lost the focus, or what had it is redrawn.
      if (event.relatedTarget instanceof Node && !node.contains(event.relatedTarget) && event.relatedTarget !== open) close();
    });
    // The card stands at the end of the document: from its ends the focus goes on from the word.
    node.addEventListener("keydown", (event) => {
      if (event.key !== "Tab" || !open) return;
      const stops = [...node.querySelectorAll<HTMLElement>("button, a[href]")];
      const back = event.shiftKey && (document.activeElement === stops[0] || !stops.includes(document.activeElement as HTMLElement));
      if (back) event.preventDefault();
      if (back || (!event.shiftKey && document.activeElement === stops.at(-1))) leave();
    });
  }
}

/** The page that is open, by the name of its folder. */
function pageName(): string {
  return /\/pages\/([^/]+)\//.exec(location.pathname)?.[1] ?? "index";
}

/** Below the word, or above it where there is more room; never beyond the edge of the window. */
function place(node: HTMLElement, mark: HTMLElement): void {
  const gap = 6;
  const at = mark.getClientRects()[0] ?? mark.getBoundingClientRect();
  const {clientWidth: width, clientHeight: height} = document.documentElement;
  const below = height - at.bottom - 2 * gap;
  const above = at.top - 2 * gap;
  node.style.maxHeight = "";
  const under = below >= node.offsetHeight || below >= above;
  node.style.maxHeight = `${Math.max(120, under ? below : above)}px`;
  node.style.left = `${Math.max(gap, Math.min(at.left, width - node.offsetWidth - gap))}px`;
  node.style.top = `${under ? at.bottom + gap : Math.max(gap, at.top - gap - node.offsetHeight)}px`;
}
