import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { fillOrderOf } from "../../src/model/fill-order.ts";
import { fitModel } from "../../src/model/model.ts";
import { drift } from "../../src/questions/drift.ts";
import { defaults } from "../../src/results/defaults.ts";
import { aCatch } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { english, german } from "../support/words.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.001 };
const wobble = [0, 0.006, -0.004, 0.003, -0.007, 0.005];

/** A pair of catches a fill, numbered from 1 in each season, so that the fill's delivery is what the list says. */
function season(name: string | null, deliveries: readonly number[], given: Partial<Catch> = {}) {
  return deliveries.flatMap((delivery, f) =>
    [0.99, 1.01].map((part, c) =>
      aCatch({
        season: name,
        fill: f + 1,
        catch: c + 1,
        turns: 20,
        netKg: 20 * delivery * part,
        ...given,
      }),
    ),
  );
}

const level = (mean: number, errors = wobble) => errors.map((error) => mean * (1 + error));
const first = (catches: readonly Catch[]) => present(fitModel(catches, options).meters[0]);
const driftOf = (catches: readonly Catch[]) =>
  drift(first(catches), { ...options, shiftOfInterest: defaults.shiftOfInterest });

describe("a meter over seasons", () => {
  it("has the fills of all of them in order, whatever the order of the file", () => {
    const log = [...season("2026", [0.41, 0.42]), ...season("2025", [0.4, 0.39])];
    expect(first(log).fills.map(({ fill }) => fill)).toEqual([
      "1/2025",
      "2/2025",
      "1/2026",
      "2/2026",
    ]);
    expect(first(log).fills.map(({ delivery }) => Math.round(100 * delivery))).toEqual([
      40, 39, 41, 42,
    ]);
  });

  it("is judged to the digit as one row of fills numbered through", () => {
    const two = [...season("2025", level(0.4)), ...season("2026", level(0.424))];
    const through = two.map((row) => ({
      ...row,
      season: null,
      fill: row.season === "2026" ? row.fill + 6 : row.fill,
    }));
    const [ours, theirs] = [first(two).history, first(through).history];
    const bare = ({ fill: _, ...step }: (typeof ours.steps)[number]) => step;
    expect(ours.steps.map(bare)).toEqual(theirs.steps.map(bare));
    expect(ours.status).toBe(theirs.status);
    expect(ours.changes.map(({ size }) => size)).toEqual(theirs.changes.map(({ size }) => size));
    expect(first(two).across.mean).toEqual(first(through).across.mean);
  });

  it("says that a change began with a season, in both languages, only where it did", () => {
    const result = driftOf([
      ...season("2025", level(0.4)),
      ...season("2026", level(0.424, wobble.slice(0, 2))),
    ]);
    expect(result.moved).toMatchObject({ season: "2026", since: { fill: "1/2026" } });
    expect(english().drift.sentence(result)).toContain("since season 2026 (fill 1/2026)");
    expect(german().drift.sentence(result)).toContain("Seit der Saison 2026 (Füllung 1/2026)");
    const inside = driftOf([
      ...season("2025", level(0.4, wobble.slice(0, 3))),
      ...season("2026", [...level(0.4, wobble.slice(0, 3)), ...level(0.424, wobble.slice(0, 2))]),
    ]);
    expect(inside.moved).toMatchObject({ since: { fill: "4/2026" } });
    expect(inside.moved).not.toHaveProperty("season");
    expect(english().drift.sentence(inside)).toContain("since fill 4/2026");
  });

  it("misses no fill and no day over the winter, and does within a season", () => {
    const log = [
      ...season("2025", [0.4, 0.41], { takenAt: "2025-04-01" }),
      ...season("2026", [0.4], { takenAt: "2026-04-01", fill: 3 }),
      ...season("2026", [0.4], { takenAt: "2026-04-02", fill: 5 }),
    ];
    const model = fitModel(log, options);
    expect(fillOrderOf(present(model.meters[0]), model.meters).gaps).toEqual([
      { afterFill: "3/2026", beforeFill: "5/2026", missingFills: 1, days: 1 },
    ]);
  });

  it("is told where dates put seasons in another order", () => {
    const log = [
      ...season("2025", [0.4, 0.41], { takenAt: "2026-04-01" }),
      ...season("2026", [0.4, 0.39], { takenAt: "2025-04-01" }),
    ];
    expect(driftOf(log).cautions.map(({ code }) => code)).toContain("fill-numbers-against-dates");
  });

  it("lends the spread within each season, not the step of a winter", () => {
    const spreadOf = (catches: readonly Catch[]) => present(first(catches).record.spread);
    // 1 % over the winter: no change is found, and nothing of it is lent.
    const two = [...season("2025", level(0.4)), ...season("2026", level(0.404))];
    const one = spreadOf(season(null, level(0.4)));
    expect(spreadOf(two)).toMatchObject({ df: 10 });
    expect(spreadOf(two).variance).toBeCloseTo(one.variance, 12);
    const through = two.map((row, i) => ({ ...row, season: null, fill: 1 + Math.floor(i / 2) }));
    expect(spreadOf(through).variance).toBeGreaterThan(1.3 * one.variance);
  });
});

describe("machines of one log", () => {
  it("are meters of their own, called so only where there are several", () => {
    const north = season(null, level(0.4), { machine: "north" });
    const south = season(null, level(0.3), { machine: "south" });
    const called = (catches: readonly Catch[]) =>
      fitModel(catches, options).meters.map(({ bin, fills }) => [bin, fills.length]);
    expect(called([...north, ...south])).toEqual([
      ["1/north", 6],
      ["1/south", 6],
    ]);
    expect(called(north)).toEqual([["1", 6]]);
  });

  it("do not share a bin: what is in one machine's says nothing of the other's", () => {
    const wheat = season(null, [0.4, 0.41, 0.39], { machine: "north" });
    const oats = season(null, [0.3], { machine: "south", product: "oats", fill: 2 });
    const { meters } = fitModel([...wheat, ...oats], options);
    expect(fillOrderOf(present(meters[0]), meters).otherProducts).toEqual([]);
  });
});

describe("a fresh start", () => {
  const log = [...season("2025", level(0.4)), ...season("2026", level(0.4))];
  const startsIn = (name: string | null) => {
    const startsAfresh = [{ bin: "1", product: null, fill: 3, season: name }];
    const { history } = present(fitModel(log, options, { startsAfresh }).meters[0]);
    return history.stretches.at(-1)?.fills[0]?.fill;
  };

  it("is where its season says, and nowhere where a number alone names two fills", () => {
    expect(startsIn("2026")).toBe("3/2026");
    expect(startsIn("2025")).toBe("3/2025");
    expect(startsIn(null)).toBe("1/2025");
  });
});
