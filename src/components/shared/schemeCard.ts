import type {Catalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {validateDesign} from "../../lib/design/validate.js";
import {InputError} from "../../lib/errors.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {failsOf, isMade, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {feetText} from "../../lib/units.js";
import {button} from "../controls.js";
import {element} from "../dom.js";
import type {DesignStore} from "../store.js";
import type {RunAsked, SchemeRun} from "./schemeRun.js";
import {EDGE_WORDS, GIRDER_WORDS} from "./schemeLooks.js";

/** One scheme in words and pictures, with the button that puts it into the design. */
export interface SchemeCard {
  readonly words: HTMLElement;
  readonly pictures: HTMLElement;
  /** Shows a scheme; its design is asked for beside the page, and drawn when it comes. */
  show(row: SchemeRow | undefined): void;
  /** Draws again, for another width. */
  redraw(): void;
  /** Whether a design was put in by this card. */
  putIn(design: Design): boolean;
}

export interface SchemeCardOptions {
  readonly store: DesignStore;
  readonly catalog: Catalog;
  /** The run whose schemes are shown. */
  readonly run: Pick<SchemeRun, "one" | "worded" | "state">;
  readonly draw: (result: Evaluation, row: SchemeRow) => HTMLElement;
  /** Said where no scheme is chosen. */
  readonly hint: string;
}

/** How long a scheme must be looked at before it is computed and drawn, ms. */
const REST_MS = 100;

export function schemeCard({store, catalog, run, draw, hint}: SchemeCardOptions): SchemeCard {
  const words = element("section", {class: "scheme-card", "aria-label": "The scheme that is looked at"});
  const pictures = element("div", {class: "scheme-pictures"});
  const ours = new WeakSet<Design>();
  const act = button("Put it into the design", () => void take());
  const said = element("div", {});
  const note = element("p", {class: "scheme-note", role: "status"});
  words.append(said, element("p", {class: "row"}, act), note);
  let row: SchemeRow | undefined;
  let found: Evaluation | undefined;
  let resting: ReturnType<typeof setTimeout> | undefined;
  /** The run that the scheme is of: another may have begun since. */
  let of: RunAsked | undefined;

  /** The design that was put in, and the scheme that it is of. */
  let taken: {readonly index: number; readonly design: Design} | undefined;

  const take = async () => {
    if (!found || !row) return;
    const {index} = row;
    act.disabled = true;
    const scheme = await run.worded(index, of);
    if (!scheme || "none" in scheme || row?.index !== index) {
      tell();
      return;
    }
    try {
      const design = validateDesign(scheme.design);
      taken = {index, design};
      ours.add(design);
      store.replace(design);
      tell();
      note.textContent = "It is in the design now, with all its parts. Undo, at the top of the page, brings the old one back.";
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      note.textContent = `It could not be put into the design. ${problem.message}`;
    }
  };
  const tell = () => {
    const current = taken !== undefined && taken.index === row?.index && store.get() === taken.design;
    act.disabled = found === undefined || current;
    if (!row) said.replaceChildren(element("p", {class: "scheme-hint"}, hint));
    else said.replaceChildren(...wordsOf(row));
  };
  const redraw = () => {
    if (found && row) pictures.replaceChildren(draw(found, row));
  };
  store.observe(() => tell());
  return {
    words, pictures, redraw,
    putIn: (design) => ours.has(design),
    show(next) {
      const asked = run.state().asked;
      if (next?.index === row?.index && next?.deck === row?.deck && next?.fails === row?.fails && asked === of) return;
      clearTimeout(resting);
      row = next;
      found = undefined;
      of = asked;
      note.textContent = "";
      tell();
      if (!row || !isMade(row)) {
        pictures.replaceChildren(...(row ? [element("p", {class: "scheme-hint"}, `There is nothing to draw: ${row.fails}`)] : []));
        return;
      }
      const {index} = row;
      const ofRun = of;
      // One who runs along the schemes wants none of those in between drawn.
      resting = setTimeout(() => void run.one(index, ofRun).then((scheme) => {
        if (!scheme || row?.index !== index || of !== ofRun || "none" in scheme) return;
        found = evaluate(scheme.design, catalog);
        tell();
        redraw();
      }), REST_MS);
    },
  };
}

function wordsOf(row: SchemeRow): Node[] {
  const fails = failsOf(row);
  const frame = [EDGE_WORDS[row.edge], GIRDER_WORDS[row.girder]].filter(Boolean).join(", ");
  return [
    element("p", {class: "scheme-name"}, isMade(row) ? row.deck : `No ${row.kind}`),
    element("p", {class: "scheme-words"}, `${row.kind} over ${feetText(row.span_ft)}, beams of ${feetText(row.beam_span_ft)}, ${row.bays_across} by ${row.bays_along} bays; ${frame}`),
    element("p", {class: `scheme-checks ${!isMade(row) || fails.length > 0 ? "is-failing" : "is-holding"}`},
      !isMade(row) ? `\u2717 Cannot be made: ${row.fails}` : fails.length === 0 ? "\u2713 All checks hold." : `\u2717 ${fails.length} ${fails.length === 1 ? "check fails" : "checks fail"}: ${fails.join(", ")}.`),
    ...(isMade(row) ? [element("p", {class: "scheme-words"}, `Nearest to its limit: ${row.governs_part}, ${row.governs}. What allows the deck no more load: ${row.deck_governs}.`)] : []),
  ];
}
