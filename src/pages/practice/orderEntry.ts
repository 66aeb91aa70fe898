import type {Option, OrderPart} from "../../lib/practice/item.js";
import {proseText} from "../../lib/practice/prose.js";
import {element} from "../../components/dom.js";
import type {Entry, EntryPlace} from "./entry.js";

/**
 * A list to put in order: a line is dragged by its handle, or moved by the arrow keys while the handle has the focus, or
 * by its two buttons. Nothing stands until something was moved or the order as it is was kept.
 */
export function orderEntry({by, options}: OrderPart, {standing, system, askId, changed}: EntryPlace, content: (option: Option) => Node): Entry {
  const told = element("p", {class: "for-listeners", role: "status"});
  const list = element("ol", {class: "order-list", "aria-labelledby": askId});
  const ids = options.map(({id}) => id);
  const kept = standing.split(",");
  let order = kept.length === ids.length && ids.every((id) => kept.includes(id)) ? kept : ids;
  let closed = false;
  const nameOf = (id: string) => proseText(options.find((option) => option.id === id)?.text ?? [id], system);
  const lines = new Map(options.map((option) => {
    const name = proseText(option.text, system);
    const handle = element("button", {type: "button", class: "order-handle", "aria-label": `${name}: move by arrow keys or drag`, title: "Drag, or arrow keys"}, "\u2195");
    const up = element("button", {type: "button", class: "order-move", "aria-label": `Move ${name} up`}, "\u2191");
    const down = element("button", {type: "button", class: "order-move", "aria-label": `Move ${name} down`}, "\u2193");
    const line = element("li", {class: "order-line", "data-id": option.id}, handle, element("span", {class: "order-text"}, content(option)), up, down);
    up.addEventListener("click", () => step(option.id, -1, up));
    down.addEventListener("click", () => step(option.id, 1, down));
    line.addEventListener("keydown", (event) => {
      if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
      event.preventDefault();
      step(option.id, event.key === "ArrowUp" ? -1 : 1, event.target as HTMLElement);
    });
    drag(handle, line);
    return [option.id, line] as const;
  }));
  const show = () => list.replaceChildren(...order.map((id) => lines.get(id) as HTMLElement));

  function place(id: string, to: number): boolean {
    const from = order.indexOf(id);
    if (closed || to === from || to < 0 || to >= order.length) return false;
    const next = order.filter((other) => other !== id);
    next.splice(to, 0, id);
    order = next;
    changed(order.join(","));
    return true;
  }
  function step(id: string, by_: number, focused: HTMLElement): void {
    if (place(id, order.indexOf(id) + by_)) show();
    focused.focus();
    told.textContent = `${nameOf(id)}: place ${order.indexOf(id) + 1} of ${order.length}`;
  }
  function drag(handle: HTMLElement, line: HTMLElement): void {
    handle.addEventListener("pointerdown", (event) => {
      if (closed || event.button !== 0) return;
      handle.setPointerCapture(event.pointerId);
      line.classList.add("is-dragged");
      const move = ({clientY}: PointerEvent) => {
        const middles = order.filter((id) => id !== line.dataset["id"]).map((id) => {
          const {top, height} = (lines.get(id) as HTMLElement).getBoundingClientRect();
          return top + height / 2;
        });
        // Moved within the list, not taken out of it: the pointer stays with its handle.
        if (place(line.dataset["id"] ?? "", middles.filter((middle) => middle < clientY).length)) {
          const own = order.indexOf(line.dataset["id"] ?? "");
          order.forEach((id, i) => {
            const other = lines.get(id) as HTMLElement;
            if (i < own) line.before(other);
            else if (i > own) list.append(other);
          });
        }
      };
      handle.addEventListener("pointermove", move);
      handle.addEventListener("lostpointercapture", () => {
        handle.removeEventListener("pointermove", move);
        line.classList.remove("is-dragged");
      }, {once: true});
    });
  }
  show();
  return {
    node: element("div", {class: "order-answer"}, element("p", {class: "part-read"}, `Put them in order, ${by}.`), list, told),
    stands: () => order.join(","),
    close: () => {
      closed = true;
      for (const button of list.querySelectorAll("button")) button.disabled = true;
    },
  };
}
