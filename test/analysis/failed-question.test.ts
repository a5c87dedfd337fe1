import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { questions as everyQuestion, type Question } from "../../src/results/question.ts";
import { command, demo as demoFile, filesIn, inFolder } from "../support/command.ts";
import { analysisOf, states } from "../support/decision-states.ts";
import { demo } from "../support/demo.ts";
import { present } from "../support/reference.ts";

/** Questions that are to fail, and what they throw. */
const failing = vi.hoisted(() => new Map<string, Error>());

/** The module of a question, which fails where the test says so. */
const mayFail = vi.hoisted(
  () =>
    (question: string) =>
    async (original: () => Promise<object>): Promise<object> => {
      const real = await original();
      return Object.fromEntries(
        Object.entries(real).map(([name, value]) => [
          name,
          typeof value !== "function"
            ? value
            : (...args: unknown[]) => {
                const error = failing.get(question);
                if (error !== undefined) throw error;
                return value(...args);
              },
        ]),
      );
    },
);

vi.mock("../../src/questions/delivery.ts", mayFail("delivery"));
vi.mock("../../src/questions/outliers.ts", mayFail("outliers"));
vi.mock("../../src/questions/catches-needed.ts", mayFail("catchesNeeded"));
vi.mock("../../src/questions/setting.ts", mayFail("setting"));
vi.mock("../../src/questions/drift.ts", mayFail("drift"));
vi.mock("../../src/questions/field-check.ts", mayFail("fieldCheck"));
vi.mock("../../src/questions/repeatability.ts", mayFail("repeatability"));
vi.mock("../../src/questions/uncertainty-budget.ts", mayFail("uncertaintyBudget"));
vi.mock("../../src/questions/speed-linearity.ts", mayFail("speedLinearity"));
vi.mock("../../src/questions/outlets.ts", mayFail("outlets"));
vi.mock("../../src/questions/across-fills.ts", mayFail("acrossFills"));
vi.mock("../../src/questions/skipping.ts", mayFail("skipping"));
vi.mock("../../src/questions/cost.ts", mayFail("cost"));

afterEach(() => failing.clear());

const needed: readonly Question[] = [
  "delivery",
  "outliers",
  "catchesNeeded",
  "setting",
  "drift",
  "fieldCheck",
];
const wanted: readonly Question[] = [
  "repeatability",
  "uncertaintyBudget",
  "speedLinearity",
  "outlets",
  "acrossFills",
  "skipping",
  "cost",
];
const questions: readonly Question[] = [...needed, ...wanted];

async function withFailing(question: Question) {
  failing.set(question, new Error("a sum that cannot be"));
  const { log, setup } = await demo("first-morning");
  return present(analyse(log, setup).meters[0]);
}

async function sound() {
  const { log, setup } = await demo("first-morning");
  return present(analyse(log, setup).meters[0]);
}

it("every question is either needed or only wanted, and tried below", () => {
  const named = (as: "needed" | "wanted") =>
    everyQuestion.filter(({ answer }) => answer === as).map(({ name }) => name);
  expect(named("needed").toSorted()).toEqual(needed.toSorted());
  expect(named("wanted").toSorted()).toEqual(wanted.toSorted());
});

describe("a question that fails", () => {
  it.each(questions)("takes nothing from the others: %s", async (question) => {
    const before = await sound();
    const after = await withFailing(question);
    const code = needed.includes(question) ? "needed-not-computed" : "not-computed";
    const facts = { question, reason: "a sum that cannot be" };
    const found = after.cautions.filter((one) => one.code.endsWith("not-computed"));
    expect(found).toMatchObject([{ code, severity: "serious", facts }]);
    for (const other of questions) {
      if (other === question || other === "delivery") continue;
      // What to set and the number of catches rest on the delivery, which then has no interval.
      if (question === "delivery" && ["setting", "uncertaintyBudget"].includes(other)) continue;
      if (question === "setting" && other === "catchesNeeded") continue;
      expect(after[other], other).toEqual(before[other]);
    }
    if (question !== "delivery") expect(after[question]).toBeNull();
  });

  it.each(needed)("needed to say what to set, asks to look first: %s", async (question) => {
    const { decision } = await withFailing(question);
    expect(decision).toMatchObject({ action: "look-first", setting: null });
    expect(present(decision).reasons).toContain("needed-not-computed");
  });

  it.each(wanted)("that only tells more, leaves the decision as it was: %s", async (question) => {
    const before = present((await sound()).decision);
    const after = present((await withFailing(question)).decision);
    expect({ ...after, also: [] }).toEqual({ ...before, also: [] });
    expect(after.also).toContain("not-computed");
  });

  it("leaves of the delivery its value, and nothing to set by", async () => {
    const before = (await sound()).delivery;
    const { delivery, decision } = await withFailing("delivery");
    expect(delivery.estimate).toMatchObject({
      value: before.estimate.value,
      standardError: null,
      interval: null,
    });
    expect(delivery).toMatchObject({
      halfWidth: null,
      standardErrorFrom: "none",
      scatterOfTypicalCatch: null,
      input: before.input,
      cautions: [],
    });
    expect(delivery.points.map(({ residualKg }) => residualKg)).toEqual(
      before.points.map(({ residualKg }) => expect.closeTo(residualKg, 12)),
    );
    expect(present(decision).setting).toBeNull();
    expect(JSON.parse(JSON.stringify(delivery))).toEqual(delivery);
  });

  it("is answered in the setup like any other finding", async () => {
    failing.set("drift", new Error("a sum that cannot be"));
    const state = states.enough;
    const answered = [{ code: "needed-not-computed", bin: "1", note: "looked at by hand" }];
    const { meters } = await analysisOf({ ...state, setup: { ...state.setup, answered } });
    expect(meters[0]?.decision?.action).toBe("set");
    expect(meters[0]?.answered).toEqual([
      { code: "needed-not-computed", note: "looked at by hand" },
    ]);
  });

  it("because an option cannot be meant, is the asker's fault and answers nothing", async () => {
    failing.set("skipping", new OptionError("limits", 0, "above zero"));
    await expect(sound()).rejects.toThrow(OptionError);
  });
});

describe("the command, where a question fails", () => {
  const files = [demoFile("first-morning/catches.csv"), "--setup"] as const;
  const setup = demoFile("first-morning/setup.json");

  it.each(questions)("writes every file and ends with 3: %s", async (question) => {
    await inFolder(async (folder) => {
      failing.set(question, new Error("a sum that cannot be"));
      const out = join(folder, "report");
      const { code, out: said } = await command("report", ...files, setup, "--out", out);
      expect(code).toBe(3);
      expect(said).toContain("could not be computed (a sum that cannot be)");
      expect(await filesIn(out)).toEqual(
        expect.arrayContaining(["report.html", "report.json", "report.md"]),
      );
      const markdown = await readFile(join(out, "report.md"), "utf8");
      expect(markdown).toContain("could not be computed");
      expect(markdown).not.toMatch(/NaN|undefined|Infinity|\[object/);
    });
  });

  it("ends with 3 from enough too, and before --fail-on", async () => {
    failing.set("outliers", new Error("a sum that cannot be"));
    expect((await command("enough", ...files, setup)).code).toBe(3);
    await inFolder(async (folder) => {
      const out = join(folder, "report");
      const args = ["report", ...files, setup, "--out", out, "--fail-on", "note"];
      expect((await command(...args)).code).toBe(3);
    });
  });

  it("ends with 0 where none does", async () => {
    expect((await command("enough", ...files, setup)).code).toBe(0);
  });
});
