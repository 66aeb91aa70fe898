import {element} from "../../components/dom.js";
import type {Still, StillsMessage} from "../../components/embed/stills.js";

/** What shows that somebody looks for a figure. */
const SIGNS = ["pointermove", "pointerdown", "keydown", "scroll"] as const;
/** A page that has sent no picture after so long has none to send, ms. */
const MOST_MS = 20_000;
/** What is scrolled past in less than this was not looked at, ms. */
const REST_MS = 400;

/**
 * Fetches small pictures of a page's figures once its part of the list is looked at: the page is opened out of sight, draws them, and goes. One page at
 * a time, and none before the reader moves.
 *
 * @param address - of the page that sends its pictures
 * @param show - puts a picture in its place
 */
export function stillsOf(sections: readonly HTMLElement[], address: (page: string) => string, show: (name: string, image: HTMLImageElement) => void): {again(): void} {
  const seen = new Set<HTMLElement>();
  const done = new Set<HTMLElement>();
  let awake = false;
  let busy = false;
  let round = 0;
  const next = async () => {
    const section = sections.find((each) => seen.has(each) && !done.has(each));
    if (!awake || busy || !section) return;
    busy = true;
    await new Promise((later) => setTimeout(later, REST_MS));
    if (seen.has(section)) {
      done.add(section);
      const began = round;
      const stills = await fetchStills(address(section.dataset["page"] ?? ""));
      if (began === round) for (const {name, svg} of stills) show(name, element("img", {src: `data:image/svg+xml,${encodeURIComponent(svg)}`, alt: ""}));
    }
    busy = false;
    void next();
  };
  const observer = new IntersectionObserver((entries) => {
    for (const {target, isIntersecting} of entries) {
      if (isIntersecting) seen.add(target as HTMLElement);
      else seen.delete(target as HTMLElement);
    }
    void next();
  });
  for (const section of sections) observer.observe(section);
  const wake = () => {
    for (const sign of SIGNS) removeEventListener(sign, wake);
    awake = true;
    void next();
  };
  for (const sign of SIGNS) addEventListener(sign, wake, {passive: true});
  return {
    again() {
      round += 1;
      done.clear();
      void next();
    },
  };
}

function fetchStills(src: string): Promise<readonly Still[]> {
  return new Promise((resolve) => {
    const frame = element("iframe", {src, "aria-hidden": "true", tabindex: -1, class: "gallery-behind"});
    const end = (stills: readonly Still[]) => {
      clearTimeout(late);
      window.removeEventListener("message", hear);
      frame.remove();
      resolve(stills);
    };
    const hear = ({source, data}: MessageEvent<StillsMessage>) => {
      if (source === frame.contentWindow && Array.isArray(data.stills)) end(data.stills);
    };
    const late = setTimeout(() => end([]), MOST_MS);
    window.addEventListener("message", hear);
    document.body.append(frame);
  });
}
