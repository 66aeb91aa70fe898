import type {EdgeBeamResult} from "../edgeBeam/edgeBeam.js";
import type {GirderResult} from "../girder/girder.js";
import {columnLineToBearingIn} from "../beams/beamEnds.js";
import type {Design} from "../design/design.js";
import {hasRoof} from "../design/used.js";
import {loadOn, type FloorLoads} from "../loads/floorLoads.js";
import {ownPsf, type Member} from "../member/member.js";
import type {OpenTopResult} from "../roof/openTop.js";
import type {RoofResult} from "../roof/roof.js";
import {LB_PER_KIP, feet} from "../units.js";
import {pieceBetweenIn} from "../walls/planes.js";
import type {WallsResult} from "../walls/walls.js";
import {sharesKip, wallReach} from "../walls/weights.js";
import type {ColumnBending, LivePattern} from "./columnBending.js";
import type {ColumnLoadKip, ColumnMomentKipIn} from "./columnCombinations.js";
import {edgeBeamEnd, girderEnd, NO_TWIST} from "./endOnColumn.js";
import {roofEdgeBeamEnd, roofGirderEnd, roofParts, type RoofParts} from "./roofOnColumn.js";
import {COLUMN_POSITIONS, typicalLevels, type ColumnLevel, type ColumnPosition, type LevelLoad} from "./levels.js";

/** What the columns of a design carry: deck, beams and loads as computed. */
export interface Framing {
  readonly design: Design;
  readonly deck: Member;
  readonly loads: FloorLoads;
  /** Undefined where the floor has one bay across. */
  readonly girder: GirderResult | undefined;
  readonly edge: EdgeBeamResult;
  readonly walls: WallsResult;
  /** Undefined where the roof is two loads. */
  readonly roof: RoofResult | undefined;
  /** The highest floor under snow; undefined where a roof is over it, or no snow is given. */
  readonly openTop: OpenTopResult | undefined;
}

/** Columns that the grid has; the one under the largest area first. */
export function positionsOf({loads}: Pick<Framing, "loads">): ColumnPosition[] {
  const here = new Set<string>(loads.elements.map(({element}) => element));
  return COLUMN_POSITIONS.filter((position) => here.has(position));
}

/**
 * The levels that load a column, top first: the roof if there is one, then the floors. The room that is heaviest at its foot
 * is assumed on every floor; the take-down compares what else may stand there. A roof of two loads has the same beams
 * without cladding; with neither dead nor live load there is no roof. Walls come to the columns at the sides on each level.
 */
export function columnLevels({design, deck, loads, girder, edge, roof, openTop, walls}: Framing, position: ColumnPosition): ColumnLevel[] {
  const {column, bay, story} = design;
  const area = loadOn(loads, position);
  const {room} = area.governing;
  const inside = carriesGirders(position);
  const beamPlf = inside ? (girder?.loads.selfPlf ?? 0) : edge.loads.selfPlf;
  const own = deck.selfWeightPlf / deck.widthFt;
  const carried = wallReach(design, walls, position);
  const stripFt2 = stripAreaFt2(design, walls, position);
  const floor: Omit<LevelLoad, "beamLengthFt"> = {
    deckPsf: own, toppingPsf: ownPsf(deck) - own, superimposedPsf: loads.superimposedDeadPsf,
    beamPlf: inside ? beamPlf : beamPlf + edge.loads.claddingPlf,
    livePsf: room.livePsf, rule: room.rule, partitionPsf: room.partitionPsf, wallKip: sharesKip(carried.floor),
    ...(stripFt2 > 0 ? {stripLiveKip: (stripFt2 * (room.livePsf + room.partitionPsf)) / LB_PER_KIP} : {}),
  };
  const ofTwoLoads: Omit<LevelLoad, "beamLengthFt"> = {
    deckPsf: column.roofDeadPsf, toppingPsf: 0, superimposedPsf: 0, beamPlf, livePsf: column.roofLivePsf, rule: "no", partitionPsf: 0,
    wallKip: sharesKip(carried.roof), ...onStrip(stripFt2, {usePsf: 0, weatherPsf: column.roofLivePsf}),
  };
  const above = roof ? {...roofLevel(roof, position), ...onStrip(stripFt2, roofParts(roof.snow, position)), storyHeightFt: topStoryFt(design, walls), wallKip: sharesKip(wallReach(design, {...walls, ends: undefined}, position).roof)} : hasRoof(design) ? ofTwoLoads : undefined;
  const onTop = openTop && roofParts(openTop.snow, position);
  return typicalLevels({
    area, floors: bay.floors, storyHeightFt: story.floorToFloorFt, floor, ...(above ? {roof: above} : {}),
    ...(onTop ? {onTop: {weatherPsf: onTop.weatherPsf, ...(stripFt2 > 0 ? {stripWeatherKip: (stripFt2 * onTop.weatherPsf) / LB_PER_KIP} : {})}} : {}),
  });
}

/** Floor beyond the end column lines that a column at an end carries, ft2: as far as its wall reaches along the short side. */
function stripAreaFt2({bay}: Design, {edge}: WallsResult, position: ColumnPosition): number {
  const alongFt = position === "corner column" ? bay.spanFt / 2 : position === "girder end column" ? bay.spanFt : 0;
  return alongFt * feet(edge.firstStripIn);
}

/** What comes and goes on that part of a roof, kip. */
function onStrip(stripFt2: number, {usePsf, weatherPsf}: RoofParts): Pick<LevelLoad, "stripLiveKip" | "stripWeatherKip"> {
  return stripFt2 > 0 ? {stripLiveKip: (stripFt2 * usePsf) / LB_PER_KIP, stripWeatherKip: (stripFt2 * weatherPsf) / LB_PER_KIP} : {};
}

/** Height of the story under a roof of its own, ft: from the structure of the floor to that of the roof where it is highest. */
function topStoryFt({story}: Design, {planes: {top, stories, storyIn}}: WallsResult): number {
  return feet(Math.max(...top.structureIn) - ((stories - 1) * storyIn - story.finishIn));
}

/** A roof of its own on a column: its deck with topping and layers, its beams, and what comes and goes on the column's own area. */
function roofLevel({design, member, loads, snow, girder, edgeBeam: edge}: RoofResult, position: ColumnPosition): Omit<LevelLoad, "beamLengthFt"> {
  const own = member.selfWeightPlf / member.widthFt;
  const {usePsf, weatherPsf} = roofParts(snow, position);
  return {
    deckPsf: own, toppingPsf: ownPsf(member) - own, superimposedPsf: loads.superimposedDeadPsf,
    // What closes the deck's ends hangs on the beam; the parapet on it comes with the walls.
    beamPlf: carriesGirders(position) ? (girder?.loads.selfPlf ?? 0) : edge.loads.selfPlf + edge.loads.claddingPlf - design.edgeBeam.claddingPlf,
    livePsf: weatherPsf, usePsf, rule: "no", partitionPsf: 0,
  };
}

/** Whether the beams on a column are girders: inside, and at the building's ends where a line of them ends. */
export function carriesGirders(position: ColumnPosition): boolean {
  return position === "interior column" || position === "girder end column";
}

/**
 * What bends a column, by where the live load stands; the column must carry each.
 *
 * Beams bear on corbels off its face, and bend it along their own line unless another bears as much on the other
 * side. And the whole torsion of the beams' ends reaches it, by the couple of their connections, and bends it across that
 * line: nothing else is designed to resist it. Ties to the deck may relieve it; they are not counted. An edge beam is in
 * torsion from all that lies on one side of it; a girder's torsions from the bays at its two sides balance, but for the
 * live load of one.
 */
export function bendingOf(framing: Framing, position: ColumnPosition, levels: readonly ColumnLevel[]): ColumnBending {
  const {column} = framing.design;
  return {seat: {seatIn: column.seatIn, cutForIn: column.sideIn}, patterns: carriesGirders(position) ? underGirders(framing, position, levels) : underEdgeBeams(framing, position, levels)};
}

function underEdgeBeams({design, edge, roof, openTop, walls}: Framing, position: ColumnPosition, levels: readonly ColumnLevel[]): LivePattern[] {
  const ends = levels.map(({kind}, i) => (kind === "roof" && roof ? roofEdgeBeamEnd(roof) : i === 0 && openTop ? roofEdgeBeamEnd(openTop) : edgeBeamEnd(design, edge, kind, walls.weights.parapetPlf + (walls.ends?.plf ?? 0))));
  // A beam wholly below the deck has it over its middle, and no torsion.
  const twisted = edge.kind !== "below";
  if (position === "corner column") {
    return [{
      words: `the one edge beam on its corbel${twisted ? ", with the torsion at its end" : ""}${design.walls.spandrelPlace === "between" && walls.spandrel ? ", and the one end spandrel" : ""}`,
      levels: ends.map(({reaction, twist}, i) => ({along: withStrip(reaction, levels[i], design.bay.spanFt / 2, walls), across: {...twist, deadKipIn: twist.deadKipIn + endSpandrelKipIn(design, walls, levels[i]?.kind)}})), curvature: {along: "double", across: "double"},
    }];
  }
  return [
    ...(twisted ? [{
      words: "the torsion of both edge beams' ends, which balance each other on their corbels",
      levels: ends.map(({twist}) => ({along: NOTHING, across: times(2, twist)})), curvature: {along: "single", across: "double"} as const,
    }] : []),
    {
      words: `live load on only one of the two edge beams${twisted ? ", and the torsion of both ends" : ""}`,
      levels: ends.map(({reaction, twist}) => ({
        along: variable(reaction), across: {...twist, deadKipIn: 2 * twist.deadKipIn},
      })),
      curvature: {along: "single", across: "double"},
    },
  ];
}

/**
 * Moment that the one spandrel of a corner brings to its column, across the edge beam's line, kip-in. Between two columns it
 * sits on corbels as the beams do; the other walls pass outside the columns and pull them back against their beams,
 * which is not counted.
 */
function endSpandrelKipIn(design: Design, walls: WallsResult, kind: ColumnLevel["kind"] | undefined): number {
  if (!walls.spandrel || design.walls.spandrelPlace !== "between") return 0;
  const {floorPlf, roofPlf} = walls.weights;
  return (((kind === "roof" ? roofPlf : floorPlf) * feet(pieceBetweenIn(design))) / 2 / LB_PER_KIP) * columnLineToBearingIn(design);
}

function underGirders({design, girder, roof, openTop, walls}: Framing, position: ColumnPosition, levels: readonly ColumnLevel[]): LivePattern[] {
  // Where columns stand under girders, the floor has two bays across and so a girder.
  const ends = levels.map(({kind}, i) => (kind === "roof" && roof ? roofGirderEnd(roof) : i === 0 && openTop ? roofGirderEnd(openTop) : girderEnd(design, girder as GirderResult, kind)));
  if (position === "girder end column") {
    return [
      {
        words: "the one girder on its corbel, with live load on the bays on both sides",
        levels: ends.map(({both}, i) => ({along: withStrip(both.reaction, levels[i], design.bay.spanFt, walls), across: both.twist})), curvature: {along: "double", across: "single"},
      },
      {
        words: "the one girder on its corbel, with the torsion at its end under live load on one bay",
        levels: ends.map(({oneBay}, i) => ({along: withStrip(oneBay.reaction, levels[i], design.bay.spanFt, walls), across: oneBay.twist})), curvature: {along: "double", across: "single"},
      },
    ];
  }
  return [
    {
      words: "live load on only one of the two girders",
      levels: ends.map(({both}) => ({along: variable(both.reaction), across: NO_TWIST})), curvature: {along: "single", across: "single"},
    },
    {
      words: "the torsion of both girders' ends under live load on one bay",
      levels: ends.map(({oneBay}) => ({along: NOTHING, across: times(2, oneBay.twist)})), curvature: {along: "single", across: "single"},
    },
  ];
}

/** A beam's reaction with the strip of floor beyond the end column line, all of which goes to its near end. */
function withStrip(reaction: ColumnLoadKip, level: ColumnLevel | undefined, alongFt: number, {edge, roofEdge}: WallsResult): ColumnLoadKip {
  const {firstPlf} = level?.kind === "roof" ? roofEdge : edge;
  if (firstPlf === 0) return reaction;
  return {
    deadKip: reaction.deadKip + (firstPlf * alongFt) / LB_PER_KIP, liveKip: reaction.liveKip + (level?.stripLiveKip ?? 0), roofKip: reaction.roofKip + (level?.stripWeatherKip ?? 0),
  };
}

const NOTHING: ColumnLoadKip = {deadKip: 0, liveKip: 0, roofKip: 0};

/** A reaction without its dead load, which another balances. */
function variable(reaction: ColumnLoadKip): ColumnLoadKip {
  return {...reaction, deadKip: 0};
}

function times(count: number, {deadKipIn, liveKipIn, roofKipIn}: ColumnMomentKipIn): ColumnMomentKipIn {
  return {deadKipIn: count * deadKipIn, liveKipIn: count * liveKipIn, roofKipIn: count * roofKipIn};
}
