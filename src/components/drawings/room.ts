/** The room that drawings and charts have where a page is shown on a projector, and how much larger than on the page all is there. */
let room = {scale: 1, heightPx: Infinity};

/** Sets the room, before the pictures are drawn anew; without one all is as on a page. */
export function setRoom(now: {readonly scale: number; readonly heightPx: number} = {scale: 1, heightPx: Infinity}): void {
  room = now;
}

/** Times that everything is larger on a projector; 1 on a page. */
export const projectorScale = (): number => room.scale;

/** Most height of a drawing before it is enlarged, px. */
export const roomHeightPx = (): number => room.heightPx;
