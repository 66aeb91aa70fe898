import {existsSync} from "node:fs";
import {cpus, loadavg} from "node:os";
import {DIST} from "../pages/dist.js";
import {designLines, gridLines, memberSpanLines, memoryLines, safeLoadLines, schemeLines, spreadLines, sweepMemoryLines, tableLines} from "./engine.js";
import {table, type Line} from "./measure.js";

// npm run bench: how fast the engine and the built pages are. Prints a table and asserts nothing.
const lines: Line[] = [...sweepMemoryLines(), ...memberSpanLines(), ...safeLoadLines(), ...tableLines(), ...designLines(), ...schemeLines(), ...gridLines(), ...spreadLines(), ...memoryLines()];
if (existsSync(DIST)) {
  const {pageLines} = await import("./pages.js");
  lines.push(...(await pageLines()));
} else {
  lines.push({what: "control to painted pictures in the window", value: "not measured", goal: "33 ms", note: "there is no built site; run npm run build first"});
}
const processor = cpus()[0]?.model ?? "unknown processor";
console.log(table(`Node ${process.versions.node}, ${processor}, load ${(loadavg()[0] ?? 0).toFixed(1)} on ${cpus().length} processors`, lines));
