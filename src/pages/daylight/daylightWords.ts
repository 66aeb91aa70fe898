import {sharePercents} from "../../lib/daylight/shares.js";
import type {DesignDaylight} from "../../lib/daylight/designDaylight.js";
import type {Working} from "../../lib/step.js";
import {decimals, feetAndInches, percent} from "../../lib/units.js";
import {element} from "../../components/dom.js";
import {live} from "../../components/live.js";
import {quantity} from "../../components/quantity.js";

/** How much of the floor has daylight to work by. */
export function litWords({result}: DesignDaylight): string {
  const {daylit, good, partial} = sharePercents(result.shares);
  return `${daylit}\u00a0% of the depth: ${good}\u00a0% well lit, ${partial}\u00a0% partly.`;
}

/** The rule of the head of the glass beside what is found. */
export function reachSentence({input, result}: DesignDaylight): string {
  const {leastFt, usualFt, mostFt} = result.headHeightFt;
  const sides = input.opposite ? ` from each side of a floor ${decimals(input.depthFt)} ft deep` : ` into a room ${decimals(input.depthFt)} ft deep`;
  return `By rule of thumb, daylight reaches twice as far as the head of the glass is high, 1\u00bd times with blinds and 2\u00bd at the most: with the head at ${feetAndInches(input.window.headIn)}, ${decimals(leastFt)}, ${decimals(usualFt)} and ${decimals(mostFt)} ft${sides}.`;
}

/** Where the sky ends. */
export function skySentence({input, result}: DesignDaylight): string {
  return `${skyEnds({input, result})}${girderSentence(input)}`;
}

/** What the girders between the bays do to the light of the far window. */
function girderSentence({window: {beams = []}}: DesignDaylight["input"]): string {
  const [first] = beams;
  if (!first) return "";
  return ` ${beams.length === 1 ? "The girder" : `Each of the ${beams.length} girders`} between two bays hangs to ${feetAndInches(first.footIn)} above the floor, lower than the head of the glass, and takes the upper part of the far window's sky from the desks behind it.`;
}

function skyEnds({input, result}: Pick<DesignDaylight, "input" | "result">): string {
  if (result.noSkyFt === undefined) return "Nothing outside is higher than the window's head, so every desk sees some sky.";
  if (result.noSkyFt <= 0) return "What stands outside hides the sky from every desk.";
  return result.skySeenShare >= 1
    ? `Sky is seen from desks up to ${decimals(result.noSkyFt)} ft from a window, which is all of the floor.`
    : `Beyond the no-sky line, ${decimals(result.noSkyFt)} ft from ${input.opposite ? "each" : "the"} window, a desk sees no sky; ${percent(1 - result.skySeenShare)} of the floor is there.`;
}

/** The average by formula, and what the places say. */
export function averageSentence({result}: DesignDaylight, working: () => Promise<Working>): HTMLElement {
  const {averagePercent} = result.average;
  return element("span", {}, "By the formula that ignores depth, the average is ", quantity("average daylight, %", live(`${decimals(averagePercent, 1)} %`, working)), `; the mean over the floor is ${decimals(result.meanPercent, 1)} %.`,
    averagePercent >= 5 ? " Above 5 % a room looks cheerfully daylit." : averagePercent >= 2 ? " Between 2 and 5 % a room looks daylit, with some help from electric light." : " Below 2 % a room looks dim by day.");
}
