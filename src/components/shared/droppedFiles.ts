/**
 * Takes the files that are dropped anywhere on the page.
 *
 * @param zone - what shows, by the class `is-dropping`, that they will be taken
 */
export function takeDropped(take: (files: readonly File[]) => void, zone: HTMLElement = document.body): void {
  const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") === true;
  document.addEventListener("dragover", (event) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    zone.classList.add("is-dropping");
  });
  document.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) zone.classList.remove("is-dropping");
  });
  document.addEventListener("drop", (event) => {
    zone.classList.remove("is-dropping");
    if (!hasFiles(event)) return;
    event.preventDefault();
    take([...event.dataTransfer?.files ?? []]);
  });
}
