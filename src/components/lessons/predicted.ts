/** Where the browser keeps what was predicted at a stop, since it was opened. */
const keyOf = (lesson: string, stop: number): string => `plank-and-tee/predicted/${lesson}/${stop}`;

/** Which of a stop's choices the reader named, counted from 0; -1 where the reader wanted none. */
export function predicted(lesson: string, stop: number): number | undefined {
  try {
    const text = sessionStorage.getItem(keyOf(lesson, stop));
    return text === null ? undefined : Number(text);
  } catch {
    return undefined;
  }
}

export function keepPredicted(lesson: string, stop: number, choice: number): void {
  try {
    sessionStorage.setItem(keyOf(lesson, stop), String(choice));
  } catch {
    // Without storage it lasts as long as the page.
  }
}
