import {group, toggle} from "../entries.js";

/** Which kinds of member the search looks at. */
export const considerFields = group("Kinds looked at", {
  fieldToppedTees: toggle("field-topped tees", "Whether the search considers double tees with a thin flange and a topping cast in place."),
  pretoppedTees: toggle("pretopped tees", "Whether the search considers double tees cast with their full flange."),
  planks: toggle("planks and slabs", "Whether the search considers hollow-core planks and flat slabs."),
});
