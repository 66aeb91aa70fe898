import {requireNumber} from "../check.js";
import {InputError, under} from "../errors.js";

/**
 * What stands before a window, taken as endless along the facade: a far skyline by its angle above the horizontal, the
 * same from every desk; or the top of something near, by its height above this room's floor and its distance from the
 * glass.
 */
export type Obstruction = {readonly angleDeg: number} | {readonly heightFt: number; readonly distanceFt: number};

/** A beam that hangs into the room between the window and its depth, parallel to the window and as long as one can see. */
export interface HangingBeam {
  /** Window wall's inner face to the beam's face toward that window, in; 0 or more. */
  readonly awayIn: number;
  /** Finished floor to the beam's underside, in; 0 or more. */
  readonly footIn: number;
}

/** A band of glass in a wall, centered along it. Heights are above the room's finished floor. */
export interface WindowBand {
  /** Bottom of the glass: the top of the upstand, in. */
  readonly sillIn: number;
  /** Top of the glass, in. */
  readonly headIn: number;
  /** Length of the band, ft; "endless" where it runs on past the room as far as one can see. */
  readonly widthFt: number | "endless";
  /** From the wall's inner face out to the glass, in: the depth of the sill inside. The glass is taken as flush outside. */
  readonly revealIn: number;
  /** Part of the opening that frames take, 0 to 0.6. */
  readonly frameShare: number;
  /** Part of the light that clean glass lets through square to it, 0.05 to 0.95. */
  readonly transmittanceShare: number;
  /** Part of that which is left between two cleanings, 0.3 to 1. */
  readonly maintenanceShare: number;
  readonly obstruction?: Obstruction;
  /** What hangs inside between this window and the room beyond, nearest first; nothing if left out. */
  readonly beams?: readonly HangingBeam[];
}

/** How much light the surfaces of a room reflect, 0 to 0.9. */
export interface Reflectances {
  readonly floorShare: number;
  readonly wallShare: number;
  readonly ceilingShare: number;
}

/** A room lit from one side, or from two opposite ones. */
export interface DaylightInput {
  /** From the window wall's inner face to the opposite wall's, ft. */
  readonly depthFt: number;
  /** Along the window wall, ft. */
  readonly widthFt: number;
  /** Finished floor to ceiling, in. */
  readonly ceilingIn: number;
  /** Height at which the light is wanted, in; {@link WORK_PLANE_IN} if left out. */
  readonly workPlaneIn?: number;
  /** Distance of the line of points, which runs away from the window, from the window's middle, ft; 0 if left out. */
  readonly offsetFt?: number;
  readonly reflectances: Reflectances;
  readonly window: WindowBand;
  /** The window in the opposite wall, if there is one. */
  readonly opposite?: WindowBand;
}

/** Height of a desk: 2 ft 6 in (common practice). */
export const WORK_PLANE_IN = 30;
/** Clear double glazing in thin frames, cleaned twice a year in a town (common practice). */
export const USUAL_GLAZING = {frameShare: 0.15, transmittanceShare: 0.75, maintenanceShare: 0.9} as const;

/**
 * Returns the input if it describes a room with its windows.
 *
 * @throws InputError if a value is out of range, or a window does not fit into its wall
 */
export function checkedDaylight(input: DaylightInput): DaylightInput {
  requireNumber(input.depthFt, {path: "depthFt", label: "depth of the room", unit: "ft", min: 4, max: 300});
  requireNumber(input.widthFt, {path: "widthFt", label: "width of the room", unit: "ft", min: 4, max: 2000});
  requireNumber(input.ceilingIn, {path: "ceilingIn", label: "ceiling height", unit: "in", min: 12, max: 600});
  requireNumber(input.workPlaneIn ?? WORK_PLANE_IN, {path: "workPlaneIn", label: "work plane", unit: "in", min: 0, max: input.ceilingIn});
  requireNumber(input.offsetFt ?? 0, {path: "offsetFt", label: "line of points beside the window's middle", unit: "ft", min: -input.widthFt / 2, max: input.widthFt / 2});
  for (const [key, label] of [["floorShare", "floor"], ["wallShare", "walls"], ["ceilingShare", "ceiling"]] as const) {
    requireNumber(input.reflectances[key], {path: `reflectances.${key}`, label: `reflectance of the ${label}`, unit: "", min: 0, max: 0.9});
  }
  under("window", () => checkedWindow(input.window, input));
  const {opposite} = input;
  if (opposite) under("opposite", () => checkedWindow(opposite, input));
  return input;
}

/** Returns the window if it fits into its wall; throws {@link InputError} otherwise. */
export function checkedWindow(window: WindowBand, wall: Pick<DaylightInput, "widthFt" | "ceilingIn">): WindowBand {
  requireNumber(window.headIn, {path: "headIn", label: "window head", unit: "in", min: 1, max: wall.ceilingIn});
  requireNumber(window.sillIn, {path: "sillIn", label: "sill", unit: "in", min: 0, max: wall.ceilingIn});
  if (window.sillIn >= window.headIn) {
    throw new InputError({path: "sillIn", label: "sill", value: window.sillIn, unit: "in", allowed: `below the window head, ${window.headIn} in`,
      advice: "The upstand reaches the window head: there is no glass"});
  }
  if (window.widthFt !== "endless") {
    requireNumber(window.widthFt, {path: "widthFt", label: "window width", unit: "ft", min: 0.5, max: wall.widthFt});
  }
  requireNumber(window.revealIn, {path: "revealIn", label: "reveal", unit: "in", min: 0, max: 60});
  requireNumber(window.frameShare, {path: "frameShare", label: "share of frames", unit: "", min: 0, max: 0.6});
  requireNumber(window.transmittanceShare, {path: "transmittanceShare", label: "transmittance of the glass", unit: "", min: 0.05, max: 0.95});
  requireNumber(window.maintenanceShare, {path: "maintenanceShare", label: "share left by dirt", unit: "", min: 0.3, max: 1});
  const {obstruction} = window;
  if (obstruction) under("obstruction", () => checkedObstruction(obstruction));
  window.beams?.forEach((beam, i) => {
    requireNumber(beam.awayIn, {path: `beams.${i}.awayIn`, label: "window to the beam", unit: "in", min: 0, max: 12_000});
    requireNumber(beam.footIn, {path: `beams.${i}.footIn`, label: "floor to the beam", unit: "in", min: 0, max: 1200});
  });
  return window;
}

/** Returns the obstruction if it is one; throws {@link InputError} otherwise. */
export function checkedObstruction(obstruction: Obstruction): Obstruction {
  if ("angleDeg" in obstruction) {
    requireNumber(obstruction.angleDeg, {path: "angleDeg", label: "angle of the skyline", unit: "degrees", min: 0, max: 89});
  } else {
    requireNumber(obstruction.heightFt, {path: "heightFt", label: "height of what stands outside", unit: "ft", min: -500, max: 2000});
    requireNumber(obstruction.distanceFt, {path: "distanceFt", label: "distance of what stands outside", unit: "ft", min: 1, max: 10000});
  }
  return obstruction;
}
