import {wholeStyle} from "./fontFaces.js";

/** What acts only on the site. */
const LEFT_OUT = ".control, .no-print, button, script";

/** A part of the page as one HTML file that needs nothing beside it: its style and fonts are within, and it prints as the page does. */
export async function htmlFile(node: Element, title: string): Promise<string> {
  const copy = node.cloneNode(true) as Element;
  for (const left of copy.querySelectorAll(LEFT_OUT)) left.remove();
  for (const hidden of copy.querySelectorAll("[hidden]")) hidden.remove();
  // A link leads to a page that the file has not beside it.
  for (const link of copy.querySelectorAll("a")) link.replaceWith(...link.childNodes);
  for (const reached of copy.querySelectorAll("[tabindex]")) reached.removeAttribute("tabindex");
  const file = document.implementation.createHTMLDocument(title);
  const root = file.documentElement;
  root.lang = "en";
  root.setAttribute("style", document.documentElement.getAttribute("style") ?? "");
  const meta = (attributes: Readonly<Record<string, string>>) => {
    const made = file.createElement("meta");
    for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
    return made;
  };
  const sheet = file.createElement("style");
  sheet.textContent = await wholeStyle();
  file.head.prepend(meta({charset: "utf-8"}), meta({name: "viewport", content: "width=device-width, initial-scale=1"}), meta({name: "color-scheme", content: "light dark"}));
  file.head.append(sheet);
  const main = file.createElement("main");
  main.id = "observablehq-main";
  // The page appears once its script says that it has arrived, and a file has no script.
  main.dataset["arrived"] = "";
  main.dataset["file"] = "";
  main.append(file.adoptNode(copy));
  file.body.append(main);
  return `<!doctype html>\n${root.outerHTML}\n`;
}
