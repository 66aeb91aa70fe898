import {longText, since, text} from "./entries.js";
import {bayFields} from "./fields/bay.js";
import {loadsFields} from "./fields/loads.js";
import {deckFields} from "./fields/deck.js";
import {criteriaFields} from "./fields/criteria.js";
import {edgeBeamFields} from "./fields/edgeBeam.js";
import {girderFields} from "./fields/girder.js";
import {roofFields} from "./fields/roof.js";
import {columnFields} from "./fields/column.js";
import {snowFields} from "./fields/snow.js";
import {groundFields} from "./fields/ground.js";
import {diaphragmFields} from "./fields/diaphragm.js";
import {wallsFields} from "./fields/walls.js";
import {storyFields} from "./fields/story.js";
import {servicesFields} from "./fields/services.js";
import {airFields} from "./fields/air.js";
import {daylightFields} from "./fields/daylight.js";
import {parkingFields} from "./fields/parking.js";
import {toppingFields} from "./fields/topping.js";
import {preferencesFields} from "./fields/preferences.js";
import {commentsField} from "./fields/comments.js";
import {considerFields} from "./fields/consider.js";
import {reasonsFields} from "./fields/reasons.js";

/**
 * Every field of a design, each group from the module of its name in `fields/`: the only place where one is written down.
 *
 * The type `Design` is what this table says, and validation, the words of an error message, the controls on the pages,
 * the inputs on the record and the migration of older files follow from it. A field without `since` is in every version
 * of the file; `since(6, value, ...)` came with version 6, and an older file is taken to have meant the value. Comments
 * above an entry show where code reads `design.deck.dimensions`.
 */
export const DESIGN_FIELDS = {
  name: text("name of the design", 80, "Shown in the strip at the top of each page and on the record."),
  setting: longText("setting", 300, "The building and where it stands, in a sentence."),
  brief: longText("brief", 1200, "What the floor must do, in the reader's own words."),
  author: since(6, "", text("author", 80, "Who made this design, as it should appear on the record.")),
  firm: since(6, "", text("firm or class", 80, "For whom the author made it: a firm, a class, a studio.")),

  bay: bayFields,
  loads: loadsFields,
  deck: deckFields,
  criteria: criteriaFields,
  edgeBeam: edgeBeamFields,
  /** The beam between two bays. */
  girder: girderFields,
  /** What closes the building on top. Columns count either a roof of its own or the two loads among their own fields. */
  roof: roofFields,
  column: columnFields,
  /** What lies on the roof by the code: its live load, snow and rain. A roof given by its two loads takes its one number instead. */
  snow: snowFields,
  ground: groundFields,
  diaphragm: diaphragmFields,
  /** What closes the short sides, which carry no deck, and what stands on the roof's edge. */
  walls: wallsFields,
  story: storyFields,
  services: servicesFields,
  /** Supply and return: where the ducts run, and which spaces between stems they take. */
  air: airFields,
  daylight: daylightFields,
  /** Cars on these floors or beneath them. */
  parking: parkingFields,
  topping: toppingFields,
  /** Weights of the trade's preferences in the deck search, 0 (does not matter) to 10. */
  preferences: preferencesFields,
  /** Which kinds of member the deck search looks at. */
  consider: considerFields,
  reasons: reasonsFields,
  comments: commentsField,
} as const;

/**
 * Names that an earlier version of the file spelled otherwise, fields and groups: old path, new path, and the version that
 * brought the new one.
 */
export const RENAMED: readonly {readonly was: string; readonly is: string; readonly since: number}[] = [
  {was: "storey", is: "story", since: 5},
  {was: "deck.strandHeightCentreIn", is: "deck.strandHeightCenterIn", since: 5},
];
