import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as library from "../../src/index.ts";
import * as light from "../../src/light.ts";
import * as pool from "../../src/pool.ts";
import { type Draw, drawing, wrongWith } from "../support/any-input.ts";
import { english } from "../support/words.ts";

const words = english();

type Calls = Readonly<Record<string, (draw: Draw) => unknown>>;

/** Catches as a program might make them, and now and then a number that nobody weighed. */
function catches(draw: Draw): readonly library.Catch[] {
  const { likely, whole, oneOf, chance } = draw;
  const per = oneOf([0.001, 0.3, 0.3, 40]);
  const each = 1 + whole(3);
  return draw
    .list(() => ({ bin: oneOf(["1", "2"]), product: oneOf(["wheat", "wheat", "rape"]) }), 4)
    .flatMap(({ bin, product }, fill) =>
      Array.from({ length: each }, (_, i) => {
        const turns = oneOf([20, 20, 10, likely()]);
        const usual = turns * per * (1 + oneOf([0, 0.02, 0.1]) * (chance() - 0.5));
        return library.makeCatch({
          bin,
          product,
          fill: fill + 1,
          catch: i + 1,
          turns,
          netKg: oneOf([usual, usual, usual, usual, likely()]),
          divisionKg: oneOf([null, null, 0.01]),
          takenAt: `2026-03-${10 + fill}`,
          meterRpm: oneOf([null, 40, likely()]),
          leftOut: oneOf([null, null, null, null, "slipped"]),
        });
      }),
    );
}

const logOf = (draw: Draw) =>
  library.readCatches({ name: "catches.csv", text: library.catchesToCsv(catches(draw)) });

/** What an option may be: often left out, else anything. */
const maybe = ({ oneOf, chance, number }: Draw) =>
  oneOf([undefined, undefined, chance(), number()]);
const given = <T extends object>(options: T): Partial<T> =>
  Object.fromEntries(
    Object.entries(options).filter(([, value]) => value !== undefined),
  ) as Partial<T>;
const options = (draw: Draw) =>
  given({ level: maybe(draw), tolerance: maybe(draw), scaleDivisionKg: maybe(draw) }) as object;

const setupTexts = [
  "{}",
  '{"tolerance_percent":3,"width_m":9,"bins":{"1":{"target_kg_per_ha":120}}}',
  '{"bins":{"1":{"price_per_t":-1}}}',
  '{"scale":{"division_g":0}}',
  "[]",
  "{",
];
const setup = ({ oneOf, text }: Draw) => ({
  name: "setup.json",
  text: oneOf([...setupTexts, text()]),
});
const anySetup = (draw: Draw) => draw.oneOf([null, () => library.readSetup(setup(draw))]);

async function analysed(draw: Draw) {
  const log = await logOf(draw);
  const told = anySetup(draw)?.() ?? null;
  return { log, told, analysis: library.analyse(log, told, options(draw)) };
}

const modelOf = (draw: Draw) => library.fitModel(catches(draw), options(draw));
const deliveryOptions = ({ options }: library.Model) => ({
  varianceLaw: "proportional" as const,
  ...options,
});
/** What a question about one meter says; a log of none has nothing to ask. */
const ofMeter =
  (ask: (meter: library.MeterModel, model: library.Model, draw: Draw) => unknown) =>
  (draw: Draw) => {
    const model = modelOf(draw);
    return model.meters.map((meter) => ask(meter, model, draw));
  };
/** The chart of what a question answered for each meter of a log. */
const ofAnswers = (draw: (answers: library.MeterAnswers) => unknown) => async (from: Draw) => {
  const { analysis } = await analysed(from);
  return analysis.meters.map(draw);
};

const calls: Calls = {
  acrossFills: ofMeter((meter, model) => library.acrossFills(meter, model.options)),
  analyse: async (draw) => (await analysed(draw)).analysis,
  analyseTotals: (draw) =>
    library.analyseTotals(library.fillTotals(catches(draw)), null, options(draw)),
  answerTables: async (draw) => {
    const { log, analysis, told } = await analysed(draw);
    return library.answerTables(log, analysis, words, told);
  },
  augment: async (draw) => {
    const { log, analysis, told } = await analysed(draw);
    return library.augment(log, analysis, told);
  },
  catchesToCsv: (draw) => library.catchesToCsv(catches(draw)),
  checkCatches: (draw) =>
    library.checkCatches({ name: draw.oneOf(["a.csv", "a.json", "a.xlsx"]), text: draw.text() }),
  checkCatchesTogether: (draw) =>
    library.checkCatchesTogether(
      draw.list(() => ({ name: "a.csv", text: library.catchesToCsv(catches(draw)) }), 2),
    ),
  checkSetup: (draw) => library.checkSetup(setup(draw)),
  checkSetupAgainst: async (draw) =>
    library.checkSetupAgainst(library.readSetup(setup(draw)), await logOf(draw)),
  checkSpreadLibrary: (draw) => library.checkSpreadLibrary(setup(draw)),
  convert: ({ number }) => library.convert(number(), "kg", "lb"),
  cost: ofMeter((meter, model, draw) =>
    library.cost(
      meter,
      library.costOptions(model.options, given({ areaHa: maybe(draw) }) as object),
    ),
  ),
  costOptions: (draw) =>
    library.costOptions(modelOf(draw).options, given({ prices: maybe(draw) }) as object),
  catchesNeeded: ofMeter((meter, model, draw) =>
    library.catchesNeeded(
      meter,
      library.catchesNeededOptions(
        model.options,
        given({ assurance: maybe(draw), turnsPerCatch: maybe(draw) }) as object,
      ),
    ),
  ),
  catchesNeededOptions: (draw) =>
    library.catchesNeededOptions(
      modelOf(draw).options,
      given({ assurance: maybe(draw), mostCatches: maybe(draw) }) as object,
    ),
  cautionSentence: async (draw) =>
    (await analysed(draw)).analysis.cautions.map((one) => library.cautionSentence(one, words)),
  decisionLines: async (draw) => {
    const { analysis } = await analysed(draw);
    return analysis.meters.map((one) => library.decisionLines(one, analysis, words));
  },
  delivery: ofMeter((meter, model) => library.delivery(meter, deliveryOptions(model))),
  drift: ofMeter((meter, model, draw) =>
    library.drift(meter, { ...model.options, shiftOfInterest: draw.chance() }),
  ),
  driveRatio: ({ number, likely }) => library.driveRatio(likely(), number(), likely()),
  explainingVariables: (draw) => {
    const model = modelOf(draw);
    return library.explainingVariables(
      model,
      library.explainingVariablesOptions(
        model.options,
        given({ newDensityKgPerM3: maybe(draw) }) as object,
      ),
    );
  },
  explainingVariablesOptions: (draw) =>
    library.explainingVariablesOptions(
      modelOf(draw).options,
      given({ newDensityKgPerM3: maybe(draw) }) as object,
    ),
  fieldCheck: ofMeter((meter, model, draw) =>
    library.fieldCheck(
      meter,
      library.fieldCheckOptions(model.options, given({ checks: maybe(draw) }) as object),
    ),
  ),
  fieldCheckOptions: (draw) =>
    library.fieldCheckOptions(modelOf(draw).options, given({ checks: maybe(draw) }) as object),
  fillTotals: (draw) => library.fillTotals(catches(draw)),
  fitModel: (draw) => modelOf(draw).options,
  fitModelFromTotals: (draw) =>
    library.fitModelFromTotals(library.fillTotals(catches(draw)), options(draw)).options,
  glance: async (draw) => library.glance((await analysed(draw)).analysis),
  gramsPerMetreOfRow: ({ number, likely }) => library.gramsPerMetreOfRow(number(), likely()),
  importCatches: (draw) =>
    library.importCatches([
      { name: "a.csv", text: draw.oneOf([draw.text(), library.catchesToCsv(catches(draw))]) },
    ]),
  kernelsPerKg: ({ number }) => library.kernelsPerKg(number()),
  leaveOut: async (draw) =>
    library.leaveOut(
      await logOf(draw),
      [{ bin: "1", product: "wheat", fill: 1, catch: draw.whole(5) }],
      draw.text(),
    ),
  libraryRecords: (draw) => library.libraryRecords(library.readSpreadLibrary(setup(draw))),
  makeCatch: (draw) =>
    library.makeCatch({
      bin: draw.text(),
      product: draw.text(),
      fill: draw.number(),
      catch: draw.number(),
      turns: draw.number(),
      netKg: draw.number(),
    }),
  massRateOfPlants: ({ number, likely, chance }) =>
    library.massRateOfPlants(likely(), number(), chance()),
  massRateOfSeeds: ({ number, likely }) => library.massRateOfSeeds(number(), likely()),
  mergeFillTotals: (draw) =>
    library.mergeFillTotals(library.fillTotals(catches(draw)), library.fillTotals(catches(draw))),
  meterSpeed: ({ number, likely }) => library.meterSpeed(likely(), number(), likely()),
  meterTable: async (draw) => library.meterTable(await logOf(draw), null, options(draw)),
  outlets: ofMeter((meter, model) => library.outlets(meter, library.outletsOptions(model.options))),
  outletsOptions: (draw) =>
    library.outletsOptions(modelOf(draw).options, given({ grades: maybe(draw) }) as object),
  outliers: ofMeter((meter, model) =>
    library.outliers(meter, library.outliersOptions(model.options)),
  ),
  outliersOptions: (draw) =>
    library.outliersOptions(modelOf(draw).options, given({ alpha: maybe(draw) }) as object),
  productComparison: (draw) => {
    const model = modelOf(draw);
    return library.productComparison(
      model,
      library.productComparisonOptions(model.options, given({ margin: maybe(draw) }) as object),
    );
  },
  productComparisonOptions: (draw) =>
    library.productComparisonOptions(
      modelOf(draw).options,
      given({ margin: maybe(draw) }) as object,
    ),
  rateOfTurns: ({ number, likely }) => library.rateOfTurns(number(), likely()),
  rateOverArea: ({ number, likely }) => library.rateOverArea(likely(), number()),
  readCatches: logOf,
  readCatchesTogether: (draw) =>
    library.readCatchesTogether(
      draw.list(() => ({ name: "a.csv", text: library.catchesToCsv(catches(draw)) }), 2),
    ),
  readProductClasses: (draw) => library.readProductClasses(setup(draw)),
  readSetup: (draw) => library.readSetup(setup(draw)),
  readSpreadLibrary: (draw) => library.readSpreadLibrary(setup(draw)),
  renderHtml: async (draw) => {
    const { analysis } = await analysed(draw);
    return library.renderHtml(library.reportDocument(analysis, meta, words), {
      drawings: new Map() as never,
    });
  },
  renderMarkdown: async (draw) =>
    library.renderMarkdown(library.reportDocument((await analysed(draw)).analysis, meta, words)),
  repeatability: ofMeter((meter, model) => library.repeatability(meter, model.options)),
  reportDocument: async (draw) =>
    library.reportDocument((await analysed(draw)).analysis, meta, words),
  resolveOptions: (draw) => library.resolveOptions(options(draw), anySetup(draw)?.() ?? null),
  rowsToCsv: (draw) => library.rowsToCsv(rows(draw)),
  rowsToLatex: (draw) => library.rowsToLatex(rows(draw)),
  rowsToMarkdown: (draw) => library.rowsToMarkdown(rows(draw)),
  setting: ofMeter((meter, model, draw) =>
    library.setting(
      meter,
      library.delivery(meter, deliveryOptions(model)),
      library.settingOptions(
        model.options,
        given({ widthM: maybe(draw), targetKgPerHa: maybe(draw) }) as object,
      ),
    ),
  ),
  settingOptions: (draw) =>
    library.settingOptions(
      modelOf(draw).options,
      given({ widthM: maybe(draw), slip: maybe(draw) }) as object,
    ),
  skipping: ofMeter((meter, model) =>
    library.skipping(meter, library.skippingOptions(model.options)),
  ),
  skippingOptions: (draw) =>
    library.skippingOptions(modelOf(draw).options, given({ bound: maybe(draw) }) as object),
  speedLinearity: ofMeter((meter, model) => library.speedLinearity(meter, model.options)),
  spreadLibrary: (draw) =>
    library.spreadLibrary([modelOf(draw)], {
      day: draw.oneOf(["2026-01-01", draw.text()]),
      by: "test",
      level: draw.chance(),
    }),
  spreadLibraryText: (draw) => library.spreadLibraryText(library.readSpreadLibrary(setup(draw))),
  tableFiles: async (draw) => {
    const { log, analysis, told } = await analysed(draw);
    const tables = library.tidyTables(log, analysis, told);
    return library.tableFiles(
      tables,
      { title: draw.text(), version: "1", sources: [draw.text()] },
      words,
      { formats: ["csv", "md"] } as never,
    );
  },
  tidy: async (draw) => library.tidy((await analysed(draw)).analysis),
  tidyTables: async (draw) => {
    const { log, analysis, told } = await analysed(draw);
    return library.tidyTables(log, analysis, told);
  },
  trialPlan: (draw) => library.trialPlan(library.trialPlanOptions(trial(draw))),
  trialPlanOptions: (draw) => library.trialPlanOptions(trial(draw)),
  turnsPerHectare: ({ number, likely }) => library.turnsPerHectare(likely(), number()),
  turnsPerHectareBy: (draw) => library.turnsPerHectareBy(library.readSetup(setup(draw))),
  uncertaintyBudget: ofMeter((meter, model) =>
    library.uncertaintyBudget(
      meter,
      library.delivery(meter, deliveryOptions(model)),
      library.uncertaintyBudgetOptions(model.options),
    ),
  ),
  uncertaintyBudgetOptions: (draw) =>
    library.uncertaintyBudgetOptions(
      modelOf(draw).options,
      given({ draws: maybe(draw) }) as object,
    ),
};

const meta = { title: null, setupSource: null, version: "0" } as const;
const rows = (draw: Draw) =>
  draw.list(() => ({ a: draw.oneOf([null, draw.text()]), b: draw.oneOf([null, draw.whole(9)]) }));
const trial = (draw: Draw) => ({
  products: draw.oneOf([["wheat", "rape"], draw.list(draw.text, 3)]),
  ...(given({
    level: maybe(draw),
    fills: draw.oneOf([undefined, draw.whole(6), draw.number()]),
    seed: maybe(draw),
  }) as object),
});

const charts: Calls = {
  acrossFillsChart: ofAnswers(
    ({ acrossFills: one }) => one && library.acrossFillsChart(one, words),
  ),
  catchesNeededChart: ofAnswers(
    ({ catchesNeeded: one, cost }) => one && library.catchesNeededChart(one, words, cost),
  ),
  chanceToReachChart: ofAnswers(
    ({ catchesNeeded: one }) => one && library.chanceToReachChart(one, words),
  ),
  consistencyChart: ofAnswers(
    ({ repeatability: one }) => one && library.consistencyChart(one, "fill" as never, words),
  ),
  costChart: ofAnswers(({ cost: one }) => one && library.costChart(one, words)),
  deliveryChart: ofAnswers(({ delivery: one }) => library.deliveryChart(one, words)),
  deliveryPerTurnChart: ofAnswers(({ delivery: one }) => library.deliveryPerTurnChart(one, words)),
  driftChart: ofAnswers(({ drift: one }) => one && library.driftChart(one, words)),
  explainingVariablesChart: async (draw) => {
    const { analysis } = await analysed(draw);
    return (
      analysis.products && library.explainingVariablesChart(analysis.products.explaining, words)
    );
  },
  fanChart: ofAnswers(
    ({ acrossFills: one, delivery }) => one && library.fanChart(one, words, delivery),
  ),
  fieldCheckChart: ofAnswers(({ fieldCheck: one }) => one && library.fieldCheckChart(one, words)),
  fleetDeliveryChart: ofFleet(library.fleetDeliveryChart),
  fleetFunnelChart: ofFleet((fleet, _, say) => library.fleetFunnelChart(fleet, say)),
  fleetSpreadChart: ofFleet((fleet, product, say) =>
    library.fleetSpreadChart(fleet, "scatter", product, say),
  ),
  influenceChart: ofAnswers(({ outliers: one }) => one && library.influenceChart(one, words)),
  noticingChart: ofAnswers(({ drift: one }) => one && library.noticingChart(one, words)),
  outletsChart: ofAnswers(({ outlets: one }) => one && library.outletsChart(one, words)),
  productContrastsChart: ofProducts(library.productContrastsChart),
  productEstimatesChart: ofProducts(library.productEstimatesChart),
  productStandingsChart: ofProducts(library.productStandingsChart),
  repeatabilityChart: ofAnswers(
    ({ repeatability: one }) => one && library.repeatabilityChart(one, words),
  ),
  residualsChart: ofAnswers(({ outliers: one }) => one && library.residualsChart(one, words)),
  settingChart: ofAnswers(({ setting: one }) => one && library.settingChart(one, words)),
  shortAndLongChart: ofAnswers(
    ({ acrossFills: one }) => one && library.shortAndLongChart(one, words),
  ),
  skippingChart: ofAnswers(({ skipping: one }) => one && library.skippingChart(one, words)),
  speedLinearityChart: ofAnswers(
    ({ speedLinearity: one }) => one && library.speedLinearityChart(one, words),
  ),
  uncertaintyBudgetChart: ofAnswers(
    ({ uncertaintyBudget: one }) => one && library.uncertaintyBudgetChart(one, words),
  ),
  varianceStaircaseChart: ofAnswers(
    ({ uncertaintyBudget: one }) => one && library.varianceStaircaseChart(one, words),
  ),
  restyled: ofAnswers(({ delivery: one }) =>
    library.restyled(library.deliveryChart(one, words), { theme: null, width: 300 }),
  ),
};

function ofProducts(chart: (result: library.ProductComparison, say: typeof words) => unknown) {
  return async (draw: Draw) => {
    const { analysis } = await analysed(draw);
    return analysis.products && chart(analysis.products.comparison, words);
  };
}

/** Many bins of one product, each anyhow. */
function ofFleet(
  chart: (fleet: library.Fleet, product: string, say: typeof words) => unknown,
): (draw: Draw) => unknown {
  return async (draw) => {
    const many = Array.from({ length: 12 }, (_, bin) =>
      catches(draw).map((one) => ({ ...one, bin: String(bin), product: "wheat" })),
    );
    const log = await library.readCatches({
      name: "catches.csv",
      text: library.catchesToCsv(many.flat()),
    });
    const { fleet } = library.analyse(log, null, options(draw));
    return fleet && chart(fleet, "wheat", words);
  };
}

const plain = ({ list, likely, number, oneOf }: Draw) =>
  ({
    turns: oneOf([20, likely(), number()]),
    netKg: list(() => oneOf([6.3, 6.4, 6.5, likely()]), 5),
  }) as never;
const oneCalls: Calls = Object.fromEntries(
  Object.entries(light)
    .filter(([name]) => name !== "history")
    .map(([name, ask]) => [
      name,
      (draw: Draw) =>
        name === "plan"
          ? light.plan(options(draw))
          : (ask as typeof light.enough)(plain(draw), {
              ...options(draw),
              ...draw.oneOf([{}, { history: light.history }]),
            }),
    ]),
);

const ofPool: Calls = {
  fillRecords: (draw) =>
    pool.fillRecords(draw.list(() => ({ bin: draw.text(), fill: draw.number() }), 2)),
  poolSql: (draw) => pool.poolSql("postgres", { name: draw.text(), columns: draw.list(draw.text) }),
  poolStatements: (draw) =>
    pool.poolStatements("duckdb", { name: "t", columns: ["turns", "net_kg", draw.text()] }),
};

/** They draw or write files and have tests of their own against faults, or are given nothing that could be wrong. */
const elsewhere = [
  ...[
    "renderSvg",
    "reportFiles",
    "poolTotals",
    "wordsFor",
    "wordsIn",
    "templateFiles",
    "themeOf",
    "history",
  ],
  ...["reportJsonSchema", "setupJsonSchema", "spreadLibraryJsonSchema"],
];

const functionsOf = (entry: object) =>
  Object.entries(entry)
    .filter(([name, value]) => typeof value === "function" && /^[a-z]/.test(name))
    .map(([name]) => name)
    .filter((name) => !elsewhere.includes(name));

describe("any input to a function of the library", () => {
  it("is tried of every one", () => {
    expect(Object.keys({ ...calls, ...charts }).toSorted()).toEqual(
      functionsOf(library).toSorted(),
    );
    expect(Object.keys(oneCalls).toSorted()).toEqual(functionsOf(light).toSorted());
    expect(Object.keys(ofPool).toSorted()).toEqual(functionsOf(pool).toSorted());
  });

  const all = Object.entries({ ...calls, ...charts, ...ofPool }).concat(
    Object.entries(oneCalls).map(([name, call]) => [`${name} in one call`, call]),
  );
  it.each(all)("%s answers or says what is wrong with it", async (_, call) => {
    await fc.assert(
      fc.asyncProperty(fc.gen(), async (g) => {
        expect(await wrongWith(() => call(drawing(g)))).toBeNull();
      }),
      { numRuns: 12, seed: 1, endOnFailure: true },
    );
  });
});
