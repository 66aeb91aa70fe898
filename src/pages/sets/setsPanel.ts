import type {Catalog} from "../../lib/catalog.js";

/** The parts of the page that composes a set, hands it out and marks it; the kinds of exercise come once the page stands, as they are many. */
export async function setsPanel(catalog: Catalog, pages: readonly {readonly name: string; readonly title: string}[]): Promise<{readonly compose: HTMLElement; readonly handOut: HTMLElement; readonly print: HTMLElement; readonly sheets: HTMLElement; readonly marking: HTMLElement}> {
  const [{KINDS}, {draftStore}, {composer}, {handOut}, {paper}, {marking}] = await Promise.all([
    import("../../lib/practice/kinds.js"), import("./draft.js"), import("./composer.js"), import("./handOut.js"), import("./paper.js"), import("./marking.js"),
  ]);
  const draft = draftStore();
  const {controls, sheets} = paper(draft, catalog);
  return {compose: composer(draft, KINDS, catalog, pages), handOut: handOut(draft), print: controls, sheets, marking: marking(draft, catalog)};
}
