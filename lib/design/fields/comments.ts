import {choice, list, longText, since, text} from "../entries.js";

/** What someone who read the design, such as a teacher, says of it: on the whole, or on one of its decisions. */
export const commentsField = since(9, [], list("comments", 0, 60, {
  words: longText("comment", 1200, "Goes on the record, beside the decision that it is about."),
  on: choice("what the comment is about", {
    whole: "the whole design", loads: "loads", reduction: "live load reduction", deck: "deck", topping: "camber and topping", edgeBeam: "edge beam",
    roof: "roof", frame: "girder and columns", story: "story", light: "daylight",
  }, "The design as a whole, or one of its decisions."),
  by: text("who commented", 80, "Whose words these are, as they stand on the record."),
}));
