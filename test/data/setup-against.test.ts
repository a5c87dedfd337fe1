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

  it("does not offer a bin the product of another one", () => {
    expect(notes({ bins: [{ bin: "front", product: "canla 2025" }] })).toEqual([]);
    expect(notes({ bins: [{ bin: "bin 2", product: "canla 2025" }] })).toEqual([
      'Product "canla 2025" of the setup has no catches in bin bin 2; did you mean "canola 2025"? If so, spell it as the catches do.',
    ]);
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

describe("checkSetupAgainst of machines and seasons", () => {
  const of = async (setup: object, keys: string, ...rows: readonly string[]) => {
    const header = `${keys},bin,product,fill,catch,turns,net_kg`;
    const caught = await logOf(csv(header, ...rows.map((key) => `${key},1,wheat,1,1,20,5.9`)));
    const read = readSetup({ name: "setup.json", text: JSON.stringify(setup) });
    return checkSetupAgainst(read, caught);
  };

  it("says that an entry counts for nothing where no catch names a machine, or spells it so", async () => {
    const setup = { bins: [{ bin: "1", machine: "North" }] };
    expect(await of(setup, "farm", "Hill")).toMatchObject([
      {
        code: "setup-key-not-caught",
        severity: "doubt",
        where: { bin: "1" },
        facts: { key: "machine", name: "North", instead: null },
      },
    ]);
    for (const words of Object.values(wordsBy)) {
      const [found] = await of(setup, "farm", "Hill");
      expect(found === undefined ? "" : cautionSentence(found, words)).toMatch(
        /North.*setup\.$|North.*weg\.$/,
      );
    }
    expect(await of(setup, "machine", "north")).toMatchObject([
      { code: "setup-key-not-caught", facts: { instead: "north" } },
    ]);
    expect(await of(setup, "machine", "North")).toEqual([]);
    // A setup may serve the files of two machines.
    expect(await of(setup, "machine", "east")).toEqual([]);
  });

  it("asks for the season of a fill where the catches hold several, and nowhere else", async () => {
    const setup = {
      bins: [{ bin: "1", starts_afresh: 3 }],
      field_checks: [{ ...check, bin: "1", fill: 1 }],
      answered: [{ code: "field-disagrees", bin: "1", fill: 2, note: "measured again" }],
    };
    expect(await of(setup, "season", "2025", "2026")).toMatchObject(
      [3, 1, 2].map((number) => ({ code: "setup-season-missing", facts: { number } })),
    );
    expect(await of(setup, "season", "2026")).toEqual([]);
    const told = { answered: [{ ...setup.answered[0], season: "2026" }] };
    expect(await of(told, "season", "2025", "2026")).toEqual([]);
  });
});
