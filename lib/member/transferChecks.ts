import {atMost, requires, type Check} from "../checks.js";
import {allowables} from "./allowables.js";
import type {Member} from "./member.js";
import type {Transfer, TransferPlace} from "./transfer.js";

const WHERE: Readonly<Record<TransferPlace, string>> = {"end": "at the end", "hold-down": "at the hold-down", "midspan": "at midspan"};

/** What mends too much compression, at the ends and elsewhere, and too much tension. */
export type TransferRemedies = Readonly<Record<"end" | "elsewhere" | "pull", string>>;
/** Of a deck, whose strands can be depressed, which helps its ends. */
const OF_DECK: TransferRemedies = {end: "more release strength, fewer strands or depressed ones", elsewhere: "more release strength or fewer strands", pull: "more strands or a shorter span"};
/** Of a girder, whose strands are straight. */
export const OF_GIRDER: TransferRemedies = {end: OF_DECK.elsewhere, elsewhere: OF_DECK.elsewhere, pull: "more strands, or columns closer together"};

/**
 * Checks of the young concrete when the strands are cut. Tension beyond the limit is allowed where bonded bars take it
 * (ACI 318-19 24.5.3.2.1), so it requires steel instead of failing.
 */
export function transferChecks(member: Member, {places}: Transfer, remedies = OF_DECK): Check[] {
  const allowed = allowables(member, "U");
  return places.flatMap(({place, stresses, topSteelIn2}): Check[] => {
    const compressionKsi = Math.max(stresses.bottomKsi, stresses.topKsi);
    const tensionKsi = Math.max(0, -Math.min(stresses.bottomKsi, stresses.topKsi));
    const allowedTensionKsi = place === "end" ? allowed.transferTensionEndKsi : allowed.transferTensionKsi;
    const tension = {id: `transfer tension ${place}`, label: `Tension ${WHERE[place]} when the strands are cut`, unit: "ksi", clause: "ACI 318-19 24.5.3.2"};
    return [
      atMost({
        id: `transfer compression ${place}`, label: `Compression ${WHERE[place]} when the strands are cut`, unit: "ksi", clause: "ACI 318-19 24.5.3.1",
        holds: "The young concrete can take the prestress.",
        fails: `The young concrete is compressed too hard: ${remedies[place === "end" ? "end" : "elsewhere"]}.`,
      }, compressionKsi, place === "end" ? allowed.transferCompressionEndKsi : allowed.transferCompressionKsi),
      tensionKsi > allowedTensionKsi && topSteelIn2 > 0
        ? requires({...tension, word: "needs top steel", message: `The top would crack as the strands are cut, so ${topSteelIn2.toFixed(2)} in² of bonded bars must take the tension; or depress strands, or use fewer.`}, tensionKsi, allowedTensionKsi)
        : atMost({
          ...tension,
          holds: "The young concrete does not crack where the prestress puts it in tension.",
          fails: `The soffit would crack as the strands are cut: ${remedies.pull}.`,
        }, tensionKsi, allowedTensionKsi),
    ];
  });
}
