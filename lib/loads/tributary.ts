import {ELEMENT_FACTOR, type LoadElement} from "./elements.js";

/** A rectangle on the plan, ft; the origin is the column at the building's southwest corner, x along the edge. */
export interface PlanRect {
  readonly xFt: number;
  readonly yFt: number;
  readonly widthFt: number;
  readonly heightFt: number;
}

/** The floor as a grid of columns. */
export interface ColumnGrid {
  /** Span of the deck: the grid's pitch across the building. */
  readonly spanFt: number;
  /** Span of the beams: the grid's pitch along the edge. */
  readonly beamSpanFt: number;
  readonly baysAlong: number;
  readonly baysAcross: number;
}

/** The areas that load one element. */
export interface LoadArea {
  readonly element: LoadElement;
  readonly elementFactor: number;
  /** Area whose load the element carries on one floor. */
  readonly tributary: PlanRect;
  /** Area on which a load affects the element. */
  readonly influence: PlanRect;
  /** Tributary area AT for the reduction, ft2, on one floor: limited by 4.7.6 for one-way decks. */
  readonly tributaryFt2: number;
  /** KLL AT on one floor, ft2. */
  readonly influenceFt2: number;
}

/** Greatest width of a one-way deck's tributary area over its span (ASCE 7-16 4.7.6). */
export const ONE_WAY_WIDTH = 1.5;

/**
 * Tributary and influence areas of each kind of element that the grid has, on one floor.
 *
 * The drawn influence area is cut off at the building's edge; the code's element factor is used in its place.
 *
 * @param memberWidthFt - width of one deck member
 */
export function loadAreas(grid: ColumnGrid, memberWidthFt: number): LoadArea[] {
  const {spanFt, beamSpanFt, baysAlong, baysAcross} = grid;
  const rect = (xFt: number, yFt: number, widthFt: number, heightFt: number): PlanRect => ({xFt, yFt, widthFt, heightFt});
  const x = middleBayFt(grid);
  const column = Math.min(1, baysAlong - 1) * beamSpanFt;
  const areas = [
    deckMemberArea(grid, memberWidthFt),
    area("edge beam", rect(x, 0, beamSpanFt, spanFt / 2), rect(x, 0, beamSpanFt, spanFt)),
  ];
  if (baysAcross > 1) {
    areas.push(area("interior beam", rect(x, spanFt / 2, beamSpanFt, spanFt), rect(x, 0, beamSpanFt, 2 * spanFt)));
    if (baysAlong > 1) {
      areas.push(area("interior column",
        rect(column - beamSpanFt / 2, spanFt / 2, beamSpanFt, spanFt),
        rect(column - beamSpanFt, 0, 2 * beamSpanFt, 2 * spanFt)));
    }
  }
  if (baysAlong > 1) {
    areas.push(area("edge column",
      rect(column - beamSpanFt / 2, 0, beamSpanFt, spanFt / 2),
      rect(column - beamSpanFt, 0, 2 * beamSpanFt, spanFt)));
  }
  // At the building's end a line of girders ends on a column of its own.
  if (baysAcross > 1) {
    areas.push(area("girder end column", rect(0, spanFt / 2, beamSpanFt / 2, spanFt), rect(0, 0, beamSpanFt, 2 * spanFt)));
  }
  areas.push(area("corner column", rect(0, 0, beamSpanFt / 2, spanFt / 2), rect(0, 0, beamSpanFt, spanFt)));
  return areas;
}

/** Areas of one deck member, which alone hang on its width: the first of {@link loadAreas}. */
export function deckMemberArea(grid: ColumnGrid, memberWidthFt: number): LoadArea {
  const {spanFt, beamSpanFt, baysAlong} = grid;
  // Members lie side by side from the corner on: the one that stands where the middle of a bay is.
  const xFt = Math.floor((middleBayFt(grid) + beamSpanFt / 2) / memberWidthFt) * memberWidthFt;
  const deck = {xFt, yFt: 0, widthFt: Math.min(memberWidthFt, beamSpanFt * baysAlong - xFt), heightFt: spanFt};
  return area("deck member", deck, deck, Math.min(deck.widthFt, ONE_WAY_WIDTH * spanFt) * spanFt);
}

/** Where the bay begins in which an element is chosen: away from the building's ends where the grid allows, ft. */
function middleBayFt({beamSpanFt, baysAlong}: ColumnGrid): number {
  return Math.floor((baysAlong - 1) / 2) * beamSpanFt;
}

function area(
  element: LoadElement, tributary: PlanRect, influence: PlanRect, tributaryFt2 = tributary.widthFt * tributary.heightFt,
): LoadArea {
  const elementFactor = ELEMENT_FACTOR[element];
  return {element, elementFactor, tributary, influence, tributaryFt2, influenceFt2: elementFactor * tributaryFt2};
}
