import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { studied } from "../../src/results/studied.ts";
import { root } from "../support/compiler.ts";

const read = (name: string) =>
  JSON.parse(readFileSync(join(root, "reports", `${name}.json`), "utf8"));

const inPercent = (rate: number) => Math.round(100 * rate) / 100;

function rangeOf(rates: readonly number[]) {
  return { lowest: inPercent(Math.min(...rates)), highest: inPercent(Math.max(...rates)) };
}

describe("what sentences tell of simulations", () => {
  it("is what the coverage study holds", () => {
    const rates = (read("coverage") as { interval: string; achieved: number }[])
      .filter(({ interval }) => interval === "all catches as fills")
      .map(({ achieved }) => achieved);
    expect(rates.length).toBeGreaterThan(1);
    expect(studied.catchesAsFills).toEqual(rangeOf(rates));
  });

  it("is what the decision study holds itself to, and keeps", () => {
    const { clean } = read("decision-study") as {
      clean: { fills: number; errors: string; claimed: number | null; alarmed: number }[];
    };
    const { fills, atMost } = studied.cleanReports;
    const cell = clean.find((one) => one.fills === fills && one.errors === "normal");
    expect(cell?.claimed).toBe(atMost);
    expect(cell?.alarmed).toBeLessThanOrEqual(atMost);
  });

  it("is what the outlier study holds", () => {
    const { otherErrors, unlike, falseFlags, replicates } = read("outlier-study") as {
      replicates: number;
      otherErrors: { errors: string; fills: number; logAsFamily: number }[];
      unlike: { falseAlarm: number }[];
      falseFlags: { tails: string; flagged: number; aboveThousand: number }[];
    };
    const logsWith = (errors: string) => {
      const logs = otherErrors.filter((one) => one.errors.startsWith(errors));
      expect([...new Set(logs.map(({ fills }) => fills))]).toEqual([6, 12]);
      return logs.map(({ logAsFamily }) => logAsFamily);
    };
    // None seen among n is no proof of none: three in n is the 95 % bound (the rule of three).
    const convincing = (tails: string) =>
      falseFlags
        .filter((one) => one.tails === tails)
        .map(({ aboveThousand, flagged }) => aboveThousand || 3 / (flagged * replicates));
    expect(studied.flags).toEqual({
      heavyTails: rangeOf(logsWith("heavy tails")),
      turnsSquared: rangeOf(logsWith("scatter as turns squared")),
      unlikeFills: rangeOf(unlike.map(({ falseAlarm }) => falseAlarm)),
    });
    expect(studied.convincing).toEqual({
      normal: rangeOf(convincing("normal")).highest,
      heavyTails: rangeOf(convincing("heavy")).highest,
    });
  });

  it("is what the blocks study holds", () => {
    interface Ways {
      readonly tukey: { covered: number; equivalentAtMargin: number };
      readonly dunnett: { covered: number };
      readonly paired: { covered: number };
    }
    const { equal, unlike, gamesHowell } = read("blocks-study") as {
      equal: readonly Ways[];
      unlike: readonly Ways[];
      gamesHowell: readonly { spreads: readonly number[]; anyFalse: number }[];
    };
    const anyFalse = (cells: readonly Ways[], way: keyof Ways) =>
      rangeOf(cells.map((cell) => 1 - cell[way].covered));
    const pooled = (way: keyof Ways) => ({
      alike: anyFalse(equal, way),
      unlike: anyFalse(unlike, way),
    });
    const equivalent = unlike.map(({ tukey }) => tukey.equivalentAtMargin);
    expect(studied.blocks).toEqual({
      "tukey-blocks": pooled("tukey"),
      "dunnett-blocks": pooled("dunnett"),
      paired: anyFalse([...equal, ...unlike], "paired"),
      equivalentAtMargin: rangeOf(equivalent).highest,
    });
    const unequal = gamesHowell.filter(({ spreads }) => new Set(spreads).size > 1);
    expect(studied.gamesHowell).toEqual(rangeOf(unequal.map((one) => one.anyFalse)));
  });

  it("is what the study of skipping holds", () => {
    const { alike } = read("skipping-study") as { alike: { boundHolds: number }[] };
    expect(studied.boundsOfAlikeFills).toBe(
      rangeOf(alike.map(({ boundHolds }) => boundHolds)).lowest,
    );
  });
});
