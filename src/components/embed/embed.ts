import {FileAttachment} from "observablehq:stdlib";
import type {Design} from "../../lib/design/design.js";
import {VERSION} from "../../lib/version.js";
import {element} from "../dom.js";
import {linkOf} from "../share/designLink.js";
import {holdsDesign} from "../share/fragment.js";
import {openLink} from "../share/share.js";
import {hrefOf} from "../shared/pageList.js";
import type {DesignStore} from "../store.js";
import {controlOf, controlsOn} from "./embedControls.js";
import {FIGURES, type EmbeddedFigure} from "./figures.js";
import {alone, boardOf} from "./place.js";
import {inScheme} from "./scheme.js";

const NONE = "There is no figure of this name here.";
const NOT_IN_DESIGN = "This design has no such figure.";

/** How often is looked whether the page has arrived, ms. */
const LOOK_MS = 50;

/**
 * Shows one figure of the page alone, with its controls, its caption, the caution and where it comes from: what stands in a frame in a page of another
 * site. The design is a starter, or what the address holds, and nothing of it is kept (`headless/embedScript.ts`).
 */
export async function embed(store: DesignStore, seeds: readonly {readonly id: string; readonly design: Design}[], name: string): Promise<void> {
  const main = document.getElementById("observablehq-main");
  if (!main) return;
  const asked = new URLSearchParams(location.search);
  const figure = FIGURES.find((each) => each.name === name);
  const given = holdsDesign(location.hash);
  const style = element("link", {rel: "stylesheet", href: FileAttachment("../../style/embed.css").href});
  const dressed = new Promise((done) => ["load", "error"].forEach((event) => style.addEventListener(event, done)));
  // A link leads out of the frame.
  document.head.append(style, element("base", {target: "_blank"}));
  inScheme(asked.get("scheme"));
  if (given) await openLink(store);
  else if (!asked.has("starter") && figure?.starter) seeds.filter(({id}) => id === figure.starter).forEach(({design}) => store.replace(design));
  await dressed;
  while (main.dataset["arrived"] === undefined) await new Promise((later) => setTimeout(later, LOOK_MS));
  if (name === "") {
    const {sendStills} = await import("./stills.js");
    sendStills(main, asked.get("page") ?? "");
    return;
  }

  const status = element("p", {class: "embed-status", role: "status"});
  const own = element("div", {class: "embed-controls"});
  const source = element("div", {class: "embed-source"});
  main.before(status);
  main.append(own);
  (document.querySelector("#observablehq-footer .caution") ?? main).after(source);
  let shown: EmbeddedFigure | undefined;
  let made = new Map<string, HTMLElement>();
  const none = (words: string) => {
    alone(main, []);
    if (status.textContent !== words) status.textContent = words;
  };
  const show = () => {
    const board = shown && boardOf(main, shown);
    if (!shown) none(NONE);
    else if (!board?.anchor) none(NOT_IN_DESIGN);
    else {
      if (status.textContent === NOT_IN_DESIGN) status.textContent = "";
      const {found, missing} = controlsOn(main, board, shown);
      for (const path of missing) {
        const control = made.get(path) ?? controlOf(store, path);
        made.set(path, control);
        if (!control.isConnected) own.append(control);
      }
      main.toggleAttribute("data-beside", board.anchor.closest(".beside") !== null);
      alone(main, [board.anchor, ...found, own]);
    }
  };
  const turn = () => {
    const asked = new URLSearchParams(location.search).get("embed");
    shown = FIGURES.find((each) => each.name === asked);
    made = new Map();
    own.replaceChildren();
    source.replaceChildren(sourceLine(store, shown, given));
    document.title = `${shown?.title ?? "No figure"} | Plank & Tee`;
    main.setAttribute("aria-label", shown?.title ?? "No figure");
    show();
    // Pictures are drawn for the room that they have.
    window.dispatchEvent(new Event("resize"));
  };
  store.observeNotice((notice) => (status.textContent = notice?.kind === "problem" ? notice.message : ""));
  // What is drawn anew has lost its mark, and gets it back before anything is painted.
  new MutationObserver(show).observe(main, {childList: true, subtree: true});
  // The address may come to name another figure of the page.
  window.addEventListener("popstate", turn);
  turn();
}

/** Where a figure comes from, with the way to its whole page; a design that the address held goes along. */
function sourceLine(store: DesignStore, figure: EmbeddedFigure | undefined, given: boolean): HTMLElement {
  const page = hrefOf(figure?.page ?? "index");
  const link = element("a", {href: figure && figure.at[0] !== "top" ? `${page}#${figure.at[0]}` : page, target: "_blank", rel: "noopener"}, "Open the whole page");
  if (given) link.addEventListener("pointerenter", withDesign);
  if (given) link.addEventListener("focus", withDesign);
  const whose = element("span", {});
  store.observe(({name}) => (whose.textContent = `${name}. `));
  const title = document.querySelector("#pages a[aria-current]")?.textContent ?? "";
  return element("p", {}, whose, `From \u201c${title}\u201d, Plank & Tee ${VERSION}. `, link);

  function withDesign(): void {
    void linkOf(store.get(), page).then((href) => (link.href = href));
  }
}
