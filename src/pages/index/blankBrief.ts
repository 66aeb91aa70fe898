import type {Catalog, Occupancy} from "../../lib/catalog.js";
import {validateDesign} from "../../lib/design/validate.js";
import {InputError} from "../../lib/errors.js";
import {FIRST_RULES, checkAsked, type FirstAsked} from "../../lib/schemes/firstAsked.js";
import type {FirstDesign} from "../../lib/schemes/firstDesign.js";
import type {RawTables} from "../../lib/tables.js";
import {button} from "../../components/controls.js";
import {messageFor} from "../../components/controls/frame.js";
import {bulletList, element, uniqueId} from "../../components/dom.js";
import {keptFactors} from "../../components/shared/ownFactors.js";
import {pageChoice, pageNumber} from "../../components/shared/pageValue.js";
import type {DesignStore} from "../../components/store.js";
import {workPlace} from "../../components/worker/work.js";

/** What the boxes hold at first: a teaching building as wide as it is often argued. */
const BEGIN = {occupancy: "classroom", lengthFt: 180, widthFt: 60, floorFt2: 10_800, stories: 3, ceilingFt: 10} as const;

/** The form of a blank brief: use, size, stories and ceiling; one press makes a first design by rule beside the page and opens it. */
export function blankBrief(store: DesignStore, catalog: Catalog, tables: RawTables): HTMLElement {
  const work = workPlace(tables);
  const use = useChoice(catalog.occupancies);
  const lengthFt = pageNumber({...FIRST_RULES.lengthFt, value: BEGIN.lengthFt, help: "Along the windows: the beams divide it evenly."});
  const by = pageChoice("And its other side by", [{value: "width", label: "its width"}, {value: "area", label: "the area of a floor"}], "width");
  const widthFt = pageNumber({...FIRST_RULES.widthFt, value: BEGIN.widthFt, help: "From window to window: the deck spans it in one bay or in several."});
  const floorFt2 = pageNumber({...FIRST_RULES.floorFt2, value: BEGIN.floorFt2, help: "All of one floor, to the outside of the deck: the width is what it leaves of the length."});
  const stories = pageNumber({...FIRST_RULES.stories, value: BEGIN.stories, help: "With the ground floor: three stories carry two floors and a roof."});
  const ceilingFt = pageNumber({...FIRST_RULES.ceilingFt, value: BEGIN.ceilingFt, help: "Above the finished floor. A garage has no ceiling: there it is the clear height under all that hangs."});
  const areaMessage = messageFor([floorFt2.node.querySelector("input.number-box") as Element]);
  floorFt2.node.append(areaMessage.node);
  const status = element("p", {role: "status", class: "scheme-note"});
  const answer = element("div", {class: "first-answer"});
  const asked = (): FirstAsked => ({
    occupancy: use.get(), lengthFt: lengthFt.get(), stories: stories.get(), ceilingFt: ceilingFt.get(),
    across: by.get() === "width" ? {widthFt: widthFt.get()} : {floorFt2: floorFt2.get()},
  });
  const make = button("Make a first design", () => void begin());
  const form = element("div", {class: "first-form"}, use.node, lengthFt.node, by.node, widthFt.node, floorFt2.node, stories.node, ceilingFt.node);
  by.observe((value) => {
    widthFt.node.hidden = value !== "width";
    floorFt2.node.hidden = value !== "area";
  });
  for (const value of [lengthFt, floorFt2, by]) value.observe(() => areaMessage.clear());

  async function begin(): Promise<void> {
    const fits = areaMessage.attempt(() => by.get() === "area" && checkAsked(asked()));
    const wrong = [...form.querySelectorAll<HTMLElement>("[aria-invalid=true]")].find((input) => input.offsetParent !== null);
    if (wrong || !fits) {
      status.textContent = "Nothing was made: one of the sizes is not possible. The words below it say what is.";
      wrong?.focus();
      return;
    }
    answer.replaceChildren();
    status.textContent = "Sizing whole buildings by rule.";
    try {
      const found = await work("firstDesign", {asked: asked(), ownFactors: keptFactors(catalog)}, ({made, of}) => {
        status.textContent = `Sizing whole buildings by rule: ${made} of ${of}.`;
      }).done;
      if (found) show(found);
    } catch (problem) {
      status.textContent = `No design was made. ${problem instanceof Error ? problem.message : String(problem)}`;
    }
  }

  function show(found: FirstDesign): void {
    const {design, holding, finding} = found;
    const open = () => {
      if (!design) return;
      try {
        store.replace(validateDesign(design));
        status.textContent = `${design.name} is open now. Undo, at the top of the page, brings the old design back.`;
      } catch (problem) {
        if (!(problem instanceof InputError)) throw problem;
        status.textContent = `It could not be opened. ${problem.message}`;
      }
    };
    answer.replaceChildren(element("p", {}, finding));
    if (holding > 0) {
      open();
      answer.append(...rulesOf(found));
      return;
    }
    status.textContent = design ? "The open design is as it was." : "The open design is as it was: there is nothing to open.";
    if (!design) return;
    const count = found.fails.length === 1 ? "one check fails" : `${found.fails.length} checks fail`;
    answer.append(
      element("p", {class: "scheme-checks is-failing"}, `\u2717 In the one with the fewest failing checks, ${count}:`),
      bulletList(found.fails.map(({label, words}) => `${label}. ${words}`)),
      element("p", {class: "row"}, button("Open it all the same", () => {
        open();
        answer.append(...rulesOf(found));
      })),
    );
  }

  return element("div", {class: "first-brief no-print"}, form, element("p", {class: "row"}, make), status, answer);
}

/** What each rule chose, in a list that was not there before. */
function rulesOf({rules}: FirstDesign): HTMLElement[] {
  const link = (href: string, words: string) => element("a", {href}, words);
  return [
    element("h3", {}, "What the rules chose"),
    element("dl", {class: "first-rules"}, ...rules.flatMap(({decision, words}) => [element("dt", {}, decision.charAt(0).toUpperCase() + decision.slice(1)), element("dd", {}, words)])),
    element("p", {}, "It is a beginning, not an answer: least carbon is one wish among several. ", link("#open-design", "Look at it"), ", or see ", link("./pages/width/", "other widths"), " and ", link("./pages/bay/", "other bays"), "."),
  ];
}

/** The uses of the table, by their groups. */
function useChoice(occupancies: readonly Occupancy[]): {readonly node: HTMLElement; readonly get: () => string} {
  const id = uniqueId("use");
  const groups = [...new Set(occupancies.map(({group}) => group))];
  const select = element("select", {id}, ...groups.map((group) => element("optgroup", {label: group},
    ...occupancies.filter((row) => row.group === group).map((row) => element("option", {value: row.id, selected: row.id === BEGIN.occupancy}, `${row.name}, ${row.livePsf} psf`)))));
  return {node: element("div", {class: "control choice compact"}, element("label", {for: id, class: "control-label"}, "Use of the floors"), select), get: () => select.value};
}
