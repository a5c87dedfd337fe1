import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { createColors } from "picocolors";
import { spreadLibrary } from "../../src/analysis/spread-library.ts";
import { addCommand } from "../../src/cli/add-command.ts";
import { filesIn } from "../../src/cli/sources.ts";
import { importCatches } from "../../src/data/import/import-catches.ts";
import { makeCatch } from "../../src/data/make-catch.ts";
import { checkCatches, type ReadOptions } from "../../src/data/read-catches.ts";
import { checkSetup } from "../../src/data/read-setup.ts";
import { checkCatchesTogether } from "../../src/data/read-together.ts";
import type { CatchSource } from "../../src/data/source.ts";
import { readProductClasses } from "../../src/data/spreads/classes.ts";
import { copiesAmong } from "../../src/data/spreads/copies.ts";
import { checkSpreadLibrary } from "../../src/data/spreads/read.ts";
import { spreadLibraryText } from "../../src/data/spreads/write.ts";
import type { Catch } from "../../src/data/types.ts";
import type { DataIssue } from "../../src/errors/data-issue.ts";
import { DataError } from "../../src/errors/errors.ts";
import type { ProblemKey } from "../../src/errors/problems.ts";
import { type FrameContent, frameToCatches } from "../../src/frames.ts";
import { enough } from "../../src/light.ts";
import { fitModel } from "../../src/model/model.ts";
import { checkCatchesFile } from "../../src/node.ts";
import { poolTotals } from "../../src/pool.ts";
import { csv, type SheetCell, workbook } from "./catch-files.ts";
import { claiming } from "./hostile-files.ts";
import { inventedFills } from "./simulated-fills.ts";
import { aSpreadLibrary } from "./spread-libraries.ts";

/** Something that is refused, and why. */
export type Refused = () => Promise<readonly DataIssue[]>;

/**
 * For every problem there is, what raises it: where its sentences differ by their facts, one for each way.
 *
 * @param folder  of files that are there; what lies in `forbidden` may not be opened, what lies in `odd` cannot be
 */
export function refusedFor(folder: string): Readonly<Record<ProblemKey, readonly Refused[]>> {
  return { ...files(folder), ...pools(folder), ...tables, ...imports, ...programs, ...setups };
}

/** A catch of an area, and its turns, of a meter that makes 300 turns/ha for oats and of which nothing is known for wheat. */
function area(cells: string): Refused {
  const product = cells.endsWith(",") ? "wheat" : "oats";
  return async () => {
    const check = await checkCatches(
      {
        name: "season.csv",
        text: `bin,product,fill,catch,area_ha,turns,net_kg\nrear,${product},1,1,${cells},6.1`,
      },
      {
        turnsPerHectare: (meter) =>
          meter.product === "oats" ? { value: 300, assumed: false } : null,
      },
    );
    return check.ok ? [] : check.issues;
  };
}

function files(folder: string) {
  return {
    "file-not-found": [disk(folder, "lost.csv")],
    "is-folder": [disk(folder, "")],
    "is-device": [disk(folder, "pipe.csv")],
    "may-not-open": [disk(folder, "forbidden.csv")],
    "cannot-open": [disk(folder, `${"x".repeat(5000)}.csv`), disk(folder, "odd.csv")],
    "ending-unknown": [table("season.pdf", ""), table("season", "")],
    "setup-not-json": [setupFile("farm.csv", "{}")],
    "file-too-large": [file("season.xlsx", new Uint8Array(20_000_001))],
    "spreads-not-json": [spreadsFile("spreads.csv", "{}")],
    "classes-column-missing": [classes("product,kind\nwheat,cereals")],
    "classes-product-twice": [classes("product,class\nwheat,cereals\nWheat,grain")],
    "spreads-too-few": [pooled("1"), pooled("1", "2")],
    "area-without-drive": [area("0.01,")],
    "area-disagrees": [area("0.01,4"), area("1/100,2")],
    "file-empty": [
      table("season.csv", ""),
      table("season.json", ""),
      setupFile("farm.json", ""),
      spreadsFile("spreads.json", ""),
    ],
    "zip-archive": [file("season.csv", bytes(0x50, 0x4b, 3, 4))],
    "old-workbook": [file("season.csv", bytes(0xd0, 0xcf, 0x11, 0xe0))],
    image: [
      file("season.csv", bytes(0x89, 0x50, 0x4e, 0x47)),
      file("season.csv", bytes(0xff, 0xd8, 0xff)),
      file("season.csv", bytes(0x47, 0x49, 0x46, 0x38)),
    ],
    "pdf-document": [file("season.csv", bytes(0x25, 0x50, 0x44, 0x46))],
    "gzip-archive": [file("season.csv", bytes(0x1f, 0x8b))],
    "utf16-unmarked": [file("season.csv", bytes(0x62, 0, 0x69, 0, 0x6e, 0))],
    "binary-file": [file("season.csv", bytes(0x62, 0x69, 0x6e, 0x0a, 0x0a, 0))],
    "not-utf8": [file("season.csv", bytes(0x62, 0x0a, 0xe9))],
    "no-tables": [emptyFolder(join(folder, "none"))],
    "not-appendable": [addedTo(join(folder, "log.json"))],
    "line-too-long": [table("season.csv", "1".repeat(1_000_001))],
    "quote-stray": [rows('"rear,oats,1,1,20,5.89')],
    "too-many-cells": [rows("rear,oats,1,1,20,5,89"), rows("rear;oats;1;1;20;5,89;7", ";")],
    "no-rows": [rows("")],
    "all-excluded": [
      under(`${header},exclude,reason`, "rear,oats,1,1,20,5.89,yes,bag tore"),
      entries([{ ...good, exclude: true, reason: "bag tore" }]),
    ],
    "not-json": [table("season.json", '[{"turns": 20'), table("season.json", "[1, ]x")],
    "no-list": [entries(12)],
    "no-entries": [entries([])],
    "entry-no-object": [entries([7])],
    "value-no-cell": [entries([{ ...good, turns: [20] }])],
    "too-many": [
      table("season.csv", `${header}${",".repeat(500)}\nrear,oats,1,1,20,5.89`),
      table("season.csv", `${header}${"\n".repeat(2_000_001)}`),
    ],
    "rest-not-read": [rows(Array.from({ length: 300 }, () => "x,,,,,").join("\n"))],
    "setup-too-long": [
      setup({ answered: Array.from({ length: 1_001 }, () => 1) }),
      setup({ title: "x".repeat(5_000_001) }),
    ],
    "workbook-damaged": [file("season.xlsx", workbook({ A: [["bin"]] }).bytes.slice(0, -30))],
    "workbook-too-large": [file("season.xlsx", claiming(200_000_000))],
    "not-a-workbook": [table("season.xlsx", "bin")],
    "workbook-old": [file("season.xlsx", bytes(0xd0, 0xcf, 0x11, 0xe0))],
    "sheet-not-found": [book({ April: [["bin"]], May: [] }, "June")],
    "sheet-empty": [book({ Cover: [], April: [["bin"]] }), book({ Cover: [] })],
  } satisfies Partial<Record<ProblemKey, readonly Refused[]>>;
}

function pools(folder: string) {
  const pooled = (name: string, content: string | Uint8Array): Refused =>
    inPool(join(folder, name), content);
  const mixedLate = `${header}\n${"rear,oats,1,1,20,5.89\n".repeat(4000)}rear,oats,1,1,20,5.89\r\n`;
  return {
    "pool-ending": [pooled("season.pdf", "1"), pooled("season", "1")],
    "pool-text": [
      pooled("utf16.csv", bytes(0xff, 0xfe, 0x62, 0)),
      pooled("old.csv", `${header}\rrear,oats,1,1,20,5.89\r`),
      pooled("mixed.csv", `${header}\r\nrear,oats,1,1,20,5.89\n`),
    ],
    "pool-not-parquet": [pooled("season.parquet", "1")],
    "pool-unreadable": [pooled("late.csv", mixedLate)],
    "too-few-cells": [pooled("short.csv", `${header}\nrear,oats,1,1,20\n`)],
  } satisfies Partial<Record<ProblemKey, readonly Refused[]>>;
}

const header = "bin,product,fill,catch,turns,net_kg";
const good = { bin: "rear", product: "oats", fill: 1, catch: 1, turns: 20, net_kg: 5.89 };

const tables = {
  "columns-unknown": [table("season.csv", "hopper,sort\n1,2")],
  "fields-unknown": [entries([{ hopper: 1 }])],
  "column-missing": [
    under("bin,product,fill,catch,net_kg", "rear,oats,1,1,5.89"),
    entries([{ bin: 1 }]),
  ],
  "mass-column-missing": [
    under("bin,product,fill,catch,turns", "rear,oats,1,1,20"),
    entries([{ bin: 1 }]),
  ],
  "gross-or-tare-missing": [
    under("bin,product,fill,catch,turns,gross_kg", "rear,oats,1,1,20,6.31"),
    under("bin,product,fill,catch,turns,tare_kg", "rear,oats,1,1,20,0.42"),
  ],
  "column-repeated": [
    under(`${header},Turns`, "rear,oats,1,1,20,5.89,20"),
    entries([{ ...good, Turns: 20 }]),
  ],
  "column-unit": [
    under("bin,product,fill,catch,turns,net", "rear,oats,1,1,20,5.89"),
    under(`${header},moisture`, "rear,oats,1,1,20,5.89,13"),
    entries([{ ...good, moisture: 13 }]),
  ],
  "column-misspelt": [
    under(`${header},operater`, "rear,oats,1,1,20,5.89,A"),
    entries([{ ...good, operater: "A" }]),
  ],
  "value-missing": [rows("rear,,1,1,,5.89"), entries([{ ...good, fill: null, turns: null }])],
  "formula-failed": [rows("#REF!,oats,1,1,20,5.89"), entries([{ ...good, bin: "#REF!" }])],
  "not-a-number": [
    rows("rear,oats,one,1,20 t,5.89"),
    recorded("meter_rpm", "fast"),
    entries([{ ...good, turns: "20 t" }]),
  ],
  "not-finite": [
    rows("rear,oats,1,1,NaN,5.89"),
    recorded("meter_rpm", "NaN"),
    entries([{ ...good, turns: "NaN" }]),
  ],
  "out-of-range": [
    rows("rear,oats,1,0,-20,-5.89"),
    recorded("meter_rpm", "-3"),
    recorded("bin_level_pct", "101"),
    recorded("bulk_density_kg_m3", "0.5"),
    entries([{ ...good, turns: 0 }]),
  ],
  "not-whole": [rows("rear,oats,1.5,1,20,5.89")],
  "decimal-ambiguous": [rows('rear,oats,1,1,20,"1,234"'), rows("rear;oats;1;1;20;1,234", ";")],
  "not-a-date": [
    recorded("taken_at", "12/04/2026"),
    entries([{ ...good, taken_at: "12/04/2026" }]),
  ],
  "not-yes-no": [recorded("exclude", "perhaps")],
  "exclude-missing": [recorded("reason", "bag tore")],
  "reason-missing": [recorded("exclude", "yes")],
  "checked-denied": [recorded("checked", "no"), entries([{ ...good, checked: "no" }])],
  "mass-missing": [rows("rear,oats,1,1,20,"), entries([{ ...good, net_kg: null }])],
  "gross-missing": [weighed(",,0.42")],
  "tare-missing": [weighed(",6.31,")],
  "masses-in-two-units": [under(`${header},gross_g,tare_g`, "rear,oats,1,1,20,5.89,6310,420")],
  "divisions-in-two-units": [
    under(`${header},division_kg,division_g`, "rear,oats,1,1,20,5.89,0.01,10"),
  ],
  "gross-below-tare": [weighed(",0.42,6.31")],
  "net-disagrees": [weighed("5.98,6.31,0.42")],
  "net-not-above-0": [weighed("0.00,,"), weighed(",0.42,0.42"), entries([{ ...good, net_kg: 0 }])],
  "catch-repeated": [
    rows("rear,oats,1,1,20,5.89\nrear,oats,1,1,20,5.93"),
    under(`${header},outlet`, "rear,oats,1,1,20,5.89,left\nrear,oats,1,1,20,5.93,left"),
    entries([good, good]),
  ],
  "two-products-in-fill": [rows("rear,oats,1,1,20,5.89\nrear,peas,1,2,20,5.93")],
  "key-missing": [
    under(`machine,${header}`, "north,rear,oats,1,1,20,5.89\n,rear,oats,1,2,20,5.93"),
  ],
  "key-spelt-twice": [
    under(`machine,${header}`, "North,rear,oats,1,1,20,5.89\nnorth,rear,oats,1,2,20,5.93"),
  ],
  "bin-spelt-twice": [rows("rear,oats,1,1,20,5.89\nRear,oats,1,2,20,5.93")],
  "product-spelt-twice": [rows("rear,oats,1,1,20,5.89\nrear,Oats,2,1,20,5.93")],
} satisfies Partial<Record<ProblemKey, readonly Refused[]>>;

/** What is asked when a sheet of somebody's own is imported. */
const imports = {
  "header-not-found": [own("foo;bar", "20;6,3")],
  "columns-alike": [
    own("Tank;Sorte;Kultur;Füllung;Probe;Umdr.;Netto kg", "1;Kurz;Hafer;1;1;20;6,3"),
  ],
  "weight-kind": [
    own("Tank;Produkt;Füllung;Probe;Umdr.;Gewicht kg", "1;Hafer;1;1;20;6,3"),
    own("Tank;Produkt;Füllung;Probe;Umdr.;Gewicht", "1;Hafer;1;1;20;6,3"),
  ],
  "mass-column-open": [
    own("Tank;Produkt;Füllung;Probe;Umdr.", "1;Hafer;1;1;20"),
    own("Tank;Produkt;Füllung;Probe;Umdr.;Anzeige", "1;Hafer;1;1;20;6,3"),
    own("Tank;Produkt;Füllung;Probe;Umdr.;Anzeige (g)", "1;Hafer;1;1;20;6310"),
  ],
  "catches-side-by-side": [
    own("Tank;Produkt;Füllung;Umdr.;Probe 1;Probe 2", "1;Hafer;1;20;6,3;6,4"),
  ],
  "unit-blank": [
    own(
      "Tank;Produkt;Füllung;Probe;Umdr.;Netto kg;Einheit",
      "1;Hafer;1;1;20;14,1;lb",
      "1;Hafer;1;2;20;6,3;",
    ),
  ],
  "mass-unit-open": [own("Tank;Produkt;Füllung;Probe;Umdr.;Netto", "1;Hafer;1;1;20;6,3")],
  "column-open": [
    own("Tank;Füllung;Probe;Umdr.;Netto kg", "1;1;1;20;6,3"),
    own("Tank;Füllung;Probe;Umdr.;Netto kg;Schlag", "1;1;1;20;6,3;Nord"),
  ],
  "dates-two-ways": [
    own("Tank;Produkt;Füllung;Probe;Umdr.;Netto kg;Datum", "1;Hafer;1;1;20;6,3;03/04/2026"),
  ],
  "decimal-two-ways": [own("Tank;Produkt;Füllung;Probe;Umdr.;Netto kg", "1;Hafer;1;1;20;1,234")],
  "blank-below": [
    own("Tank;Produkt;Füllung;Probe;Umdr.;Netto kg", "1;Hafer;1;1;20;6,3", "1;Hafer;1;2;;6,4"),
  ],
  "catch-or-mean": [
    own("Tank;Produkt;Füllung;Umdr.;Netto kg", "1;Hafer;1;20;6,3", ";;;;6,6", ";;;;6,45"),
    own("Tank;Produkt;Füllung;Umdr.;Netto kg", "1;Hafer;1;20;6,3", ";;;;6,6", ";;;;12,9"),
  ],
  "fill-in-two-places": [
    async () => (await importCatches(["a.csv", "b.csv"].map(unnumbered))).asked,
    async () => {
      const rows = [
        ["tank", "crop", "fill", "revs", "net kg"],
        [1, "oats", 1, 20, 6.3],
      ];
      return (await importCatches([workbook({ A: rows, B: rows })])).asked;
    },
  ],
  "catch-in-two-places": [
    twice((sources) => importCatches(sources).then(({ asked }) => asked)),
    twice((sources) =>
      checkCatchesTogether(sources).then((check) => (check.ok ? [] : check.issues)),
    ),
    twoSheets,
  ],
  "file-copied": [
    async () =>
      copiesAmong([
        { name: "one.csv", sha256: "0".repeat(64) },
        { name: "two.csv", sha256: "0".repeat(64) },
      ]),
  ],
} satisfies Partial<Record<ProblemKey, readonly Refused[]>>;

function unnumbered(name: string): CatchSource {
  return { name, text: "tank,crop,fill,revs,net kg\n1,oats,1,20,6.3" };
}

function twice(read: (sources: readonly CatchSource[]) => ReturnType<Refused>): Refused {
  const text = `${header}\nrear,oats,1,1,20,5.89`;
  return () => read(["2025.csv", "2026.csv"].map((name) => ({ name, text })));
}

async function twoSheets(): ReturnType<Refused> {
  const rows = [Object.keys(good), Object.values(good)];
  const sheets = workbook({ "2025": rows, "2026": rows });
  return (await importCatches([sheets])).asked;
}

function own(...lines: readonly string[]): Refused {
  return async () => (await importCatches([{ name: "heft.csv", text: lines.join("\n") }])).asked;
}

function emptyFolder(path: string): Refused {
  return async () => {
    await mkdir(path, { recursive: true });
    return issuesOf(() => filesIn([path], "catches.csv"));
  };
}

/** A catch added by the command to a file of this name. */
function addedTo(path: string): Refused {
  return async () => {
    await writeFile(path, "[]");
    return issuesOf(() => addCommand(path, ["20:6.3"], { language: "en" }, silent));
  };
}

async function issuesOf(refused: () => Promise<unknown>): ReturnType<Refused> {
  try {
    await refused();
  } catch (error) {
    if (error instanceof DataError) return error.issues;
  }
  return [];
}

const silent = {
  out: () => {},
  err: () => {},
  outColors: createColors(false),
  errColors: createColors(false),
};

const programs = {
  "no-catches": [thrown(() => enough({ turns: 20, netKg: [] }))],
  "frame-column-missing": [frame(["row"], [])],
  "cell-missing": [cells({ bin: null })],
  "field-missing": [made({ turns: undefined })],
  "field-empty": [made({ product: " " })],
  "field-no-date": [made({ takenAt: "2026-02-30" })],
  "field-no-mass": [made({ netKg: 0 })],
  "extra-no-texts": [made({ extra: { lot: 4 } }), made({ extra: "A" })],
  "value-no-text": [made({ bin: 7 }), made({ bin: {} }), cells({ bin: 7 })],
  "value-no-number": [made({ turns: "20" }), cells({ turns: "20" })],
  "value-not-whole": [made({ fill: 1.5 }), cells({ fill: 1.5 })],
  "value-out-of-range": [made({ turns: 0 }), made({ row: -1 }), cells({ turns: 0 })],
} satisfies Partial<Record<ProblemKey, readonly Refused[]>>;

const kg = (value: number) => ({ value, unit: "kg" });
const speed = (value: number) => ({ value, unit: "km/h" });
const drive = { kind: "ground-wheel", steps: [0.8], step_names: ["low", "high"] };
const tramlined = { bin: "rear", filled: kg(200), left: kg(100), area: { value: 1, unit: "ha" } };
const field = { bin: "rear", filled: kg(100), left: kg(200), area: { value: 1, unit: "ha" } };

const meter = { fills: 3, catches: 9 };

const setups = {
  "setup-object": [setup({ scale: 10 }), setup({ scale: { division: [] } })],
  "setup-list": [setup({ bins: {} })],
  "setup-text": [setup({ title: "" }), setup({ title: 7 })],
  "setup-name": [setup({ bins: [{ bin: true }] })],
  "setup-above-0": [setup({ money: { area_ha: 0 } }), setup({ money: { area_ha: "9" } })],
  "setup-at-least-0": [setup({ money: { value_of_hour: -1 } })],
  "setup-percentage": [setup({ tolerance_percent: 0 }), setup({ confidence_percent: "95" })],
  "setup-between": [spreads({ records: [{ ...meter, spread: { variance: 0, df: 8 } }] })],
  "setup-version": [spreads({ version: 2 })],
  "setup-whole-from-1": [setup({ bins: [{ bin: "rear", starts_afresh: 1.5 }] })],
  "setup-whole-up-to": [setup({ bins: [{ bin: "rear", starts_afresh: 2_000_000 }] })],
  "setup-date": [setup({ field_checks: [{ date: 20260412 }] })],
  "setup-no-such-date": [setup({ field_checks: [{ date: "2026-02-30" }] })],
  "setup-one-of": [setup({ bins: [{ bin: "rear", assumed: "guess" }] })],
  "setup-unit": [setup({ scale: { division: { value: 10, unit: "mg" } } })],
  "setup-kind": [setup({ bins: [{ bin: "rear", drive: { kind: "belt" } }] })],
  "setup-finding": [setup({ answered: [{ code: "rain", bin: "rear", note: "dry" }] })],
  "setup-span-reversed": [setup({ cart: { speed: { from: speed(9), to: speed(6) } } })],
  "setup-no-step": [setup({ bins: [{ bin: "rear", drive: { kind: "ground-wheel", steps: [] } }] })],
  "setup-step-names": [setup({ bins: [{ bin: "rear", drive }] })],
  "setup-step-unknown": [
    setup({
      bins: [{ bin: "rear", drive: { kind: "ground-wheel", steps: [0.8], caught_step: "top" } }],
    }),
  ],
  "setup-bin-twice": [setup({ bins: [{ bin: "rear" }, { bin: "rear" }] })],
  "setup-rates-reversed": [
    setup({
      bins: [
        {
          bin: "rear",
          lowest_rate: { value: 140, unit: "kg/ha" },
          highest_rate: { value: 120, unit: "kg/ha" },
        },
      ],
    }),
  ],
  "setup-bin-open": [
    setup({
      bins: [
        { bin: "rear", product: "oats" },
        { bin: "rear", machine: "north" },
      ],
    }),
  ],
  "setup-no-book-value": [setup({ bins: [{ bin: "rear", assumed: "book value" }] })],
  "setup-figure-missing": [setup({ cart: { slip_standard_uncertainty_percent: 1 } })],
  "setup-more-left-than-filled": [setup({ field_checks: [field] })],
  "setup-bushel": [
    setup({ bins: [{ bin: "1", target_rate: { value: 2, unit: "bu/ac" } }] }),
    setup({ bins: [{ bin: "1", target_rate: { value: 120, unit: "kg/ha", bushel: kg(27) } }] }),
  ],
  "setup-rows-shut": [
    setup({ field_checks: [{ ...tramlined, rows_shut: 4 }] }),
    setup({ field_checks: [{ ...tramlined, rows: 4, rows_shut: 4 }] }),
    setup({ field_checks: [{ ...tramlined, rows: 48, tramline_share_percent: 33 }] }),
  ],
  "setup-key-twice": [setup({ cart: { skid_percent: 3, slip_percent: 3 } })],
  "setup-key-unknown": [setup({ tolerence_percent: 5 }), setup({ colour: "red" })],
  "setup-key-of-other-kind": [
    setup({ bins: [{ bin: "rear", drive: { kind: "motor", ratio: 1 } }] }),
  ],
} satisfies Partial<Record<ProblemKey, readonly Refused[]>>;

function read(source: CatchSource, options: ReadOptions = {}): Refused {
  return async () => {
    const check = await checkCatches(source, options);
    return check.ok ? [] : check.issues;
  };
}

function disk(folder: string, name: string): Refused {
  return async () => {
    const check = await checkCatchesFile(join(folder, name));
    return check.ok ? [] : check.issues;
  };
}

function inPool(path: string, content: string | Uint8Array): Refused {
  return async () => {
    await writeFile(path, content);
    try {
      for await (const _ of poolTotals(path, { threads: 1 }));
    } catch (error) {
      if (error instanceof DataError) return error.issues;
      throw error;
    }
    return [];
  };
}

function file(name: string, content: Uint8Array): Refused {
  return read({ name, bytes: content });
}

function bytes(...all: readonly number[]): Uint8Array {
  return Uint8Array.from(all);
}

function table(name: string, text: string): Refused {
  return read({ name, text });
}

function under(headers: string, text: string): Refused {
  return read(csv(headers, text));
}

function rows(text: string, separator = ","): Refused {
  return under(header.replaceAll(",", separator), text);
}

function recorded(column: string, value: string): Refused {
  return under(`${header},${column}`, `rear,oats,1,1,20,5.89,${value}`);
}

function weighed(netGrossTare: string): Refused {
  return under(`${header},gross_kg,tare_kg`, `rear,oats,1,1,20,${netGrossTare}`);
}

function entries(value: unknown): Refused {
  return table("season.json", JSON.stringify(value));
}

function book(sheets: Readonly<Record<string, readonly (readonly SheetCell[])[]>>, sheet?: string) {
  return read(workbook(sheets), sheet === undefined ? {} : { sheet });
}

function setupFile(name: string, text: string): Refused {
  return async () => {
    const check = checkSetup({ name, text });
    return check.ok ? [] : check.issues;
  };
}

function setup(value: unknown): Refused {
  return setupFile("farm.json", JSON.stringify(value));
}

function spreadsFile(name: string, text: string): Refused {
  return async () => {
    const check = checkSpreadLibrary({ name, text });
    return check.ok ? [] : check.issues;
  };
}

/** A library with nothing wrong in it but what is given. */
function spreads(given: object): Refused {
  const file = JSON.parse(spreadLibraryText(aSpreadLibrary));
  return spreadsFile("spreads.json", JSON.stringify({ ...file, ...given }));
}

function classes(text: string): Refused {
  return thrown(() => readProductClasses({ name: "classes.csv", text }));
}

function pooled(...bins: readonly string[]): Refused {
  const caught = bins.flatMap((bin, i) =>
    inventedFills({ fills: 2, catches: 3, spread: 0.02, scatter: 0.01, bin }, i + 1),
  );
  return thrown(() =>
    spreadLibrary([fitModel(caught)], { day: "2026-04-12", by: "evencatch 1.0.0" }),
  );
}

function thrown(act: () => unknown): Refused {
  return async () => {
    try {
      act();
    } catch (error) {
      if (error instanceof DataError) return error.issues;
      throw error;
    }
    return [];
  };
}

function made(given: object): Refused {
  const { net_kg: netKg, ...rest } = good;
  return thrown(() => makeCatch({ ...rest, netKg, ...given } as Catch));
}

function frame(columns: readonly string[], values: FrameContent["values"]): Refused {
  return thrown(() => frameToCatches({ columns, values }));
}

function cells(given: object): Refused {
  const row = { row: 2, ...good, ...given };
  return frame(Object.keys(row), [Object.values(row)]);
}
