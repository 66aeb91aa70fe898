import {standsOnBeam, stemNeedsIn} from "../beams/stemRowCheck.js";
import {nearestStem, teeRow} from "../beams/stemRow.js";
import {countsShortSides} from "../design/used.js";
import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import {deckEdge} from "../walls/deckEdge.js";
import {endInnerFaceIn} from "../walls/planes.js";
import {edgeChecks} from "../walls/wallChecks.js";

/** What is wrong with a row of the member where beams are cut for columns of a side: stems off their beam, and a deck's edge that neither a cut piece nor a strip brings to the end line. */
export function rowFaults(design: Design, member: Member, sideIn: number): number {
  const column = {...design.column, sideIn};
  const row = teeRow(design, member);
  const nearest = row && nearestStem(row);
  const offBeam = nearest !== undefined && !standsOnBeam(nearest.fromLineIn, stemNeedsIn({column}, member));
  return Number(offBeam) + (countsShortSides(design) ? edgeFaults({...design, column}, member) : 0);
}

/** How many checks of the deck's edge fail where its last piece is as it does best. */
function edgeFaults(design: Design, member: Member): number {
  const faults = END_FILLS.map((endFill) => {
    const filled: Design = {...design, walls: {...design.walls, endFill}};
    const edge = deckEdge(filled, {member, toppingIn: filled.deck.toppingIn}, {endInnerIn: endInnerFaceIn(filled)});
    return edgeChecks(filled, edge).filter(({verdict}) => verdict === "fails").length;
  });
  return Math.min(...faults);
}
const END_FILLS = ["piece", "strip"] as const satisfies readonly Design["walls"]["endFill"][];
