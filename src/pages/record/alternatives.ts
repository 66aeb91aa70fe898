import type {Catalog} from "../../lib/catalog.js";
import type {RawTables} from "../../lib/tables.js";
import {comparing} from "../../components/compare/comparing.js";
import {consideredOf, inRecord, recordSwitch} from "../../components/compare/inRecord.js";
import {compareView, type CompareView} from "../../components/compare/view.js";
import {element} from "../../components/dom.js";
import type {PinStore} from "../../components/pins.js";
import {measuredBy} from "../../components/compare/measuredBy.js";
import type {DesignStore} from "../../components/store.js";
import {workPlace} from "../../components/worker/work.js";
import {recordTable} from "./recordTables.js";

/** The pinned designs as the record takes them in, and the switch that says whether it does. */
export interface RecordAlternatives {
  readonly choice: HTMLElement;
  /** Empty where the record does not take them in. */
  readonly section: HTMLElement;
}

/** Computes beside the page, and only what the record is to have. */
export function recordAlternatives(store: DesignStore, pins: PinStore, catalog: Catalog, tables: RawTables): RecordAlternatives {
  const choice = inRecord();
  const work = comparing(workPlace(tables), measuredBy(catalog));
  const view = compareView(store, pins, {...work, want: (designs) => choice.get() && pins.get().pins.length > 0 && work.want(designs)});
  const section = element("section", {class: "record-section record-considered", id: "record-considered", hidden: true});
  let now: CompareView = view.get();
  const show = () => {
    section.hidden = !choice.get() || now.pinned.length === 0;
    if (!section.hidden) section.replaceChildren(...contentOf(now));
  };
  choice.observe((taken) => {
    if (taken && pins.get().pins.length > 0) work.want([store.get(), ...pins.get().pins.map(({design}) => design)]);
    show();
  });
  view.observe((next) => {
    now = next;
    show();
  });
  return {choice: recordSwitch(choice, view.observe), section};
}

function contentOf(view: CompareView): Node[] {
  const heading = element("h3", {}, "Alternatives considered");
  const considered = consideredOf(view);
  if (!considered) return [heading, element("p", {}, "Being computed \u2026")];
  const lost = view.pinned.flatMap(({letter, name, found}) => (found && "problem" in found ? [`${letter}: ${name} cannot be computed. ${found.problem}`] : []));
  return [
    heading,
    element("p", {class: "record-decision"}, `${view.pinned.length === 1 ? "One other design was" : `${view.pinned.length} other designs were`} held against this one.`),
    ...considered.tables.map(recordTable),
    element("p", {class: "record-better"}, considered.better),
    element("ul", {class: "record-considered-notes"},
      ...considered.notes.map(({title, words, note}) => element("li", {}, element("strong", {}, `${title}.`), ` ${words}`, note ? element("span", {class: "record-note-words"}, ` ${note}`) : null)),
      ...lost.map((words) => element("li", {}, words))),
  ];
}
