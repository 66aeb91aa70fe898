import {group, number, since} from "../entries.js";

/** The floor as a beam that lies flat. */
export const diaphragmFields = group("Diaphragm", {
  /** Factored lateral load on a floor per foot of its long side, plf. */
  lateralPlf: since(3, 400, number("lateral load on a floor", "plf", 0, 5000, 25, "Wind or earthquake on one floor, factored, per foot of its long side; from another calculation.")),
});
