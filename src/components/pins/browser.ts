import type {Design} from "../../lib/design/design.js";
import {createPins, type PinStore} from "../pins.js";
import {PIN_PREFIX, type PinStorage} from "./keptPins.js";

/**
 * The pins of this reader, tied to the browser: kept over a reload, sent to other tabs.
 *
 * @param check - throws InputError for a design whose parts do not fit each other
 * @param prefix - what their keys begin with: designs kept for another purpose have another
 */
export function openPins(check: (design: Design) => void, prefix: string = PIN_PREFIX): PinStore {
  const pins = createPins({
    prefix, check, storage: browserStorage(), now: () => Date.now(),
    newId: () => `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`,
  });
  window.addEventListener("storage", (event) => {
    // No key means that all was cleared.
    if (event.key === null || event.key.startsWith(prefix)) pins.reload();
  });
  // A page that the browser kept while the reader was on another one has not heard of any change.
  window.addEventListener("pageshow", (event) => {
    if (event.persisted) pins.reload();
  });
  return pins;
}

/** The browser's storage, or nothing where the reader's settings forbid it. */
function browserStorage(): PinStorage | undefined {
  try {
    const storage = window.localStorage;
    return {
      getItem: (key) => storage.getItem(key),
      setItem: (key, value) => storage.setItem(key, value),
      removeItem: (key) => storage.removeItem(key),
      keys: () => Object.keys(storage),
    };
  } catch {
    return undefined;
  }
}
