import { describe, expect, it } from "vitest";
import { readSetup } from "../../src/data/read-setup.ts";
import { checkSetupAgainst } from "../../src/data/setup-against.ts";
import { cautionSentence } from "../../src/report/sections/cautions.ts";
import { csv, logOf } from "../support/catch-files.ts";
import { wordsBy } from "../support/words.ts";

const log = await logOf(
  csv(
    "bin,product,fill,catch,turns,net_kg",
    "front,wheat,1,1,20,5.89",
    "bin 2,canola 2025,1,1,20,0.6",
  ),
);

function notes(setup: object, language: keyof typeof wordsBy = "en"): string[] {
  const read = readSetup({ name: "setup.json", text: JSON.stringify(setup) });
  const words = wordsBy[language];
  return checkSetupAgainst(read, log).map((found) => {
    expect(found.severity).toBe("note");
    return cautionSentence(found, words);
  });
}

const check = {
  filled: { value: 100, unit: "kg" },
  left: { value: 10, unit: "kg" },
  area: { value: 1, unit: "ha" },
};

describe("checkSetupAgainst", () => {
  it("is content with bins and products the catches have", () => {
    expect(
      notes({
        bins: [{ bin: "front" }, { bin: "bin 2", product: "canola 2025" }],
        field_checks: [{ ...check, bin: "front", product: "wheat", fill: 7 }],
      }),
    ).toEqual([]);
  });

  it("is content with bins and products that were not caught yet", () => {
    expect(
      notes({
        bins: [
          { bin: "rear" },
          { bin: "bin 3" },
          { bin: "front", product: "barley" },
          { bin: "front", product: "canola 2025" },
          { bin: "bin 2", product: "canola 2026" },
        ],
        field_checks: [{ ...check, bin: "rear" }],
      }),
    ).toEqual([]);
  });

  it("asks whether a name without catches is meant for one with catches, once each", () => {
    const setup = {
      bins: [{ bin: "frnt" }, { bin: "Bin 2" }],
      field_checks: [
        { ...check, bin: "frnt" },
        { ...check, bin: "front", product: "Wheat" },
      ],
    };
    expect(notes(setup)).toEqual([
      'Bin "frnt" of the setup has no catches; did you mean "front"? If so, spell it as the catches do.',
      'Bin "Bin 2" of the setup has no catches; did you mean "bin 2"? If so, spell it as the catches do.',
      'Product "Wheat" of the setup has no catches in bin front; did you mean "wheat"? If so, spell it as the catches do.',
    ]);
    const product = { bins: [{ bin: "front", product: "whaet" }] };
    expect(notes(product)).toEqual([
      'Product "whaet" of the setup has no catches in bin front; did you mean "wheat"? If so, spell it as the catches do.',
    ]);
    expect(notes(product, "de")).toEqual([
      "Zum Produkt „whaet“ der Einstellungen gibt es im Tank front keine Proben; ist „wheat“ gemeint? Wenn ja, schreiben Sie den Namen wie bei den Proben.",
    ]);
    expect(notes({ bins: [{ bin: "frnt" }] }, "de")).toEqual([
      "Zum Tank „frnt“ der Einstellungen gibt es keine Proben; ist „front“ gemeint? Wenn ja, schreiben Sie den Namen wie bei den Proben.",
    ]);
  });

  it("does not ask about a name beside which the setup names the right one too", () => {
    expect(notes({ bins: [{ bin: "front" }, { bin: "frond" }] })).toEqual([]);
    const products = [
      { bin: "front", product: "wheat" },
      { bin: "front", product: "wheats" },
    ];
    expect(notes({ bins: products })).toEqual([]);
  });
});
