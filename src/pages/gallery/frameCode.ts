import {EMBED_WIDTH_PX, FIGURES, type EmbeddedFigure} from "../../components/embed/figures.js";

/** The design that embeds begin with: a starter by its file's name, or the fragment of a link that holds one. */
export type EmbedDesign = {readonly starter: string} | {readonly fragment: string};

/** The address of a figure's embed, from that of its whole page. A figure that few starters have begins with one that has it. */
export function embedAddress(figure: EmbeddedFigure, page: string, design: EmbedDesign): string {
  const {name, starter} = figure;
  return withDesign(page, {embed: name}, "starter" in design && starter ? {starter} : design);
}

/** The address by which a page sends still pictures of its figures to the page that holds it. */
export function stillsAddress(page: string, href: string, design: EmbedDesign): string {
  const own = FIGURES.filter((figure) => figure.page === page);
  const starter = own.every((figure) => figure.starter) ? own[0]?.starter : undefined;
  return withDesign(href, {embed: "", page}, "starter" in design && starter ? {starter} : design);
}

function withDesign(page: string, asked: Readonly<Record<string, string>>, design: EmbedDesign): string {
  const address = new URL(page);
  for (const [name, value] of Object.entries("starter" in design ? {...asked, starter: design.starter} : asked)) address.searchParams.set(name, value);
  if ("fragment" in design) address.hash = design.fragment;
  return address.href;
}

/** The code of a frame for a page of another site, named for those who listen. */
export function frameCode({title, asks, heightPx}: EmbeddedFigure, address: string): string {
  return `<iframe src="${escaped(address)}" title="${escaped(`${title}: ${asks}`)}" width="${EMBED_WIDTH_PX}" height="${heightPx}" style="max-width: 100%; border: 0" loading="lazy"></iframe>`;
}

const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/"/g, "&quot;").replace(/</g, "&lt;");
