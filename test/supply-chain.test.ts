import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./support/compiler.ts";

interface Locked {
  readonly version: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly hasInstallScript?: boolean;
  readonly dev?: boolean;
  readonly devOptional?: boolean;
}

const json = (file: string) => JSON.parse(readFileSync(join(root, file), "utf8"));
const { packages } = json("package-lock.json") as { packages: Readonly<Record<string, Locked>> };
const { dependencies, devDependencies } = json("package.json");
const locked = Object.entries(packages).filter(([path]) => path !== "");
const installed = locked.filter(([, { dev, devOptional }]) => !(dev || devOptional));
const nameOf = (path: string) => path.replace(/^.*node_modules\//, "");

describe("what a plain install brings", () => {
  it("runs no script of its own", () => {
    expect(installed.filter(([, { hasInstallScript }]) => hasInstallScript)).toEqual([]);
    expect(json("package.json").scripts).not.toHaveProperty("postinstall");
    expect(json("package.json").scripts).not.toHaveProperty("install");
  });

  it("may be passed on with an MIT program", () => {
    const licences = new Set(installed.map(([, { license }]) => license));
    expect([...licences].toSorted()).toEqual(["ISC", "MIT", "MPL-2.0"]);
  });
});

describe("the lock file", () => {
  it("holds every package to its content and none to where it came from", () => {
    expect(locked.length).toBeGreaterThan(100);
    expect(locked.filter(([, { integrity }]) => !/^sha512-/.test(integrity ?? ""))).toEqual([]);
    expect(locked.filter(([, { resolved }]) => resolved !== undefined)).toEqual([]);
  });

  it("has the versions that package.json names, which are exact", () => {
    for (const [name, version] of Object.entries<string>({ ...dependencies, ...devDependencies })) {
      expect(`${name} ${version}`).toMatch(/ (npm:\S+@)?\d+\.\d+\.\d+(-[\w.]+)?$/);
      expect(packages[`node_modules/${name}`]?.version).toBe(version.replace(/^npm:.*@/, ""));
    }
  });

  it("runs scripts of three packages that only contributors install", () => {
    const scripted = locked.filter(([, { hasInstallScript }]) => hasInstallScript);
    expect(scripted.map(([path]) => nameOf(path)).toSorted()).toEqual([
      "core-js",
      "deno",
      "esbuild",
    ]);
  });
});
