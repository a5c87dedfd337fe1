import { describe, expect, it } from "vitest";
import { readSetup } from "../../src/data/read-setup.ts";
import { checkSetupAgainst } from "../../src/data/setup-against.ts";
import { csv, logOf } from "../support/catch-files.ts";

const log = await logOf(
  csv("bin,product,fill,catch,turns,net_kg", "1,wheat,1,1,20,5.89", "2,canola,1,1,20,0.6"),
);

function problems(setup: object): string[] {
  const read = readSetup({ name: "setup.json", text: JSON.stringify(setup) });
  return checkSetupAgainst(read, log).map(({ text }) => text);
}

const check = {
  filled: { value: 100, unit: "kg" },
  left: { value: 10, unit: "kg" },
  area: { value: 1, unit: "ha" },
};

describe("checkSetupAgainst", () => {
  it("is content with bins and products the catches have", () => {
    expect(
      problems({
        bins: [{ bin: "1" }, { bin: 2, product: "canola" }],
        field_checks: [{ ...check, bin: "1", product: "wheat", fill: 7 }],
      }),
    ).toEqual([]);
  });

  it("names bins and products the catches lack", () => {
    expect(
      problems({
        bins: [{ bin: "3" }, { bin: "1", product: "Wheat" }],
        field_checks: [{ ...check, bin: "4" }],
      }),
    ).toMatchInlineSnapshot(`
      [
        "setup.json, at bins[0].bin: found "3"; needed one of the bins in catches.csv: 1, 2. Spell it as the catches do, or delete the entry.",
        "setup.json, at bins[1].product: found "Wheat"; needed one of the products of bin 1 in catches.csv: wheat. Spell it as the catches do, or delete the entry.",
        "setup.json, at field_checks[0].bin: found "4"; needed one of the bins in catches.csv: 1, 2. Spell it as the catches do, or delete the entry.",
      ]
    `);
  });
});
