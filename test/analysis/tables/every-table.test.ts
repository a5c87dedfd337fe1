import { describe, expect, it } from "vitest";
import { type Analysis, analyse, type MeterAnswers } from "../../../src/analysis/analyse.ts";
import { tidyTables } from "../../../src/analysis/tables/tidy-tables.ts";
import { readSetup } from "../../../src/data/read-setup.ts";
import type { Catch } from "../../../src/data/types.ts";
import type { PlainRow } from "../../../src/data/write-csv.ts";
import type { Estimate } from "../../../src/results/estimate.ts";
import { aFill, aLog } from "../../support/catches.ts";
import { demo } from "../../support/demo.ts";

/** Fills of two catches about these deliveries, kg/turn. */
const season = (bin: string, deliveries: readonly number[], given: Partial<Catch> = {}) =>
  deliveries.flatMap((each, i) =>
    aFill(
      [
        [20, 20 * each * 1.005],
        [20, 20 * each * 0.996],
      ],
      { bin, fill: i + 1, takenAt: `2026-04-${String(i + 1).padStart(2, "0")}`, ...given },
    ),
  );

const wobble = [0.3, 0.302, 0.2985, 0.301, 0.2995, 0.3005, 0.298, 0.3015, 0.2992, 0.3008];
const log = aLog([
  ...season("steady", wobble),
  ...season(
    "moved",
    wobble.map((each, i) => each * (i < 8 ? 1 : 1.06)),
  ),
  ...season(
    "trending",
    wobble.map((each, i) => each * (1 + 0.012 * i)),
  ),
  ...season(
    "differs",
    wobble.map((each, i) => each * (i < 9 ? 1 : 1.08)),
  ),
  ...season("two fills", [0.3, 0.301]),
  ...aFill([[20, 6]], { bin: "one catch" }),
  ...aFill(
    [
      [20, 6],
      [40, 12.1],
      [20, 9],
      [20, 6.02],
    ],
    { bin: "odd catch" },
  ),
]);

const bin = (name: string, more: object = {}) => ({
  bin: name,
  target_rate: { value: 100, unit: "kg/ha" },
  ...more,
});
const setup = () =>
  readSetup({
    name: "farm.json",
    text: JSON.stringify({
      cart: {
        working_width: { value: 6, unit: "m" },
        wheel_circumference: { value: 2.1, unit: "m" },
        speed: { from: { value: 6, unit: "km/h" }, to: { value: 9, unit: "km/h" } },
      },
      bins: [
        bin("steady", { drive: { kind: "ground-wheel", steps: [0.3, 0.4, 0.42, 0.44] } }),
        bin("moved", { drive: { kind: "ground-wheel" }, turns_per_hectare: 330 }),
        bin("differs", { drive: { kind: "motor" } }),
      ],
    }),
  });

const estimate = (one: Estimate | null | undefined) => ({
  value: one?.value ?? null,
  unit: one?.unit ?? null,
  standard_error: one?.standardError ?? null,
  df: one?.df ?? null,
  lower: one?.interval?.lower ?? null,
  upper: one?.interval?.upper ?? null,
  level: one?.interval?.level ?? null,
});

type Rows = readonly PlainRow[];

/** What each table has to say of one bin and product, from its answers alone. */
const told: Readonly<Record<string, (answers: MeterAnswers) => Rows>> = {
  drift_steps: ({ drift }) =>
    (drift?.fills ?? []).map(({ fill, takenAt, catches, stretch, step }, i) => {
      const point = drift?.scoreCharts.points.find((one) => one.fill === fill);
      return {
        fill,
        place_in_time: i + 1,
        taken_at: takenAt,
        catches,
        outcome: step?.outcome ?? null,
        settled: step?.settled ?? null,
        p: step?.pValue ?? null,
        evidence: step?.evidence ?? null,
        evidence_limit: step?.limit ?? null,
        stretch: stretch === null ? null : stretch + 1,
        score: point?.score ?? null,
        ewma: point?.ewma.value ?? null,
        ewma_lower: point?.ewma.lower ?? null,
        ewma_upper: point?.ewma.upper ?? null,
        cusum_lower: point?.cusum.lower ?? null,
        cusum_upper: point?.cusum.upper ?? null,
        cusum_signal: point?.cusum.signal ?? null,
      };
    }),
  drift_stretches: ({ drift }) =>
    (drift?.stretches ?? []).map(({ from, to, fills, begins, mean }, i) => ({
      stretch: i + 1,
      from_fill: from,
      to_fill: to,
      fills,
      begins,
      mean_kg_per_turn: mean,
    })),
  fills: ({ acrossFills, drift, outliers }) =>
    (acrossFills?.points ?? []).map((point, i) => {
      const upper = point.estimate.interval?.upper;
      const screened = outliers?.fills.find(({ fill }) => fill === point.fill);
      return {
        fill: point.fill,
        place_in_time: i + 1,
        taken_at: point.takenAt,
        catches: point.catches,
        turns: point.turns,
        ...estimate(point.estimate),
        half_width:
          upper == null
            ? null
            : expect.closeTo((upper - point.estimate.value) / point.estimate.value, 12),
        stands: point.stands,
        stretch: drift?.fills[i]?.stretch == null ? null : (drift.fills[i]?.stretch ?? 0) + 1,
        screening: screened?.status ?? null,
        relative_range: screened?.relativeRange ?? null,
        standing_out: screened?.standingOut.length ?? null,
        catches_left_out: 0,
        catches_set_aside: (outliers?.scatter.setAside ?? []).filter(
          ({ fill }) => fill === point.fill,
        ).length,
      };
    }),
  setting: ({ setting }) =>
    setting === null
      ? []
      : [
          ...[
            ["target rate", setting.target] as const,
            ["turns per hectare", setting.turnsPerHectare] as const,
            ["drive ratio", setting.ratio] as const,
          ].flatMap(([quantity, figure]) =>
            figure === null
              ? []
              : {
                  fill: setting.fill,
                  quantity,
                  speed_km_h: null,
                  ...estimate(figure),
                  method: figure.method,
                },
          ),
          ...setting.meterSpeeds.map(({ speedKmPerH, turnsPerMin }) => ({
            fill: setting.fill,
            quantity: "meter speed",
            speed_km_h: speedKmPerH,
            ...estimate(turnsPerMin),
            method: turnsPerMin.method,
          })),
        ],
  setting_rates: ({ setting }) => {
    if (setting === null) return [];
    const { steps, around, now, nearest, fill } = setting;
    const row = (
      kind: string,
      step: string | null,
      value: number,
      of: string,
      isNearest: boolean,
      rate: Estimate,
      error: Estimate | null,
      assumed: boolean | null = null,
    ) => ({
      fill,
      kind,
      step,
      setting: value,
      setting_unit: of,
      nearest: isNearest,
      ...estimate(rate),
      rate_error: error?.value ?? null,
      rate_error_lower: error?.interval?.lower ?? null,
      rate_error_upper: error?.interval?.upper ?? null,
      assumed,
    });
    return [
      ...steps.map((one, i) =>
        row(
          "step",
          one.name,
          one.setting,
          "ratio",
          nearest?.nearest === i,
          one.rate,
          one.rateError,
          one.assumed,
        ),
      ),
      ...(around?.rows ?? []).map((one) =>
        row("around", one.name, one.setting, around?.of ?? "", false, one.rate, one.rateError),
      ),
      ...(now === null
        ? []
        : [
            row("now", null, now.turnsPerHectare.value, "turns/ha", false, now.rate, now.rateError),
          ]),
    ];
  },
  skipping_chances: ({ skipping }) =>
    (skipping?.chances ?? []).map(({ limit, heavy, light, either, upperBound }) => ({
      limit,
      chance_heavy: heavy,
      chance_light: light,
      chance_either: either,
      chance_bound: upperBound,
    })),
  skipping_runs: ({ skipping }) =>
    (skipping?.betweenCalibrations?.points ?? []).map(
      ({ fills, chanceAny, upperBound, expectedOff }) => ({
        fills_in_a_row: fills,
        chance_any: chanceAny,
        chance_bound: upperBound,
        fills_expected_off: expectedOff,
      }),
    ),
  budget_totals: ({ uncertaintyBudget: budget }) =>
    budget === null || budget.total === null
      ? []
      : [
          {
            fill: budget.fill,
            combined: budget.total.combined,
            df: budget.total.effectiveDf,
            coverage_factor: budget.total.coverageFactor,
            expanded: budget.total.expanded,
            level: budget.options.level,
            tolerance: budget.options.tolerance,
            within_tolerance: budget.total.withinTolerance,
            improve_first: budget.improveFirst?.source ?? null,
            drawn_lower: budget.check?.lower ?? null,
            drawn_upper: budget.check?.upper ?? null,
            drawn_agrees: budget.check?.agrees ?? null,
          },
        ],
};

const analysed = async (): Promise<Analysis> => analyse(log, await setup());

describe("the tables of meters that are steady, moved, trend, differ, and of too few fills", () => {
  it("are of meters that are so", async () => {
    const { meters } = await analysed();
    const verdicts = Object.fromEntries(meters.map((one) => [one.bin, one.drift?.verdict]));
    expect(verdicts).toMatchObject({
      steady: "steady",
      moved: "moved",
      trending: "trending",
      differs: "fill differs",
      "two fills": "too few fills",
      "one catch": "too few fills",
    });
  });

  it.each(Object.keys(told))(
    "%s holds each figure of the answers, and nothing where there is none",
    async (name) => {
      const analysis = await analysed();
      const tables = new Map(Object.entries(tidyTables(log, analysis, await setup())));
      const expected = analysis.meters.flatMap((answers) =>
        (told[name]?.(answers) ?? []).map((row) => ({
          bin: answers.bin,
          product: answers.product,
          ...row,
        })),
      );
      expect(expected.length).toBeGreaterThan(0);
      expect(tables.get(name)).toEqual(expected);
    },
  );

  it("tell of every test whether it decides, those that do before the others", async () => {
    const analysis = await analysed();
    const { drift_tests: rows } = tidyTables(log, analysis);
    const of = (name: string) => rows.filter((row) => row.bin === name);
    const deciding = (name: string) => of(name).filter((row) => row.decides === true);
    for (const { bin: name } of analysis.meters) {
      const decides = of(name).map((row) => row.decides);
      expect(decides).toEqual([...decides].sort((a, b) => Number(b) - Number(a)));
    }
    const answerOf = (name: string) => analysis.meters.find((one) => one.bin === name)?.drift;
    expect(deciding("steady")).toEqual([]);
    const [change] = answerOf("moved")?.changes ?? [];
    expect(deciding("moved")).toMatchObject([
      {
        test: "lasting shift found",
        since_fill: change?.since.fill,
        fills_before: change?.fillsBefore,
        fills_since: change?.fillsSince,
        ...estimate(change?.size),
        p: change?.pValue ?? null,
        evidence: change?.evidence,
        evidence_limit: change?.limit,
        p_adjusted: null,
        statistic: null,
      },
    ]);
    const trending = answerOf("trending")?.trending;
    expect(deciding("trending").at(-1)).toMatchObject({
      test: "trend found",
      since_fill: trending?.from.fill,
      fills_before: null,
      fills_since: trending?.fills,
      ...estimate(trending?.perFill),
      evidence: trending?.evidence,
    });
    const differs = answerOf("differs")?.differs;
    expect(deciding("differs")).toMatchObject([
      {
        test: "newest fill against earlier ones",
        since_fill: 10,
        fills_before: 9,
        fills_since: 1,
        ...estimate(differs?.difference),
        p: differs?.pValue,
      },
    ]);
    const named = of("steady").filter((row) => row.decides === false);
    const { trend, shift, byName, settling } = answerOf("steady") ?? {};
    expect(named.map((row) => [row.test, row.value, row.statistic, row.p, row.p_adjusted])).toEqual(
      [
        [
          "slope over all fills",
          trend?.relativePerFill.value,
          trend?.statistic,
          trend?.pValue,
          trend?.adjustedPValue,
        ],
        [
          "largest shift over all fills",
          shift?.relativeSize.value,
          shift?.statistic,
          shift?.pValue,
          shift?.adjustedPValue,
        ],
        ["Mann-Kendall", null, byName?.mannKendall.score, byName?.mannKendall.pValue, null],
        ["Theil-Sen slope", byName?.theilSenPerFill, null, null, null],
        ...(settling ?? []).map((one) => [
          `settling ${one.scope} against ${one.against}`,
          (one.perCatch ?? one.emptyToFull)?.value,
          one.statistic,
          one.pValue,
          one.adjustedPValue,
        ]),
      ],
    );
    // Two fills have no season to look over.
    expect(of("one catch")).toEqual([]);
  });

  it("tell what catches and fills scatter by, in kg and its square, by moments and by REML", async () => {
    const analysis = await analysed();
    const rows = tidyTables(log, analysis).variance_components;
    for (const { bin: name, acrossFills } of analysis.meters) {
      if (acrossFills === null) continue;
      const own = rows.filter((row) => row.bin === name);
      const { catchScatter, spread, between, reml } = acrossFills;
      expect(own.map((row) => [row.component, row.method, row.unit])).toEqual([
        ["catches within fills", "moments", "kg"],
        ["fills as measured", "moments", "kg/turn"],
        ...(between === null
          ? []
          : [
              ["catch scatter in fills", "moments", "kg/turn"],
              ["fills beyond catch scatter", "moments", "kg/turn"],
            ]),
        ...(reml === null
          ? []
          : [
              ["catches within fills", "REML", "kg"],
              ["fills beyond catch scatter", "REML", "kg/turn"],
            ]),
      ]);
      for (const row of own) {
        const deviation = row.standard_deviation;
        expect(row.variance).toEqual(typeof deviation === "number" ? deviation * deviation : null);
      }
      expect(own[0]).toMatchObject({
        standard_deviation: catchScatter.standardDeviation?.value ?? null,
        lower: catchScatter.standardDeviation?.interval?.lower ?? null,
        relative: catchScatter.relative,
        df: catchScatter.df,
        turns: catchScatter.turns,
        spread_from: null,
      });
      expect(own[1]).toMatchObject({
        standard_deviation: spread.standardDeviation?.value ?? null,
        relative: spread.relative,
        df: spread.df,
        turns: null,
        spread_from: spread.source,
        meters_lending: spread.lentBy?.meters ?? null,
      });
      if (reml === null) continue;
      const [catches, fills] = own.filter((row) => row.method === "REML");
      // Variance of a catch of t turns is σ²·t; relative to the mass of such a catch, and to the delivery.
      const { turns } = catchScatter;
      expect(Number(catches?.variance)).toBeCloseTo(reml.withinVariance * turns, 14);
      expect(Number(catches?.relative) * reml.mean * turns).toBeCloseTo(
        Number(catches?.standard_deviation),
        12,
      );
      expect(Number(fills?.variance)).toBeCloseTo(reml.betweenVariance, 14);
      expect(Number(fills?.relative) * reml.mean).toBeCloseTo(
        Number(fills?.standard_deviation),
        14,
      );
    }
  });

  it("number every finding once, with a row for each of its catches", async () => {
    const analysis = await analysed();
    const { flags } = tidyTables(log, analysis);
    const found = [...analysis.cautions, ...analysis.meters.flatMap((one) => one.cautions)];
    const expected = found.flatMap(({ code, severity, asks, where, facts }, i) =>
      (where.catches.length === 0 ? [null] : where.catches).map((number) => ({
        finding: i + 1,
        bin: where.bin,
        product: where.product,
        fill: where.fill,
        catch: number,
        found_in: i < analysis.cautions.length ? "file" : "bin",
        code,
        severity,
        asks,
        answered: null,
        facts: JSON.stringify(facts),
      })),
    );
    expect(flags).toEqual(expected);
    expect(flags.some((row) => row.catch !== null)).toBe(true);
    const said = tidyTables(log, analysis, null, { say: ({ code }) => `Of ${code}.` }).flags;
    expect(said.map((row) => row.sentence)).toEqual(expected.map(({ code }) => `Of ${code}.`));
  });
});

describe("the tables of skipping", () => {
  it("have one row a meter with what the next fill risks", async () => {
    const { log: demoLog, setup: demoSetup } = await demo("season");
    const analysis = analyse(demoLog, demoSetup);
    const { skipping } = tidyTables(demoLog, analysis, demoSetup);
    const answers = analysis.meters.flatMap((one) => one.skipping ?? []);
    expect(answers.length).toBeGreaterThan(0);
    expect(skipping.map(({ bin: _, product: __, machine: ___, ...row }) => row)).toMatchObject(
      answers.map((one) => ({
        fills: one.input.fills,
        left_at_kg_per_turn: one.setting.nextKgPerTurn,
        ...estimate(one.nextFill),
        expected_heavy: one.expected?.heavy ?? null,
        expected_light: one.expected?.light ?? null,
        expected_absolute: one.expected?.absolute ?? null,
        expected_absolute_bound: one.expected?.absoluteUpperBound ?? null,
        least_chance: one.leastChance,
        tolerance: one.betweenCalibrations?.tolerance ?? null,
        accepted_risk: one.betweenCalibrations?.acceptedRisk ?? null,
        most_fills: one.betweenCalibrations?.mostFills ?? null,
        most_fills_by_bound: one.betweenCalibrations?.mostFillsByBound ?? null,
        lawful_lowest_kg_ha: one.lawful?.lowestKgPerHa ?? null,
        lawful_highest_kg_ha: one.lawful?.highestKgPerHa ?? null,
        chance_unlawful: one.lawful?.either?.chance ?? null,
        share_of_fills: one.shareOfFills?.content ?? null,
        share_lower: one.shareOfFills?.interval?.lower ?? null,
        share_upper: one.shareOfFills?.interval?.upper ?? null,
      })),
    );
  });
});

describe("tables of a log with machines and seasons", () => {
  it("have its keys in columns of their own, and bins and fills as the file has them", () => {
    const keyed = ["Nord", "Süd"].flatMap((machine) =>
      ["2025", "2026"].flatMap((year) =>
        season("1", [0.3, 0.301], { machine, season: year }).map((row) => ({
          ...row,
          takenAt: `${year}-04-0${row.fill}`,
        })),
      ),
    );
    const analysis = analyse(aLog(keyed));
    const { fills, bins } = tidyTables(aLog(keyed), analysis);
    expect(fills.map((row) => [row.machine, row.bin, row.season, row.fill])).toEqual(
      ["Nord", "Süd"].flatMap((machine) =>
        ["2025", "2026"].flatMap((year) => [1, 2].map((fill) => [machine, "1", year, fill])),
      ),
    );
    expect(bins.map((row) => [row.machine, row.bin, row.season, row.fill])).toEqual([
      ["Nord", "1", "2026", 2],
      ["Süd", "1", "2026", 2],
    ]);
    // A log without them has no such columns.
    const plain = tidyTables(log, analyse(log)).fills;
    expect(plain.filter((row) => "machine" in row || "season" in row || "farm" in row)).toEqual([]);
  });
});
