import {drawingsOf} from "../share/pictureFile.js";
import {standalone} from "../share/standalone.js";
import {FIGURES} from "./figures.js";
import {boardOf} from "./place.js";

/** A figure's picture at rest. */
export interface Still {
  readonly name: string;
  readonly svg: string;
}

/** What a page with an empty name for its embed says to the page that holds it, of the same site. */
export interface StillsMessage {
  readonly stills: readonly Still[];
}

/** Sends pictures of all figures of this page that can stand alone to the page that holds it. */
export function sendStills(main: Element, page: string): void {
  const stills = FIGURES.filter((figure) => figure.page === page).flatMap((figure): Still[] => {
    const anchor = boardOf(main, figure)?.anchor;
    const size = (drawing: SVGSVGElement) => drawing.getBoundingClientRect().width * drawing.getBoundingClientRect().height;
    const [largest] = anchor ? drawingsOf(anchor).sort((a, b) => size(b) - size(a)) : [];
    if (!largest) return [];
    const copy = standalone(largest);
    const {width, height} = largest.getBoundingClientRect();
    for (const [name, value] of Object.entries({xmlns: "http://www.w3.org/2000/svg", width, height})) copy.setAttribute(name, String(value));
    return [{name: figure.name, svg: new XMLSerializer().serializeToString(copy)}];
  });
  window.parent.postMessage({stills} satisfies StillsMessage, location.origin);
}
