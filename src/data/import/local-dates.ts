import { readDate } from "../dates.ts";
import type { DateOrder } from "./result.ts";
import { bare, monthOf, wordsOf } from "./synonyms/all.ts";

export type DateRead =
  | { readonly is: "date"; readonly date: string; readonly iso: boolean }
  /** Two dates, one day first and one month first. */
  | { readonly is: "two-ways" }
  | { readonly is: "no-date" };

const oClock = wordsOf("oClock");
const numeric = /^(\d{1,4})([./-])(\d{1,2})\2(\d{1,4})$/;
const named = [
  /^(?<day>\d{1,2})(?:\.|st|nd|rd|th)?[\s-]*(?<month>\p{L}+)\.?,?[\s-]*(?<year>\d{4}|\d{2})$/u,
  /^(?<month>\p{L}+)\.?\s+(?<day>\d{1,2})(?:st|nd|rd|th)?,?\s+(?<year>\d{4})$/u,
  /^(?<year>\d{4})[\s-]+(?<month>\p{L}+)\.?[\s-]+(?<day>\d{1,2})$/u,
];
const weekday = /^\p{L}{2,10}\.?,?\s+(?=\d)/u;

/**
 * A date as people write it, year first afterwards. Between points the day stands first wherever anybody writes so; between
 * slashes and hyphens a date of numbers has one reading only where the day is above 12 or both are the same.
 *
 * @param order  what was asked and answered, or settled by another date of the column; null: neither
 */
export function readLocalDate(text: string, order: DateOrder | null): DateRead {
  const iso = readDate(text);
  if (iso !== null) return { is: "date", date: iso, iso: true };
  const { day, time } = partsOf(text);
  if (time === null) return { is: "no-date" };
  const found = [...readings(day, order)].flatMap((one) => readDate(one) ?? []);
  const dates = [...new Set(found)];
  const [date] = dates;
  if (date === undefined) return { is: "no-date" };
  if (dates.length > 1) return { is: "two-ways" };
  const whole = readDate(date + time);
  return whole === null ? { is: "no-date" } : { is: "date", date: whole, iso: false };
}

/** Which order the dates of a column have among themselves; null when none settles it, or two disagree. */
export function orderOf(texts: readonly string[]): { order: DateOrder; by: string } | null {
  const settling = texts.flatMap((text) => {
    const [, one = "", mark = "", two = "", year = ""] = numeric.exec(partsOf(text).day) ?? [];
    if (mark === "" || mark === "." || one.length > 2 || year.length === 3) return [];
    const asDmy = Number(one) > 12 && Number(two) <= 12;
    const asMdy = Number(two) > 12 && Number(one) <= 12;
    return asDmy || asMdy ? [{ order: asDmy ? ("dmy" as const) : ("mdy" as const), by: text }] : [];
  });
  const [first] = settling;
  return first === undefined || settling.some(({ order }) => order !== first.order) ? null : first;
}

function* readings(day: string, order: DateOrder | null): Generator<string> {
  const [, one = "", mark = "", two = "", three = ""] = numeric.exec(day) ?? [];
  if (one.length === 4) yield iso(one, two, three);
  else if (mark === ".") yield* ordered(one, two, three, [order ?? "dmy"]);
  else if (mark !== "") yield* ordered(one, two, three, order === null ? ["dmy", "mdy"] : [order]);
  const words = named.map((form) => form.exec(day)?.groups).find((groups) => groups !== undefined);
  const month = words === undefined ? undefined : monthOf.get(bare(words.month ?? ""));
  if (words !== undefined && month !== undefined)
    yield iso(words.year ?? "", String(month), words.day ?? "");
}

function* ordered(one: string, two: string, three: string, orders: readonly DateOrder[]) {
  for (const order of orders) {
    if (order === "dmy") yield iso(three, two, one);
    else if (order === "mdy") yield iso(three, one, two);
    else yield iso(one, two, three);
  }
}

function iso(year: string, month: string, day: string): string {
  const full = year.length === 2 ? `20${year}` : year;
  return `${full}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
}

/** Day and time of day; the time is "" where there is none, and null where it is none that exists. */
function partsOf(text: string): { readonly day: string; readonly time: string | null } {
  const whole = text.replace(/\s+/g, " ").trim();
  const match =
    /^(?<day>.*?\d)(?:,? |T)(?<time>\d{1,2}[:.]\d\d(?:[:.]\d\d)?)(?: ?(?<after>\p{L}[\p{L}']*))?$/u.exec(
      whole,
    )?.groups;
  const day = (match?.day ?? whole).replace(weekday, (word) =>
    monthOf.has(bare(word)) ? word : "",
  );
  if (match === undefined) return { day, time: "" };
  return { day, time: timeOf([match.time, match.after].join(" ")) };
}

const clock = /^(\d{1,2})(?:[:.](\d\d)(?:[:.](\d\d))?)?\s*(\p{L}[\p{L}.']*)?$/u;
const fourDigits = /^(\d\d)(\d\d)$/;

/** A time of day as it stands behind a date: "7:05", "7.05 Uhr", "7 Uhr", "0705", "7 am"; null when it is none. */
export function timeOf(text: string): string | null {
  const found = fourDigits.exec(text.trim()) ?? clock.exec(text.trim());
  const [, hours = "", minutes, seconds = "00", word] = found ?? [];
  const after = word === undefined ? null : bare(word);
  const half = after === "am" || after === "pm";
  if (hours === "" || (after !== null && !half && !oClock.has(after))) return null;
  // A number alone may be any.
  if (minutes === undefined && after === null) return null;
  const hour = Number(hours);
  if (half ? hour < 1 || hour > 12 : hour > 23) return null;
  if (Number(minutes ?? 0) > 59 || Number(seconds) > 59) return null;
  const ofDay = half ? (hour % 12) + (after === "pm" ? 12 : 0) : hour;
  return `T${String(ofDay).padStart(2, "0")}:${minutes ?? "00"}${seconds === "00" ? "" : `:${seconds}`}`;
}
