import { execFileSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import type { DataIssue } from "../../src/errors/data-issue.ts";
import { problems as inEnglish } from "../../src/errors/en/problems.ts";
import type { ProblemKey } from "../../src/errors/problems.ts";
import { englishIn, numbersIn } from "../support/bilingual.ts";
import { refusedFor } from "../support/refused.ts";
import { english, german } from "../support/words.ts";

// Tests may run as somebody who may open everything.
vi.mock("node:fs/promises", async (real) => {
  const actual = await real<typeof import("node:fs/promises")>();
  const stat = async (path: string) => {
    if (path.endsWith("forbidden.csv")) throw Object.assign(new Error(), { code: "EACCES" });
    if (path.endsWith("odd.csv")) throw new Error();
    return actual.stat(path);
  };
  return { ...actual, stat };
});

const keys = Object.keys(inEnglish.problems) as ProblemKey[];
const raised = new Map<ProblemKey, readonly DataIssue[]>();
let folder = "";

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "evencatch-"));
  execFileSync("mkfifo", [join(folder, "pipe.csv")]);
  const inputs = refusedFor(folder);
  for (const key of keys) {
    const all = await Promise.all(inputs[key].map((refused) => refused()));
    // Every input raises what it stands for, whatever else it raises.
    const found = all.map((issues) => issues.filter(({ problem }) => problem === key));
    raised.set(key, found.every((issues) => issues.length > 0) ? found.flat() : []);
  }
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

/** What is said of a problem besides what the file itself says. */
function without({ facts, source, column, received }: DataIssue, text: string): string {
  const quoted = [`"${received}"`, `„${received}“`];
  return [source, column ?? "", ...quoted, ...Object.values(facts).flat()]
    .filter((fact) => typeof fact === "string")
    .flatMap((fact) => [fact, fact.replace(".", ",")])
    .filter((fact) => fact !== "")
    .sort((one, other) => other.length - one.length)
    .reduce((left, fact) => left.replaceAll(asAWhole(fact), " "), text);
}

function asAWhole(fact: string): RegExp {
  const escaped = fact.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  return new RegExp(`(?<![\\p{L}\\p{N}])${escaped}(?![\\p{L}\\p{N}])`, "gu");
}

/** Quoted is what a file has, or is to have. */
const literal = /"[^"]*"|„[^“]*“|`[^`]*`/g;

describe.each(keys)("the problem %s", (key) => {
  const issues = () => raised.get(key) ?? [];

  it("is raised by a file, a frame or a catch", () => {
    expect(issues()).not.toEqual([]);
  });

  it("is said by the English words as the issue itself says it, from what JSON keeps of it", () => {
    for (const issue of issues()) {
      const kept: DataIssue = JSON.parse(JSON.stringify(issue));
      expect(kept).toEqual(issue);
      expect(english().problems.text(kept)).toBe(issue.text);
    }
  });

  it("is said in German, with the same numbers", () => {
    for (const issue of issues()) {
      const text = without(issue, german().problems.text(issue));
      expect(text).toMatch(/: gefunden .+; nötig .+\. .+\.$/s);
      expect(englishIn(text.replace(literal, " "))).toEqual([]);
      expect(numbersIn(text, "de")).toEqual(numbersIn(without(issue, issue.text), "en"));
    }
  });
});

describe("a file", () => {
  it("with problems is summed up in either language, and one without them is told to be fine", () => {
    const [en, de] = [english().problems, german().problems];
    expect([en.summary(1), en.summary(2)]).toEqual(["1 problem", "2 problems"]);
    expect([de.summary(1), de.summary(2)]).toEqual(["1 Problem", "2 Probleme"]);
    expect([en.none(1), en.none(2)]).toEqual([
      "1 catch, nothing wrong.",
      "2 catches, nothing wrong.",
    ]);
    expect(de.none(1)).toBe("1 Probe, nichts auszusetzen.");
  });

  it("with many problems names twenty, and says in German how many there are", () => {
    const issues = keys.flatMap((key) => raised.get(key) ?? []);
    const lines = german().problems.ofFile("catches.csv", issues).split("\n");
    expect(lines[0]).toBe(`catches.csv: ${issues.length} Probleme`);
    expect(lines.slice(1, -1)).toEqual(issues.slice(0, 20).map(german().problems.text));
    expect(lines.at(-1)).toBe(`und ${issues.length - 20} weitere`);
  });
});
