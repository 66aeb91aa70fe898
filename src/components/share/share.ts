import {hrefOf} from "../shared/pageList.js";
import {fileNameOf, type DesignStore} from "../store.js";
import {designText, linkOf, LONGEST_LINK} from "./designLink.js";
import {holdsDesign} from "./fragment.js";

/** Copies a link to the open design, or says why it cannot be one and offers the file instead. */
export async function copyLink(store: DesignStore): Promise<void> {
  const design = store.get();
  const link = await linkOf(design, new URL(hrefOf("index"), location.href).href);
  if (link.length > LONGEST_LINK) {
    store.tell({
      kind: "problem",
      message: `As a link "${design.name}" has ${count(link)} characters; beyond ${LONGEST_LINK.toLocaleString("en-US")} a link is often cut on its way. Pass it on as a file.`,
      keep: {fileName: `${fileNameOf(design.name)}.json`, text: `${JSON.stringify(design, null, 2)}\n`},
    });
    return;
  }
  try {
    await navigator.clipboard.writeText(link);
    store.tell({kind: "done", message: `Copied a link that holds all of "${design.name}" (${count(link)} characters). Whoever has the link has the design; the part after # is never sent to a server.`});
  } catch {
    // A browser may keep the clipboard to itself; the address bar is the reader's.
    history.replaceState(history.state, "", link);
    store.tell({kind: "done", message: `The browser does not let this page copy, so the address of this page is now a link that holds all of "${design.name}". Copy it from there.`});
  }
}

/** Opens the design that the page's address holds, as one step that can be undone, and takes it out of the address. */
export async function openLink(store: DesignStore): Promise<void> {
  const {hash} = location;
  if (!holdsDesign(hash)) return;
  // Or a reload, after the reader has changed the design, would open the link's again.
  history.replaceState(history.state, "", location.pathname + location.search);
  await store.openFile({name: "the link", text: () => designText(hash)});
}

const count = (link: string): string => link.length.toLocaleString("en-US");
