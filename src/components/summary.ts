import type {Design} from "../lib/design/design.js";
import {formatPlain} from "./controls/number.js";
import type {Summary} from "./strip.js";

/** What the strip shows of a design: what the reader has decided, each with its page. */
export function summarise(design: Design): Summary {
  const topping = design.deck.toppingIn > 0 ? ` + ${formatPlain(design.deck.toppingIn)} in` : "";
  return {
    thumbnail: null,
    items: [
      {label: "span", value: `${formatPlain(design.bay.spanFt)} ft`, href: "./index"},
      {label: "deck", value: `${design.deck.member}${topping}`, href: "./deck"},
      {label: "storey", value: `${formatPlain(design.storey.floorToFloorFt)} ft`, href: "./storey"},
    ],
  };
}
