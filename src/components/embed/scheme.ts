/** Shows the page in light or dark whatever the reader's screen has; anything else leaves it to the screen. */
export function inScheme(scheme: string | null): void {
  if (scheme !== "light" && scheme !== "dark") return;
  document.documentElement.style.colorScheme = scheme;
  for (const rule of [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules])) {
    if (!(rule instanceof CSSMediaRule) || !rule.conditionText.includes("prefers-color-scheme")) continue;
    rule.media.mediaText = rule.conditionText.includes(scheme) ? "screen" : "not all";
  }
}
