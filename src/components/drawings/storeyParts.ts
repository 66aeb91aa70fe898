import {sun} from "./marks.js";
import {concrete, line, type Sheet} from "./sheet.js";
import {el, pathOfBox, pathThrough} from "./svg.js";
import type {StoreySectionOptions} from "./storeySection.js";
import type {View} from "./view.js";

const GAP_IN = 1;
const CEILING_IN = 1;

/** A floor at the level of its finish: edge beam and deck on its ledge, with topping and finish. */
export function drawFloor(sheet: Sheet, view: View, options: StoreySectionOptions, levelIn: number): void {
  const {finishIn, toppingIn, deckDepthIn, deckFamily, ledgeDepthIn, ledgeProjectionIn, beamWebIn, upstandIn} = options;
  const right = view.world.x1;
  const structural = levelIn - finishIn;
  const deckTop = structural - toppingIn;
  const soffit = deckTop - deckDepthIn;
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  const clip = sheet.clip(pathOfBox(0, -20, view.x(right), sheet.heightPx + 20));
  const start = beamWebIn + GAP_IN;
  const deck = {"data-part": "deck", "clip-path": clip};
  if (deckFamily === "double tee") {
    // Cut between two stems: the flange is cut, the stem is seen beyond.
    const under = deckTop - (options.flangeIn ?? 2);
    concrete(sheet, "plant", box(start, soffit, right + 4, under), deck, "seen");
    concrete(sheet, "plant", box(start, under, right + 4, deckTop), deck);
  } else {
    concrete(sheet, "plant", box(start, soffit, right + 4, deckTop), deck);
    if (deckFamily === "hollow core") {
      for (const share of [0.16, 0.84]) line(sheet.body, "hidden", [view.at(start, soffit + deckDepthIn * share), view.at(right, soffit + deckDepthIn * share)]);
    }
  }
  if (toppingIn > 0) concrete(sheet, "site", box(beamWebIn, deckTop, right + 4, structural), {"clip-path": clip});
  if (finishIn > 0) sheet.body.append(el("path", {d: box(beamWebIn, structural, right, levelIn), class: "finish", "data-part": "finish"}));
  const bottom = soffit - ledgeDepthIn;
  const ledge = beamWebIn + ledgeProjectionIn;
  concrete(sheet, "plant", pathThrough([view.at(0, bottom), view.at(ledge, bottom), view.at(ledge, soffit), view.at(beamWebIn, soffit),
    view.at(beamWebIn, structural + upstandIn), view.at(0, structural + upstandIn)], true), {"data-part": "beam"});
  // The ledge and the upstand are lit by themselves.
  const region = (d: string, part: string) => sheet.body.append(el("path", {d, class: "region", "data-part": part}));
  region(box(beamWebIn, bottom, ledge, soffit), "ledge");
  if (upstandIn > 0) region(box(0, structural, beamWebIn, structural + upstandIn), "upstand");
}

/** Glass between sill and head, and closed wall where the beam leaves something over. */
export function drawWall(sheet: Sheet, view: View, options: StoreySectionOptions): void {
  const {beamWebIn, glass, floorToFloorIn, finishIn, toppingIn, deckDepthIn, ledgeDepthIn, upstandIn} = options;
  const [x0, x1] = [beamWebIn * 0.3, beamWebIn * 0.3 + Math.max(3, 3 / view.scale)];
  const piece = (y0: number, y1: number, kind: string, part: string) => {
    if (y1 - y0 > 0.1) sheet.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0)), class: kind, "data-part": part}));
  };
  const beamTop = upstandIn - finishIn;
  const beamBottom = floorToFloorIn - finishIn - toppingIn - deckDepthIn - ledgeDepthIn;
  piece(beamTop, glass.sillIn, "furniture", "wall");
  piece(glass.sillIn, glass.headIn, "glass", "glass");
  piece(glass.headIn, beamBottom, "furniture", "wall");
  for (const y of [glass.sillIn, glass.headIn]) line(sheet.lines, "seen", [view.at(x0 - 1, y), view.at(x1 + 1, y)]);
}

/** A hung ceiling with its hangers. */
export function drawCeiling(sheet: Sheet, view: View, options: StoreySectionOptions): void {
  const {ceiling, ceilingHeightIn, beamWebIn, ledgeProjectionIn, floorToFloorIn, finishIn, toppingIn, deckDepthIn} = options;
  const start = ceiling === "flush" ? beamWebIn + ledgeProjectionIn : beamWebIn;
  const right = view.world.x1;
  const thick = Math.max(CEILING_IN, 2 / view.scale);
  sheet.body.append(el("path", {d: pathOfBox(view.x(start), view.y(ceilingHeightIn + thick), view.x(right), view.y(ceilingHeightIn)), class: "furniture", "data-part": "ceiling"}));
  line(sheet.body, "seen", [view.at(start, ceilingHeightIn), view.at(right, ceilingHeightIn)], {"data-part": "ceiling"});
  const soffit = floorToFloorIn - finishIn - toppingIn - deckDepthIn;
  if (sheet.bare || soffit - ceilingHeightIn < 4) return;
  for (let x = start + 24; x < right - 4; x += 48) line(sheet.body, "thin", [view.at(x, ceilingHeightIn + thick), view.at(x, soffit)], {class: "extension"});
}

/** The sun outside and its light on the floor: under the ray through the head, over the one past sill and upstand. */
export function drawSunlight(sheet: Sheet, view: View, {glass, beamWebIn, upstandIn, finishIn}: StoreySectionOptions, altitudeDeg: number): void {
  const x0 = beamWebIn * 0.3;
  const slope = Math.max(0.02, Math.tan((altitudeDeg * Math.PI) / 180));
  const room = sheet.clip(pathOfBox(view.x(x0), view.y(view.world.y1), view.x(view.world.x1), view.y(0)));
  const far = x0 + glass.headIn / slope;
  const near = Math.max(x0 + glass.sillIn / slope, beamWebIn + (upstandIn - finishIn) / slope);
  if (far > near) {
    sheet.body.append(el("path", {d: pathThrough([view.at(x0, (near - x0) * slope), view.at(x0, glass.headIn), view.at(far, 0), view.at(near, 0)], true),
      class: "daylight", "clip-path": room, "data-part": "sun"}));
  }
  if (!sheet.bare) sun(sheet, [view.x(0) - 26, 24]);
}
