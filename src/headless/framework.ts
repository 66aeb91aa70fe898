import {spawn} from "node:child_process";
import {join} from "node:path";
import {ROOT} from "./root.js";

/** Runs the site generator with its telemetry off; resolves to its exit code and, if asked to listen, what it printed. */
export function runGenerator(
  args: readonly string[],
  {capture = false}: {capture?: boolean} = {},
): Promise<{code: number; printed: string}> {
  const command = join(ROOT, "node_modules", "@observablehq", "framework", "dist", "bin", "observable.js");
  const child = spawn(process.execPath, [command, ...args], {
    cwd: ROOT,
    env: {...process.env, OBSERVABLE_TELEMETRY_DISABLE: "true"},
    stdio: ["inherit", capture ? "pipe" : "inherit", capture ? "pipe" : "inherit"],
  });
  let printed = "";
  child.stdout?.on("data", (chunk) => (printed += String(chunk)));
  child.stderr?.on("data", (chunk) => (printed += String(chunk)));
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("exit", (code) => resolve({code: code ?? 1, printed}));
  });
}
