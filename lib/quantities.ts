import type {ColumnsResult} from "./columns/columnsResult.js";
import type {ColumnPosition} from "./columns/levels.js";
import {sharePercents} from "./daylight/shares.js";
import {deckPieces} from "./deck/pieces.js";
import type {Evaluation} from "./evaluate.js";
import {deepestSnowPsf} from "./snow/deepest.js";
import {clearUnderGirderIn} from "./story/stack.js";
import {inches, kipFt} from "./units.js";

type Reader = (evaluation: Evaluation, columns: () => ColumnsResult) => number | undefined;

const side = (position: ColumnPosition): Reader => (_, columns) => columns().columns.find((one) => one.position === position)?.column.sideIn;
const foot = (position: ColumnPosition): Reader => (_, columns) => columns().columns.find((one) => one.position === position)?.foot.governing.kip;

/**
 * The numbers of a design that more than one page shows: their names, in the units that each name ends in, and where the
 * results hold them. Whatever shows one of them carries its name, and a test compares all that carry the same.
 */
const READERS = {
  "span, in": ({design}) => inches(design.bay.spanFt),
  "demand, psf": ({deck}) => deck.demandPsf,
  "dead load, psf": ({deck}) => deck.superimposedDeadPsf,
  "live load, psf": ({deck}) => deck.livePsf,
  "safe load, psf": ({deck}) => deck.safe.safeLoadPsf,
  "pieces": ({design, member}) => deckPieces(design, member).perFloor,
  "piece, tons": ({design, member}) => deckPieces(design, member).weightTon,
  "effective prestress, ksi": ({deck}) => deck.midspan.losses.effectiveStressKsi,
  "camber when set, in": ({camber}) => camber.erectionIn,
  "camber after years, in": ({camber}) => camber.longTermIn,
  "topping least, in": ({topping}) => topping?.leastIn,
  "topping greatest, in": ({topping}) => topping?.greatestIn,
  "topping average, in": ({topping}) => topping?.averageIn,
  "topping of a bay, yd3": ({topping}) => topping?.bayYd3,
  "joint step, in": ({joint}) => joint?.meanIn,
  "beam depth, in": ({edgeBeam}) => edgeBeam.depthIn,
  "beam load, plf": ({edgeBeam}) => edgeBeam.loads.factoredPlf,
  "beam moment, kip-ft": ({edgeBeam}) => kipFt(edgeBeam.momentKipIn),
  "beam twist, kip-ft": ({edgeBeam}) => kipFt(edgeBeam.torsionKipIn),
  "beam weight, kip": ({edgeBeam}) => edgeBeam.handling.weightKip,
  "seat left, in": ({edgeBeam}) => edgeBeam.seat.afterToleranceIn,
  "girder depth, in": ({girder}) => girder?.depthIn,
  "girder below deck, in": ({girder}) => girder?.belowDeckIn,
  "girder moment, kip-ft": ({girder}) => girder && kipFt(girder.momentKipIn),
  "girder reaction, kip": ({girder}) => girder?.reactionKip,
  "girder twist, kip-ft": ({girder}) => girder && kipFt(girder.twist.torsionKipIn),
  "clear under girder, in": ({girder, story}) => girder && clearUnderGirderIn(story, girder),
  "deepest snow, psf": ({roofLoads}) => deepestSnowPsf(roofLoads),
  "roof demand, psf": ({roof}) => roof?.deck.demandPsf,
  "roof safe load, psf": ({roof}) => roof?.deck.safe.safeLoadPsf,
  "roof rise, in": ({roof}) => roof?.riseIn,
  "interior column, in": side("interior column"),
  "edge column, in": side("edge column"),
  "girder end column, in": side("girder end column"),
  "corner column, in": side("corner column"),
  "interior column foot, kip": foot("interior column"),
  "edge column foot, kip": foot("edge column"),
  "girder end column foot, kip": foot("girder end column"),
  "corner column foot, kip": foot("corner column"),
  "floor to floor, in": ({story}) => story.floorToFloorIn,
  "ceiling, in": ({story}) => story.ceilingHeightIn,
  "sill, in": ({story}) => story.sillIn,
  "head, in": ({story}) => story.headIn,
  "glass, in": ({story}) => Math.max(0, story.glassIn),
  "duct flow, cfm": ({services}) => services.ducts?.flowCfm,
  "duct velocity, ft/min": ({services}) => services.ducts?.result.mainVelocityFpm,
  "stalls": ({parking}) => parking?.stalls,
  "floor per stall, ft2": ({parking}) => parking?.ft2PerStall,
  "clear over cars, in": ({parking}) => parking?.heights?.least.clearIn,
  "daylit, %": ({daylight}) => daylight && sharePercents(daylight.result.shares).daylit,
  "average daylight, %": ({daylight}) => daylight?.result.average.averagePercent,
  "least daylight, %": ({daylight}) => daylight?.result.leastPercent,
} satisfies Readonly<Record<string, Reader>>;

/** Such a number's name. */
export type QuantityName = keyof typeof READERS;

/** All of them. */
export const QUANTITIES: Readonly<Record<QuantityName, Reader>> = READERS;
