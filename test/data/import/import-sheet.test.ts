import { describe, expect, it } from "vitest";
import { importCatches } from "../../../src/data/import/import-catches.ts";
import type { ImportOptions } from "../../../src/data/import/result.ts";

/** A sheet as somebody keeps it, and all that is to be said of it: nothing more, nothing twice. */
interface Sheet {
  readonly what: string;
  readonly rows: readonly string[];
  readonly options?: ImportOptions;
  /** Bin, product, fill, catch, turns and net mass; null: there is no log until something is answered. */
  readonly catches: readonly string[] | null;
  /** Kind, facts, how often and in which rows. */
  readonly assumed?: readonly string[];
  /** Problem, row, column and what was found. */
  readonly asked?: readonly string[];
  /** Row, why and what stands in it. */
  readonly aside?: readonly string[];
}

const head = "Bin;Product;Fill;Catch;Turns;net_kg";
const plainRow = "1;oats;1;1;20;6.31";

/** Of each fill the turns of the first catch alone, and a mean below its catches. */
const turnsOnce = [
  "Bin;Product;Fill;Turns;net kg",
  "1;oats;1;20;6.3",
  ";;;;6.6",
  ";;;;6.4",
  ";;;;6.43",
  "1;oats;2;20;6.5",
  ";;;;6.4",
  ";;;;6.45",
];

async function said(rows: readonly string[], options?: ImportOptions) {
  const source = { name: "book.csv", text: rows.join("\n") };
  const { log, assumed, asked, setAside } = await importCatches([source], options);
  return {
    catches:
      log?.catches.map(
        (row) =>
          [row.bin, row.product, row.fill, row.catch, row.turns, row.netKg].join(" ") +
          (row.leftOut === null ? "" : ` (${row.leftOut})`),
      ) ?? null,
    assumed: assumed.map(
      ({ kind, facts, count, rows: found }) =>
        `${kind} ${Object.values(facts).flat().join("|")} ×${count} rows ${found.join(",")}`,
    ),
    asked: asked.map(
      ({ problem, row, column, received }) => `${problem} row ${row} ${column}: ${received}`,
    ),
    aside: setAside.map(({ row, why, text }) => `${row} ${why}: ${text}`),
  };
}

const sheets: readonly Sheet[] = [
  {
    what: "a table that is read as it stands",
    rows: [head, plainRow],
    catches: ["1 oats 1 1 20 6.31"],
  },
  {
    what: "names of its own, in one row below two titles",
    rows: ["Drill book", "kept by A", "Compartment;Crop;Fill;Rep;Revs;Net (kg)", plainRow],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: [
      "header-below 3 ×1 rows ",
      "column-read Compartment|bin ×1 rows ",
      "column-read Crop|product ×1 rows ",
      "column-read Rep|catch ×1 rows ",
      "column-read Revs|turns ×1 rows ",
    ],
    aside: ["1 title: Drill book", "2 title: kept by A"],
  },
  {
    what: "a title that is wider than the table",
    rows: ["Drill book;b;c;d;e;f;g", "Compartment;Crop;Fill;Rep;Revs;net_kg", plainRow],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: [
      "header-below 2 ×1 rows ",
      "column-read Compartment|bin ×1 rows ",
      "column-read Crop|product ×1 rows ",
      "column-read Rep|catch ×1 rows ",
      "column-read Revs|turns ×1 rows ",
    ],
    aside: ["1 title: Drill book | b | c | d | e | f | g"],
  },
  {
    what: "a title with its value in the next cell that has one",
    rows: ["Compartment;;3;;north", "Product;Fill;Catch;Turns;net_kg", "oats;1;1;20;6.31"],
    catches: ["3 oats 1 1 20 6.31"],
    assumed: ["header-below 2 ×1 rows ", "taken-from-title bin|3 ×1 rows 3"],
    aside: ["1 title: Compartment | 3 | north"],
  },
  {
    what: "units below the names",
    rows: ["Compartment;Crop;Fill;Rep;Revs;Net", ";;;;;kg", plainRow],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: [
      "two-line-head 1|2 ×1 rows ",
      "column-read Compartment|bin ×1 rows ",
      "column-read Crop|product ×1 rows ",
      "column-read Rep|catch ×1 rows ",
      "column-read Revs|turns ×1 rows ",
    ],
  },
  {
    what: "the head again on a second page, and a mean with words in a column of names",
    rows: [
      "Compartment;Crop;Fill;Rep;Revs;Net (kg)",
      plainRow,
      "Compartment;Crop;Fill;Rep;Revs;Net (kg)",
      "1;oats;1;2;20;6.35",
      "Mean;;;;;6.33",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.35"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "column-read Crop|product ×1 rows ",
      "column-read Rep|catch ×1 rows ",
      "column-read Revs|turns ×1 rows ",
    ],
    aside: [
      "3 header-again: Compartment | Crop | Fill | Rep | Revs | Net (kg)",
      "5 mean: Mean | 6.33",
    ],
  },
  {
    what: "words for a mean in columns of somebody's own, beside catches that are whole",
    rows: [
      "Bin;Product;Fill;Turns;net kg;Conditions",
      "1;oats;1;20;6.31;dry",
      "1;oats;1;20;6.45;average dust",
      "1;oats;1;20;6.39;Mean wind 12 km/h",
      ";;;20;6.5;average",
      "1;oats;1;20;6.41;max",
    ],
    catches: [
      "1 oats 1 1 20 6.31",
      "1 oats 1 2 20 6.45",
      "1 oats 1 3 20 6.39",
      "1 oats 1 4 20 6.5",
      "1 oats 1 5 20 6.41",
    ],
    assumed: [
      "column-kept Conditions ×1 rows ",
      "filled-down bin ×1 rows 5",
      "filled-down product ×1 rows 5",
      "filled-down fill ×1 rows 5",
      "catches-numbered order ×5 rows 2,3,4,5,6",
    ],
  },
  {
    what: "words for a mean in names of a product and of a bin, beside catches that have numbers",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg",
      "1;Mean Green peas;1;1;20;6.31",
      "Mittel;oats;1;1;20;6.4",
    ],
    catches: ["1 Mean Green peas 1 1 20 6.31", "Mittel oats 1 1 20 6.4"],
    assumed: ["column-read Compartment|bin ×1 rows "],
  },
  {
    what: "means and totals, in whichever column of a catch their word stands, and in one without a name",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;",
      plainRow.concat(";"),
      "Mittel;;;;;6.31;",
      "1;oats;1;Mean of 3;20;6.31;",
      ";Total;;;20;6.31;",
      "1;oats;1;;Total;6.31;",
      ";;;;20;6.31;max",
    ],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: ["column-read Compartment|bin ×1 rows ", "column-kept column 7 ×1 rows "],
    aside: [
      "3 mean: Mittel | 6.31",
      "4 mean: 1 | oats | 1 | Mean of 3 | 20 | 6.31",
      "5 total: Total | 20 | 6.31",
      "6 total: 1 | oats | 1 | Total | 6.31",
      "7 other-figure: 20 | 6.31 | max",
    ],
  },
  {
    what: "figures without turns that are the means of those above them, turns written once",
    // Of 6.3 and 6.6 the mean is 6.45, of 6.3, 6.6 and 6.4 it is 6.433, of 6.5 and 6.4 it is 6.45.
    rows: turnsOnce,
    catches: null,
    assumed: [
      "filled-down bin ×5 rows 3,4,5,7,8",
      "filled-down product ×5 rows 3,4,5,7,8",
      "filled-down fill ×5 rows 3,4,5,7,8",
      "catch-like-mean net kg|mean ×1 rows 4",
      "catches-numbered order ×7 rows 2,3,4,5,6,7,8",
    ],
    asked: [
      "blank-below row 3 Turns: ",
      "blank-below row 4 Turns: ",
      "catch-or-mean row 5 net kg: 6.43",
      "blank-below row 7 Turns: ",
      "catch-or-mean row 8 net kg: 6.45",
    ],
  },
  {
    what: "the same, turns answered to be those above",
    rows: turnsOnce,
    options: { fillDown: ["turns"], aside: [{ row: 5 }] },
    catches: null,
    assumed: [
      "filled-down bin ×4 rows 3,4,7,8",
      "filled-down product ×4 rows 3,4,7,8",
      "filled-down fill ×4 rows 3,4,7,8",
      "filled-down turns ×4 rows 3,4,7,8",
      "catch-like-mean net kg|mean ×1 rows 4",
      "catches-numbered order ×6 rows 2,3,4,6,7,8",
    ],
    asked: ["catch-or-mean row 8 net kg: 6.45"],
    aside: ["5 told: 6.43"],
  },
  {
    what: "a figure without turns that is the mean of those above it, and has a number as a catch",
    rows: ["Bin;Product;Fill;Catch;Turns;net kg", "1;oats;1;1;20;6.3", ";;;2;20;6.5", ";;;3;;6.4"],
    options: { fillDown: ["turns"] },
    catches: ["1 oats 1 1 20 6.3", "1 oats 1 2 20 6.5", "1 oats 1 3 20 6.4"],
    assumed: [
      "filled-down bin ×2 rows 3,4",
      "filled-down product ×2 rows 3,4",
      "filled-down fill ×2 rows 3,4",
      "filled-down turns ×1 rows 4",
    ],
  },
  {
    what: "means without names: by a word beside them, and without turns where all others have some",
    rows: [
      "Bin;Product;Fill;Turns;net kg;Kind",
      "1;oats;1;20;6.3;",
      ";;;20;6.5;",
      ";;;20;6.4;mean",
      "1;oats;2;20;6.6;",
      ";;;20;6.5;",
      ";;;;6.55;",
    ],
    options: { fillDown: ["turns"] },
    catches: ["1 oats 1 1 20 6.3", "1 oats 1 2 20 6.5", "1 oats 2 1 20 6.6", "1 oats 2 2 20 6.5"],
    assumed: [
      "column-kept Kind ×1 rows ",
      "filled-down bin ×2 rows 3,6",
      "filled-down product ×2 rows 3,6",
      "filled-down fill ×2 rows 3,6",
      "catches-numbered order ×4 rows 2,3,5,6",
    ],
    aside: ["4 mean: 20 | 6.4 | mean", "7 mean: 6.55"],
  },
  {
    what: "a head again in other words, and one lower down with another unit and a title of its own",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;Net (kg)",
      plainRow,
      "Tank;Product;Fill;Catch;Revs;Net kg",
      "1;oats;1;2;20;6.35",
      "The second drill",
      "Tank;Product;Fill;Catch;Turns;Net g",
      "2;oats;1;1;20;6310",
      "Tank;Product;Fill;Catch;Turns;Net g",
      "2;oats;1;2;20;6350",
    ],
    catches: [
      "1 oats 1 1 20 6.31",
      "1 oats 1 2 20 6.35",
      "2 oats 1 1 20 6.31",
      "2 oats 1 2 20 6.35",
    ],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "header-anew 6 ×1 rows ",
      "header-below 6 ×1 rows ",
      "column-read Tank|bin ×1 rows ",
    ],
    aside: [
      "3 header-again: Tank | Product | Fill | Catch | Revs | Net kg",
      "5 title: The second drill",
      "8 header-again: Tank | Product | Fill | Catch | Turns | Net g",
    ],
  },
  {
    what: "a head that names more columns than the one above it, both with catches",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;Net (kg);",
      "1;oats;1;1;20;6.31;",
      "Compartment;Product;Fill;Catch;Turns;Net (g);Operator",
      "2;oats;1;1;20;6310;AB",
    ],
    catches: ["1 oats 1 1 20 6.31", "2 oats 1 1 20 6.31"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "header-anew 3 ×1 rows ",
      "column-read Compartment|bin ×1 rows ",
    ],
  },
  {
    // 1 lb is 0.45359237 kg.
    what: "a column that gives the unit of each mass",
    rows: [
      "Bin;Product;Fill;Turns;net kg;Unit",
      "1;oats;1;20;6.3;kg",
      "1;oats;1;20;14;lb",
      '1;oats;1;20;14;""""',
    ],
    catches: ["1 oats 1 1 20 6.3", "1 oats 1 2 20 6.35029318", "1 oats 1 3 20 6.35029318"],
    assumed: [
      "unit-column Unit|net kg ×1 rows ",
      "column-kept Unit ×1 rows ",
      "ditto-read Unit ×1 rows 4",
      "unit-in-cells net kg|lb ×2 rows 3,4",
      "catches-numbered order ×3 rows 2,3,4",
    ],
  },
  {
    what: "a unit that stands in one row and holds for all, beside a mass without one",
    rows: ["Bin;Product;Fill;Turns;net;Unit", "1;oats;1;20;6.3;kg", "1;oats;1;20;6.4;"],
    catches: ["1 oats 1 1 20 6.3", "1 oats 1 2 20 6.4"],
    assumed: [
      "unit-column Unit|net ×1 rows ",
      "unit-written-once net|kg ×1 rows ",
      "column-read net|net_kg ×1 rows ",
      "column-kept Unit ×1 rows ",
      "catches-numbered order ×2 rows 2,3",
    ],
  },
  {
    what: "a row without a unit where others have one that is not that of the head",
    rows: [
      "Bin;Product;Fill;Turns;net kg;Unit",
      "1;oats;1;20;14;lb",
      "1;oats;1;20;6.4;",
      "Mean;;;;10.2;",
    ],
    catches: null,
    aside: ["4 mean: Mean | 10.2"],
    assumed: [
      "unit-column Unit|net kg ×1 rows ",
      "column-kept Unit ×1 rows ",
      "unit-in-cells net kg|lb ×1 rows 2",
      "catches-numbered order ×2 rows 2,3",
    ],
    asked: ["unit-blank row 3 Unit: "],
  },
  {
    what: "names written once for several catches, whose count is that of the cells filled",
    rows: [
      "Compartment;Crop;Fill;Catch;Turns;net_kg",
      plainRow,
      ";;;2;20;6.35",
      ";;2;1;20;6.4",
      ";peas;3;1;20;8",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.35", "1 oats 2 1 20 6.4", "1 peas 3 1 20 8"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "column-read Crop|product ×1 rows ",
      "filled-down bin ×3 rows 3,4,5",
      "filled-down product ×2 rows 3,4",
      "filled-down fill ×1 rows 3",
    ],
  },
  {
    what: "marks for the same as above",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;Operator",
      "1;oats;1;1;20;6.31;AB",
      "ditto;ditto;ditto;2;ditto;6.35;ditto",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.35"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "ditto-read Compartment ×1 rows 3",
      "ditto-read Product ×1 rows 3",
      "ditto-read Fill ×1 rows 3",
      "ditto-read Turns ×1 rows 3",
      "ditto-read Operator ×1 rows 3",
    ],
  },
  {
    what: "a mark for the same as above in a note, which is a note, and in the first row, where nothing is above",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;Note",
      "1;oats;1;1;20;6.31;wet",
      "1;oats;1;2;20;6.35;ditto",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.35"],
    assumed: ["column-read Compartment|bin ×1 rows "],
  },
  {
    what: "a spilled catch, by word in place of its mass",
    rows: ["Compartment;Product;Fill;Catch;Turns;net_kg", plainRow, "1;oats;1;2;20;spilled"],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: ["column-read Compartment|bin ×1 rows ", "spilled-read spilled ×1 rows 3"],
  },
  {
    what: "a spilled catch, by note beside no mass",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;Note",
      `${plainRow};`,
      "1;oats;1;2;20;;spilled, wind",
    ],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: ["column-read Compartment|bin ×1 rows ", "spilled-read spilled, wind ×1 rows 3"],
  },
  {
    what: "a row without a mass, a remark and a heading between the catches",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;Shed",
      `${plainRow};A`,
      "1;oats;1;2;20;;A",
      ";;;;;;B",
      "2;;;;;;",
    ],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: ["column-read Compartment|bin ×1 rows ", "column-kept Shed ×1 rows "],
    aside: ["3 no-mass: 1 | oats | 1 | 2 | 20 | A", "4 no-figures: B", "5 heading: 2"],
  },
  {
    what: "words for yes and no",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;Exclude;Reason",
      "1;oats;1;1;20;6.31;nein;",
      "1;oats;1;2;20;6.4;ja;wind",
      "1;oats;1;3;20;6.5;no;",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.4 (wind)", "1 oats 1 3 20 6.5"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "word-read Exclude|nein|no ×1 rows 2",
      "word-read Exclude|ja|yes ×1 rows 3",
    ],
  },
  {
    what: "units in the cells, and one written once",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;Net",
      "1;oats;1;1;20 turns;6.31 kg",
      "1;oats;1;2;20;6.35",
      "1;oats;1;3;20;6400 g",
    ],
    catches: null,
    asked: ["mass-unit-open row null Net: Net"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "unit-in-cells Turns|turns ×1 rows 2",
      "unit-in-cells Net|g ×1 rows 4",
    ],
  },
  {
    what: "one unit written once",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;Net",
      "1;oats;1;1;20;6.31 kg",
      "1;oats;1;2;20;6.35",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.35"],
    assumed: [
      "unit-written-once Net|kg ×1 rows ",
      "column-read Compartment|bin ×1 rows ",
      "column-read Net|net_kg ×1 rows ",
    ],
  },
  {
    what: "grams beside kilograms",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg",
      plainRow,
      "1;oats;1;2;20;6350 g",
      "1;oats;1;3;20;6.4 kg",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.35", "1 oats 1 3 20 6.4"],
    assumed: ["column-read Compartment|bin ×1 rows ", "unit-in-cells net_kg|g ×1 rows 3"],
  },
  {
    what: "a column that is named by its unit alone, which may be net or gross",
    rows: ["Bin;Product;Fill;Turns;kg", "1;oats;1;20;6.31"],
    catches: null,
    asked: ["weight-kind row null kg: kg"],
    assumed: ["catches-numbered order ×1 rows 2"],
  },
  {
    what: "no column for a mass, and one that may be it",
    rows: ["Bin;Product;Fill;Turns;Shed;Bag lb oz", "1;oats;1;20;A;14 lb 3 oz"],
    catches: null,
    asked: ["mass-column-open row null null: "],
    assumed: ["column-kept Shed ×1 rows ", "column-kept Bag lb oz ×1 rows "],
  },
  {
    what: "no column for a mass, and an answer",
    rows: ["Bin;Product;Fill;Turns;Bag (kg)", "1;oats;1;20;6.31"],
    options: { map: { "Bag (kg)": "net_kg" } },
    catches: ["1 oats 1 1 20 6.31"],
    assumed: ["column-read Bag (kg)|net_kg ×1 rows ", "catches-numbered order ×1 rows 2"],
  },
  {
    what: "a table of something else below the catches, whose rows are told to be none",
    rows: [head, plainRow, "Bin;Turns;Rate;;;", "1;20;80;;;"],
    options: { aside: [{ row: 4 }] },
    catches: ["1 oats 1 1 20 6.31"],
    assumed: ["header-anew 3 ×1 rows ", "column-kept Rate ×1 rows "],
    aside: ["4 told: 1 | 20 | 80"],
  },
  {
    what: "catches beside one another",
    rows: ["Tank;Crop;Fill;Turns;Catch 1;Catch 2;Mean", "1;oats;1;20;6.31;6.35;6.33"],
    catches: null,
    asked: ["catches-side-by-side row null null: "],
    assumed: [
      "column-read Tank|bin ×1 rows ",
      "column-read Crop|product ×1 rows ",
      "column-kept Catch 1 ×1 rows ",
      "column-kept Catch 2 ×1 rows ",
      "column-kept Mean ×1 rows ",
    ],
  },
  {
    what: "a weight that may be net or gross",
    rows: ["Compartment;Product;Fill;Catch;Turns;Weight (kg)", plainRow],
    catches: null,
    asked: ["weight-kind row null Weight (kg): Weight (kg)"],
    assumed: ["column-read Compartment|bin ×1 rows "],
  },
  {
    what: "a weight beside a net mass, which is kept and not needed",
    rows: ["Compartment;Product;Fill;Catch;Turns;Weight (kg);net_kg", "1;oats;1;1;20;6.7;6.31"],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: ["column-read Compartment|bin ×1 rows ", "column-kept Weight (kg) ×1 rows "],
  },
  {
    what: "two columns that mean the same",
    rows: ["Compartment;Hopper;Product;Fill;Catch;Turns;net_kg", "1;2;oats;1;1;20;6.31"],
    catches: null,
    asked: ["columns-alike row null Compartment: Compartment"],
    assumed: ["column-read Compartment|bin ×1 rows ", "column-kept Hopper ×1 rows "],
  },
  {
    what: "two columns that mean the same, one of them answered",
    rows: ["Compartment;Hopper;Product;Fill;Catch;Turns;net_kg", "1;2;oats;1;1;20;6.31"],
    options: { map: { Hopper: "bin" } },
    catches: ["2 oats 1 1 20 6.31"],
    assumed: ["column-read Hopper|bin ×1 rows ", "column-kept Compartment ×1 rows "],
  },
  {
    what: "a column that is left out by an answer, and one without a name",
    rows: ["Compartment;Product;Fill;Catch;Turns;net_kg;Shed;", "1;oats;1;1;20;6.31;A;x"],
    options: { map: { Shed: "-" } },
    catches: ["1 oats 1 1 20 6.31"],
    assumed: [
      "column-left-out Shed ×1 rows ",
      "column-read Compartment|bin ×1 rows ",
      "column-kept column 8 ×1 rows ",
    ],
  },
  {
    what: "no column for fill and turns",
    rows: ["Compartment;Product;Catch;net_kg;Shed", "1;oats;1;6.31;A"],
    catches: null,
    asked: ["column-open row null fill: ", "column-open row null turns: "],
    assumed: ["column-read Compartment|bin ×1 rows ", "column-kept Shed ×1 rows "],
  },
  {
    what: "no column for turns, and nothing else that is open",
    rows: ["Compartment;Product;Fill;Catch;net_kg", "1;oats;1;1;6.31"],
    catches: null,
    asked: ["column-open row null turns: "],
    assumed: ["column-read Compartment|bin ×1 rows "],
  },
  {
    what: "no head at all",
    rows: ["", "we drilled oats", "it went well"],
    catches: null,
    asked: ["header-not-found row 2 null: "],
  },
  {
    what: "names of fills instead of numbers, and catches without any",
    rows: [
      "Compartment;Product;Fill;Turns;net_kg",
      "1;oats;first;20;6.31",
      "1;oats;first;20;6.35",
      "1;oats;second;20;6.4",
      "2;oats;second;20;6.5",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.35", "1 oats 2 1 20 6.4", "2 oats 1 1 20 6.5"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "fills-numbered first|second ×4 rows 2,3,4,5",
      "catches-numbered order ×4 rows 2,3,4,5",
    ],
  },
  {
    what: "a fill that goes on after another",
    rows: [
      "Compartment;Product;Fill;Turns;net_kg",
      "1;oats;1;20;6.31",
      "1;oats;2;20;6.35",
      "1;oats;1;20;6.4",
      "1;oats;1;20;6.5",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 2 1 20 6.35", "1 oats 1 2 20 6.4", "1 oats 1 3 20 6.5"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "fill-goes-on 1|1 ×1 rows 4",
      "catches-numbered order ×4 rows 2,3,4,5",
    ],
  },
  {
    what: "numbers with a letter",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg",
      "1;oats;F1;no. 1;20;6.31",
      "1;oats;1;2nd;20;6.35",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.35"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "number-in-text Fill ×1 rows 2",
      "number-in-text Catch ×2 rows 2,3",
    ],
  },
  {
    what: "what holds for all of a table, in a line above it and by an answer",
    rows: [
      "Compartment: 3",
      "Product;Fill;Catch;Turns;net_kg",
      "oats;1;1;20;6.31",
      "oats;1;2;;6.35",
    ],
    options: { set: { turns: "25" } },
    catches: ["3 oats 1 1 20 6.31", "3 oats 1 2 25 6.35"],
    assumed: [
      "header-below 2 ×1 rows ",
      "taken-from-title bin|3 ×2 rows 3,4",
      "set-for-all turns|25 ×1 rows 4",
    ],
    aside: ["1 title: Compartment: 3"],
  },
  {
    what: "a line between the catches that holds for those below it",
    rows: [
      "Product;Fill;Catch;Turns;net_kg;Shed",
      "Compartment: 1;;;;;",
      "oats;1;1;20;6.31;A",
      "Compartment: 2;;;;;",
      "oats;1;1;20;6.4;A",
    ],
    catches: ["1 oats 1 1 20 6.31", "2 oats 1 1 20 6.4"],
    assumed: [
      "column-kept Shed ×1 rows ",
      "taken-from-title bin|1 ×1 rows 3",
      "taken-from-title bin|2 ×1 rows 5",
    ],
    aside: ["2 heading: Compartment: 1", "4 heading: Compartment: 2"],
  },
  {
    what: "figures whose mark between thousands can mean nothing else, and a decimal mark that was told",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg",
      "1;oats;1;1;1.200,5;6,310",
      "1;oats;1;2;20;6,350",
    ],
    options: { decimal: "comma" },
    catches: ["1 oats 1 1 1200.5 6.31", "1 oats 1 2 20 6.35"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "thousands-read Turns ×1 rows 2",
      "decimal-told comma ×2 rows 2,3",
    ],
  },
  {
    what: "a density in kilograms a hectolitre",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;Test weight (kg/hl)",
      "1;oats;1;1;20;6.31;52.5",
    ],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "column-read Test weight (kg/hl)|bulk_density_kg_m3 ×1 rows ",
      "unit-converted Test weight (kg/hl)|kg/hl|kg/m³ ×1 rows 2",
    ],
  },
  {
    what: "dates with a time beside them, dates that are settled by another, and one that is none",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;Date;Time",
      "1;oats;1;1;20;6.31;03/04/2026;7:05",
      "1;oats;1;2;20;6.35;25/04/2026;",
      "1;oats;1;3;20;6.4;after Easter;8:00",
    ],
    catches: ["1 oats 1 1 20 6.31", "1 oats 1 2 20 6.35", "1 oats 1 3 20 6.4"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "column-read Date|taken_at ×1 rows ",
      "dates-read 03/04/2026|2026-04-03 ×2 rows 2,3",
      "dates-ordered dmy|25/04/2026 ×1 rows 2",
      "time-joined Time ×1 rows 2",
      "dates-left-out Date|after Easter ×1 rows 4",
    ],
  },
  {
    what: "more dates that are none than anybody wants to read, the first five of them told, each once",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;Date",
      "1;oats;1;1;20;6.31;sowing",
      "1;oats;1;2;20;6.35;sowing",
      "1;oats;1;3;20;6.4;after Easter",
      "1;oats;1;4;20;6.33;rain",
      "1;oats;1;5;20;6.36;after rain",
      "1;oats;1;6;20;6.38;market day",
      "1;oats;1;7;20;6.37;last day",
    ],
    catches: [
      "1 oats 1 1 20 6.31",
      "1 oats 1 2 20 6.35",
      "1 oats 1 3 20 6.4",
      "1 oats 1 4 20 6.33",
      "1 oats 1 5 20 6.36",
      "1 oats 1 6 20 6.38",
      "1 oats 1 7 20 6.37",
    ],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "column-read Date|taken_at ×1 rows ",
      "dates-left-out Date|sowing|after Easter|rain|after rain|market day ×7 rows 2,3,4,5,6,7,8",
    ],
  },
  {
    what: "times that cannot be read, or belong to no date or to one that has a time",
    rows: [
      "Compartment;Product;Fill;Catch;Turns;net kg;Date;Time",
      "1;oats;1;1;20;6.31;;7:05",
      "1;oats;1;2;20;6.35;2026-04-03;early",
      "1;oats;1;3;20;6.4;2026-04-03;25:10",
      "1;oats;1;4;20;6.33;2026-04-03 8:15;9:00",
      "1;oats;1;5;20;6.36;2026-04-03;2 pm",
    ],
    catches: [
      "1 oats 1 1 20 6.31",
      "1 oats 1 2 20 6.35",
      "1 oats 1 3 20 6.4",
      "1 oats 1 4 20 6.33",
      "1 oats 1 5 20 6.36",
    ],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "column-read Date|taken_at ×1 rows ",
      "dates-read 2026-04-03 8:15|2026-04-03T08:15 ×1 rows 5",
      "time-joined Time ×1 rows 6",
      "times-left-out Time|early|25:10|unread ×2 rows 3,4",
      "times-left-out Time|9:00|second ×1 rows 5",
      "times-left-out Time|7:05|no-day ×1 rows 2",
    ],
  },
  {
    what: "dates whose order was told",
    rows: ["Compartment;Product;Fill;Catch;Turns;net_kg;Date", "1;oats;1;1;20;6.31;03/04/2026"],
    options: { dates: "mdy" },
    catches: ["1 oats 1 1 20 6.31"],
    assumed: [
      "column-read Compartment|bin ×1 rows ",
      "column-read Date|taken_at ×1 rows ",
      "dates-read 03/04/2026|2026-03-04 ×1 rows 2",
      "dates-ordered mdy| ×1 rows 2",
    ],
  },
  {
    what: "dates that may be read two ways",
    rows: ["Compartment;Product;Fill;Catch;Turns;net_kg;Date", "1;oats;1;1;20;6.31;03/04/2026"],
    catches: ["1 oats 1 1 20 6.31"],
    assumed: ["column-read Compartment|bin ×1 rows ", "column-read Date|taken_at ×1 rows "],
    asked: ["dates-two-ways row 2 Date: 03/04/2026"],
  },
  {
    what: "turns and masses alone",
    rows: ["turns;net_kg", "20;6.31", "20;6.35"],
    catches: ["1 – 1 1 20 6.31", "1 – 1 2 20 6.35"],
    assumed: ["one-bin 2 ×1 rows "],
  },
];

describe.each(sheets)("$what", ({ rows, options, catches, assumed, asked, aside }) => {
  it("is read so, and all that was assumed, asked and set aside is said with its rows", async () => {
    const found = await said(rows, options);
    expect(found).toEqual({
      catches,
      assumed: assumed ?? [],
      asked: asked ?? [],
      aside: aside ?? [],
    });
  });
});

it("keeps the time of a catch that has no day, beside it under its own name", async () => {
  // The first row: below another, an empty day would be that of the row above.
  const source = {
    name: "book.csv",
    text: [
      "Compartment;Product;Fill;Catch;Turns;net_kg;Date;Time",
      "1;oats;1;1;20;6.31;;7:05",
      "1;oats;1;2;20;6.35;2026-04-03;7:20",
    ].join("\n"),
  };
  const { log } = await importCatches([source]);
  expect(log?.catches.map(({ takenAt, extra }) => [takenAt, extra])).toEqual([
    [null, { Time: "7:05" }],
    ["2026-04-03T07:20", { Time: "" }],
  ]);
});

// 1 hl is 0.1 m³. 60 lb are 27.2155422 kg, and a US bushel is 0.03523907016688 m³: 772.31158685847 kg/m³.
it.each([
  ["kg/hl", "52.5", "525"],
  ["kg/hl", "52,5", "525"],
  ["lb/bu", "60", "772.311586858"],
])("has a density in %s, such as %s, in kg/m³ to twelve figures", async (unit, cell, expected) => {
  const text = `Compartment;Product;Fill;Catch;Turns;net_kg;Test weight (${unit})\n${plainRow};${cell}`;
  const { catches } = await importCatches([{ name: "book.csv", text }]);
  expect(catches.map((row) => String(row.bulk_density_kg_m3))).toEqual([expected]);
});

it("refuses a density that is no number as it was written, not as what it could not be converted to", async () => {
  // A minus sign as it is typeset, which belongs to no number of a file.
  const text = `Compartment;Product;Fill;Catch;Turns;net_kg;Test weight (kg/hl)\n${plainRow};\u221252.5`;
  const { asked, assumed } = await importCatches([{ name: "book.csv", text }]);
  expect(asked.map(({ received }) => received)).toEqual(["\u221252.5"]);
  expect(assumed.map(({ kind }) => kind)).not.toContain("unit-converted");
});
