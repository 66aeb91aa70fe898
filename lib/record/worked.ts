import type {ColumnsResult} from "../columns/columnsResult.js";
import type {ReasonName} from "../design/design.js";
import type {Evaluation} from "../evaluate.js";
import type {Working} from "../step.js";
import {COLUMN_WORKINGS} from "../steps/columns.js";
import {WORKINGS, type WorkingName} from "../steps/workings.js";

/** The decision whose numbers rest on a working; in the order of the job within each. */
const RESTS_ON: Readonly<Record<WorkingName, ReasonName>> = {
  deadLoad: "loads", demand: "loads", snow: "loads", snowDrift: "loads", snowSpan: "loads", roofLive: "loads", rain: "loads", roofCombination: "loads", openTop: "loads",
  edgeBeamReduction: "reduction",
  section: "deck", losses: "deck", timeSteps: "deck", serviceStress: "deck", factored: "deck", strength: "deck", shear: "deck", safeLoad: "deck", development: "deck", sag: "deck",
  walking: "deck", topSteel: "deck", holdDown: "deck",
  camber: "topping", topping: "topping", extraWeight: "topping", spread: "topping",
  beamDepth: "edgeBeam", seat: "edgeBeam", beamLoads: "edgeBeam", beamStrength: "edgeBeam", torsion: "edgeBeam", torsionDesign: "edgeBeam", ledgePunching: "edgeBeam",
  ledgeSteel: "edgeBeam", pad: "edgeBeam",
  roofDemand: "roof", roofFall: "roof", ponding: "roof", roofSafeLoad: "roof", roofSag: "roof",
  girderDepth: "frame", girderLoads: "frame", girderStrength: "frame", girderService: "frame", girderShear: "frame", girderTwist: "frame", girderCamber: "frame",
  diaphragm: "frame", walls: "frame", endSpandrel: "frame", deckEdge: "frame", endStrip: "frame",
  buildingHeight: "story", story: "story", ducts: "story", mainFriction: "story", wayBack: "story", mainHeight: "story",
  parkingModule: "story", parkingStalls: "story", parkingHeight: "story", ramp: "story",
  averageDaylight: "light", noSky: "light", skyComponent: "light",
};

/** The workings on which the numbers of one decision rest. */
export interface SectionWorkings {
  readonly id: ReasonName;
  readonly workings: readonly Working[];
}

/**
 * The worked steps on which the numbers of the record rest, decision by decision; those of a part that the design has not
 * have no steps and are left out. Columns are worked at their foot, where they carry the most.
 */
export function recordWorkings(evaluation: Evaluation, columns: ColumnsResult, sections: readonly ReasonName[]): SectionWorkings[] {
  const ofDesign = Object.entries(RESTS_ON).map(([name, id]) => ({id, working: WORKINGS[name as WorkingName](evaluation)}));
  const ofColumns = columns.columns.flatMap((column) => Object.values(COLUMN_WORKINGS).map((working) => ({id: "frame" as const, working: working(column, column.column.takedown.stories.length - 1)})));
  const all = [...ofDesign, ...ofColumns].filter(({working}) => working.steps.length > 0);
  return sections.flatMap((id) => {
    const workings = all.filter((one) => one.id === id).map(({working}) => working);
    return workings.length > 0 ? [{id, workings}] : [];
  });
}
