import {group, list, number, optional, text, toggle} from "../entries.js";

/** What the rooms hold, and what lies on and hangs from the deck. */
export const loadsFields = group("Loads", {
  rooms: list("rooms", 1, 12, {
    name: text("room", 60, "What the room is called on the plan."),
    occupancy: text("occupancy", 60, "A row of the table of live loads."),
    /** In place of the table's live load for this use, where the reader enters one. */
    own: optional(group("live load of your own", {
      livePsf: number("live load of your own", "psf", 10, 500, 5, "In place of the code's load for this use, which is the minimum."),
      /** Whether the code's reduction may be used on it; if not, it counts in full on every element. */
      reducible: toggle("may be reduced", "Whether it may be reduced on large areas, by the code's rule for this use. If not, it counts in full everywhere."),
      reason: text("why this load of your own", 300, "What calls for it: an equipment list, the client's standard, allowance for later uses."),
    })),
  }),
  partitions: toggle("movable partitions", "Whether partitions may be moved on this floor."),
  layers: list("layers", 0, 12, {
    name: text("layer", 60, "What lies on or hangs from the deck: finish, ceiling, services."),
    loadPsf: number("layer load", "psf", 0, 150, 0.5, "Weight of the layer per square foot of floor."),
  }),
});
