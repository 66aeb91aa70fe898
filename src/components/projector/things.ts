import {lightPart} from "../drawings/parts.js";

/** Where things are named that light together. */
const LIT = "main, .popover-body";

/** Parts that are told by another name than their own in plain words. */
const WORDS: Readonly<Record<string, string>> = {precast: "precast concrete", light: "lights", "stress-block": "compression block", "camber-release": "at release", "camber-erection": "when set", "camber-long": "in the long term"};

/** What stands around a picture and is no part of what it is about. */
const ASIDE = /^(person|desk|ground|joint|bay)$/;

/** The name of a part in words; a member keeps its own. */
export const thingWords = (name: string): string => WORDS[name] ?? (/^\d/.test(name) ? name : name.replace(/-/g, " "));

/** Points at the named things that can be seen, one after the other. Every function works without `this`. */
export function thingPointer(told: (words: string) => void): {step(by: 1 | -1): void; off(): void; on(): boolean} {
  let at = "";
  const light = (name: string) => {
    at = name;
    for (const root of document.querySelectorAll(LIT)) lightPart(root, name);
    told(name === "" ? "" : thingWords(name));
  };
  return {
    on: () => at !== "",
    off: () => light(""),
    step(by) {
      const names = thingsSeen();
      if (names.length === 0) {
        told("nothing is named here");
        return;
      }
      const now = names.indexOf(at);
      light(names[now < 0 ? (by > 0 ? 0 : names.length - 1) : (now + by + names.length) % names.length] as string);
    },
  };
}

/** Names of the things that can be seen, in the order in which they stand; an open popover's alone where there is one. */
function thingsSeen(): string[] {
  const popover = document.querySelector(".popover:popover-open .popover-body");
  const roots = popover?.querySelector("[data-part]") ? [popover] : [...document.querySelectorAll("main")];
  const seen = roots.flatMap((root) => [...root.querySelectorAll<HTMLElement | SVGElement>("[data-part]")]).filter((node) => node.getClientRects().length > 0);
  return [...new Set(seen.map((node) => node.dataset["part"] ?? ""))].filter((name) => name !== "" && !ASIDE.test(name));
}
