import {WALL_CONCRETE_PCF} from "../beams/deckEnds.js";
import {teeRow} from "../beams/stemRow.js";
import type {Evaluation} from "../evaluate.js";
import {given, type Step, type Working} from "../step.js";
import {feet} from "../units.js";
import {WINDOW_PSF} from "../walls/endSpandrel.js";
import {INSULATION_PCF} from "../walls/panels.js";

const concretePcf = () => given(WALL_CONCRETE_PCF, "pcf", "weight of concrete");

/** From the stories to the roof: how high the building is. */
export function buildingHeightWorking({design, walls: {planes}, story, roof}: Evaluation): Working {
  const n = given(planes.stories, "", "stories that the walls enclose");
  const h_s = given(planes.storyIn, "in", "floor to floor");
  if (!roof) return {title: "Height of the building", steps: [{symbol: "H", label: "lowest floor to the topmost level", expression: "n * h_s", unit: "in", source: "geometry", values: {n, h_s}, result: planes.topIn}]};
  const soffitIn = planes.stories * planes.storyIn - design.story.finishIn - story.deckDepthIn;
  return {title: "Height of the building", steps: [
    {
      symbol: "z", label: "soffit of the roof's deck, as high over the topmost floor as any soffit over its own", expression: "n * h_s - t_f - h_d", unit: "in", source: "geometry", result: soffitIn,
      values: {n, h_s, t_f: given(design.story.finishIn, "in", "floor finish"), h_d: given(story.deckDepthIn, "in", "floor's deck and topping")},
    },
    {
      symbol: "H", label: "lowest floor to the roof's highest line", expression: "z + h_r + t_l + e_r", unit: "in", source: "geometry", result: planes.topIn,
      values: {
        z: given(soffitIn, "in", "soffit of the roof's deck"), h_r: given(planes.top.deckDepthIn, "in", "roof's deck and topping"),
        t_l: given(roof.layers.buildUpIn, "in", "layers on the roof's deck"), e_r: given(roof.plan.riseIn, "in", "rise from the drains to the highest line"),
      },
    },
  ]};
}

/** Weight of a square foot of the short sides' wall, and what a foot of it brings down. */
export function wallWeightWorking({design, walls}: Evaluation): Working {
  const {walls: input, bay} = design;
  const {panels, weights, planes, spandrel} = walls;
  const steps: Step[] = [];
  if (panels) {
    steps.push(input.shortSide === "solid panel" ? {
      symbol: "w", label: "weight of a square foot of panel", expression: "gamma * t / 12", unit: "psf", source: "geometry", result: panels.psf,
      values: {gamma: concretePcf(), t: given(input.panelThicknessIn, "in", "thickness")},
    } : {
      symbol: "w", label: "weight of a square foot of panel", expression: "(gamma * (t_o + t_i) + gamma_i * t_n) / 12", unit: "psf", source: "geometry", result: panels.psf,
      values: {
        gamma: concretePcf(), t_o: given(input.outerWytheIn, "in", "outer wythe"), t_i: given(input.innerWytheIn, "in", "inner wythe"),
        gamma_i: given(INSULATION_PCF, "pcf", "weight of insulation"), t_n: given(input.insulationIn, "in", "insulation"),
      },
    });
    steps.push({
      symbol: "W", label: "weight of the heaviest panel, its windows cut out", expression: "w * (1 - g) * b * h / 144000", unit: "kip", source: "geometry", result: panels.heaviest.weightKip,
      values: {
        w: given(panels.psf, "psf", "weight of a square foot"), g: given(input.glassShare, "", "share of windows"),
        b: given(panels.heaviest.widthIn, "in", "width of the heaviest panel"), h: given(panels.heaviest.heightIn, "in", "height of the heaviest panel"),
      },
    });
  }
  if (weights.withWindowsPsf > 0) {
    steps.push({
      symbol: "w_m", label: "weight of a square foot with its windows", expression: "w * (1 - g) + w_g * g", unit: "psf", source: "ASCE 7-16 Table C3.1-1 for windows; from memory", result: weights.withWindowsPsf,
      values: {w: given(weights.wallPsf, "psf", "weight of a square foot of wall"), g: given(input.glassShare, "", "share of windows"), w_g: given(WINDOW_PSF, "psf", "windows with their frames")},
    });
  }
  if (weights.withWindowsPsf > 0 && weights.floorPlf > 0) {
    steps.push({
      symbol: "w_f", label: "what a foot of the short side brings to the columns on a floor", expression: "w_m * h_s", unit: "plf", source: "geometry", result: weights.floorPlf,
      values: {w_m: given(weights.withWindowsPsf, "psf", "weight with windows"), h_s: given(feet(planes.storyIn), "ft", "height of a story")},
    });
  }
  if (spandrel) {
    steps.push({
      symbol: "R", label: input.spandrelPieces > 1 ? "end of one piece of a spandrel, on a column or a post" : "end of one spandrel between two columns, or half a bay of one that passes", expression: "(w_s + w_w) * L_s / 2000", unit: "kip", source: "statics",
      result: ((spandrel.selfPlf + spandrel.windowPlf) * (input.spandrelPlace === "between" ? feet(spandrel.lengthIn) : bay.spanFt / input.spandrelPieces)) / 2000,
      values: {
        w_s: given(spandrel.selfPlf, "plf", "the spandrel itself"), w_w: given(spandrel.windowPlf, "plf", "windows on the spandrel"),
        L_s: given(input.spandrelPlace === "between" ? feet(spandrel.lengthIn) : bay.spanFt / input.spandrelPieces, "ft", "length of the spandrel"),
      },
    });
  }
  if (walls.footing) {
    steps.push({
      symbol: "b_f", label: "width of strip footing that the soil requires", expression: "12 * w_t / q", unit: "in", source: "statics", result: walls.footing.neededIn,
      values: {w_t: given(walls.footing.plf, "plf", "all panels above one another"), q: given(design.ground.allowablePsf, "psf", "allowable soil pressure")},
      note: `Made ${walls.footing.widthIn} in wide: 6 in past the panel on either side at least, in steps of 3 in.`,
    });
  }
  if (weights.parapetPlf > 0 && input.capIn === 0) {
    const u = Math.min(...planes.top.sides.map(({builtOnIn}) => builtOnIn)) - planes.topIn;
    steps.push({
      symbol: "w_p", label: "parapet built on the roof's beams of the long sides", expression: "gamma * t_p * (p - u) / 144", unit: "plf", source: "geometry", result: weights.parapetPlf,
      values: {
        gamma: concretePcf(), t_p: given(input.parapetThicknessIn, "in", "thickness of the parapet"), p: given(planes.parapetIn, "in", "top above the roof's surface"),
        u: given(u, "in", "top of what the parapet is built on, above the roof's surface"),
      },
      ...(u < 0 ? {note: "Layers and fall lift the roof's surface above what the parapet is built on."} : {}),
    });
  }
  return {title: "Weights of the walls", steps};
}

/** Bending and cracking of the spandrel on a short side. */
export function endSpandrelWorking({design, walls}: Evaluation): Working {
  const {spandrel} = walls;
  if (!spandrel) return {title: "No end spandrel", steps: []};
  const [t, d] = [given(spandrel.thicknessIn, "in", "thickness"), given(spandrel.depthIn, "in", "depth")];
  return {title: "The end spandrel under its own weight", steps: [
    {symbol: "w_s", label: "weight of the spandrel", expression: "gamma * t * d / 144", unit: "plf", source: "geometry", values: {gamma: concretePcf(), t, d}, result: spandrel.selfPlf},
    {
      symbol: "w_w", label: "windows on the spandrel", expression: "w_g * h_w / 12", unit: "plf", source: "ASCE 7-16 Table C3.1-1; from memory", result: spandrel.windowPlf,
      values: {w_g: given(WINDOW_PSF, "psf", "windows with their frames"), h_w: given(spandrel.windowIn, "in", "height of the windows")},
    },
    {
      symbol: "M", label: "moment at midspan", expression: "(w_s + w_w) / 12000 * L^2 / 8", unit: "kip-in", source: "statics", result: spandrel.momentKipIn,
      values: {w_s: given(spandrel.selfPlf, "plf", "the spandrel"), w_w: given(spandrel.windowPlf, "plf", "windows on the spandrel"), L: given(spandrel.spanIn, "in", "spandrel between its bearings")},
    },
    {symbol: "S", label: "section modulus", expression: "t * d^2 / 6", unit: "in3", source: "geometry", values: {t, d}, result: spandrel.modulusIn3},
    {
      symbol: "f_t", label: "tension at the spandrel's foot", expression: "M / S", unit: "ksi", source: "statics", result: spandrel.tensionKsi,
      values: {M: given(spandrel.momentKipIn, "kip-in", "moment at midspan"), S: given(spandrel.modulusIn3, "in3", "section modulus")},
    },
    {
      symbol: "f_r", label: "tension that cracks the spandrel", expression: "7.5 * sqrt(f_cprime) / 1000", unit: "ksi", source: "ACI 318-19 19.2.3.1, normalweight", result: spandrel.ruptureKsi,
      values: {f_cprime: given(design.walls.strengthPsi, "psi", "concrete strength of the spandrel")},
    },
  ]};
}

/** What the strip beside the outermost piece brings to the outermost piece and to the ends of the beams. */
export function endStripWorking({design, endStrip, loads, walls: {edge}, deck, member}: Evaluation): Working {
  if (!endStrip) return {title: "No strip beside the outermost piece", steps: []};
  const {widthIn, beyondIn, deadPlf, livePlf, onPiecePsf, pieceEndKip, endKip, onStemKip} = endStrip;
  const all = beyondIn === widthIn;
  const b = given(widthIn, "in", all ? "width beyond the column line" : "width beside the last piece");
  const [w_d, w_l] = [given(deadPlf, "plf", "dead load of the strip"), given(livePlf, "plf", "live load of the strip")];
  const sharedFt = (deadPlf + livePlf) / onPiecePsf;
  const row = teeRow(design, member);
  return {title: all ? "The strip beyond the column line" : "The strip beside the last piece", steps: [
    {symbol: "w_d", label: "dead load of a foot of the strip", expression: "w_c + b / 12 * w_s", unit: "plf", source: "geometry", result: deadPlf, values: {w_c: given(edge.lastPlf, "plf", "concrete of the strip"), b, w_s: given(loads.superimposedDeadPsf, "psf", "superimposed dead load")}},
    {symbol: "w_l", label: "live load of a foot of the strip", expression: "b / 12 * L", unit: "plf", source: "geometry", result: livePlf, values: {b, L: given(deck.livePsf, "psf", "live load of the deck")}},
    {symbol: "q", label: row ? "on the width of the outermost tee" : "on the planks that share it", expression: "(w_d + w_l) / B", unit: "psf", source: "statics", result: onPiecePsf, values: {w_d, w_l, B: given(sharedFt, "ft", "width that carries the strip")}},
    {symbol: "R_s", label: all ? "factored, at the near end of a beam" : "factored, at an end of the piece", expression: "max(1.4 * w_d, 1.2 * w_d + 1.6 * w_l) * L_s / 2000", unit: "kip", source: "ASCE 7-16 2.3.1", result: pieceEndKip, values: {w_d, w_l, L_s: given(design.bay.spanFt, "ft", "span of the deck")}},
    ...(row ? [{
      symbol: "P_s", label: "of it under the outermost stem", expression: "R_s * (1 + (a + b / 24) / s)", unit: "kip", source: "statics", result: onStemKip,
      values: {R_s: given(pieceEndKip, "kip", "at the end of the piece"), a: given((row.teeWidthFt - row.stemSpacingFt) / 2, "ft", "from that stem to the tee's edge"), b, s: given(row.stemSpacingFt, "ft", "between the tee's stems")},
      note: "It lies outside of both stems, and lifts the inner one a little.",
    }] : []),
    ...(all || beyondIn === 0 ? [] : [{
      symbol: "R_o", label: "of it beyond the column line, at the near end of a beam", expression: "R_s * b_o / b", unit: "kip", source: "statics", result: endKip,
      values: {R_s: given(pieceEndKip, "kip", "at the end of the piece"), b_o: given(beyondIn, "in", "width beyond the column line"), b},
      note: "The rest lies over the beam, which counts it among its own load.",
    }]),
  ]};
}

/** How far the deck's edge reaches past its outermost stem, and how thick it must be for that. */
export function deckEdgeWorking({walls: {edge}}: Evaluation): Working {
  return {title: "The deck's edge", steps: [
    {
      symbol: "c", label: "reach past the outermost stem", expression: "b_f + b_s", unit: "in", source: "geometry", result: edge.reachIn,
      values: {b_f: given(edge.flangeIn, "in", "flange beyond the outermost stem's face"), b_s: given(edge.lastStripIn, "in", "strip cast in place beyond the flange")},
    },
    {
      symbol: "h_min", label: "thickness of a cantilever whose sag need not be computed", expression: "c / 10", unit: "in", source: "ACI 318-19 Table 7.3.1.1", result: edge.reachIn / 10,
      values: {c: given(edge.reachIn, "in", "reach past the outermost stem")},
    },
  ]};
}
