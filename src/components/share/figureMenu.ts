import {button} from "../controls.js";
import {element, uniqueId} from "../dom.js";
import {downloadBlob} from "../store/browser.js";
import {fileNameOf, type Followed} from "../store.js";
import {saveCsv} from "./csv.js";
import {drawingsOf, pictureFile, pngOf, sourceLine} from "./pictureFile.js";

let open: HTMLElement | undefined;

/** Offers a figure's picture and its numbers as files, below the button that was pressed. */
export function openFigureMenu(from: HTMLElement, store: Followed): void {
  open?.remove();
  const figure = from.closest("figure");
  if (!figure) return;
  const title = (figure.querySelector(".figure-title, figcaption")?.textContent ?? "picture").trim();
  const table = figure.querySelector<HTMLTableElement>(".figure-table table");
  const name = fileNameOf(title);
  const source = () => sourceLine(store.get().name, document.querySelector("h1")?.textContent ?? "");
  const picture = () => pictureFile(figure, source());
  const scaled = drawingsOf(figure).some((drawing) => Number(drawing.dataset["pxPerIn"]) > 0);
  const message = element("p", {class: "control-message", role: "status", hidden: true});
  const act = (work: () => Promise<void> | void) => async () => {
    try {
      await work();
      menu.hidePopover();
    } catch (problem) {
      message.hidden = false;
      message.textContent = `The file was not made. ${problem instanceof Error ? problem.message : String(problem)}`;
    }
  };
  const id = uniqueId("save");
  const menu = element(
    "div",
    {popover: "auto", role: "dialog", "aria-labelledby": id, class: "popover figure-menu"},
    element("p", {id, class: "popover-title"}, "Save this picture"),
    element(
      "div",
      {class: "row"},
      button("SVG", act(async () => downloadBlob(`${name}.svg`, new Blob([(await picture()).svg], {type: "image/svg+xml"})))),
      button("PNG", act(async () => downloadBlob(`${name}.png`, await pngOf(await picture())))),
      scaled && button("DXF", act(async () => {
        const {figureDxf} = await import("./dxf/figureDxf.js");
        downloadBlob(`${name}.dxf`, new Blob([figureDxf(figure, source())], {type: "image/vnd.dxf"}));
      })),
      table && button("Its numbers, CSV", act(() => saveCsv(name, table))),
    ),
    element("p", {class: "control-help"}, "In the colors of paper, with its caption and where it comes from. SVG stays sharp at any size; PNG goes anywhere."),
    scaled && element("p", {class: "control-help"}, "DXF is for drafting: true to scale, one unit an inch, its layers named for what they show."),
    message,
  );
  menu.addEventListener("toggle", (event) => {
    if ((event as ToggleEvent).newState === "open") return;
    menu.remove();
    if (open === menu) open = undefined;
    if (from.isConnected) from.focus();
  });
  document.body.append(menu);
  open = menu;
  menu.showPopover();
  const place = from.getBoundingClientRect();
  const {width, height} = menu.getBoundingClientRect();
  menu.style.left = `${Math.max(8, Math.min(place.right - width, window.innerWidth - width - 8))}px`;
  menu.style.top = `${place.bottom + height + 8 > window.innerHeight ? Math.max(8, place.top - height - 4) : place.bottom + 4}px`;
  menu.querySelector("button")?.focus();
}
