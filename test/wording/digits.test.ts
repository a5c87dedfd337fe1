import { describe, expect, it } from "vitest";
import { type Analysis, analyse } from "../../src/analysis/analyse.ts";
import { renderMarkdown } from "../../src/report/markdown.ts";
import { reportDocument } from "../../src/report/report.ts";
import type { Words } from "../../src/wording/words.ts";
import { demo } from "../support/demo.ts";
import { fleets } from "../support/fleets.ts";
import { english, german } from "../support/words.ts";

type Language = "en" | "de";

/** A number as a language writes it; what belongs to a name, a date or a time is none. */
const numbers = {
  en: /(?<![\p{L}\d.,:_-])\d[\d,]*(?:\.\d+)?(?![\p{L}\d:_]|[.,]\d)/gu,
  de: /(?<![\p{L}\d.,:_-])\d[\d.]*(?:,\d+)?(?![\p{L}\d:_]|[.,]\d)/gu,
} as const;
const fractions = { en: /\.(\d+)$/, de: /,(\d+)$/ } as const;

/** "0.310 to 0.315 kg/turn", "+1.2 % bis +3.4 %"; "9.7 to 1" is no range. */
const pair =
  /(?<![\p{L}\d])[+\u2212]?(\d[\d.,]*)(?:\s*[%\u00b0]|\s[\p{L}³²]+(?:\/[\p{L}³²]+)?)? (?:to|bis) [+\u2212]?(?!1(?![\d.,]))(\d[\d.,]*\d|\d)/gu;

function decimalsOf(number: string, language: Language): number {
  return fractions[language].exec(number)?.[1]?.length ?? 0;
}

interface Column {
  /** Of the column before it. */
  readonly after: string;
  readonly section: string;
  readonly heading: string;
  readonly cells: readonly string[];
}

function columnsOf(markdown: string): readonly Column[] {
  const cellsOf = (line: string) =>
    line
      .slice(1, -1)
      .split(/(?<!\\)\|/)
      .map((cell) => cell.trim());
  const lines = markdown.split("\n");
  return lines.flatMap((line, i) => {
    if (!line.startsWith("|") || !/^\|[ :|-]+\|$/.test(lines[i + 1] ?? "")) return [];
    const section = lines.slice(0, i).findLast((one) => one.startsWith("#")) ?? "";
    const after = lines.slice(i + 2);
    const end = after.findIndex((one) => !one.startsWith("|"));
    const rows = after.slice(0, end === -1 ? undefined : end).map(cellsOf);
    const headings = cellsOf(line);
    return headings.map((heading, k) => ({
      section,
      after: headings[k - 1] ?? "",
      heading,
      cells: rows.map((row) => row[k] ?? ""),
    }));
  });
}

/** Figures and units alone: what names, dates and remarks hold is no column of figures. */
function holdsFigures({ cells }: Column): boolean {
  return cells.every(
    (cell) => !/^\p{L}|\p{L}{5}|\d[.:]\d\d[.:]/u.test(cell.replaceAll(/\b(catches|turns?)\b/g, "")),
  );
}

/** Effects have the units of what they are effects of, each row its own: not these columns, nor the intervals after them. */
const rowByRow = ["Per unit", "Je Einheit"];

const analyses = [
  ...(await Promise.all(
    (["season", "product-trial", "three-bins", "first-morning"] as const).map(async (name) => {
      const { log, setup } = await demo(name);
      return [name, analyse(log, setup)] as const;
    }),
  )),
  ...fleets.map(([name, log]) => [name, analyse(log)] as const),
];
const speakers = [
  ["en", "metric", english("metric")],
  ["en", "us", english("us")],
  ["de", "metric", german("metric")],
] as const;

function written(analysis: Analysis, words: Words): string {
  const meta = { version: "0", title: null, setupSource: null, edition: "full" } as const;
  return renderMarkdown(reportDocument(analysis, meta, words));
}

describe.each(speakers)("figures in %s, %s", (language, _units, words) => {
  const decimals = (text: string) =>
    new Set([...text.matchAll(numbers[language])].map(([number]) => decimalsOf(number, language)));

  it("are found in columns and ranges", () => {
    const markdown = analyses.map(([, analysis]) => written(analysis, words)).join("\n");
    expect(columnsOf(markdown).filter(holdsFigures).length).toBeGreaterThan(200);
    expect([...markdown.matchAll(pair)].length).toBeGreaterThan(300);
  });

  describe.each(analyses)("%s", (_name, analysis) => {
    const markdown = written(analysis, words);

    it("have the same decimals all down a column", () => {
      const columns = columnsOf(markdown).filter(holdsFigures);
      expect(columns.length).toBeGreaterThan(3);
      const mixed = columns.filter(
        ({ cells, heading, after }) =>
          !rowByRow.includes(heading) &&
          !rowByRow.includes(after) &&
          decimals(cells.join(" ; ")).size > 1,
      );
      expect(mixed).toEqual([]);
    });

    it("are in one style where they are dates", () => {
      expect(markdown.match(/\d{4}-\d{2}-\d{2}|\d{1,2}\/\d{1,2}\/\d{2,4}/g)).toBeNull();
      const others = { en: /\d{1,2}\.\d{1,2}\.\d{4}/g, de: /\p{L}{3} \d{1,2}, \d{4}/gu } as const;
      expect(markdown.match(others[language])).toBeNull();
    });

    it("have the same decimals at both ends of a range", () => {
      const pairs = [...markdown.matchAll(pair)];
      const mixed = pairs.filter(
        ([, from = "", to = ""]) => decimalsOf(from, language) !== decimalsOf(to, language),
      );
      expect(mixed.map(([text]) => text)).toEqual([]);
    });
  });
});
