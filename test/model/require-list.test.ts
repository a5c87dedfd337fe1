import { expect, it } from "vitest";
import { OptionError } from "../../src/errors/errors.ts";
import { fillTotals } from "../../src/model/fill-record.ts";
import { fitModel } from "../../src/model/model.ts";
import { fitModelFromTotals } from "../../src/model/summed-model.ts";
import { aFill } from "../support/catches.ts";
import { trialLog } from "../support/trials.ts";

const catches = aFill([
  [20, 6],
  [20, 6.1],
]);
const given: readonly unknown[] = [trialLog(catches), undefined, null, "catches.csv", 7];

it.each([
  ["fitModel", fitModel, /^Option "catches" is .*a list/],
  ["fillTotals", fillTotals, /^Option "catches" is .*a list/],
  ["fitModelFromTotals", fitModelFromTotals, /^Option "records" is .*a list/],
] as const)(
  "%s says that it needs a list where it is handed a log or another thing",
  (_, ask, said) => {
    for (const one of given) {
      expect(() => ask(one as never)).toThrow(OptionError);
      expect(() => ask(one as never)).toThrow(said);
    }
  },
);

it("takes a list of catches, and an empty one", () => {
  expect(fitModel(catches).meters).toHaveLength(1);
  expect(fitModelFromTotals(fillTotals(catches)).meters).toHaveLength(1);
  expect(fitModel([]).meters).toEqual([]);
});
