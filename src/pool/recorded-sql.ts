import { no, yes } from "../data/fields.ts";
import type { ReadColumn, Rule } from "./cells-sql.ts";
import { allOf, always, matches, never, not, oneOf } from "./dialect.ts";

const days = {
  of31: "(0[13578]|1[02])-(0[1-9]|[12][0-9]|3[01])",
  of30: "(0[469]|11)-(0[1-9]|[12][0-9]|30)",
  ofFebruary: "02-(0[1-9]|1[0-9]|2[0-8])",
};
const leapYear = "([0-9]{2}(0[48]|[2468][048]|[13579][26])|([02468][048]|[13579][26])00)";
const date = `([0-9]{4}-(${days.of31}|${days.of30}|${days.ofFebruary})|${leapYear}-02-29)`;
const hour = "([01][0-9]|2[0-3])";
const sixty = "[0-5][0-9]";
const offset = `(Z|[+-](0[0-9]|1[0-4])(:?${sixty})?)`;
const time = `${hour}:${sixty}(:${sixty}([.,][0-9]{1,9})?)?${offset}?`;

/** A date, or date and time, that exists: what `readDate` takes, as one form, for no database tells by itself. */
export const existingDate = `${date}([T ]${time})?`;

/** A date, read from a text column. */
export function asDate(column: ReadColumn, header: string): ReadColumn {
  const { cell, value, rules } = column;
  const exists = matches(cell.name, existingDate);
  const isNone = allOf([
    `${cell.name} IS NOT NULL`,
    `${value.name} IS NULL`,
    ...rules.map(({ when }) => not(when)),
  ]);
  return {
    ...column,
    value: {
      name: value.name,
      sql: `CASE WHEN ${exists} THEN replace(${cell.name}, ' ', 'T') END`,
    },
    rules: [...rules, { problem: "not-a-date", header, when: isNone }],
  };
}

/** What was looked at, which a bare no is no answer to. */
export function asChecked(column: ReadColumn, header: string): ReadColumn {
  const denied = oneOf(`lower(${column.cell.name})`, no);
  return {
    ...column,
    rules: [...column.rules, { problem: "checked-denied", header, when: denied }],
  };
}

/** Whether a catch counts, whether it is left out for a reason, and what may be wrong with leaving it out; as `leftOutField` reads it. */
export function leavingOut(
  exclude: string | null,
  reason: string | null,
): { readonly counts: string; readonly isReasoned: string; readonly rules: readonly Rule[] } {
  if (exclude === null && reason === null) return { counts: always, isReasoned: never, rules: [] };
  const why = reason === null ? "CAST(NULL AS TEXT)" : "reason";
  const answer = exclude === null ? "''" : "coalesce(lower(exclude), '')";
  const isYes = oneOf(answer, yes);
  const unasked = allOf([`${answer} = ''`, `${why} IS NOT NULL`]);
  return {
    counts: not(isYes),
    isReasoned: exclude === null || reason === null ? never : allOf([isYes, `${why} IS NOT NULL`]),
    rules: [
      {
        problem: "reason-missing",
        header: reason ?? "reason",
        when: allOf([isYes, `${why} IS NULL`]),
      },
      { problem: "exclude-missing", header: exclude ?? "exclude", when: unasked },
      {
        problem: "not-yes-no",
        header: exclude ?? "exclude",
        when: not(oneOf(answer, [...yes, ...no])),
      },
    ],
  };
}
