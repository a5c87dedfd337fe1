import { describe, expect, it } from "vitest";
import { cautionList } from "../../../src/report/sections/cautions.ts";
import { fieldCheckSection } from "../../../src/report/sections/field-check.ts";
import { outletsSection } from "../../../src/report/sections/outlets.ts";
import { settingSection } from "../../../src/report/sections/setting.ts";
import { speedLinearitySection } from "../../../src/report/sections/speed-linearity.ts";
import { uncertaintyBudgetSection } from "../../../src/report/sections/uncertainty-budget.ts";
import { expectSound, idsOf } from "../../support/blocks.ts";
import {
  aCheck,
  budgetOf,
  checked,
  evenness,
  log,
  motorDrive,
  seasonSettings,
  set,
  speedOf,
  speeds,
  wanted,
  wheelDrive,
} from "../../support/field-answers.ts";
import { english } from "../../support/words.ts";

const single = log.slice(0, 1);
const exact = { value: 25, standardUncertainty: null };

describe.each(["metric", "us"] as const)("sections on drive and field, %s", (units) => {
  const words = english(units);

  it.each([
    ["nothing given", set({})],
    ["a ground wheel", set({ ...wheelDrive, ...wanted, ...speeds })],
    ["a motor", set({ ...motorDrive, ...wanted, ...speeds })],
    ["a single catch", set({ ...wheelDrive, ...wanted }, single)],
  ])("setting with %s", (_, result) => {
    expectSound(settingSection(result, words, "bin-1"));
    expect(cautionList(result.cautions, words).items).toHaveLength(result.cautions.length);
  });

  it.each([
    ["two speeds", speedOf()],
    ["a single catch", speedOf(single)],
  ])("speed linearity with %s", (_, result) => {
    expectSound(speedLinearitySection(result, words, "bin-1"));
  });

  it.each([
    ["everything given", budgetOf({ ...wheelDrive, scaleTestedError: 0.002 })],
    ["a value kept", budgetOf({ valueFor: "next fills" })],
    ["a single catch", budgetOf({}, single)],
  ])("uncertainty budget with %s", (_, result) => {
    expectSound(uncertaintyBudgetSection(result, words, "bin-1"));
  });

  it.each([
    ["three checks", checked([aCheck(240), aCheck(205), aCheck(262)])],
    ["no uncertainty", checked([aCheck(240, { areaHectares: exact, date: null, fill: null })])],
    ["an unknown setting", checked([aCheck(240, { assumedDeliveryKgPerTurn: null })])],
    ["a disagreement", checked([aCheck(600)])],
  ])("field check with %s", (_, result) => {
    expectSound(fieldCheckSection(result, words, "bin-1"));
  });

  it.each([
    ["one catch each", evenness([-0.08, 0.01, 0.02, 0.02, 0.03])],
    ["two catches each", evenness([-0.02, 0.01, 0.02], 2)],
    ["no difference", evenness([0, 0, 0])],
  ])("outlets with %s", (_, result) => {
    expectSound(outletsSection(result, words, "bin-1"));
  });
});

describe("sections on drive and field", () => {
  const words = english();

  it("have tables of steps only where steps are listed, and of settings where a target is", () => {
    const ids = (result: Parameters<typeof settingSection>[0]) =>
      idsOf(settingSection(result, words, "b"));
    expect(ids(set({ ...wheelDrive, ...wanted }))).toEqual([
      "b-chart",
      "b-detail",
      "b-steps",
      "b-around",
    ]);
    expect(ids(set({ ...motorDrive, ...wanted, ...speeds }))).toEqual(["b-detail", "b-around"]);
    expect(ids(set({}))).toEqual([]);
  });

  it("say the demo season's settings for every bin", async () => {
    for (const result of await seasonSettings())
      expectSound(settingSection(result, words, `bin-${result.bin}`));
  });
});
