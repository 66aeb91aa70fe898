import {airResult} from "../air/air.js";
import type {AirResult} from "../air/result.js";
import {services, type ServicesResult} from "../air/services.js";
import type {Design} from "../design/design.js";
import {peopleWork} from "../evaluate.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import type {Shape} from "../sections/shape.js";
import {leastUnderBeams} from "../story/headroom.js";
import {storyStack, type LeastHeight, type StoryStack} from "../story/stack.js";
import {feet} from "../units.js";
import type {Brief} from "./brief.js";
import {AIR_ASKS, RAISES_IN, branchesFor, gloomyBack, ruledStory, ruledWayBack, type AirAsk, type Hung, type RuledStory} from "./storyRule.js";

/** A story with its air by rule. */
export interface Housed {
  /** The design's fields that make it. */
  readonly input: Pick<Design, "story" | "services" | "air">;
  readonly story: RuledStory;
  readonly stack: StoryStack;
  readonly serviced: ServicesResult;
  readonly air: AirResult | undefined;
  /** How many of the air's checks fail. */
  readonly fails: number;
}

/** What is wanted of the story. */
type Wanted = Pick<Brief, "ceilingFt" | "limits">;

/** All that a story by rule depends on besides the brief. */
export function housedKey({bay, column, edgeBeam, girder}: Design, {shape, compression}: Member, {edgeIn, girderIn}: Hung): string {
  const plan = `${bay.spanFt} ${bay.baysAcross} ${bay.beamSpanFt} ${bay.baysAlong} ${column.sideIn}`;
  const edge = `${edgeBeam.kind} ${edgeBeam.ledgeProjectionIn} ${edgeBeam.webWidthIn} ${edgeIn}`;
  const inner = `${girder.kind} ${girder.depthIn} ${girder.ledgeDepthIn} ${girder.ledgeProjectionIn} ${girder.webWidthIn} ${girderIn}`;
  return `${plan} ${shape.designation} ${compression.depthIn} ${edge} ${inner}`;
}

/** Story and air with mains of which least fails, of those that are tried the first; its ceiling a little higher than is wanted where that lets light reach the back of the rooms. */
export function housedByRule(framed: Design, wanted: Wanted, member: Member, loads: FloorLoads, hung: Hung): Housed {
  const {shape, compression: {depthIn}} = member;
  const wayBack = ruledWayBack(framed, shape);
  const led: Design = wayBack ? {...framed, air: {...framed.air, way: wayBack}} : framed;
  const storyFor = (ask: AirAsk, raisedIn: number): RuledStory =>
    ({...ruledStory(led, shape, depthIn, hung, wanted.ceilingFt === undefined ? undefined : wanted.ceilingFt + feet(raisedIn), ask), wayBack, raisedIn});
  const least = leastUnderBeams(loads);
  const stackOf = ({story}: RuledStory): StoryStack => storyStack({story, edgeBeam: led.edgeBeam, bay: led.bay}, depthIn, hung.edgeIn, least.room);
  let found: Housed | undefined;
  let ask: AirAsk = AIR_ASKS[0];
  const tried: RuledStory[] = [];
  for (const next of AIR_ASKS) {
    const story = storyFor(next, 0);
    // Where a floor has no room for more, one asks for the same as another.
    if (tried.some((other) => alike(other, story))) continue;
    tried.push(story);
    const housed = withAir(led, story, stackOf(story), shape, least.edge);
    if (!found || housed.fails < found.fails) [found, ask] = [housed, next];
    if (found.fails === 0) break;
  }
  const own = found as Housed;
  if (wanted.ceilingFt === undefined || !peopleWork(loads) || !gloomyBack(led, own.stack) || gloomyBack(led, own.stack, RAISES_IN.at(-1))) return own;
  const mostFt = wanted.limits.floorToFloorFt ?? Infinity;
  for (const raisedIn of RAISES_IN) {
    const story = storyFor(ask, raisedIn);
    const stack = stackOf(story);
    if (gloomyBack(led, stack) || story.story.floorToFloorFt > mostFt) continue;
    const raised = withAir(led, story, stack, shape, least.edge);
    if (raised.fails <= own.fails) return raised;
  }
  return own;
}

/** Whether two stories by rule of the same floor are one: in ceiling, height and mains. */
function alike({story: a, services: ofA}: RuledStory, {story: b, services: ofB}: RuledStory): boolean {
  return ofA.servedFt2 === ofB.servedFt2 && ofA.mainDepthIn === ofB.mainDepthIn && ofA.mainWidthIn === ofB.mainWidthIn
    && a.ceiling === b.ceiling && a.ceilingDropIn === b.ceilingDropIn && a.floorToFloorFt === b.floorToFloorFt;
}

function withAir(led: Design, story: RuledStory, stack: StoryStack, shape: Shape, headroom: LeastHeight): Housed {
  const storied: Design = {...led, story: story.story, services: story.services};
  const first = services(storied, shape, stack, headroom);
  // Where the main's place or its feeders' spaces make a branch's air another than a tee's, the branch is sized anew.
  const again = first.checks.some(({id, verdict}) => id === "branch duct velocity" && verdict === "fails") && first.ducts;
  const housed: Design = again ? {...storied, services: {...storied.services, ...branchesFor(storied, shape, again.branchFlowCfm)}} : storied;
  const serviced = again ? services(housed, shape, stack, headroom) : first;
  const air = airResult(housed, shape, stack, serviced, headroom);
  return {
    input: {story: housed.story, services: housed.services, air: housed.air}, story, stack, serviced, air,
    fails: [...serviced.checks, ...air?.checks ?? []].filter(({verdict}) => verdict === "fails").length,
  };
}
