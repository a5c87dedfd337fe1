import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { analyseTotals, type TotalsAnalysis } from "../../src/analysis/analyse-totals.ts";
import { makeCatch } from "../../src/data/make-catch.ts";
import type { Catch, CatchLog } from "../../src/data/types.ts";
import { at } from "../../src/errors/at.ts";
import { fillTotals, mergeFillTotals } from "../../src/model/fill-record.ts";
import { fitModel } from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { cautionSentence } from "../../src/report/sections/cautions.ts";
import { questions } from "../../src/results/question.ts";
import { languageTags, wordsFor } from "../../src/wording/languages.ts";

const options = { scaleDivisionKg: 0.01 };

interface Shape {
  readonly bins: number;
  readonly fills: number;
  readonly catches: number;
  /** 1: the log names none. */
  readonly machines?: number;
  readonly seasons?: number;
}

/** Catches none of which stands out: their scatter has no tails. Every third names a scale of its own. */
function cleanCatches(
  { bins, fills, catches, machines = 1, seasons = 1 }: Shape,
  seed: number,
): readonly Catch[] {
  const random = randomStream(seed);
  const evenly = () => 2 * random.uniform() - 1;
  return Array.from({ length: bins }, (_, b) =>
    Array.from({ length: fills }, (_, f) => {
      const level = (0.2 + 0.1 * b) * (1 + 0.02 * evenly());
      return Array.from({ length: catches }, (_, c) => {
        const turns = 20 + 5 * ((f + c) % 3);
        return makeCatch({
          machine: machines > 1 ? `drill ${b % machines}` : null,
          season: seasons > 1 ? String(2025 + Math.floor((f * seasons) / fills)) : null,
          bin: String(1 + Math.floor(b / machines)),
          product: b % 3 === 0 ? "oats" : "wheat",
          fill: f + 1,
          catch: c + 1,
          turns,
          netKg: level * turns * (1 + 0.01 * evenly()),
          divisionKg: c % 3 === 0 ? 0.02 : null,
          takenAt: `2026-03-${String(10 + f).padStart(2, "0")}`,
        });
      });
    }).flat(),
  ).flat();
}

function logOf(catches: readonly Catch[]): CatchLog {
  return { source: "rows", massUnit: "kg", catches, cautions: [] };
}

function nothingStandsOut(catches: readonly Catch[]): boolean {
  return fitModel(catches, options).meters.every(({ screening }) =>
    screening.findings.every(
      ({ inFill, fill, setAside }) => inFill.length + setAside.length + fill.notLent.length === 0,
    ),
  );
}

/** The numbers of a value by their path, and everything else as it is. */
function leaves(value: unknown, path = ""): readonly (readonly [string, unknown])[] {
  if (typeof value !== "object" || value === null) return [[path, value]];
  return Object.entries(value).flatMap(([name, one]) => leaves(one, `${path}.${name}`));
}

/**
 * The same to twelve digits. What Bartlett's test weighs is a small difference of logarithms of the order of 1, and has their
 * digits.
 */
function expectSame(found: unknown, wanted: unknown): void {
  const [a, b] = [leaves(found), leaves(wanted)];
  expect(a.map(([path]) => path)).toEqual(b.map(([path]) => path));
  for (const [i, [path, value]] of a.entries()) {
    const other = at(b, i)[1];
    if (typeof value !== "number" || typeof other !== "number")
      expect([path, value]).toEqual([path, other]);
    else if (Math.abs(value - other) > 1e-12 * sizeOf(path, other))
      expect([path, value]).toEqual([path, other]);
  }
}

function sizeOf(path: string, value: number): number {
  return Math.max(Math.abs(value), path.includes("homogeneity") ? 1 : 0);
}

const shapes = fc.record({
  bins: fc.integer({ min: 1, max: 5 }),
  fills: fc.integer({ min: 1, max: 9 }),
  catches: fc.integer({ min: 1, max: 7 }),
  machines: fc.integer({ min: 1, max: 2 }),
  seasons: fc.integer({ min: 1, max: 2 }),
});
const seeds = fc.nat(1_000_000);

describe("an analysis from totals", () => {
  it("gives the answers that the catches give where none stands out", () => {
    let compared = 0;
    fc.assert(
      fc.property(shapes, seeds, (shape, seed) => {
        const catches = cleanCatches(shape, seed);
        fc.pre(nothingStandsOut(catches));
        const fromRows = analyse(logOf(catches), null, options);
        const fromTotals = analyseTotals(fillTotals(catches), null, options);
        for (const [i, meter] of fromTotals.meters.entries()) {
          const { delivery, drift, acrossFills, bin, product } = at(fromRows.meters, i);
          expect([meter.bin, meter.product]).toEqual([bin, product]);
          // Catches that disagree have no interval; that takes the catches.
          if (delivery.disagree !== null) continue;
          if (meter.cautions.length > 0) continue;
          compared += 1;
          expectSame(
            [meter.delivery.estimate, meter.delivery.halfWidth, meter.delivery.byItself],
            [delivery.estimate, delivery.halfWidth, delivery.byItself],
          );
          expectSame(meter.delivery.scatter, delivery.scatter);
          expect(meter.drift.verdict).toBe(drift?.verdict);
          expectSame(meter.drift.changes, drift?.changes);
          expectSame(meter.acrossFills.mean, acrossFills?.mean);
          expectSame(meter.acrossFills.nextFill, acrossFills?.nextFill);
          expectSame(meter.acrossFills.spread, acrossFills?.spread);
          expectSame(meter.acrossFills.between, acrossFills?.between);
          expectSame(meter.repeatability.df, acrossFills?.catchScatter.df);
          expectSame(meter.repeatability.homogeneity, acrossFills?.catchScatter.homogeneity);
        }
      }),
      { numRuns: 60, seed: 11 },
    );
    expect(compared).toBeGreaterThan(50);
  });

  it("is the same of rows split at random and merged, in whatever order", () => {
    fc.assert(
      fc.property(shapes, seeds, fc.integer({ min: 1, max: 6 }), (shape, seed, parts) => {
        const catches = cleanCatches(shape, seed);
        const random = randomStream(seed, 1);
        const dealt = random.shuffle(catches).map((row) => ({ row, to: random.integer(1, parts) }));
        const somewhere = Array.from({ length: parts }, (_, part) =>
          fillTotals(dealt.filter(({ to }) => to === part + 1).map(({ row }) => row)),
        );
        const whole = analyseTotals(fillTotals(catches), null, options);
        const merged = analyseTotals(mergeFillTotals(...somewhere), null, options);
        expectSame(inOrder(merged), inOrder(whole));
      }),
      { numRuns: 60, seed: 12 },
    );
  });

  it("says which questions need the catches, and answers them with null", async () => {
    const found = analyseTotals(fillTotals(cleanCatches({ bins: 2, fills: 3, catches: 4 }, 1)));
    const asked = found.cautions.flatMap((one) =>
      one.code === "needs-rows" ? one.facts.questions : [],
    );
    const answered = questions.map(({ name }) => name).filter((name) => !asked.includes(name));
    expect(answered).toEqual(["delivery", "drift", "acrossFills", "repeatability"]);
    expect(asked).toContain("outliers");
    for (const name of asked) expect(found.meters[1]).toHaveProperty(name, null);
    for (const tag of languageTags) {
      const words = await wordsFor(tag, "metric");
      expect(cautionSentence(at(found.cautions, 0), words)).toMatch(/total|Summe/);
    }
  });

  it("gives no error where each catch would count: a fill alone with unequal turns", () => {
    const rows = [10, 20, 40].map((turns, i) =>
      makeCatch({
        bin: "1",
        product: "oats",
        fill: 1,
        catch: i + 1,
        turns,
        netKg: 0.3 * turns + 0.01 * i,
      }),
    );
    const meter = at(analyseTotals(fillTotals(rows), null, options).meters, 0);
    expect(meter.delivery.estimate.interval).toBeNull();
    expect(meter.delivery.estimate.value).toBeCloseTo(
      at(fitModel(rows).meters, 0).fills[0]?.delivery ?? 0,
      15,
    );
    expect(meter.cautions).toMatchObject([
      { code: "needs-rows", facts: { questions: ["delivery"] } },
    ]);
  });

  it("refuses what totals cannot bear", () => {
    const some = fillTotals(cleanCatches({ bins: 1, fills: 1, catches: 3 }, 1));
    expect(() => analyseTotals([])).toThrow("records");
    expect(() => analyseTotals(some, null, { varianceLaw: "constant" })).toThrow("varianceLaw");
    expect(() => analyseTotals(some, null, { level: 2 })).toThrow("level");
  });
});

/** Meters by name: merging keeps the order in which records come. */
function inOrder({ meters, ...rest }: TotalsAnalysis) {
  const named = meters.map((meter) => ({
    name: JSON.stringify([meter.bin, meter.product]),
    meter,
  }));
  return { ...rest, meters: named.sort((a, b) => (a.name < b.name ? -1 : 1)) };
}
