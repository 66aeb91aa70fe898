import type {Catalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {evaluate} from "../../lib/evaluate.js";
import {pickSection, type Pick} from "../../lib/exercises/pick.js";
import {placedStrands} from "../../lib/prestress/layout.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {follow} from "../../components/controls/follow.js";
import {element} from "../../components/dom.js";
import {crossSection} from "../../components/drawings/crossSection.js";
import {keepGuess} from "../../components/keptGuesses.js";
import {familyWords} from "./familyWords.js";
import type {DesignStore} from "../../components/store.js";

/** Loads that the question goes through besides the floor's own, as multiples of it. */
const TIMES = [1, 1.5, 0.7];
/** And spans, as multiples of the design's. */
const SPANS = [1, 0.75, 1.25, 0.6, 1.5];

/** Asks which of four drawn sections is the shallowest that carries a load over a span. */
export function pickControl(store: DesignStore, catalog: Catalog): HTMLElement {
  const question = element("p", {class: "guess-question"});
  const choices = element("div", {class: "picks"});
  const told = element("div", {class: "guess-answer", "aria-live": "polite"});
  const next = element("button", {type: "button", class: "button", hidden: true}, "Another");
  const node = element("div", {class: "pick-question"}, question, choices, told, next);
  let round = 0;

  const ask = () => {
    const found = pickFor(store.get(), catalog, round);
    told.replaceChildren();
    next.hidden = true;
    if (!found) {
      question.textContent = "No section of the catalog is just deep enough for this floor: change its span or load to be asked.";
      choices.replaceChildren();
      return;
    }
    question.textContent = `Which is the shallowest that carries ${decimals(found.loadPsf)} psf over ${feetAndInches(found.spanFt * 12)}?`;
    choices.replaceChildren(...buttons(found, (picked) => {
      keepGuess({kind: "pick", name: "shallowestSection", right: picked === found.answer});
      [...choices.children].forEach((button, i) => {
        (button as HTMLButtonElement).disabled = true;
        if (i === found.answer) button.setAttribute("data-answer", "");
      });
      told.replaceChildren(element("p", {}, ...words(found, picked)));
      next.hidden = false;
      next.focus({preventScroll: true});
    }));
  };
  next.addEventListener("click", () => {
    round += 1;
    ask();
    choices.querySelector("button")?.focus({preventScroll: true});
  });
  follow(store, node, ask);
  return node;
}

/** The question of a round; rounds whose four would all carry it, or none, are passed over. */
function pickFor(design: Design, catalog: Catalog, round: number): Pick | undefined {
  const {deck} = evaluate(design, catalog);
  const rounds = SPANS.flatMap((span) => TIMES.map((times) => ({spanFt: Math.round(span * design.bay.spanFt), loadPsf: Math.round((times * deck.demandPsf) / 5) * 5})));
  for (let i = 0; i < rounds.length; i++) {
    const {spanFt, loadPsf} = rounds[(round + i) % rounds.length] as {spanFt: number; loadPsf: number};
    const found = pickSection(design, catalog, spanFt, loadPsf, deck.criteria);
    if (found) return found;
  }
  return undefined;
}

function buttons({choices}: Pick, pick: (index: number) => void): HTMLElement[] {
  const widest = Math.max(...choices.map(({member}) => member.shape.widthIn));
  return choices.map(({member: {shape, layout, topping}}, i) => {
    const toppingIn = topping?.thicknessIn ?? 0;
    const drawing = crossSection({shape, strands: placedStrands(shape, layout, 0.5), toppingIn, bare: true, widthPx: 210, mostPxPerIn: 206 / widest, label: `Section of ${shape.designation}`});
    return element("button", {type: "button", class: "pick", onclick: () => pick(i)}, drawing,
      element("span", {}, `${familyWords(shape.family)} ${feetAndInches(shape.depthIn)} deep, ${shape.designation}`));
  });
}

function words({choices, answer, loadPsf}: Pick, picked: number): (string | Node)[] {
  const one = (index: number) => {
    const {member, safe, carries} = choices[index] as Pick["choices"][number];
    return `${member.shape.designation} carries ${decimals(safe.safeLoadPsf)} psf (${safe.governs} governs), ${carries ? "enough" : `less than ${decimals(loadPsf)}`}`;
  };
  const verdict = picked === answer ? "Right." : picked < answer ? "Too shallow." : "It carries it, but a shallower one does too.";
  return [element("strong", {}, verdict), ` ${choices.map((_, i) => one(i)).join("; ")}.`];
}
