import type {Design} from "../design/design.js";
import type {Move} from "./way.js";

/** The fields of the roof's member that the floor's has too. */
const SHARED = ["member", "pattern", "toppingIn", "concrete", "strengthPsi", "releaseStrengthPsi", "strandHeightEndIn", "strandHeightCenterIn"] as const;
/** What the roof takes from the floor where it says nothing of its own. */
const FROM_FLOOR = ["concrete", "strengthPsi", "releaseStrengthPsi"] as const;

/** The design as if its floor had the roof's deck and upstand. */
function asFloor(design: Design): Design {
  const {roof, edgeBeam} = design;
  const {dimensions: _, strandHeightEndIn: _end, strandHeightCenterIn: _center, ...floor} = design.deck;
  const own = Object.fromEntries(SHARED.flatMap((name) => (roof[name] === undefined ? [] : [[name, roof[name]]])));
  return {...design, deck: {...floor, ...own} as Design["deck"], edgeBeam: {...edgeBeam, upstandIn: roof.upstandIn}};
}

/** The design with what was changed on its roof taken as if it were the floor; the floor's own deck and upstand stay. */
function onto(design: Design, before: Design, changed: Design): Design {
  const roof: Record<string, unknown> = {...changed.roof, upstandIn: changed.edgeBeam.upstandIn};
  for (const name of SHARED) {
    if (changed.deck[name] === before.deck[name]) continue;
    if (changed.deck[name] === undefined) delete roof[name];
    else roof[name] = changed.deck[name];
  }
  // A strength of its own once either is: one alone might pass the other of the floor.
  if (FROM_FLOOR.some((name) => changed.deck[name] !== before.deck[name])) for (const name of FROM_FLOOR) roof[name] = changed.deck[name];
  const {aggregate, toppingStrengthPsi} = changed.deck;
  return {...changed, deck: {...design.deck, aggregate, toppingStrengthPsi}, roof: roof as unknown as Design["roof"], edgeBeam: {...changed.edgeBeam, upstandIn: design.edgeBeam.upstandIn}};
}

/** A move on the floor's deck and beams made on the roof's: its deck's fields are the roof's, its beams are the same but for the upstand. */
export const onRoof = (move: Move): Move => (design, told) => {
  const before = asFloor(design);
  return move(before, told).map(({steps, at}) => ({
    steps,
    at: (step) => {
      const changed = at(step);
      return changed && onto(design, before, changed);
    },
  }));
};
