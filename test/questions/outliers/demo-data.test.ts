import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { planted } from "../../../data-demo/scenario/season-plan.ts";
import { readCatches } from "../../../src/data/read-catches.ts";
import { fitModel } from "../../../src/model/model.ts";
import { type Outliers, outliers } from "../../../src/questions/outliers.ts";
import { present } from "../../support/reference.ts";

async function screened(set: string, scaleDivisionKg: number): Promise<readonly Outliers[]> {
  const file = new URL(`../../../data-demo/${set}/catches.csv`, import.meta.url);
  const log = await readCatches({ name: "catches.csv", text: readFileSync(file, "utf8") });
  const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg };
  const { meters } = fitModel(log.catches, options);
  return meters.map((meter) =>
    outliers(meter, {
      ...options,
      massUnit: log.massUnit,
    }),
  );
}

describe("the demo season", () => {
  const results = screened("season", 0.02);
  const ofBin = async (bin: string) => present((await results).find((one) => one.bin === bin));

  // Fills that are much alike, and may not be quite, lend fewer degrees of freedom than their catches have: in a fill of the
  // past this catch stands out, and not beyond what chance brings among all catches of the season.
  test("shows the forgotten tare in its fill, and says that it is one", async () => {
    const { bin, ...at } = planted.forgottenTare;
    const { suspects } = await ofBin(bin);
    expect(suspects).toMatchObject([{ ...at, family: "this fill" }]);
    expect(suspects[0]?.explanations[0]?.mishap).toBe("tare-left-in");
  });

  test("shows the miscounted turn among all catches of the log, and says how many were made", async () => {
    const { bin, turnsMade, turnsWritten, ...at } = planted.miscountedTurn;
    const { suspects } = await ofBin(bin);
    expect(suspects).toMatchObject([{ ...at, turns: turnsWritten, family: "whole log" }]);
    expect(suspects[0]?.explanations[0]).toMatchObject({
      mishap: "one-turn-fewer",
      turns: turnsMade,
    });
  });

  test("leaves the bin without a bad catch alone, though its meter moved", async () => {
    const found = await ofBin(planted.drift.bin);
    expect(found.suspects).toEqual([]);
    expect(found.pairs).toEqual([]);
    expect(found.cautions).toEqual([]);
  });
});

test("the product trial, which has no bad catch, is left alone", async () => {
  const results = await screened("product-trial", 0.005);
  expect(results).toHaveLength(4);
  expect(results.flatMap(({ cautions }) => cautions)).toEqual([]);
});

test("three catches of a first morning are too few to judge, and that is all that is said", async () => {
  const [found] = await screened("first-morning", 0.02);
  expect(found?.cautions.map(({ code }) => code)).toEqual(["too-few-to-judge"]);
});
