import {line, text, type Sheet} from "./sheet.js";
import {el, pathOfBox, pathThrough} from "./svg.js";
import type {View} from "./view.js";

/** Services as a story's section shows them, in. */
export interface ServicePicture {
  /** Outsides of the ducts; left out where there are none. A main elsewhere on the floor is not near its edge. */
  readonly main?: {readonly widthIn: number; readonly depthIn: number; readonly alongLedge: boolean; readonly elsewhere?: boolean};
  /** Box or strip around the main, outside, and how far it hangs below the ceiling. */
  readonly casing?: {readonly kind: "box" | "strip"; readonly widthIn: number; readonly dropIn: number};
  readonly branch?: {readonly widthIn: number; readonly depthIn: number; readonly betweenStems: boolean};
  readonly hangerIn: number;
  readonly sprinklerIn: number;
  readonly lightIn: number;
}

/** A duct cut across: a box with its diagonals, as drafters mark air. */
export function ductCut(sheet: Sheet, view: View, x0: number, y0: number, x1: number, y1: number, part = "duct"): void {
  sheet.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0)), class: "duct", "data-part": part}));
  line(sheet.body, "thin", [view.at(x0, y0), view.at(x1, y1)], {class: "duct-mark"});
  line(sheet.body, "thin", [view.at(x0, y1), view.at(x1, y0)], {class: "duct-mark"});
}

/** A duct seen from its side. */
export function ductSeen(sheet: Sheet, view: View, x0: number, y0: number, x1: number, y1: number, part = "branch"): void {
  sheet.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0)), class: "duct is-seen", "data-part": part}));
}

/** A pipe with sprinkler heads every 10 ft; `dropTo` is where the heads end. */
export function sprinklers(sheet: Sheet, view: View, x0: number, x1: number, y: number, dropTo: number): void {
  line(sheet.body, "steel", [view.at(x0, y), view.at(x1, y)], {class: "pipe", "data-part": "sprinkler"});
  for (let x = x0 + 30; x < x1; x += 120) {
    line(sheet.body, "steel", [view.at(x, y), view.at(x, dropTo)], {"data-part": "sprinkler"});
    sheet.body.append(el("path", {d: pathThrough([view.at(x - 3, dropTo - 1.5), view.at(x + 3, dropTo - 1.5), view.at(x, dropTo + 1.5)], true), class: "sprinkler-head", "data-part": "sprinkler"}));
  }
}

/** Light fittings, 2 ft wide, every 10 ft, from one level up; never where {@link sprinklers} of the same start drop. */
export function lights(sheet: Sheet, view: View, x0: number, x1: number, y: number, depthIn: number): void {
  const high = Math.max(depthIn, 1.5 / view.scale);
  for (let x = x0 + 78; x + 24 < x1; x += 120) {
    sheet.body.append(el("path", {d: pathOfBox(view.x(x), view.y(y + high), view.x(x + 24), view.y(y)), class: "lamp", "data-part": "light"}));
  }
}

/** Where the services of a story's section stand. */
interface Place {
  readonly soffit: number;
  /** Inner end of the ledge, and of what is drawn. */
  readonly x0: number;
  readonly x1: number;
  /** Underside of the ceiling; undefined where there is none. */
  readonly ceiling: number | undefined;
}

/** Main, branch, pipes and lights in a section across the edge: the main is cut, the branch seen from its side. */
export function drawServices(sheet: Sheet, view: View, {main: anywhere, casing, branch, hangerIn, sprinklerIn, lightIn}: ServicePicture, {soffit, x0, x1, ceiling}: Place): void {
  const main = anywhere?.elsewhere ? undefined : anywhere;
  const left = x0 + (main?.alongLedge === false ? 30 : 4);
  const mainTop = soffit - hangerIn;
  let clearFrom = x0 + 6;
  if (branch && anywhere?.elsewhere) {
    const low = branch.betweenStems ? soffit : mainTop - branch.depthIn;
    ductSeen(sheet, view, x0 + 12, low, x1, low + branch.depthIn);
  }
  if (main) {
    const right = Math.min(left + main.widthIn, x1 - 6);
    clearFrom = right + 6;
    if (branch) {
      const low = branch.betweenStems ? soffit : mainTop - branch.depthIn;
      if (branch.betweenStems) ductSeen(sheet, view, left + 4, mainTop, Math.max(left + 8, right - 4), soffit + branch.depthIn / 2);
      ductSeen(sheet, view, branch.betweenStems ? left + 4 : right, low, x1, low + branch.depthIn);
    }
    if (casing && casing.dropIn > 0) {
      const top = ceiling ?? soffit;
      const wide = left - (casing.widthIn - main.widthIn) / 2;
      line(sheet.body, "seen", [view.at(wide, top), view.at(wide, top - casing.dropIn), view.at(wide + casing.widthIn, top - casing.dropIn), view.at(wide + casing.widthIn, top)], {"data-part": "casing"});
    }
    ductCut(sheet, view, left, mainTop - main.depthIn, right, mainTop, "main");
    for (const x of [left + 1, right - 1]) line(sheet.body, "thin", [view.at(x, soffit), view.at(x, mainTop - main.depthIn)], {class: "extension"});
  }
  const box = main && !main.alongLedge && casing?.kind === "box" && casing.dropIn > 0 ? casing : undefined;
  const underMain = main && !main.alongLedge ? mainTop - Math.max(main.depthIn, branch && !branch.betweenStems ? branch.depthIn : 0) : soffit;
  // Pipes pass below a box where no ceiling hides them; above a ceiling they end beside it.
  const under = !box ? underMain : ceiling === undefined ? Math.min(underMain, soffit - box.dropIn) : soffit;
  const pipesFrom = main?.alongLedge ? clearFrom : box && main && ceiling !== undefined ? left + main.widthIn + (box.widthIn - main.widthIn) / 2 + 4 : x0 + 6;
  if (sprinklerIn > 0) sprinklers(sheet, view, pipesFrom, x1, under - sprinklerIn / 2, ceiling ?? under - sprinklerIn);
  if (ceiling !== undefined && lightIn > 0) lights(sheet, view, main?.alongLedge ? clearFrom - 30 : x0, x1, ceiling, lightIn);
  if (sheet.bare) return;
  if (main && main.depthIn * view.scale > sheet.textPx * 0.9 && main.widthIn * view.scale > 36) {
    text(sheet.notes, sheet, view.at(left + Math.min(main.widthIn, x1 - 6 - left) / 2, mainTop - main.depthIn / 2), "main", {kind: "small", part: "main"});
  }
  if (branch && branch.depthIn * view.scale > sheet.textPx * 0.8) {
    const low = branch.betweenStems ? soffit : mainTop - branch.depthIn;
    text(sheet.notes, sheet, [Math.min(view.x(clearFrom) + 60, view.x(x1) - 40), view.y(low + branch.depthIn / 2)], "branch", {kind: "small", part: "branch"});
  }
}
