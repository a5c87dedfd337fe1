import type { Answers } from "./answers.ts";
import type { Use } from "./columns-of.ts";
import { orderOf, readLocalDate, timeOf } from "./local-dates.ts";
import type { Notes } from "./notes.ts";
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
  const unread: { text: string; row: number }[] = [];
  let example: { example: string; date: string } | null = null;
  const read = rows.map(({ number, texts }): RowTexts => {
    const { taken_at: day = "", time = "", ...rest } = Object.fromEntries(texts);
    const cells = new Map(Object.entries(rest));
    if (day === "") {
      if (time !== "") cells.set(timeHeader, time);
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
    const clock = time === "" || found.date.includes("T") ? null : timeOf(time);
    if (clock !== null) notes.assume("time-joined", { header: timeHeader }, number);
    else if (time !== "") cells.set(timeHeader, time);
    return { number, texts: cells.set("taken_at", found.date + (clock ?? "")) };
  });
  const texts = [...new Set(unread.map(({ text }) => text))].slice(0, textsShown);
  for (const { row } of unread) notes.assume("dates-left-out", { column: header, texts }, row);
  return read;
}
