import type {UnitSystem} from "../../lib/reader/system.js";
import {EMBED_WIDTH_PX, FIGURES, type EmbeddedFigure} from "../../components/embed/figures.js";

/** The design that embeds begin with: a starter by its file's name, or the fragment of a link that holds one. */
export type EmbedDesign = {readonly starter: string} | {readonly fragment: string};

/** The address of a figure's embed in a reader's units, from that of its whole page. A figure that few starters have begins with one that has it. */
export function embedAddress(figure: EmbeddedFigure, page: string, design: EmbedDesign, units: UnitSystem): string {
  const {name, starter} = figure;
  return withDesign(page, {embed: name, ...asked(units)}, "starter" in design && starter ? {starter} : design);
}

/** The address by which a page sends still pictures of its figures to the page that holds it. */
export function stillsAddress(page: string, href: string, design: EmbedDesign, units: UnitSystem): string {
  const own = FIGURES.filter((figure) => figure.page === page);
  const starter = own.every((figure) => figure.starter) ? own[0]?.starter : undefined;
  return withDesign(href, {embed: "", page, ...asked(units)}, "starter" in design && starter ? {starter} : design);
}

const asked = (units: UnitSystem): Readonly<Record<string, string>> => (units === "US" ? {} : {units});

function withDesign(page: string, query: Readonly<Record<string, string>>, design: EmbedDesign): string {
  const address = new URL(page);
  for (const [name, value] of Object.entries("starter" in design ? {...query, starter: design.starter} : query)) address.searchParams.set(name, value);
  if ("fragment" in design) address.hash = design.fragment;
  return address.href;
}

/** The code of a frame for a page of another site, named for those who listen. */
export function frameCode({title, asks, heightPx}: EmbeddedFigure, address: string): string {
  return `<iframe src="${escaped(address)}" title="${escaped(`${title}: ${asks}`)}" width="${EMBED_WIDTH_PX}" height="${heightPx}" style="max-width: 100%; border: 0" loading="lazy"></iframe>`;
}

const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/"/g, "&quot;").replace(/</g, "&lt;");
