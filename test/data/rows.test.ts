import { describe, expect, it } from "vitest";
import { catchColumns } from "../../src/data/columns.ts";
import { findColumns } from "../../src/data/headers.ts";
import { checkText } from "../../src/data/read-text.ts";
import { readRows } from "../../src/data/rows.ts";
import type { Table } from "../../src/data/table.ts";
import type { Catch } from "../../src/data/types.ts";

/** A row that is right, by column; what a test says of a column stands in its place. */
const right: Readonly<Record<string, string>> = {
  bin: "1",
  product: "oats",
  fill: "1",
  catch: "1",
  turns: "20",
  net_kg: "6.3",
};

function read(given: Readonly<Record<string, string>>, separator = ";") {
  const row = { ...right, ...given };
  const text = [Object.keys(row), Object.values(row)].map((one) => one.join(separator)).join("\n");
  const checked = checkText({ name: "a.csv", text });
  return checked.ok
    ? { row: checked.value.catches[0], missed: checked.value.missed, issues: [] }
    : { row: undefined, missed: undefined, issues: checked.issues };
}

const told = (given: Readonly<Record<string, string>>) =>
  read(given).issues.map(({ row, column, problem }) => `row ${row} ${column}: ${problem}`);

/** As the reference of columns has it: name, field, lowest and highest that is read, and whether it is a whole number. */
const figures: readonly (readonly [string, keyof Catch, number, number, boolean])[] = [
  ["fill", "fill", 1, 1_000_000, true],
  ["catch", "catch", 1, 1_000_000, true],
  ["turns", "turns", 0.001, 1_000_000, false],
  ["net_kg", "netKg", 0.000001, 1_000_000, false],
  ["division_kg", "divisionKg", 0.000001, 1_000_000, false],
  ["meter_rpm", "meterRpm", 0.001, 10_000, false],
  ["bulk_density_kg_m3", "bulkDensityKgPerM3", 1, 20_000, false],
  ["moisture_pct", "moisturePercent", 0, 100, false],
  ["bin_level_pct", "binLevelPercent", 0, 100, false],
];

describe.each(figures)("a figure under %s", (column, field, lowest, highest, whole) => {
  const beside = column === "net_kg" ? "net_kg" : column;

  it("is read from its lowest to its highest value", () => {
    for (const value of [lowest, highest])
      expect(read({ [beside]: String(value) }).row?.[field], String(value)).toBe(value);
  });

  it("is refused just beyond them, by row and column", () => {
    const step = whole ? 1 : lowest === 0 ? 0.001 : lowest / 10;
    for (const value of [lowest - step, highest + 1])
      expect(told({ [beside]: value.toFixed(7) })[0], String(value)).toMatch(
        new RegExp(`^row 2 ${column}: (out-of-range|net-not-above-0)$`),
      );
  });

  it("is refused where it is no number, and no finite one", () => {
    expect(told({ [beside]: "twenty" })).toEqual([`row 2 ${column}: not-a-number`]);
    expect(told({ [beside]: "inf" })).toEqual([`row 2 ${column}: not-finite`]);
    expect(told({ [beside]: "NaN" })).toEqual([`row 2 ${column}: not-finite`]);
  });

  it("is a whole number where only those are", () => {
    if (whole) expect(told({ [beside]: "2.5" })).toEqual([`row 2 ${column}: not-whole`]);
    else expect(read({ [beside]: "2.5" }).row?.[field]).toBe(2.5);
  });

  it("may be left blank only where it is not needed", () => {
    const needed = ["fill", "catch", "turns", "net_kg"].includes(column);
    const blank = read({ [beside]: "" });
    if (!needed) expect(blank.row?.[field]).toBeNull();
    else expect(blank.issues.map((issue) => [issue.row, issue.column])).toEqual([[2, column]]);
  });
});

describe("a list of these columns", () => {
  it("holds every figure of the table of columns but gross and tare, which come with each other", () => {
    const listed = catchColumns.flatMap(({ name, type }) =>
      type === "number" || type === "integer" ? name : [],
    );
    expect(listed.filter((name) => !figures.some(([column]) => column === name))).toEqual([
      "gross_kg",
      "tare_kg",
    ]);
  });
});

describe("a text", () => {
  it.each(["bin", "product"])("under %s must be there", (column) => {
    expect(told({ [column]: " " })).toEqual([`row 2 ${column}: value-missing`]);
  });

  it.each([
    ["farm", "farm"],
    ["machine", "machine"],
    ["season", "season"],
    ["outlet", "outlet"],
    ["operator", "operator"],
    ["note", "note"],
    ["checked", "checked"],
  ] as const)("under %s is read with single spaces, or null where it is blank", (column, field) => {
    expect(read({ [column]: "  Nord   2 " }).row?.[field]).toBe("Nord 2");
    expect(read({ [column]: "" }).row?.[field]).toBeNull();
    expect(told({ [column]: "#REF!" })).toEqual([`row 2 ${column}: formula-failed`]);
  });

  it("that says that nothing was looked at is refused under checked", () => {
    for (const word of ["no", "N", "False", "0"])
      expect(told({ checked: word }), word).toEqual(["row 2 checked: checked-denied"]);
  });
});

describe("a date", () => {
  it.each(["2026-04-12", "2026-04-12T07:30", "2028-02-29"])("%s is read as it is", (date) => {
    expect(read({ taken_at: date }).row?.takenAt).toBe(date);
  });

  it.each([
    "2026-02-29",
    "2100-02-29",
    "2026-13-01",
    "2026-04-31",
    "2026-04-12T24:00",
    "12.4.2026",
  ])("%s is none", (date) => {
    expect(told({ taken_at: date })).toEqual(["row 2 taken_at: not-a-date"]);
  });
});

describe("a catch that is left out", () => {
  it.each(["yes", "Y", "TRUE", "1", "x"])("by %s has its reason", (word) => {
    expect(read({ exclude: word, reason: "wind" }).row?.leftOut).toBe("wind");
    expect(told({ exclude: word, reason: "" })).toEqual(["row 2 reason: reason-missing"]);
    expect(told({ exclude: word })).toEqual(["row 2 reason: reason-missing"]);
  });

  it.each(["no", "N", "false", "0", ""])("counts by %j", (word) => {
    expect(read({ exclude: word, reason: "" }).row?.leftOut).toBeNull();
  });

  it("is asked about where a reason stands alone, or the answer is none", () => {
    expect(told({ exclude: "", reason: "wind" })).toEqual(["row 2 exclude: exclude-missing"]);
    expect(told({ reason: "wind" })).toEqual(["row 2 exclude: exclude-missing"]);
    expect(told({ exclude: "perhaps", reason: "wind" })).toEqual(["row 2 exclude: not-yes-no"]);
    // Beside a plain no a reason is kept by nobody and asked about by nobody.
    expect(read({ exclude: "no", reason: "wind" }).row?.leftOut).toBeNull();
  });

  it("may have weighed nothing, and no other catch may", () => {
    expect(read({ net_kg: "0", exclude: "yes", reason: "wind" }).row?.netKg).toBe(0);
    expect(told({ net_kg: "0", exclude: "no" })).toHaveLength(1);
  });

  it("without a mass is missed, and what else stands in its row is not asked for", () => {
    const text =
      "bin;product;fill;catch;turns;net_kg;exclude;reason\n1;oats;1;1;20;6.3;;\n1;oats;1;2;;;yes;spilled";
    const checked = checkText({ name: "a.csv", text });
    expect(checked.ok && checked.value.missed).toEqual([
      {
        row: 3,
        farm: null,
        machine: null,
        season: null,
        bin: "1",
        product: "oats",
        fill: 1,
        catch: 2,
        outlet: null,
        reason: "spilled",
      },
    ]);
    expect(told({ net_kg: "", exclude: "yes", reason: "spilled" })).toEqual([
      "row 2 net_kg: mass-missing",
    ]);
    expect(told({ net_kg: "", exclude: "", reason: "spilled" })).toContain(
      "row 2 net_kg: mass-missing",
    );
  });
});

describe("columns of the file's own", () => {
  it("are kept with the catch by their headers", () => {
    expect(read({ Shed: " A  b ", "": "x" }).row?.extra).toEqual({ Shed: "A  b", "column H": "x" });
    expect(read({}).row?.extra).toEqual({});
  });
});

describe("decimal marks", () => {
  const figuresOf = (...masses: readonly string[]) => {
    const rows = masses.map((mass, i) => `1;oats;1;${i + 1};20;${mass};Nord 1,5`);
    const text = ["bin;product;fill;catch;turns;net_kg;Shed", ...rows].join("\n");
    const checked = checkText({ name: "a.csv", text });
    return checked.ok
      ? checked.value.catches.map(({ netKg }) => netKg)
      : checked.issues.map(({ problem, row }) => `${problem} ${row}`);
  };

  it("are settled by the figures of the file, and not by its texts", () => {
    expect(figuresOf("6,3", "6,350")).toEqual([6.3, 6.35]);
    expect(figuresOf("6.3", "6.350")).toEqual([6.3, 6.35]);
    // A comma in a text says nothing of figures.
    expect(figuresOf("6.350", "6")).toEqual(["decimal-ambiguous 2"]);
    // Nor does one in a column of texts that is read.
    const noted = "bin;product;fill;catch;turns;net_kg;note\n1;oats;1;1;20;6.350;1.5";
    const read = checkText({ name: "a.csv", text: noted });
    expect(read.ok ? [] : read.issues.map(({ problem }) => problem)).toEqual(["decimal-ambiguous"]);
    // Both marks are used for decimals: nobody knows which the third is.
    expect(figuresOf("6.3", "6,3", "6,350")).toEqual(["decimal-ambiguous 4"]);
  });
});

describe("a table with more problems than are named", () => {
  const tableOf = (wrong: number, after: number): Table => ({
    headers: Object.keys(right),
    headerRow: 1,
    rows: Array.from({ length: wrong + after }, (_, i) => ({
      number: i + 2,
      cells: Object.values({ ...right, catch: String(i + 1), turns: i < wrong ? "x" : "20" }),
    })),
    issues: [],
    rowKind: "row",
    decimalMark: "point",
  });
  const problemsOf = (wrong: number, after: number) => {
    const table = tableOf(wrong, after);
    const place = { source: "a.csv", rowKind: "row" } as const;
    return readRows(table, findColumns(table, place).columns, place).issues;
  };

  it("names a thousand, then says behind which row how many are not read", () => {
    expect(problemsOf(999, 5).map(({ problem }) => problem)).not.toContain("rest-not-read");
    const issues = problemsOf(1_000, 5);
    expect(issues).toHaveLength(1_001);
    expect(issues.at(-1)).toMatchObject({ problem: "rest-not-read", row: 1_001, received: "5" });
    // With no row behind the last one there is nothing to be told.
    expect(problemsOf(1_000, 0)).toHaveLength(1_000);
  });
});
