const KEY = "plank-and-tee/words";

/** Whether this reader wants the words of the trade marked; kept in the browser. */
export const wordsWanted = {
  get(): boolean {
    try {
      return localStorage.getItem(KEY) !== "off";
    } catch {
      return true;
    }
  },
  set(wanted: boolean): void {
    try {
      if (wanted) localStorage.removeItem(KEY);
      else localStorage.setItem(KEY, "off");
    } catch {
      // Without storage it lasts as long as the page.
    }
  },
};
