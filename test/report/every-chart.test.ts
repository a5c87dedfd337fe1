import { beforeAll, describe, expect, it } from "vitest";
import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { chartStyles, type RoleStyle } from "../../src/charts/theme.ts";
import type { Block } from "../../src/report/document.ts";
import { chartsIn as chartsInBlocks } from "../../src/report/walk.ts";
import { browserTest } from "../support/browser.ts";
import { type DrawnLayer, type KeyRow, keyOf, layersIn } from "../support/chart-keys.ts";
import { chartsIn, type DemoReport, demoReport } from "../support/demo-reports.ts";
import { present } from "../support/reference.ts";

const sets = ["season", "first-morning", "product-trial", "three-bins"] as const;
const cases = sets.flatMap((set) => ["en", "de"].map((language) => [set, language] as const));
const full = new Map<string, DemoReport>();
const short = new Map<string, DemoReport>();
const nameOf = (set: string, language: string) => `${set} ${language}`;

beforeAll(async () => {
  for (const [set, language] of cases) {
    full.set(nameOf(set, language), await demoReport(set, "full", language));
    short.set(nameOf(set, language), await demoReport(set, "short", language));
  }
}, 300_000);

const roles: Readonly<Record<string, RoleStyle>> = chartStyles;
const unbroken = [1, 0];

/** Marks that mean nothing to who is not told: an area, a level, the limits about something. */
function asksForKey({ mark: { type, style } }: DrawnLayer): boolean {
  return (
    ["area", "rect", "rule"].includes(type) ||
    (type === "bar" && typeof style === "string") ||
    (type === "line" && style === "next-edge")
  );
}

/** Whether a row of the key looks as the mark does. */
function shows({ mark }: DrawnLayer): (row: KeyRow) => boolean {
  const { color, strokeDash = unbroken } = present(roles[String(mark.style)]);
  const dash = mark.strokeDash ?? strokeDash;
  return (row) =>
    row.fill.startsWith(color) || (row.stroke === color && String(row.dash) === String(dash));
}

type Channels = Readonly<
  Record<string, { readonly scale?: { readonly type?: string }; readonly title?: unknown }>
>;

interface Tip {
  readonly field: string;
  readonly title?: string;
  readonly type: string;
}

/** What a pointer is told at each layer: a sentence, or words under names. */
function tips({ encoding }: DrawnLayer): readonly Tip[] {
  const { tooltip } = encoding as { readonly tooltip?: Tip | readonly Tip[] };
  return tooltip === undefined ? [] : [tooltip].flat();
}

describe.each(cases)("charts of %s, %s", (set, language) => {
  const charts = () => chartsIn(present(full.get(nameOf(set, language))));

  it("have a key that names every band, area and rule by its look", () => {
    const unnamed = charts().flatMap(({ id, spec }) => {
      const key = keyOf(spec);
      return layersIn(spec)
        .filter(asksForKey)
        .filter((layer) => !key.some(shows(layer)))
        .map(({ mark }) => `${id}: ${JSON.stringify(mark)}`);
    });
    expect(unnamed).toEqual([]);
    expect(
      charts().flatMap(({ spec }) => layersIn(spec).filter(asksForKey)).length,
    ).toBeGreaterThan(8);
  });

  it("name no two things alike in one key, and nothing twice", () => {
    for (const { id, spec } of charts()) {
      const rows = keyOf(spec);
      expect(new Set(rows.map(({ words }) => words)).size, id).toBe(rows.length);
      const looks = rows.map(({ words: _, ...look }) => JSON.stringify(look));
      expect(new Set(looks).size, id).toBe(rows.length);
    }
  });

  it("tell a pointer words under names a person has for them, or a sentence", () => {
    const told = charts().flatMap(({ id, spec }) =>
      layersIn(spec).flatMap((layer) =>
        tips(layer).map((tip) => ({ id, tip, values: layer.data.values, all: tips(layer) })),
      ),
    );
    expect(told.length).toBeGreaterThan(8);
    for (const { id, tip, values, all } of told) {
      expect(tip.type, id).toBe("nominal");
      if (all.length > 1) expect(tip.title, `${id} ${tip.field}`).toMatch(/^\p{Lu}|^\p{Ll}{3}/u);
      for (const row of values) {
        const value = row[tip.field];
        const isWords = typeof value === "string" || Number.isInteger(value);
        expect(isWords, `${id} ${tip.field}: ${value}`).toBe(true);
        expect(String(value), id).not.toMatch(longNumber);
      }
    }
  });

  it("write no digit in a hint that words would not", () => {
    const hints = [...present(full.get(nameOf(set, language))).html.matchAll(/<title>([^<]*)/g)];
    expect(hints.length).toBeGreaterThan(8);
    for (const [, hint = ""] of hints.slice(1)) expect(hint).not.toMatch(longNumber);
  });

  it("say so where an axis is not linear", () => {
    const bent = charts().flatMap(({ spec }) =>
      layersIn(spec).flatMap(({ encoding }) =>
        Object.values(encoding as Channels).filter(({ scale }) =>
          ["log", "symlog", "sqrt", "pow"].includes(scale?.type ?? "linear"),
        ),
      ),
    );
    for (const { title } of bent) expect(title).toMatch(/\blog(arithmisch)?\b/);
    if (set !== "first-morning") expect(bent.length).toBeGreaterThan(0);
  });
});

/** More digits that count than an axis or a sentence writes. */
const longNumber = /[1-9]\d*[.,]\d{5,}|[.,]0*[1-9]\d{5,}|[.,]0{7}/;

describe.each(cases)("the short report on %s, %s", (set, language) => {
  it("draws no kind of curve twice for one bin, and calls nothing by two names", () => {
    const { document } = present(short.get(nameOf(set, language)));
    for (const { kind, ...section } of document.blocks) {
      if (kind !== "section") continue;
      const specs = chartsInBlocks([{ kind, ...section } as Block]).map(({ spec }) => spec);
      const axes = specs.map(axisTitles);
      expect(new Set(axes).size).toBe(axes.length);
      for (const [look, words] of namesByLook(specs)) expect([...words], look).toHaveLength(1);
    }
  });
});

function axisTitles(spec: ChartSpec): string {
  const titles = layersIn(spec).flatMap(({ encoding }) =>
    ["x", "y"].map((axis) => String((encoding as Channels)[axis]?.title)),
  );
  return [...new Set(titles)].sort().join(" / ");
}

/** Bands only: a line may be the mean of one thing here and of another there. */
function namesByLook(specs: readonly ChartSpec[]): ReadonlyMap<string, ReadonlySet<string>> {
  const names = new Map<string, Set<string>>();
  for (const { words, fill, shape } of specs.flatMap(keyOf)) {
    if (shape !== "square" || fill.length < 9) continue;
    names.set(fill, (names.get(fill) ?? new Set()).add(words));
  }
  return names;
}

for (const [set, language] of cases)
  browserTest(
    `charts of ${set}, ${language}: no words run into others or out of the drawing, on a phone or wide`,
    async (open) => {
      for (const report of [full, short])
        for (const width of [390, 1280]) {
          const { html } = present(report.get(nameOf(set, language)));
          const { page } = await open(html, { width });
          const faults = await page.evaluate(faultsOfWords);
          expect(faults, `${width} px`).toEqual([]);
        }
    },
  );

/** Runs in the page. Letters of two lines may touch by the room that fonts leave above and below them. */
function faultsOfWords(): string[] {
  const faults: string[] = [];
  const edge = 1;
  const leading = 2.5;
  let seen = 0;
  for (const details of document.querySelectorAll("details")) details.open = true;
  if (document.documentElement.scrollWidth > innerWidth) faults.push("the page scrolls sideways");
  for (const svg of document.querySelectorAll<SVGSVGElement>("figure.chart svg")) {
    const box = svg.getBoundingClientRect();
    if (box.width === 0) continue;
    const chart = svg.closest("figure")?.id;
    const holder = svg.parentElement;
    if (holder !== null && holder.scrollWidth > holder.clientWidth + edge)
      faults.push(`${chart} scrolls sideways`);
    const texts = [...svg.querySelectorAll("text")].flatMap((element) => {
      const words = element.textContent?.trim() ?? "";
      return words === "" ? [] : [{ words, at: element.getBoundingClientRect() }];
    });
    seen += texts.length;
    for (const [i, { words, at }] of texts.entries()) {
      if (words.includes("…")) faults.push(`${chart}: shortened "${words}"`);
      if (
        at.left < box.left - edge ||
        at.right > box.right + edge ||
        at.top < box.top - edge ||
        at.bottom > box.bottom + edge
      )
        faults.push(`${chart}: cut off "${words}"`);
      for (const other of texts.slice(i + 1)) {
        const across = Math.min(at.right, other.at.right) - Math.max(at.left, other.at.left);
        const down = Math.min(at.bottom, other.at.bottom) - Math.max(at.top, other.at.top);
        if (across > edge / 2 && down > leading)
          faults.push(`${chart}: "${words}" on "${other.words}"`);
      }
    }
  }
  if (seen < 20) faults.push("hardly any words were looked at");
  return faults;
}
