import {group, longText, since} from "../entries.js";

/** Why each decision was made, in the words of who made it. */
export const reasonsFields = group("Reasons", {
  loads: longText("why these loads", 1200, "Goes on the record."),
  reduction: longText("why this reduction", 1200, "Goes on the record."),
  deck: longText("why this deck", 1200, "Goes on the record."),
  topping: longText("why this topping", 1200, "Goes on the record."),
  edgeBeam: longText("why this edge beam", 1200, "Goes on the record."),
  story: longText("why this story", 1200, "Goes on the record."),
  frame: since(3, "", longText("why these girders and columns", 1200, "Goes on the record.")),
  light: since(3, "", longText("why this light", 1200, "Goes on the record.")),
  roof: since(7, "", longText("why this roof", 1200, "Goes on the record.")),
});
