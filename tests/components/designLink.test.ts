import {readFileSync} from "node:fs";
import {expect, test} from "vitest";
import {parseDesign} from "../../lib/design/validate.js";
import {InputError} from "../../lib/errors.js";
import {designText, linkOf, LONGEST_LINK} from "../../src/components/share/designLink.js";
import {holdsDesign} from "../../src/components/share/fragment.js";
import {pack, unpack} from "../../src/components/share/packed.js";
import {seeds} from "../support/designs.js";

const FIRST = "https://floors.example/notebook/";
const fragmentOf = (link: string) => link.slice(FIRST.length);

test("a link opens as the very design that it was made of, in far fewer characters than break on the way", async () => {
  for (const {design} of seeds) {
    const link = await linkOf(design, FIRST);
    expect(link.length).toBeLessThan(LONGEST_LINK / 1.5);
    expect(link).toMatch(/^https:\/\/floors\.example\/notebook\/#design=1\.[\w-]+$/);
    expect(holdsDesign(fragmentOf(link))).toBe(true);
    expect(parseDesign(await designText(fragmentOf(link)))).toEqual(design);
  }
});

test("a link that somebody kept from an earlier kit opens, brought up from the version of then", async () => {
  const kept = readFileSync(new URL("keptLink.txt", import.meta.url), "utf8").trim();
  const design = parseDesign(await designText(kept));
  expect([design.name, design.bay.spanFt, design.deck.member]).toEqual(["Kept link", 37, "10DT32"]);
});

test("the anchors of headings are no designs", () => {
  expect(["", "#cautions", "#design", "#open-design"].map(holdsDesign)).toEqual([false, false, false, false]);
});

test("a name in any letters comes through", async () => {
  const name = "Bibliothek Süd, \u6a2a\u6d5c \u{1f3db}";
  expect(await unpack(await pack(name), "link", 100)).toBe(name);
});

test("a link that was cut or changed on its way is refused with what is wrong, whatever letter it was", async () => {
  const fragment = fragmentOf(await linkOf((seeds[0] as (typeof seeds)[number]).design, FIRST));
  const cut = [20, 400, fragment.length - 10].map((length) => fragment.slice(0, length));
  const strange = ["#design=1.", "#design=1.%7B%7D", "#design=1.a b", "#design=1", "#design="];
  for (const broken of [...cut, ...strange]) await expect(designText(broken), broken.slice(0, 40)).rejects.toThrow(InputError);
  for (let at = 12; at < fragment.length - 6; at += 97) {
    const other = fragment[at] === "A" ? "B" : "A";
    await expect(designText(`${fragment.slice(0, at)}${other}${fragment.slice(at + 1)}`), `letter ${at}`).rejects.toThrow(InputError);
  }
  await expect(designText(`${fragment.slice(0, 200)}!${fragment.slice(201)}`)).rejects.toThrow("whole, as it was copied; some of it is missing or changed");
});

test("a link of a newer way to write it says so", async () => {
  await expect(designText("#design=2.AAAA")).rejects.toThrow('version of the link: "2" is not possible (this kit reads version 1)');
});

test("a few letters that stand for a text without end are refused before they fill the memory", async () => {
  const bomb = await pack("0".repeat(30_000_000));
  expect(bomb.length).toBeLessThan(50_000);
  await expect(designText(`#design=1.${bomb}`)).rejects.toThrow("at most 1,000,000 bytes when unpacked");
});
