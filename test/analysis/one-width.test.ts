import { describe, expect, it } from "vitest";
import { type Analysis, analyse, type MeterAnswers } from "../../src/analysis/analyse.ts";
import type { AnalysisOptions } from "../../src/analysis/options.ts";
import { tidyTables } from "../../src/analysis/tables/tidy-tables.ts";
import type { Setup } from "../../src/data/setup.ts";
import type { Catch, CatchLog } from "../../src/data/types.ts";
import type { Estimate } from "../../src/results/estimate.ts";
import { aFill } from "../support/catches.ts";
import { demo } from "../support/demo.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const log = (catches: readonly Catch[]): CatchLog => ({
  source: "catches.csv",
  catches,
  massUnit: "kg",
  cautions: [],
});

interface Asked {
  readonly log: CatchLog;
  readonly setup?: Setup;
  readonly options?: Partial<AnalysisOptions>;
}

const earlier = inventedFills({ fills: 4, catches: 3, spread: 0.02, scatter: 0.012 }, 8);
const pairs = [
  [20, 6.02],
  [20, 6.1],
  [20, 5.97],
] as const;
const unequal = aFill([
  [10, 3.08],
  [40, 12],
  [40, 12.3],
  [10, 2.97],
]);

const asked: Readonly<Record<string, () => Promise<Asked> | Asked>> = {
  "three catches of one morning": () => demo("first-morning"),
  "a season of three bins": () => demo("season"),
  "a fill of one catch after others": () => ({
    log: log([...earlier, ...aFill([[20, 6.1]], { fill: 5 })]),
    options: { scaleDivisionKg: 0.02 },
  }),
  "two lone catches": () => ({ log: log(aFill(pairs.slice(0, 2))), options: { level: 0.9 } }),
  "catches that agree exactly": () => ({
    log: log(
      aFill([
        [20, 6],
        [20, 6],
        [20, 6],
      ]),
    ),
    options: { scaleDivisionKg: 0.05 },
  }),
  "unequal turns": () => ({ log: log(unequal), options: { scaleDivisionKg: 0.01 } }),
  "scales of their own": () => ({
    log: log(aFill(pairs).map((row, i) => ({ ...row, divisionKg: i === 1 ? 0.1 : 0.01 }))),
  }),
  "another weighting": () => ({
    log: log(unequal),
    options: { scaleDivisionKg: 0.02, varianceLaw: "squared" },
  }),
  "a coarse scale": () => ({ log: log(aFill(pairs)), options: { scaleDivisionKg: 0.2 } }),
};

/** How far an interval reaches, as a fraction of its value. */
function reach({ value, interval }: Estimate): number {
  return (present(present(interval).upper) - value) / value;
}

/** Every "±" of the newest fill's delivery that some answer holds. */
function widthsOf(answers: MeterAnswers, tables: ReturnType<typeof tidyTables>) {
  const { delivery, catchesNeeded, acrossFills, drift, outliers, setting } = answers;
  const { bin, product, fill } = delivery;
  const row = present(
    tables.estimates?.find(
      (one) =>
        one.quantity === "delivery" &&
        one.bin === bin &&
        one.product === product &&
        one.fill === fill,
    ),
  );
  const made = catchesNeeded?.curve.points.find(({ basis }) => basis === "made");
  const influence = present(outliers).influence[0];
  const turns = setting?.turnsPerHectare ?? null;
  const budget = present(answers.uncertaintyBudget);
  const aloneInBudget = budget.lines.every(({ source }) =>
    ["catch scatter", "reading gross", "reading tare"].includes(source),
  );
  return {
    delivery: present(delivery.halfWidth),
    interval: reach(delivery.estimate),
    catchesNeeded: present(catchesNeeded).halfWidth,
    curve: present(made).halfWidth,
    acrossFills: reach(present(present(acrossFills).points.at(-1)).estimate),
    drift: reach(present(present(drift).fills.at(-1)).estimate),
    table: (Number(row.upper) - Number(row.value)) / Number(row.value),
    // Catches are judged by the usual weighting, whichever the delivery is asked for with.
    ...(influence === undefined || delivery.options.varianceLaw !== "proportional"
      ? {}
      : { outliers: reach(influence.now) }),
    ...(turns?.method === "reciprocal of the t interval"
      ? { setting: 1 - present(turns.value) / present(turns.interval?.upper) }
      : {}),
    ...(aloneInBudget ? { budget: present(budget.total).expanded } : {}),
  };
}

describe("one fill has one half-width, whatever it is asked through", () => {
  it.each(Object.keys(asked))("%s", async (name) => {
    const { log: catches, setup = null, options = {} } = await present(asked[name])();
    const analysis: Analysis = analyse(catches, setup, options);
    const tables = tidyTables(catches, analysis);
    for (const answers of analysis.meters) {
      const widths = widthsOf(answers, tables);
      for (const [place, width] of Object.entries(widths))
        expect(Math.abs(present(width) / widths.delivery - 1), place).toBeLessThan(
          place === "budget" ? 1e-6 : 1e-11,
        );
    }
  });

  it("also through a setting, whose turns per hectare are the delivery turned upside down", async () => {
    const { log: catches, setup } = await demo("first-morning");
    const [answers] = analyse(catches, setup).meters;
    const widths = widthsOf(present(answers), tidyTables(catches, analyse(catches, setup)));
    expect(widths).toHaveProperty("setting");
    expect(widths).toHaveProperty("budget");
  });
});

describe("today's fill", () => {
  it.each(["proportional", "constant", "squared"] as const)(
    "is the same to every answer where scatter grows as %s",
    async (varianceLaw) => {
      const { log, setup } = await demo("season");
      for (const answers of analyse(log, setup, { varianceLaw }).meters) {
        const { value } = answers.delivery.estimate;
        const { today, setting } = present(answers.skipping);
        const newest = present(present(answers.drift).fills.at(-1));
        expect(present(today).value).toBeCloseTo(value / present(setting.todayKgPerTurn) - 1, 12);
        expect(newest.estimate.value).toBe(value);
        expect(present(present(answers.acrossFills).points.at(-1)).estimate.value).toBe(value);
      }
    },
  );
});
