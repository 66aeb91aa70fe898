import type {SweepRow} from "../../lib/deck/sweep.js";
import {feetText} from "../../lib/units.js";
import {element} from "../../components/dom.js";
import {AS_MADE, rowId, type SortKey, type SweepSort} from "./data.js";
import {FACTS, cellOf, factCell, rowHead} from "./gridCells.js";

/** A long table of which only the rows in sight exist, so that its length costs nothing. */
export interface LoadGrid {
  readonly node: HTMLElement;
  show(rows: readonly SweepRow[], spansFt: readonly number[], sort: SweepSort): void;
  /** Marks the open design's own row, and its span if there is a column for it. */
  mark(id: string | undefined, spanFt: number): void;
  /** Shows or hides depth, weight and strand. */
  facts(shown: boolean): void;
}

/** What the grid asks of the page. */
export interface GridActions {
  readonly sort: (sort: SweepSort) => void;
  /** A cell was opened: its row, the number of its span, and the cell itself. */
  readonly open: (row: SweepRow, spanIndex: number, from: HTMLElement) => void;
}

/** Rows kept above and below those in sight. */
const SPARE_ROWS = 8;

/**
 * Rows by spans, one place for the keyboard: arrows walk over heads and cells, Enter sorts by a head or opens a cell.
 * All rows have one height, so the place of each is known without its being there.
 */
export function loadGrid(actions: GridActions): LoadGrid {
  const head = element("tr", {"aria-rowindex": 1});
  const above = element("tr", {"aria-hidden": "true", class: "spacer"}, element("td"));
  const below = element("tr", {"aria-hidden": "true", class: "spacer"}, element("td"));
  const body = element("tbody", {}, above, below);
  const grid = element("table", {role: "grid", class: "sweep-table", "data-own-csv": true, "aria-label": "Safe loads by deck and span, psf"}, element("thead", {}, head), body);
  const node = element("div", {class: "sweep-scroll"}, grid);
  /** The rows that exist, by what they show; a new sweep has new rows. */
  const made = new Map<SweepRow, HTMLTableRowElement>();
  let rows: readonly SweepRow[] = [];
  let spansFt: readonly number[] = [];
  let sort = AS_MADE;
  let own: {id: string | undefined; spanFt: number} = {id: undefined, spanFt: NaN};
  let heightPx = 28;
  /** Where the keyboard is: row -1 is the head. */
  let at = {row: -1, column: 0};

  const keys = (): SortKey[] => ["made", ...FACTS.map(({key}) => key), ...spansFt.map((_, index) => index)];
  const rowNode = (index: number): HTMLTableRowElement => {
    const row = rows[index] as SweepRow;
    let node = made.get(row);
    if (!node) {
      node = element("tr", {}, rowHead(row), ...FACTS.map((fact) => factCell(fact, row)), ...row.cells.map((cell, spanIndex) => cellOf(cell, spanIndex)));
      made.set(row, node);
    }
    node.setAttribute("aria-rowindex", String(index + 2));
    markOwn(node, row);
    return node;
  };
  const markOwn = (node: HTMLElement, row: SweepRow) => {
    const isOwn = rowId(row) === own.id;
    if (!isOwn && !node.classList.contains("is-own")) return;
    node.classList.toggle("is-own", isOwn);
    const nearest = spansFt.findIndex((spanFt) => Math.abs(spanFt - own.spanFt) < 0.01);
    for (const cell of node.querySelectorAll<HTMLElement>("[data-span]")) cell.classList.toggle("is-own-span", isOwn && Number(cell.dataset["span"]) === nearest);
  };
  const range = () => {
    const first = Math.max(0, Math.floor(node.scrollTop / heightPx) - SPARE_ROWS);
    const most = Math.ceil((node.clientHeight || 600) / heightPx) + 2 * SPARE_ROWS;
    return {first: Math.min(first, Math.max(0, rows.length - most)), last: Math.min(rows.length, first + most)};
  };
  /** Makes the rows in sight and lets go of the others, without moving any that stays, for the focus may be on it. */
  const draw = () => {
    const {first, last} = range();
    const wanted = Array.from({length: Math.max(0, last - first)}, (_, i) => rowNode(first + i));
    const keep = new Set<Element>([above, below, ...wanted]);
    for (const child of [...body.children]) if (!keep.has(child)) child.remove();
    for (const [row, line] of made) if (!keep.has(line)) made.delete(row);
    let next: Element = above;
    for (const row of wanted) {
      if (next.nextElementSibling !== row) next.after(row);
      next = row;
    }
    (above.firstChild as HTMLElement).style.height = `${first * heightPx}px`;
    (below.firstChild as HTMLElement).style.height = `${(rows.length - last) * heightPx}px`;
    const [one] = wanted;
    if (one && one.offsetHeight > 0 && Math.abs(one.offsetHeight - heightPx) > 0.5) {
      heightPx = one.getBoundingClientRect().height;
      draw();
      return;
    }
    if (at.row >= 0 && (at.row < first || at.row >= last)) at = {...at, row: Math.min(rows.length - 1, Math.max(0, Math.ceil(node.scrollTop / heightPx)))};
    reach();
  };
  const target = (): HTMLElement | undefined => {
    const line = at.row < 0 ? head : made.get(rows[at.row] as SweepRow);
    const cell = line?.children[at.column] as HTMLElement | undefined;
    return at.row < 0 ? (cell?.firstElementChild as HTMLElement | undefined) : cell;
  };
  let reached: HTMLElement | undefined;
  /** The one cell that the Tab key reaches. */
  const reach = () => {
    const next = target();
    if (next === reached) return;
    reached?.setAttribute("tabindex", "-1");
    next?.setAttribute("tabindex", "0");
    reached = next;
  };
  const go = (row: number, column: number) => {
    const visible = [...head.children].map((cell) => (cell as HTMLElement).offsetParent !== null);
    const step = column >= at.column ? 1 : -1;
    let wanted = Math.max(0, Math.min(head.children.length - 1, column));
    while (!visible[wanted] && wanted + step >= 0 && wanted + step < visible.length) wanted += step;
    at = {row: Math.max(-1, Math.min(rows.length - 1, row)), column: visible[wanted] ? wanted : at.column};
    if (at.row >= 0) {
      const top = at.row * heightPx;
      const room = node.clientHeight - head.offsetHeight - 2 * heightPx;
      if (top < node.scrollTop) node.scrollTop = top;
      else if (top > node.scrollTop + room) node.scrollTop = top - room;
      draw();
    }
    reach();
    target()?.focus();
  };
  const rowIn = (line: Element | null | undefined) => [...made].find(([, node]) => node === line)?.[0];
  const openAt = (from: EventTarget | null) => {
    const cell = (from as HTMLElement | null)?.closest<HTMLElement>("td[data-span]");
    const row = rowIn(cell?.parentElement);
    if (cell && row) actions.open(row, Number(cell.dataset["span"]), cell);
  };

  grid.addEventListener("keydown", (event) => {
    const page = Math.max(1, Math.floor(node.clientHeight / heightPx) - 2);
    const end = head.children.length - 1;
    const moves: Record<string, () => [number, number]> = {
      ArrowUp: () => [at.row - 1, at.column], ArrowDown: () => [at.row + 1, at.column], ArrowLeft: () => [at.row, at.column - 1], ArrowRight: () => [at.row, at.column + 1],
      PageUp: () => [Math.max(0, at.row - page), at.column], PageDown: () => [at.row + page, at.column],
      Home: () => [event.ctrlKey ? -1 : at.row, 0], End: () => [event.ctrlKey ? rows.length - 1 : at.row, end],
    };
    const move = moves[event.key];
    if (move) {
      event.preventDefault();
      go(...move());
    } else if ((event.key === "Enter" || event.key === " ") && at.row >= 0) {
      event.preventDefault();
      openAt(event.target);
    }
  });
  grid.addEventListener("focusin", ({target: focused}) => {
    const cell = (focused as HTMLElement).closest<HTMLElement>("th, td");
    const line = cell?.parentElement;
    if (!cell || !line) return;
    const row = rowIn(line);
    at = {row: row ? rows.indexOf(row) : -1, column: [...line.children].indexOf(cell)};
    reach();
  });
  body.addEventListener("click", (event) => openAt(event.target));
  let waiting = false;
  node.addEventListener("scroll", () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      draw();
    });
  });
  new ResizeObserver(() => draw()).observe(node);

  const drawHead = () => {
    const names: readonly [string, string][] = [["Deck", "deck"], ...FACTS.map(({label, name}): [string, string] => [label, name]), ...spansFt.map((spanFt): [string, string] => [feetText(spanFt), `load at ${feetText(spanFt)}`])];
    head.replaceChildren(...names.map(([label, name], column) => {
      const button = element("button", {type: "button", tabindex: -1, title: `Sort by ${name}`}, label);
      button.addEventListener("click", () => {
        const key = keys()[column] as SortKey;
        // Loads are looked for from the greatest down, all else from the least up.
        actions.sort(sort.by === key ? {by: key, down: !sort.down} : {by: key, down: typeof key === "number"});
      });
      const place = column === 0 ? "row-head" : column <= FACTS.length ? "row-fact numeric" : "numeric";
      return element("th", {scope: "col", class: place}, button);
    }));
    grid.setAttribute("aria-colcount", String(names.length));
  };
  const drawSort = () => keys().forEach((key, column) => {
    const cell = head.children[column];
    if (key === sort.by) cell?.setAttribute("aria-sort", sort.down ? "descending" : "ascending");
    else cell?.removeAttribute("aria-sort");
  });

  return {
    node,
    show(nextRows, nextSpans, nextSort) {
      const another = nextSpans.join() !== spansFt.join();
      const reordered = another || nextSort !== sort;
      [rows, sort] = [nextRows, nextSort];
      if (another) {
        spansFt = nextSpans;
        made.clear();
        at = {row: -1, column: 0};
        drawHead();
      }
      drawSort();
      grid.setAttribute("aria-rowcount", String(rows.length + 1));
      if (reordered) node.scrollTop = 0;
      draw();
    },
    mark(id, spanFt) {
      own = {id, spanFt};
      for (const [row, line] of made) markOwn(line, row);
    },
    facts: (shown) => void grid.classList.toggle("without-facts", !shown),
  };
}
