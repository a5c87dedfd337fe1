import { describe, expect, it } from "vitest";
import type {
  AsideReason,
  Assumed,
  AssumedFacts,
  AssumedKind,
  Imported,
} from "../../src/data/import/result.ts";
import { imported as templates } from "../../src/wording/en/imported.ts";
import { englishIn, numbersIn } from "../support/bilingual.ts";
import { english, german } from "../support/words.ts";

/** Facts of each kind; a kind more does not compile until it is here. */
const facts: AssumedFacts = {
  "header-below": { header: 4 },
  "two-line-head": { first: 4, second: 5 },
  "header-anew": { header: 9 },
  "unit-column": { header: "Einheit", column: "Netto" },
  "column-read": { header: "Umdr.", column: "net_kg" },
  "column-kept": { header: "Schlag" },
  "column-left-out": { header: "Schlag" },
  "filled-merged": { column: "Tank" },
  "filled-down": { column: "net_kg" },
  "ditto-read": { column: "Tank" },
  "taken-from-title": { column: "net_kg", value: "Hafer" },
  "set-for-all": { column: "net_kg", value: "Hafer" },
  "catches-numbered": { by: "order" },
  "fill-goes-on": { bin: "1", fill: "2" },
  "fills-numbered": { names: ["A", "B"] },
  "number-in-text": { column: "Tank" },
  "unit-in-cells": { column: "Netto", unit: "kg" },
  "unit-written-once": { column: "Netto", unit: "kg" },
  "unit-converted": { column: "Dichte", from: "kg/hl", to: "kg/m³" },
  "thousands-read": { column: "Netto" },
  "decimal-told": { mark: "comma" },
  "dates-ordered": { order: "dmy", by: "Datum" },
  "dates-read": { example: "Tag", date: "Datum" },
  "dates-left-out": { texts: ["Ostern"], column: "Datum" },
  "times-left-out": { texts: ["morgens"], column: "Uhrzeit", why: "unread" },
  "time-joined": { header: "Uhrzeit" },
  "windows-1252": { words: ["Füllung"] },
  "spilled-read": { text: "daneben" },
  "word-read": { column: "Weg", text: "ja", as: "nein" },
  "catch-like-mean": { column: "Netto", figure: "mean" },
  "one-bin": { catches: 7 },
};

const place = { source: "heft.csv", sheet: null, count: 3, rows: [5, 6, 9] };
const kinds = Object.keys(facts) as AssumedKind[];
const made = (kind: AssumedKind, given: object) => ({ ...place, kind, facts: given }) as Assumed;
const all = [
  ...kinds.map((kind) => made(kind, facts[kind])),
  made("dates-ordered", { order: "mdy", by: null }),
  made("decimal-told", { mark: "point" }),
  made("times-left-out", { texts: ["7:05"], column: "Uhrzeit", why: "second" }),
  made("times-left-out", { texts: ["7:05"], column: "Uhrzeit", why: "no-day" }),
  made("one-bin", { catches: 1 }),
  made("catch-like-mean", { column: "Netto", figure: "total" }),
];

describe("what was assumed", () => {
  it.each(all.map((one) => [one.kind, one] as const))(
    "is a whole sentence with its rows in both languages: %s",
    (_, one) => {
      const [en, de] = [english().imported.assumed(one), german().imported.assumed(one)];
      expect(en).toMatch(/\. 3 times, rows 5–6, 9\.$/);
      expect(de).toMatch(/\. 3-mal, Zeilen 5–6, 9\.$/);
      expect(en + de).not.toMatch(/undefined|\[object/);
      expect(englishIn(de)).toEqual([]);
      expect(numbersIn(de, "de")).toEqual(numbersIn(en, "en"));
    },
  );

  it("is told without rows where the whole sheet is meant, and of one row in the singular", () => {
    const { imported: say } = english();
    const one = made("column-kept", { header: "Plot" });
    expect(say.assumed({ ...one, rows: [], count: 1 })).toMatch(/as it is\.$/);
    expect(say.assumed({ ...one, rows: [8], count: 1 })).toMatch(/as it is\. Row 8\.$/);
  });
});

describe("what else is told of an import", () => {
  it("has the same facts in both languages", () => {
    const [en, de] = [english().imported, german().imported];
    const result: Imported = { catches: [{}, {}], log: null, assumed: [], asked: [], setAside: [] };
    const reasons = Object.keys(templates.reasons) as AsideReason[];
    const pairs = [
      ...reasons.map((why) => {
        const row = { source: "a.csv", sheet: null, row: 12, why, text: "Summe" };
        return [en.setAside(row), de.setAside(row)] as const;
      }),
      [en.summary(result, "aus.csv"), de.summary(result, "aus.csv")] as const,
      [en.notYet({ questions: 1 }), de.notYet({ questions: 1 })] as const,
      [en.notYet({ questions: 3 }), de.notYet({ questions: 3 })] as const,
      [en.listed("aus.md"), de.listed("aus.md")] as const,
      [
        en.place({ source: "buch.xlsx", sheet: "April" }),
        de.place({ source: "buch.xlsx", sheet: "April" }),
      ] as const,
    ];
    for (const [inEnglish, inGerman] of pairs) {
      expect(inGerman).not.toBe(inEnglish);
      expect(englishIn(inGerman.replace(/--help/g, " "))).toEqual([]);
      expect(numbersIn(inGerman, "de")).toEqual(numbersIn(inEnglish, "en"));
    }
  });
});
