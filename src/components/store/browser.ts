import type {Design} from "../../lib/design/design.js";
import {takeTyped} from "../typing.js";
import {createStore, type DesignStore} from "../store.js";
import {DESIGN_KEY, type KeyValueStore} from "./persistence.js";

/** Why a typed text was refused as its page went, for the next page. */
const REFUSED_KEY = "plank-and-tee/refused";

/** How long a change may wait before it is written, so that a drag of a control writes once. */
const QUIET_MS = 250;

/**
 * The store of this page, tied to the browser: kept over a reload, sent to other tabs, undone by the keyboard.
 *
 * @param check - throws InputError for a design whose parts do not fit each other
 * @param replaced - hears of a design that gives way to another one
 */
export function openStore(first: Design, check: (design: Design) => void, replaced?: (before: Design, by: Design) => void): DesignStore {
  const store = createStore({
    first,
    check,
    storage: browserStorage(),
    later: (work) => window.setTimeout(() => whenIdle(work), QUIET_MS),
    now: () => Date.now(),
    download,
    ...(replaced ? {replaced} : {}),
  });
  tellRefused(store);
  const leave = () => {
    keepRefused(takeTyped());
    store.flush();
  };
  window.addEventListener("pagehide", leave);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") leave();
    // The reader is back at the box that still shows what was typed, and why it was refused.
    else keepRefused([]);
  });
  // The event may be late, so the store reads what stands there now rather than what the event reports.
  window.addEventListener("storage", (event) => {
    if (event.key === DESIGN_KEY) store.reload();
  });
  // A page that the browser kept while the reader was on another one has not heard of any change.
  window.addEventListener("pageshow", (event) => {
    if (event.persisted) store.reload();
  });
  document.addEventListener("keydown", (event) => undoByKeyboard(store, event));
  return store;
}

/** Keeps for the next page of this tab why something that was typed when the reader left was not taken. */
function keepRefused(reasons: readonly string[]): void {
  try {
    if (reasons.length > 0) sessionStorage.setItem(REFUSED_KEY, reasons.join(" "));
    else sessionStorage.removeItem(REFUSED_KEY);
  } catch {
    // Without storage the reason stands beside the box alone.
  }
}

/** Tells what the page before could not take; what the store itself has to tell comes first. */
function tellRefused(store: DesignStore): void {
  try {
    const reasons = sessionStorage.getItem(REFUSED_KEY);
    if (reasons !== null) store.remark(`What was typed on the page before was not accepted. ${reasons}`);
    sessionStorage.removeItem(REFUSED_KEY);
  } catch {
    // As above.
  }
}

/** Undo by Ctrl or Cmd with Z; again with Shift, or Ctrl with Y. A text field keeps its own undo. */
function undoByKeyboard(store: DesignStore, event: KeyboardEvent): void {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || typesText(event.target)) return;
  const key = event.key.toLowerCase();
  if (key === "z" && !event.shiftKey) store.undo();
  else if ((key === "z" && event.shiftKey) || (key === "y" && !event.shiftKey)) store.redo();
  else return;
  event.preventDefault();
}

function typesText(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  if (target instanceof HTMLElement && target.isContentEditable) return true;
  return target instanceof HTMLInputElement && !["range", "checkbox", "radio", "button", "file"].includes(target.type);
}

/** The browser's storage, or nothing where the reader's settings forbid it. */
function browserStorage(): KeyValueStore | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}

function whenIdle(work: () => void): void {
  if ("requestIdleCallback" in window) window.requestIdleCallback(work, {timeout: 1000});
  else work();
}

/** Hands a text to the reader as a file. */
export function download(fileName: string, text: string): void {
  downloadBlob(fileName, new Blob([text], {type: "application/json"}));
}

/** Hands anything else to the reader as a file. */
export function downloadBlob(fileName: string, blob: Blob): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = fileName;
  link.click();
  window.setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
