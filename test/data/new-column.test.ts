import { describe, expect, it, vi } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { augment } from "../../src/analysis/tables/catches.ts";
import type { CatchColumn } from "../../src/data/columns.ts";
import { makeCatch } from "../../src/data/make-catch.ts";
import { catchesToCsv } from "../../src/data/write-csv.ts";
import { catchesToFrame, frameToCatches } from "../../src/frames.ts";
import { templateFiles } from "../../src/report/template.ts";
import { csv, logOf, problemsOf } from "../support/catch-files.ts";
import { aLog } from "../support/catches.ts";

/** The table of columns with one row more, and nothing else changed anywhere. */
vi.mock("../../src/data/columns.ts", async (real) => {
  const { catchColumns } = await real<{ catchColumns: readonly CatchColumn[] }>();
  const added = catchColumns.flatMap((column) =>
    column.name === "moisture_pct"
      ? [
          column,
          {
            ...column,
            name: "dew_mm",
            field: "dewMm",
            unit: "mm",
            maximum: 500,
            quantity: "dew",
            inSheet: true,
            description: "Dew before the catch",
            example: "4.5",
          },
        ]
      : [column],
  );
  return { catchColumns: added };
});

const header = "bin,product,fill,catch,turns,net_kg,dew_mm";
const good = { bin: "1", product: "wheat", fill: 1, catch: 1, turns: 20, netKg: 6.1 };
const dewy = { ...good, dewMm: 4.5 };

describe("a row more in the table of columns", () => {
  it("is read into its field, in any spelling, and empty where nothing is known", async () => {
    const log = await logOf(csv(header, "1,wheat,1,1,20,6.1,4.5", "1,wheat,1,2,20,6.2,"));
    expect(log.catches).toMatchObject([{ dewMm: 4.5 }, { dewMm: null }]);
    const other = await logOf(csv(header.replace("dew_mm", "Dew (mm)"), "1,wheat,1,1,20,6.1,5"));
    expect(other.catches).toMatchObject([{ dewMm: 5, extra: {} }]);
  });

  it("is refused out of range, without its unit, and misspelled", async () => {
    const row = "1,wheat,1,1,20,6.1,501";
    const texts = [
      ...(await problemsOf(csv(header, row))),
      ...(await problemsOf(csv(header.replace("dew_mm", "dew"), row))),
      ...(await problemsOf(csv(header.replace("dew_mm", "dw_mm"), row))),
    ];
    expect(texts).toEqual([
      expect.stringContaining('found "501"; needed a number from 0 to 500, in mm. Correct'),
      expect.stringContaining('found "dew"; needed the name dew_mm. Put the unit'),
      expect.stringContaining('needed a known column, and "dew_mm" is the nearest.'),
    ]);
  });

  it("settles the decimal mark of a file as every figure does", async () => {
    const log = await logOf(csv(header.replaceAll(",", ";"), "1;wheat;1;1;20;6,125;4,5"));
    expect(log.catches).toMatchObject([{ netKg: 6.125, dewMm: 4.5 }]);
  });

  it("is known to makeCatch and held to its range", () => {
    expect(makeCatch(dewy)).toMatchObject({ dewMm: 4.5 });
    expect(makeCatch(good)).toMatchObject({ dewMm: null });
    expect(() => makeCatch({ ...good, ...{ dewMm: -1 } })).toThrow(
      'field dewMm: found "-1"; needed a number from 0 to 500.',
    );
  });

  it("is written and read back, as a file and as a data frame, where the table has it", async () => {
    const catches = [makeCatch(dewy), makeCatch({ ...good, catch: 2 })];
    const text = catchesToCsv(catches);
    expect(text.split("\n")[0]).toBe(header);
    expect((await logOf(csv(text))).catches).toMatchObject([{ dewMm: 4.5 }, { dewMm: null }]);
    const numbered = catches.map((row, at) => ({ ...row, row: at + 1, moisturePercent: 13 }));
    const frame = await catchesToFrame(numbered);
    expect(frame.columns.slice(-2)).toEqual(["moisture_pct", "dew_mm"]);
    expect(frameToCatches(frame)).toStrictEqual(numbered);
  });

  it("stands in the tidy table, the empty sheet and the description of columns", () => {
    const log = aLog([makeCatch(dewy), makeCatch({ ...good, catch: 2 })]);
    const [row] = augment(log, analyse(log));
    expect(row).toMatchObject({ dew_mm: 4.5 });
    const files = templateFiles();
    expect(files["catches.csv"]).toContain("meter_rpm,dew_mm,bin_level_pct");
    expect(files["columns.md"]).toMatch(/`dew_mm`.*mm.*Dew before the catch.*4\.5/);
  });
});
