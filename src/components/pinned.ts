import type {Design} from "../lib/design/design.js";
import {evaluate} from "../lib/evaluate.js";
import {catalog} from "./notebook.js";
import {openPins} from "./pins/browser.js";
import type {Pin} from "./pins/keptPins.js";

/** The designs that this reader has pinned beside the open one, shared by all pages; one that cannot be computed is refused with its reason. */
export const pins = openPins((design) => evaluate(design, catalog));

/**
 * Pins a design so that the page that compares shows it beside the open one; for any page that offers one.
 *
 * @param name - what it is called there; a number is added where another pin has the name
 * @param from - where it comes from, in words: "how wide should it be"
 * @returns the pin, an older one where this very design is pinned already
 * @throws InputError for a design that cannot be computed
 */
export function pinDesign(design: Design, name: string, from: string): Pin {
  return pins.pin(design, {name, from}).pin;
}
