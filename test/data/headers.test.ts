import { describe, expect, it } from "vitest";
import { catchColumns } from "../../src/data/columns.ts";
import { meanings, spelled } from "../../src/data/header-names.ts";
import { csv, logOf, problemsOf } from "../support/catch-files.ts";

const row = "1,wheat,1,1,20,5.89";

describe("headers in any case and spacing", () => {
  it.each(["Net KG", "net (kg)", "Net_kg", "NET-KG", " net  kg ", "netKg", "net [kg]"])(
    "reads %j as net mass in kg",
    async (net) => {
      const log = await logOf(csv(`Bin, PRODUCT ,Fill,catch,Turns,${net}`, row));
      expect(log.catches[0]?.netKg).toBe(5.89);
      expect(log.catches[0]?.extra).toEqual({});
    },
  );

  it.each([
    ["net_g", 0.00589, "g"],
    ["net_lb", 2.6716590593, "lb"],
    ["net lbs", 2.6716590593, "lb"],
    ["net_oz", 0.16697869120625, "oz"],
  ] as const)("takes the unit from %s", async (net, kg, unit) => {
    const log = await logOf(csv(`bin,product,fill,catch,turns,${net}`, row));
    expect(log.catches[0]?.netKg).toBeCloseTo(kg, 14);
    expect(log.massUnit).toBe(unit);
  });

  it("reads signs and raised figures in units", async () => {
    const log = await logOf(
      csv(
        "bin,product,fill,catch,turns,net_kg,Bulk density (kg/m³),Moisture (%),bin level percent",
        `${row},772,13.5,80`,
      ),
    );
    expect(log.catches[0]).toMatchObject({
      bulkDensityKgPerM3: 772,
      moisturePercent: 13.5,
      binLevelPercent: 80,
      extra: {},
    });
  });
});

describe("columns evencatch does not know", () => {
  it("are kept as text under the header of the file", async () => {
    const log = await logOf(
      csv("bin,product,fill,catch,turns,net_kg,Lot no,field,batch,rate", `${row},007,2026,b1,`),
    );
    expect(log.catches[0]?.extra).toEqual({
      "Lot no": "007",
      field: "2026",
      batch: "b1",
      rate: "",
    });
  });

  it("are named by their letter when the header is blank, and dropped when all is blank", async () => {
    const log = await logOf(csv("bin,product,fill,catch,turns,net_kg,,", `${row},seen,`));
    expect(log.catches[0]?.extra).toEqual({ "column G": "seen" });
  });

  it("may have names that objects have of themselves", async () => {
    const log = await logOf(csv("bin,product,fill,catch,turns,net_kg,__proto__", `${row},x`));
    expect(JSON.stringify(log.catches[0]?.extra)).toBe('{"__proto__":"x"}');
  });
});

describe("headers that are refused", () => {
  it("names each missing column", async () => {
    expect(await problemsOf(csv("bin,product,net_kg", "1,wheat,5.89"))).toMatchInlineSnapshot(`
      [
        "catches.csv, row 1, column fill: found nothing; needed a column named fill. Add the column. \`evencatch template\` writes an empty sheet with the right names.",
        "catches.csv, row 1, column catch: found nothing; needed a column named catch. Add the column. \`evencatch template\` writes an empty sheet with the right names.",
        "catches.csv, row 1, column turns: found nothing; needed a column named turns. Add the column. \`evencatch template\` writes an empty sheet with the right names.",
      ]
    `);
  });

  it("asks for a mass column", async () => {
    expect(
      await problemsOf(csv("bin,product,fill,catch,turns", "1,wheat,1,1,20")),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 1, column net_kg: found nothing; needed a mass column with its unit in the name: net_kg, or gross_kg and tare_kg. Use kg, g, lb or oz in the name, as the scale shows it. \`evencatch template\` writes an empty sheet with the right names.",
      ]
    `);
  });

  it("asks for the tare beside gross", async () => {
    expect(
      await problemsOf(csv("bin,product,fill,catch,turns,gross_kg", row)),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 1, column tare_kg: found nothing; needed a tare column beside gross, in the same unit, or a net column. Add tare_kg, tare_g, tare_lb or tare_oz; without it the net mass cannot be worked out.",
      ]
    `);
  });

  it("says when the first row names nothing", async () => {
    expect(await problemsOf(csv(row, row))).toMatchInlineSnapshot(`
      [
        "catches.csv, row 1: found "1, wheat, 1, 1, 20, 5.89"; needed columns named bin, product, fill, catch, turns and net_kg (or gross_kg and tare_kg; g, lb and oz also). Name the columns in the first row. \`evencatch template\` writes an empty sheet with the right names.",
      ]
    `);
  });

  it("refuses the same column twice, however spelled", async () => {
    expect(
      await problemsOf(csv("bin,product,fill,catch,turns,net_kg,Turns", `${row},20`)),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 1, column Turns: found "Turns" beside "turns", which is the same name; needed each name once. Delete one of the two columns, or give it another name.",
      ]
    `);
  });

  it("refuses the same column of one's own twice", async () => {
    const [text = ""] = await problemsOf(
      csv("bin,product,fill,catch,turns,net_kg,lot,lot", `${row},a,b`),
    );
    expect(text).toContain('found "lot" beside "lot", which is the same name');
  });

  it("suggests the nearest name for a slip, in needed and in optional columns", async () => {
    expect(
      await problemsOf(csv("bin,prodcut,fill,catch,turns,nt_kg,operater", `${row},A`)),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 1, column prodcut: found "prodcut"; needed a known column, and "product" is the nearest. Rename it to product if that is meant; if it is a column of your own, choose a name that is less like it.",
        "catches.csv, row 1, column nt_kg: found "nt_kg"; needed a known column, and "net_kg" is the nearest. Rename it to net_kg if that is meant; if it is a column of your own, choose a name that is less like it.",
        "catches.csv, row 1, column operater: found "operater"; needed a known column, and "operator" is the nearest. Rename it to operator if that is meant; if it is a column of your own, choose a name that is less like it.",
      ]
    `);
  });

  it.each(["net", "Net mass", "gross weight", "net_stone", "net_t"])(
    "asks for the unit of %j in the name",
    async (net) => {
      const texts = await problemsOf(csv(`bin,product,fill,catch,turns,${net}`, row));
      expect(texts[0]).toMatch(
        /needed one of the names (net|gross)_kg, (net|gross)_g, (net|gross)_lb, (net|gross)_oz/,
      );
    },
  );

  it("asks for the unit of moisture, density and level", async () => {
    expect(
      await problemsOf(
        csv(
          "bin,product,fill,catch,turns,net_kg,moisture,bulk density lb/bu,bin level",
          `${row},1,60,2`,
        ),
      ),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 1, column moisture: found "moisture"; needed the name moisture_pct. Put the unit of the figures in the column's name; figures in any other unit must be converted first.",
        "catches.csv, row 1, column bulk density lb/bu: found "bulk density lb/bu"; needed the name bulk_density_kg_m3. Put the unit of the figures in the column's name; figures in any other unit must be converted first.",
        "catches.csv, row 1, column bin level: found "bin level"; needed the name bin_level_pct. Put the unit of the figures in the column's name; figures in any other unit must be converted first.",
      ]
    `);
  });

  it("reports what is wrong in the rows together with the header", async () => {
    const texts = await problemsOf(csv("bin,product,fill,catch,net_kg", "1,wheat,0,1,5.89"));
    expect(texts).toHaveLength(2);
  });
});

describe("headers of a sheet kept in German", () => {
  it("mean the same columns, each by the name that the German template gives it, and without umlauts too", async () => {
    const names = catchColumns.flatMap(({ name, german }) =>
      german === null ? [] : [[name, german]],
    );
    expect(names).toHaveLength(catchColumns.length);
    for (const [name = "", german = ""] of names)
      expect(meanings.get(spelled(german).spelling), german).toEqual(
        meanings.get(spelled(name).spelling),
      );
    expect(meanings.get(spelled("Fuellung").spelling)).toEqual({ plain: "fill" });
    expect(meanings.get(spelled("Netto (lb)").spelling)).toEqual({ kind: "net", unit: "lb" });
  });

  it("are read with decimal commas, and yes and no in German", async () => {
    const log = await logOf(
      csv(
        "Tank;Produkt;Füllung;Probe;Umdrehungen;Netto [kg];Notiz;weglassen;Grund",
        "1;Weizen;1;1;20;5,89;trocken;nein;",
        "1;Weizen;1;2;20;5,93;;ja;verschüttet",
      ),
    );
    expect(log.catches).toMatchObject([
      { bin: "1", product: "Weizen", netKg: 5.89, note: "trocken", leftOut: null, extra: {} },
      { leftOut: "verschüttet" },
    ]);
  });

  it("are asked for the unit as well", async () => {
    expect(
      await problemsOf(
        csv("Tank;Produkt;Füllung;Probe;Umdrehungen;Nettogewicht", "1;W;1;1;20;5,9"),
      ),
    ).toEqual([expect.stringContaining("netto_kg")]);
  });
});
