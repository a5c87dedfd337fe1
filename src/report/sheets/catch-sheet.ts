import { max } from "simple-statistics";
import type { Analysis } from "../../analysis/analyse.ts";
import { keyColumns } from "../../data/column-kinds.ts";
import { fillKey } from "../../data/identity.ts";
import { logNames } from "../../data/log-names.ts";
import type { CatchLog } from "../../data/types.ts";
import type { SheetRow, TrialPlan } from "../../questions/trial-plan/result.ts";
import { practice } from "../../results/practice.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, type ColumnOf, list, section, table } from "../blocks.ts";
import type { Block, ReportDocument } from "../document.ts";
import { safetyStrip } from "../sections/safety-strip.ts";

/** A bin and what is in it, to be seen to before the first catch; empty where it is to be written in. */
interface InTheBin {
  readonly bin: string;
  readonly product: string;
}

/** What a catch sheet is made for. */
export interface CatchSheetContent {
  /** Under the title; null: nothing. */
  readonly about: string | null;
  readonly bins: readonly InTheBin[];
  /** Columns of the table, as the file of catches names them. */
  readonly columns: readonly string[];
  readonly rows: readonly SheetRow[];
  /** Whether the rows are to be worked off as they come. */
  readonly inOrder: boolean;
}

/** Also kept free below the planned ones, for a catch that has to be made again. */
const fewestRows = 8;
const emptyBins = 3;

/** A sheet to fill in by hand at the drill, with the columns of a file of catches, so that typing it in is copying. */
export function catchSheetDocument(content: CatchSheetContent, words: Words): ReportDocument {
  const say = words.sheets.catches;
  return {
    title: say.title,
    ...(content.about === null ? {} : { subtitle: content.about }),
    language: words.format.language,
    words: words.frame,
    meta: say.fields.map((term) => ({ term, description: "" })),
    blocks: blocks(
      safetyStrip(words),
      section("preparation", say.preparation, list(words.sheets.prepared(practice))),
      binTable(content.bins, words),
      rowTable(content, words),
    ),
  };
}

function binTable(bins: readonly InTheBin[], words: Words): Block | null {
  const say = words.sheets.catches.bins;
  const known = bins.length === 0 ? Array.from({ length: emptyBins }, () => unknownBin) : bins;
  return table({
    id: "bins",
    caption: say.caption,
    rows: known,
    rowHeaders: false,
    columns: [
      { heading: say.bin, cell: ({ bin }) => bin },
      { heading: say.product, cell: ({ product }) => product },
      { heading: say.lot, cell: toFillIn },
      { heading: say.treatment, cell: toFillIn },
      { heading: say.label, align: "center", cell: () => "☐" },
    ],
  });
}

const unknownBin: InTheBin = { bin: "", product: "" };
const toFillIn = () => "";

function rowTable({ columns, rows, inOrder }: CatchSheetContent, words: Words): Block | null {
  const { sheets } = words;
  const spare = Array.from({ length: Math.max(0, fewestRows - rows.length) }, (): SheetRow => ({}));
  const content = table({
    id: "catches",
    caption: inOrder ? sheets.catches.captionInOrder : sheets.catches.caption,
    rows: [...rows, ...spare],
    rowHeaders: false,
    columns: columns.map(
      (name): ColumnOf<SheetRow> => ({
        heading: sheets.column(name),
        cell: (row) => sheets.cell(row[name] ?? null),
      }),
    ),
  });
  return content === null
    ? null
    : {
        ...content,
        note: [`${sheets.catches.typedAs} `, { kind: "code", text: columns.join(", ") }],
      };
}

/** The planned catches of a trial, in their random order. */
export function catchSheetOfPlan({ rows, options }: TrialPlan): CatchSheetContent {
  return {
    about: null,
    bins: options.products.map((product) => ({ bin: options.bin, product })),
    columns: Object.keys(rows[0] ?? {}),
    rows,
    inOrder: true,
  };
}

/** The catches that the decisions about a log ask for, numbered on from those it holds. */
export function catchSheetOfLog(
  analysis: Analysis,
  log: CatchLog,
  title: string | null,
  words: Words,
): CatchSheetContent {
  const inTheBins = analysis.meters.filter(({ decision }) => decision !== null);
  const names = logNames(log.catches);
  const used = keyColumns.filter((name) => log.catches.some((row) => row[name] !== null));
  const empty = emptyCatchSheet(inTheBins, title, words);
  return {
    ...empty,
    columns: [...used, ...empty.columns],
    rows: inTheBins.flatMap(({ bin, product, decision }) => {
      const caught = log.catches.filter((one) => names.bin(one) === bin && one.product === product);
      const newest = caught.reduce((latest, one) => {
        const later = names.seasonRank(one.season) - names.seasonRank(latest.season);
        return later > 0 || (later === 0 && one.fill > latest.fill) ? one : latest;
      });
      const filling = fillKey(newest);
      const ofFill = caught.filter((one) => fillKey(one) === filling);
      const last = max(ofFill.map((one) => one.catch));
      return Array.from({ length: decision?.catches?.further ?? 0 }, (_, place) => ({
        ...Object.fromEntries(used.map((name) => [name, newest[name]])),
        bin: newest.bin,
        product,
        fill: newest.fill,
        catch: last + place + 1,
        turns: decision?.catches?.turns ?? null,
      }));
    }),
  };
}

/** One with nothing filled in but what is known of the bins. */
export function emptyCatchSheet(
  bins: readonly InTheBin[],
  title: string | null,
  { format }: Words,
): CatchSheetContent {
  const unit = format.units === "us" ? "lb" : "kg";
  return {
    about: title,
    bins: bins.map(({ bin, product }) => ({ bin, product })),
    columns: [
      "bin",
      "product",
      "fill",
      "catch",
      "turns",
      `gross_${unit}`,
      `tare_${unit}`,
      "taken_at",
      "note",
    ],
    rows: [],
    inOrder: false,
  };
}
