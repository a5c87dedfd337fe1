import type { Answers } from "./answers.ts";
import type { Use } from "./columns-of.ts";
import { orderOf, readLocalDate, timeOf } from "./local-dates.ts";
import type { Notes } from "./notes.ts";
import type { AssumedFacts } from "./result.ts";
import type { RowTexts } from "./sheet-rows.ts";

const textsShown = 5;

/**
 * The rows with their dates year first. A date that cannot be read, or not in one way, is no part of a catch: it stays beside
 * it as it was written.
 */
export function cleanDates(
  rows: readonly RowTexts[],
  uses: readonly Use[],
  { options }: Answers,
  notes: Notes,
): readonly RowTexts[] {
  const header = uses.find(({ name }) => name === "taken_at")?.header ?? "taken_at";
  const timeHeader = uses.find(({ kind }) => kind === "time")?.header ?? "time";
  const days = rows.map(({ texts }) => texts.get("taken_at") ?? "");
  const settled = orderOf(days);
  const order = options.dates ?? settled?.order ?? null;
  const kept = keptTimes(timeHeader, notes);
  const unread: { text: string; row: number }[] = [];
  let example: { example: string; date: string } | null = null;
  const read = rows.map(({ number, texts }): RowTexts => {
    const { taken_at: day = "", time = "", ...rest } = Object.fromEntries(texts);
    const cells = new Map(Object.entries(rest));
    if (day === "") {
      kept.keep(cells, time, "no-day", number);
      return { number, texts: cells };
    }
    const found = readLocalDate(day, order);
    if (found.is !== "date") {
      if (found.is === "two-ways")
        notes.ask({ problem: "dates-two-ways", facts: {} }, header, day, number);
      else unread.push({ text: day, row: number });
      cells.set(`${header} as written`, [day, time].filter((text) => text !== "").join(" "));
      return { number, texts: cells };
    }
    if (!found.iso) {
      example ??= { example: day, date: found.date };
      notes.assume("dates-read", example, number);
      if (order !== null && readLocalDate(day, null).is === "two-ways") {
        const by = options.dates === undefined ? (settled?.by ?? null) : null;
        notes.assume("dates-ordered", { order, by }, number);
      }
    }
    const timed = found.date.includes("T");
    const clock = time === "" || timed ? null : timeOf(time);
    if (clock !== null) notes.assume("time-joined", { header: timeHeader }, number);
    else kept.keep(cells, time, timed ? "second" : "unread", number);
    return { number, texts: cells.set("taken_at", found.date + (clock ?? "")) };
  });
  const texts = [...new Set(unread.map(({ text }) => text))].slice(0, textsShown);
  kept.tell();
  for (const { row } of unread) notes.assume("dates-left-out", { column: header, texts }, row);
  return read;
}

type WhyKept = AssumedFacts["times-left-out"]["why"];

/** Times that are no part of a catch stay beside it, under the name of their column, and are told together. */
function keptTimes(column: string, notes: Notes) {
  const found: { readonly why: WhyKept; readonly text: string; readonly row: number }[] = [];
  return {
    keep: (cells: Map<string, string>, text: string, why: WhyKept, row: number) => {
      if (text === "") return;
      cells.set(column, text);
      found.push({ why, text, row });
    },
    tell: () => {
      for (const why of ["unread", "second", "no-day"] as const) {
        const alike = found.filter((one) => one.why === why);
        const texts = [...new Set(alike.map(({ text }) => text))].slice(0, textsShown);
        for (const { row } of alike) notes.assume("times-left-out", { column, texts, why }, row);
      }
    },
  };
}
