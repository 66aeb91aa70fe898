import {button} from "../../components/controls.js";
import {bulletList, element, uniqueId} from "../../components/dom.js";
import {EMBED_WIDTH_PX, FIGURES, NOT_ALONE, type EmbeddedFigure} from "../../components/embed/figures.js";
import type {Seed} from "../../components/notebook.js";
import {hrefOf, type PageEntry} from "../../components/shared/pageList.js";
import {linkOf, LONGEST_LINK} from "../../components/share/designLink.js";
import type {DesignStore} from "../../components/store.js";
import {readerSystem, whenReadAnew} from "../../components/reader/system.js";
import {embedAddress, frameCode, stillsAddress, type EmbedDesign} from "./frameCode.js";
import {stillsOf} from "./stills.js";

/** The value of the open design among the starters' names, which are names of files. */
const OPEN = "the open design";

/** What the page shows: which design, and all figures by page. */
export function gallery(store: DesignStore, seeds: readonly Seed[], pages: readonly PageEntry[]): {readonly design: HTMLElement; readonly list: HTMLElement; readonly left: HTMLElement} {
  let design: EmbedDesign = {starter: seeds[0]?.id ?? ""};
  const cards: FigureCard[] = [];
  const id = uniqueId("design");
  const open = element("option", {value: OPEN});
  const select = element("select", {id}, ...seeds.map((seed) => element("option", {value: seed.id}, seed.design.name)), open);
  const note = element("p", {class: "control-help", role: "status"});
  const choose = async () => {
    if (select.value === OPEN) {
      const link = await linkOf(store.get(), "");
      if (select.value !== OPEN) return;
      design = {fragment: link};
      note.textContent = link.length > LONGEST_LINK
        ? "Each address holds the whole design, and with so long a one some course systems may cut it: shorten its texts, or take a starter."
        : "Each address holds the whole design as it is now; a later change of it does not reach code that was copied before.";
    } else {
      design = {starter: select.value};
      note.textContent = "";
    }
    for (const card of cards) card.begin(design);
    stills.again();
  };
  select.addEventListener("change", () => void choose());
  store.observe(({name}) => {
    open.textContent = `${name}, as it is open now`;
    if (select.value === OPEN) void choose();
  });
  const sections = pages.flatMap((page) => {
    const own = FIGURES.filter((figure) => figure.page === page.name);
    if (own.length === 0) return [];
    const made = own.map((figure) => figureCard(figure, design));
    cards.push(...made);
    return [element("section", {class: "gallery-page", "data-page": page.name, "aria-label": page.title},
      element("h2", {id: `from-${page.name}`}, page.title), element("ul", {class: "gallery-cards"}, ...made.map(({node}) => node)))];
  });
  const stills = stillsOf(sections, (page) => stillsAddress(page, hrefOf(page), design, readerSystem()), (name, image) => cards.find((card) => card.node.dataset["figure"] === name)?.still(image));
  const list = element("div", {class: "gallery", "data-no-terms": true}, ...sections);
  whenReadAnew(list, () => stills.again());
  return {
    design: element("div", {class: "control choice gallery-design"}, element("label", {for: id, class: "control-label"}, "They begin with"), select, note),
    list,
    left: bulletList(pages.flatMap(({name, title}) => (NOT_ALONE[name] ? [`\u201c${title}\u201d: ${NOT_ALONE[name]}.`] : []))),
  };
}

interface FigureCard {
  readonly node: HTMLElement;
  begin(design: EmbedDesign): void;
  still(image: HTMLImageElement): void;
}

function figureCard(figure: EmbeddedFigure, first: EmbedDesign): FigureCard {
  const {name, title, asks, heightPx, page} = figure;
  let address = "";
  const still = element("div", {class: "gallery-still"});
  const code = element("textarea", {readonly: true, rows: 4, spellcheck: "false", "aria-label": `Code of the frame: ${title}`, onfocus: () => code.select()});
  const said = element("span", {class: "gallery-said", role: "status"});
  const frame = element("div", {class: "gallery-frame"});
  const fold = element("details", {class: "gallery-code"}, element("summary", {}, "The code"), code);
  const show = button("Show it", () => {
    if (frame.hasChildNodes()) frame.replaceChildren();
    else frame.replaceChildren(element("iframe", {src: address, title: `${title}: ${asks}`, width: EMBED_WIDTH_PX, height: heightPx}));
    const shown = frame.hasChildNodes();
    show.textContent = shown ? "Put it away" : "Show it";
    show.setAttribute("aria-expanded", String(shown));
  }, {quiet: true, name: `Show it: ${title}`});
  show.setAttribute("aria-expanded", "false");
  const copy = button("Copy the code", async () => {
    try {
      await navigator.clipboard.writeText(code.value);
      said.textContent = "Copied.";
    } catch {
      // A browser may keep the clipboard to itself; the code can be marked and copied by hand.
      fold.open = true;
      code.focus();
      said.textContent = "The browser does not let this page copy: the code is marked below.";
    }
  }, {name: `Copy the code: ${title}`});
  let design = first;
  const write = () => {
    address = embedAddress(figure, hrefOf(page), design, readerSystem());
    code.value = frameCode(figure, address);
    said.textContent = "";
    const shown = frame.querySelector("iframe");
    // A frame whose address changes after # alone would stay as it is.
    if (shown && shown.src !== address) shown.replaceWith(element("iframe", {src: address, title: shown.title, width: EMBED_WIDTH_PX, height: heightPx}));
  };
  write();
  const begin = (next: EmbedDesign) => {
    design = next;
    write();
  };
  whenReadAnew(frame, write);
  return {
    node: element("li", {class: "gallery-card", "data-figure": name}, still, element("h3", {}, title), element("p", {}, asks), element("p", {class: "row"}, copy, show, said), frame, fold),
    begin,
    still: (image) => still.replaceChildren(image),
  };
}
