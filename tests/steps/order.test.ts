import {describe, expect, test} from "vitest";
import {axialCapKip} from "../../lib/columns/axialLimits.js";
import {biaxialState} from "../../lib/columns/biaxial.js";
import type {ColumnResult} from "../../lib/columns/columnsResult.js";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate, type Evaluation} from "../../lib/evaluate.js";
import {COLUMN_WORKINGS, diaphragmWorking} from "../../lib/steps/columns.js";
import type {Working} from "../../lib/step.js";
import {developmentWorking, topSteelWorking} from "../../lib/steps/ends.js";
import {reductionWorking} from "../../lib/steps/loads.js";
import {WORKINGS, type WorkingName} from "../../lib/steps/workings.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

const evaluated = (id: string, changes: Readonly<Record<string, unknown>> = {}) => evaluate(withValues(seed(id), changes), catalog);
const order = ({steps}: Working) => steps.map(({symbol}) => symbol).join(" ");
const of = (name: WorkingName, id: string, changes: Readonly<Record<string, unknown>> = {}) => order(WORKINGS[name](evaluated(id, changes)));
/** What is said beside a step; undefined where nothing is, or where there is no such step. */
const note = ({steps}: Working, symbol: string) => steps.find((step) => step.symbol === symbol)?.note;
/** A strand row's strain from its prestress and the section's, and its stress. */
const rows = (count: number) => Array.from({length: count}, (_, i) => `epsilon_ps${i + 1} f_ps${i + 1}`).join(" ");

/** The column of a starter at a position of its grid. */
function column(id: string, position: ColumnResult["position"]): ColumnResult {
  const found = columnsOf(evaluated(id), catalog).columns.find((one) => one.position === position);
  if (!found) throw new Error(`no ${position}`);
  return found;
}

describe("the workings of a design go from what is given to what they are called after:", () => {
  test.each<[WorkingName, string]>([
    ["deadLoad", "w_sd"], ["demand", "L w_L w"], ["edgeBeamReduction", "L"], ["section", "S_b w_o n y_bc I_c"],
    ["losses", "P_i f_cir ES CR SH RE f_se"], ["timeSteps", "f_R0 f_p0 f_c0 C_1 epsilon_s1 f_R1 f_p1 f_se"],
    ["serviceStress", "P M_o M_s f_b f_t"], ["factored", "w_u M_u"], ["strength", `epsilon_1 ${rows(5)} T M_n epsilon_t phi M_d`], ["shear", "V_u P V_ci V_cw V_d"],
    ["safeLoad", `epsilon_1 ${rows(5)} T M_n epsilon_t phi M_d w_n w_1 w_safe`], ["camber", "d_p d_o d_1 d_2 d_l d_t d_3 d_s d_4"],
    ["development", "l_t f_ps l_d f_x"], ["sag", "w_cr d_L a"], ["walking", "w_v d_v f_n W a_w"], ["topSteel", "y_0 T_1 T_2 A_s"], ["holdDown", ""],
    ["topping", "t_s V V_f"], ["extraWeight", "w_a w_e w_m C d_c"], ["beamDepth", "h"], ["seat", "l_b l_n"], ["beamLoads", "w_D w_L w_u R_u M_u V_u"],
    ["beamStrength", "A_s A_scr A_sreq A_smin M_d phi_Vc"], ["torsion", "e T_u T_th"], ["torsionDesign", "A_oh p_h v_u v_max A_t A_v A_leg A_l"],
    ["ledgePunching", "w_D P P_u P_h beta_g P_c b_o P_t P_n"], ["ledgeSteel", "N_u M_u A_f A_n A_vf A_sc m A_sh"], ["pad", "w_D P P_u f_p f_pa P_b"],
    ["girderDepth", "h"], ["girderLoads", "w_d w_l M_u V_u"], ["girderStrength", `epsilon_1 ${rows(2)} T M_n epsilon_t phi M_d`], ["girderService", "M_s f_b f_t"],
    ["girderShear", "V_c V_d A_v"], ["girderTwist", "e w_1 T_u T_th"], ["girderCamber", "d_e M_l d_l"], ["diaphragm", "M T A_s v"],
    ["roofDemand", "w_d X w_v w"], ["roofFall", "h n A_d"], ["ponding", "C_s m C_p C"], ["spread", "s_E s_f s_t s_P s_w s_L s m_d"],
    ["buildingHeight", "z H"], ["deckEdge", "c h_min"],
    ["story", "h_c h_g"], ["ducts", "Q v_m Q_b v_b h_s"], ["averageDaylight", "T W A DF"], ["noSky", "x_n"], ["skyComponent", "t_b S_b S_a S SC"],
  ])("%s", (name, symbols) => {
    expect(of(name, "branch-library")).toBe(symbols);
  });
});

describe("a step that takes an earlier one's result takes its number", () => {
  test.each(seeds)("in $id", ({design}) => {
    const results = evaluate(design, catalog);
    const ofColumns = columnsOf(results, catalog).columns.flatMap((one) =>
      Object.values(COLUMN_WORKINGS).flatMap((working) => one.column.stories.map((_, story) => working(one, story))));
    let taken = 0;
    for (const {title, steps} of [...Object.values(WORKINGS).map((working) => working(results)), ...ofColumns]) {
      steps.forEach((step, i) => {
        for (const {symbol, result} of steps.slice(0, i)) {
          const given = step.values[symbol];
          if (!given) continue;
          taken++;
          expect(Math.abs(given.value - result), `${title}: ${step.symbol} takes ${symbol}`).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(result)));
        }
      });
    }
    expect(taken).toBeGreaterThan(100);
  });
});

describe("what a design has not is not worked out:", () => {
  test("a girder under one bay", () => {
    const one = evaluated("branch-library", {"bay.baysAcross": 1});
    for (const name of ["girderDepth", "girderLoads", "girderStrength", "girderService", "girderShear", "girderTwist", "girderCamber"] as const) expect(order(WORKINGS[name](one)), name).toBe("");
  });

  test("ducts without air, a topping that is not cast and its extra weight", () => {
    for (const name of ["ducts", "topping", "extraWeight", "walking"] as const) expect(of(name, "parking-structure"), name).toBe("");
    expect(of("camber", "parking-structure")).toBe("d_p d_o d_1 d_2 d_s d_4");
    expect(of("section", "parking-structure")).toBe("S_b w_o");
  });

  test("a ledge on a beam without one", () => {
    for (const kind of ["pockets", "below"]) for (const name of ["ledgePunching", "ledgeSteel"] as const) expect(of(name, "branch-library", {"edgeBeam.kind": kind}), name).toBe("");
  });

  test("steel in a top that the strands press, as in planks", () => {
    expect(of("topSteel", "classroom-wing")).toBe("");
  });

  test("a corbel and a footing that no method covers, and the chord of a floor that is no beam", () => {
    const bare = {...column("branch-library", "interior column"), corbel: undefined, footing: undefined};
    expect(COLUMN_WORKINGS.corbel(bare).steps).toEqual([]);
    expect(COLUMN_WORKINGS.footing(bare).steps).toEqual([]);
    const library = evaluated("branch-library");
    expect(diaphragmWorking({...library, diaphragm: {...library.diaphragm, result: undefined}} as Evaluation).steps).toEqual([]);
  });

  test("daylight without glass", () => {
    const dark = {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8};
    for (const name of ["averageDaylight", "noSky", "skyComponent"] as const) {
      expect(of(name, "branch-library", dark), name).toBe("");
      expect(WORKINGS[name](evaluated("branch-library", dark)).title).toBe("No glass, no daylight");
    }
  });
});

describe("what is otherwise is worked out otherwise:", () => {
  test("a live load of one's own that is taken in full, and that of an assembly room, go as they are", () => {
    const room = (occupancy: string, own?: object) => evaluated("branch-library", {"loads.rooms": [{name: "Great Hall", occupancy, ...(own ? {own} : {})}]});
    for (const [results, words] of [
      [room("laboratory", {livePsf: 100, reducible: false, reason: "Benches"}), "It is taken in full, as it was entered."], [room("assembly-movable"), "Assembly rooms do fill up: no reduction."],
    ] as const) {
      expect(WORKINGS.edgeBeamReduction(results)).toMatchObject({title: "Live load of great hall on the edge beam", steps: [{symbol: "L", note: words}]});
      expect(WORKINGS.demand(results).steps.find(({symbol}) => symbol === "w_L")?.label).toMatch(/ of great hall, the heaviest room$/);
    }
  });

  test("heavy loads and cars take off a fifth where a member carries several floors, as a column does", () => {
    const columns = (id: string) => evaluated(id).loads.elements.filter(({element}) => element.endsWith("column"));
    for (const id of ["records-store", "parking-structure"]) for (const element of columns(id)) {
      const {steps} = reductionWorking(element);
      expect(steps.map(({symbol}) => symbol).join(" ")).toBe("A_I R L");
      expect(steps[2]?.note).toBe("At most 20 % off, and only because it carries several floors.");
    }
  });

  test("a girder's shear is looked at where it comes nearest to its limit, between support and midspan", () => {
    const places = new Set<number>();
    for (const changes of [{}, {"girder.kind": "rectangle", "girder.depthIn": 30, "girder.strands": 20}, {"bay.beamSpanFt": 20}, {"girder.strands": 8}, {"girder.webWidthIn": 30}]) {
      const {steps} = WORKINGS.girderShear(evaluated("records-store", changes));
      for (const {note: words} of steps) {
        const percent = /(\d+) % of the span/.exec(words ?? "")?.[1];
        if (percent === undefined) continue;
        places.add(Number(percent));
        expect(Number(percent)).toBeLessThanOrEqual(50);
      }
    }
    expect(Math.max(...places)).toBeGreaterThan(0);
  });

  test("bond is looked at where it is used most: the distance is that from the nearer end, short of the transfer length too", () => {
    const {member, deck, design: {bay}} = evaluated("branch-library");
    const {development} = deck.service;
    const at = (share: number) => {
      const working = developmentWorking(member, bay.spanFt, {...deck, service: {...deck.service, development: {...development, share}}});
      checkWorking(working);
      return working.steps[3];
    };
    // Of 40 ft, 480 in; transfer takes some 28 in.
    expect([0.02, 0.98, 0.25, 0.5].map((share) => at(share)?.values["x"]?.value)).toEqual([9.6, 9.6, 120, 240].map((inches) => expect.closeTo(inches, 6)));
    expect([0.02, 0.98, 0.25].map((share) => at(share)?.expression)).toEqual(["f_se * x / l_t", "f_se * x / l_t", "f_se + (x - l_t) / d_b"]);
  });

  test("the top's steel is told where it is needed: at the end of straight strands, at the hold-down of depressed ones", () => {
    const {member, deck} = evaluated("branch-library");
    const said = (place: "end" | "midspan" | "hold-down") => topSteelWorking(member, {transfer: {...deck.transfer, places: deck.transfer.places.map((one) => ({...one, place}))}}).steps.at(-1)?.label;
    expect([said("end"), said("midspan"), said("hold-down")]).toEqual(["steel in the top, at the end", "steel in the top, at midspan", "steel in the top, at the hold-down"]);
  });

  test("the end of a short side and the height of a building are worked out for what they are", () => {
    expect(of("endSpandrel", "classroom-wing")).toBe("w_s w_w M S f_t f_r");
    expect(of("endSpandrel", "branch-library")).toBe("");
    // Without a roof of its own the topmost level is a floor.
    expect(of("buildingHeight", "parking-structure")).toBe("H");
  });

  test("time steps count the layers over all of a tee's width: dead load relieves the concrete, so that it creeps less", () => {
    const left = (loadPsf: number) => WORKINGS.timeSteps(evaluated("branch-library", {"loads.layers": [{name: "Fill", loadPsf}]})).steps.at(-1)?.result ?? NaN;
    expect(left(100) - left(0)).toBeGreaterThan(1);
  });

  test("time goes on in 79 more steps after the first of 80", () => {
    expect(note(WORKINGS.timeSteps(evaluated("branch-library")), "f_p1")).toContain("79 more steps follow");
  });

  test("a live load that may be reduced has its influence area, and a small area or a garage says why it is not", () => {
    expect(of("edgeBeamReduction", "classroom-wing")).toBe("A_I R L");
    const small = WORKINGS.demand(evaluated("classroom-wing"));
    expect(order(small)).toBe("A_I L w_L w");
    expect(note(small, "L")).toBe("Below 400 ft2 of influence area: no reduction.");
    expect(note(WORKINGS.demand(evaluated("parking-structure")), "L")).toBe("A garage does fill up: no reduction for one floor.");
    expect(note(WORKINGS.demand(evaluated("branch-library")), "L")).toBe("Above 100 psf a floor is meant to be full: no reduction for one floor.");
  });

  test("camber at another age than the multipliers mean has its creep", () => {
    const old = WORKINGS.camber(evaluated("branch-library", {"topping.ageDays": 300}));
    expect(order(old)).toBe("d_p d_o d_1 g d_2 d_l d_t d_3 d_s d_4");
    expect(note(old, "d_2")).toBe("What the multipliers add to 1 is creep, and grows as creep does.");
  });

  test("one hold-down feels the strands from both sides, two feel them from one", () => {
    const depressed = (pattern: string) => WORKINGS.holdDown(evaluated("branch-library", {"deck.member": "12DT32", "deck.pattern": pattern, "deck.toppingIn": 3}));
    expect(order(depressed("128-D1"))).toBe("t H");
    expect(note(depressed("128-D1"), "H")).toBe("At a single point the strands pull from both sides.");
    expect(order(depressed("148-D2"))).toBe("t H");
    expect(note(depressed("148-D2"), "H")).toBeUndefined();
  });

  test("planks load their beam evenly and press its ledge in a line", () => {
    expect(of("beamLoads", "classroom-wing")).toBe("w_D w_L w_u M_u V_u");
    expect(of("ledgePunching", "classroom-wing")).toBe("w_D P P_u P_l");
    expect(of("pad", "classroom-wing")).toBe("w_D P P_u P_b");
  });

  test("a stem near the beam's end punches through less ledge than one within the span", () => {
    expect(WORKINGS.ledgePunching(evaluated("branch-library", {"edgeBeam.strengthPsi": 5000})).title).toBe("A stem near the beam's end, punching through the ledge");
    expect(WORKINGS.ledgePunching(evaluated("branch-library", {"deck.member": "12DT32", "deck.pattern": "128-D1", "deck.toppingIn": 0})).title).toBe("A stem punching through the ledge");
  });

  test("strands in the edge beam count with the bars that lie beside them, if any do", () => {
    const few = WORKINGS.beamStrength(evaluated("branch-library", {"edgeBeam.strengthPsi": 5000, "edgeBeam.steel": "strands", "edgeBeam.strands": 6, "bay.beamSpanFt": 26}));
    expect(order(few)).toBe("A_ps M_d phi_Vc");
    expect(note(few, "M_d")).toBe("2 #9 bars besides the strands are counted with them.");
    const many = WORKINGS.beamStrength(evaluated("branch-library", {"edgeBeam.strengthPsi": 5000, "edgeBeam.steel": "strands", "edgeBeam.strands": 12}));
    expect(order(many)).toBe("A_ps M_d phi_Vc");
    expect(note(many, "M_d")).toBeUndefined();
    expect(note(WORKINGS.beamStrength(evaluated("branch-library")), "M_d")).toBeUndefined();
  });

  test("pads over the web's middle do not twist a beam below the deck, those on a ledge do", () => {
    expect(note(WORKINGS.torsion(evaluated("branch-library", {"edgeBeam.kind": "below"})), "e")).toMatch(/over the web's middle/);
    expect(note(WORKINGS.torsion(evaluated("branch-library")), "e")).toMatch(/at the outer quarter/);
    const thin = {"edgeBeam.ledgeDepthIn": 4, "edgeBeam.coverIn": 4};
    expect(note(WORKINGS.torsion(evaluated("branch-library", thin)), "T_th")).toBe("The web alone makes the better outline, so the ledge is not counted.");
    expect(note(WORKINGS.torsion(evaluated("branch-library")), "T_th")).toBeUndefined();
    expect(note(WORKINGS.torsion(evaluated("branch-library", {"edgeBeam.kind": "pockets"})), "T_th")).toBeUndefined();
  });

  test("the leg of a stirrup beside the ledge hangs it up, where there is one", () => {
    expect(note(WORKINGS.torsionDesign(evaluated("branch-library")), "A_leg")).toMatch(/hang up the ledge/);
    expect(note(WORKINGS.torsionDesign(evaluated("branch-library", {"edgeBeam.kind": "below"})), "A_leg")).toBeUndefined();
  });

  test("a slender slab that is not twisted enough to count has no stirrups for it", () => {
    const thin = {"edgeBeam.ledgeDepthIn": 4, "edgeBeam.coverIn": 4};
    expect(of("torsion", "classroom-wing", thin)).toBe("e T_u");
    expect(of("torsionDesign", "classroom-wing", thin)).toBe("");
  });

  test("a girder of one depth is a given, and where it hangs low it hides the sky", () => {
    const low = evaluated("branch-library", {"girder.kind": "rectangle", "girder.depthIn": 60, "daylight.obstructionDeg": 5});
    expect(order(WORKINGS.girderDepth(low))).toBe("h_b");
    expect(WORKINGS.noSky(low).title).toBe("No-sky line, behind the girder");
    expect(WORKINGS.noSky(evaluated("branch-library")).title).toBe("No-sky line");
  });

  test("with nothing outside the sky is seen from everywhere, with a head below the desks from nowhere", () => {
    const open = WORKINGS.noSky(evaluated("branch-library", {"daylight.obstructionDeg": 0}));
    expect([open.title, order(open)]).toEqual(["Nothing outside hides the sky: it is seen from everywhere", ""]);
    const low = evaluated("branch-library", {"edgeBeam.upstandIn": 0, "story.floorToFloorFt": 8, "story.ceiling": "head", "daylight.obstructionDeg": 60, "daylight.revealIn": 36});
    expect([WORKINGS.noSky(low).title, order(WORKINGS.noSky(low))]).toEqual(["No desk sees sky", ""]);
  });

  test("a soffit that cracks has a cracked section, and what moves partitions has what sagged before", () => {
    const weak = {"deck.member": "10DT24", "deck.pattern": "48-S", "deck.toppingIn": 0};
    expect(of("sag", "branch-library", weak)).toBe("w_cr I_cr d_L a");
    expect(of("sag", "branch-library", {"criteria.sagLimit": "L/240"})).toBe("w_cr d_L c d_m a");
    expect(WORKINGS.sag(evaluated("branch-library", {"criteria.sagLimit": "L/240"})).title).toBe("Movement after partitions are in");
    expect(WORKINGS.sag(evaluated("branch-library")).title).toBe("Sag under live load");
  });
});

describe("the workings of a column:", () => {
  test.each<[ColumnResult["position"], keyof typeof COLUMN_WORKINGS, string, string]>([
    ["interior column", "moment", "e_c M_ta M_ba M_2a lambda_a M_ua lambda_c M_min delta_c M_uc", "e_c M_ta M_2a lambda_a M_ua lambda_c M_min delta_c M_uc"],
    ["edge column", "moment", "lambda_a M_min delta_a M_ua M_tc M_bc M_2c lambda_c M_uc", "lambda_a M_min delta_a M_ua M_tc M_2c lambda_c M_uc"],
    ["girder end column", "moment", "e_c M_ta M_ba M_2a lambda_a M_ua lambda_c M_min delta_c M_uc", "e_c M_ta M_2a lambda_a delta_a M_ua lambda_c M_min delta_c M_uc"],
    ["corner column", "moment", "e_c M_ta M_ba M_2a lambda_a M_ua M_tc M_bc M_2c lambda_c M_uc", "e_c M_ta M_2a lambda_a M_min delta_a M_ua M_tc M_2c lambda_c delta_c M_uc"],
    ["interior column", "reduction", "", "A_I R P_L"], ["corner column", "reduction", "", "A_I R P_L"],
    ["interior column", "load", "P_a D P_u P_s", "P_a D P_u P_s"],
    ["interior column", "interaction", "a A_c C F_1 F_2 F_3 F_4 P_n M_na M_nc phi P_cap P_d", "a A_c C F_1 F_2 F_3 F_4 P_n M_na M_nc phi P_cap P_d"],
    ["interior column", "corbel", "N_uc M_u V_d A_sc", "N_uc M_u V_d A_sc"], ["interior column", "footing", "B_n q_u V_p M_u", "B_n q_u V_p M_u"],
  ])("%s, %s, under the roof and under the floor", (position, name, underRoof, underFloor) => {
    const one = column("branch-library", position);
    expect([0, 1].map((story) => order(COLUMN_WORKINGS[name](one, story)))).toEqual([underRoof, underFloor]);
  });

  test("bent along its beams alone it has rows and one moment, and no least moment where it is stocky", () => {
    // Without snow on the top level.
    const dry = evaluate(withValues(seed("parking-structure"), {"snow.groundPsf": 0}), catalog);
    const garage = columnsOf(dry, catalog).columns.find(({position}) => position === "interior column") as ColumnResult;
    expect(order(COLUMN_WORKINGS.interaction(garage, 0))).toBe("a A_c C F_1 F_2 F_3 P_n M_na phi P_cap P_d");
    expect(note(COLUMN_WORKINGS.interaction(garage, 0), "a")).toBe("c is found by trial, so that moment and axial load stand in the proportion that is asked.");
    expect(order(COLUMN_WORKINGS.moment(garage, 0))).toBe("e_c M_ta M_ba M_2a lambda_a M_ua");
  });

  test("a story below the lowest is its foot, where load and strength are greatest asked", () => {
    const library = column("branch-library", "interior column");
    expect(COLUMN_WORKINGS.load(library, 9)).toEqual(COLUMN_WORKINGS.load(library, 1));
    expect(COLUMN_WORKINGS.interaction(library, 9).title).toContain("Strength of the interior column under ");
  });

  test("bent to a double curve, its smaller end moment counts without live load", () => {
    const words = "C_m counts the smaller end moment without live load on that level, which is worse.";
    expect(note(COLUMN_WORKINGS.moment(column("branch-library", "girder end column"), 1), "delta_a")).toBe(words);
    expect(note(COLUMN_WORKINGS.moment(column("branch-library", "edge column"), 1), "delta_a")).toBeUndefined();
  });

  test("a moment names the loads that bring it, each with its factor, and none that is nothing", () => {
    for (const id of ["branch-library", "classroom-wing", "parking-structure"]) {
      for (const position of ["interior column", "edge column", "girder end column", "corner column"] as const) {
        const one = column(id, position);
        one.column.stories.forEach((_, story) => {
          for (const {symbol, values, expression} of COLUMN_WORKINGS.moment(one, story).steps.filter(({symbol: name}) => /^M_[tb]/.test(name))) {
            for (const name of ["L", "L_r"]) if (name in values) expect(values[name]?.value, `${id} ${position} ${symbol}`).not.toBe(0);
            expect(expression).not.toMatch(/(^|[ (])0 \*/);
          }
        });
      }
    }
  });

  test("a stocky column that its beams do not bend in one way has no moment that way", () => {
    const stocky = columnsOf(evaluated("branch-library", {"column.sways": true}), catalog).columns.find((one) => one.position === "edge column") as ColumnResult;
    expect(stocky.column.stories[0]?.along.slenderness.slender).toBe(false);
    expect(order(COLUMN_WORKINGS.moment(stocky, 0))).toBe("M_tc M_bc M_2c lambda_c M_uc");
  });

  test("a slender column that sways is beyond the method: its end moments stand as they are", () => {
    const tall = columnsOf(evaluated("branch-library", {"column.sways": true, "story.floorToFloorFt": 30}), catalog).columns[0] as ColumnResult;
    expect(tall.column.stories[0]?.along.slenderness).toMatchObject({slender: true, magnifier: undefined});
    const working = COLUMN_WORKINGS.moment(tall, 0);
    expect(order(working)).toBe("e_c M_ta M_ba M_2a lambda_a M_ua lambda_c M_uc");
    expect(working.steps.filter(({symbol}) => symbol.startsWith("M_u")).map(({expression}) => expression)).toEqual(["M_2", "M_2"]);
  });

  test("rows of bars are told from the compressed corner on, and the block is cut where it passes the sides", () => {
    const {column: {section}, ...one} = column("branch-library", "corner column");
    const at = column("branch-library", "corner column").column.stories[0];
    if (!at) throw new Error("no story");
    const past = (neutralAxisIn: number, angleRad: number) => {
      const state = biaxialState(section, neutralAxisIn, angleRad);
      const story = {...at, capacity: {...at.capacity, state, axialKip: Math.min(state.phi * state.axialKip, axialCapKip(section))}};
      const working = COLUMN_WORKINGS.interaction({...one, column: {...column("branch-library", "corner column").column, stories: [story]}} as ColumnResult, 0);
      checkWorking(working);
      const depths = working.steps.flatMap(({symbol, values}) => Object.entries(values).filter(([name]) => symbol.startsWith("F_") && name.startsWith("d_")).map(([, {value}]) => value));
      expect(depths).toEqual([...depths].sort((a, b) => a - b));
      return working.steps.find(({symbol}) => symbol === "A_c")?.expression;
    };
    const side = section.depthIn;
    const sixty = Math.PI / 3;
    const reach = (inches: number) => inches / section.blockFactor;
    // Of a line at 60 degrees the block passes the far end of one side at half of its length, of the other at 0.87 of it, the whole at 1.37.
    expect([0.4, 0.7, 1, 1.5].map((share) => past(reach(share * side), sixty))).toEqual([
      "(a^2) / (2 * s * k)", "(a^2 - (a - h * k)^2) / (2 * s * k)", "(a^2 - (a - h * s)^2 - (a - h * k)^2) / (2 * s * k)",
      "(a^2 - (a - h * s)^2 - (a - h * k)^2 + (a - h * s - h * k)^2) / (2 * s * k)",
    ]);
    expect(past(reach(0.5 * side), Math.PI / 2)).toBe("h * min(h, a)");
  });

  test("a use that takes no reduction, and a load taken in full, say so", () => {
    const wing = column("classroom-wing", "interior column");
    const [of] = wing.foot.reductions;
    /** The note where another rule has decided. */
    const decidedBy = (decides: string) => {
      const foot = {...wing.foot, reductions: [{...of, reduction: {...of?.reduction, decides}}]};
      const result = {...wing, foot, column: {...wing.column, takedown: {...wing.column.takedown, stories: [foot]}}} as ColumnResult;
      return note(COLUMN_WORKINGS.reduction(result, 0), "R");
    };
    expect(decidedBy("no reduction")).toBe("This use takes no reduction.");
    expect(decidedBy("taken in full")).toBe("It is taken in full, as it was entered.");
    expect(decidedBy("formula")).toBeUndefined();
    expect(note(COLUMN_WORKINGS.reduction(column("classroom-wing", "interior column"), 2), "R")).toBeUndefined();
  });
});
