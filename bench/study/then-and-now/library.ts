import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync } from "node:fs";
import { pathToFileURL } from "node:url";
import * as present from "../../../src/index.ts";

/** What both libraries are asked by; the same names in both. */
export interface Library {
  readonly name: string;
  readonly analyse: (log: object, setup: object | null, options: object) => Answered;
  readonly fitModel: (catches: readonly object[], options: object) => Fitted;
  readonly drift: (
    meter: object,
    options: object,
    meters: readonly object[],
  ) => { readonly verdict: string };
  readonly delivery: (meter: object, options: object) => { readonly estimate: present.Estimate };
  readonly acrossFills: (meter: object, options: object) => { readonly nextFill: present.Estimate };
}

interface Fitted {
  readonly meters: readonly object[];
}

/** An analysis by either library; the first had a verdict where the present one has a decision. */
export interface Answered {
  readonly meters: readonly {
    readonly bin: string;
    readonly delivery: { readonly estimate: present.Estimate };
    readonly decision?: { readonly action: string };
    readonly verdict?: { readonly code: string; readonly wellEnough?: boolean };
  }[];
}

/** The last commit before bins lent to each other and one decision was made of all findings. */
export const firstCommit = "424832e";

export const now = { name: "now", ...present } as unknown as Library;

/**
 * The library as it was at `firstCommit`, with the packages it was written for, in a folder that is not kept.
 *
 * @throws Error where the clone does not reach back so far
 */
export async function first(root: URL): Promise<Library> {
  const folder = new URL(".cache/then/", root);
  const source = new URL("src/index.ts", folder);
  if (!existsSync(new URL("node_modules", folder))) {
    mkdirSync(folder, { recursive: true });
    const inRoot = { cwd: root };
    const files = ["src", "package.json", "package-lock.json"];
    const archive = execFileSync("git", ["archive", firstCommit, ...files], {
      ...inRoot,
      maxBuffer: 1e9,
    });
    execFileSync("tar", ["-x"], { cwd: folder, input: archive });
    execFileSync("npm", ["ci", "--ignore-scripts", "--omit=dev"], { cwd: folder });
  }
  const module = await import(pathToFileURL(source.pathname).href);
  return {
    name: "first",
    ...module,
    acrossFills: module.acrossFillsAnswer,
    // It asked for a choice that is none any more.
    drift: (meter, options, meters) =>
      module.drift(meter, { ...options, productChange: "starts afresh" }, meters),
  };
}

/** Whether the answer is to set the drive. */
export function isEnough({ decision, verdict }: Answered["meters"][number]): boolean {
  if (decision !== undefined) return decision.action === "set";
  return verdict?.code === "known-well-enough" || verdict?.wellEnough === true;
}
