import { execFileSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import type { DataIssue } from "../../src/errors/data-issue.ts";
import { problems as inEnglish } from "../../src/errors/en/problems.ts";
import { OptionError } from "../../src/errors/errors.ts";
import type { OptionNeed, OptionNeeds } from "../../src/errors/problems/option.ts";
import type { ProblemKey } from "../../src/errors/problems.ts";
import {
  between,
  count,
  each,
  fraction,
  listed,
  notNegative,
  oneOf,
  option,
  positive,
  positiveOrNull,
  resolve,
  text,
} from "../../src/results/options.ts";
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

/** For each need of an option, a value that does not fill it. */
const refusedOptions: Readonly<Record<keyof OptionNeeds, () => unknown>> = {
  fraction: () => resolve({ share: option(0.9, fraction) }, { share: 95 }),
  positive: () => resolve({ share: option(1, positive) }, { share: -1 }),
  "positive-or-null": () => resolve({ share: option(null, positiveOrNull) }, { share: 0 }),
  "not-negative": () => resolve({ share: option(1, notNegative) }, { share: -1 }),
  between: () => resolve({ share: option(1, between(1, 3)) }, { share: 0 }),
  count: () => resolve({ share: option(3, count(2)) }, { share: 1.5 }),
  text: () => resolve({ share: option("", text) }, { share: 7 } as object),
  list: () => resolve({ share: option([1], each(positive)) }, { share: 7 } as object),
  "one-of": () => resolve({ share: option("half", oneOf("half", "all")) }, { share: 7 } as object),
  listed: () => resolve({ share: option("half", listed(["half", "all"])) }, { share: 7 } as object),
  "bin-in": () => refuse({ need: "bin-in", facts: { source: "a.csv" } }),
  "catch-in": () => refuse({ need: "catch-in", facts: { source: "a.csv" } }),
  "one-catch": () =>
    refuse({ need: "one-catch", facts: { by: "fill", names: ["3/2025", "3/2026"] } }),
  reason: () => refuse({ need: "reason", facts: {} }),
  name: () => refuse({ need: "name", facts: {} }),
  "no-column-beside": () => refuse({ need: "no-column-beside", facts: { column: "farm" } }),
  "sheet-of-workbook": () => refuse({ need: "sheet-of-workbook", facts: {} }),
  "some-catch-counts": () => refuse({ need: "some-catch-counts", facts: {} }),
  "as-measured": () => refuse({ need: "as-measured", facts: {} }),
  "different-names": () => refuse({ need: "different-names", facts: {} }),
  "some-numbers": () => refuse({ need: "some-numbers", facts: {} }),
  "level-with-margin": () => refuse({ need: "level-with-margin", facts: {} }),
  "few-rows": () => refuse({ need: "few-rows", facts: { most: 20_000 } }),
  "known-name": () => resolve({ share: option(1, positive) }, { shear: 1 } as object),
};

/** Of a need that one place has, which its own test reaches: the words alone. */
function refuse(need: OptionNeed): never {
  throw new OptionError("share", "x", need);
}

describe.each(Object.entries(refusedOptions))("an option refused for its %s", (need, refused) => {
  it("is told in German too, with the same numbers", () => {
    const error = errorOf(refused);
    expect(error.need?.need).toBe(need);
    expect(english().problems.option(error)).toBe(error.message);
    const said = german().problems.option(error);
    expect(said).toMatch(need === "known-name" ? /„shear“ gibt es nicht/ : /^Option „share“: gef/);
    expect(englishIn(said.replace("as measured", ""))).toEqual([]);
    expect(numbersIn(said.replace("20000", "20.000").replace("1.5", "1,5"), "de")).toEqual(
      numbersIn(error.message, "en"),
    );
  });
});

it("an option refused for a need of its own is told as the error itself tells it", () => {
  const error = new OptionError("level", 0.4, "above 0.5 with a margin");
  expect([error.need, german().problems.option(error)]).toEqual([null, error.message]);
});

function errorOf(act: () => unknown): OptionError {
  try {
    act();
  } catch (error) {
    if (error instanceof OptionError) return error;
  }
  throw new Error("It was not refused.");
}
