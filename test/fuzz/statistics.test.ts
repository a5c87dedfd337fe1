import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as distributions from "../../src/distributions.ts";
import * as statistics from "../../src/statistics.ts";
import { type Draw, drawing, wrongWith } from "../support/any-input.ts";

type Calls = Readonly<Record<string, (draw: Draw) => unknown>>;

const values = ({ list, likely }: Draw) => list(likely, 12);
const tables = (draw: Draw) => draw.list(() => values(draw), 5);
const level = ({ chance }: Draw) => chance();
const points = ({ list, likely }: Draw) => list(() => ({ x: likely(), y: likely() }), 12);
const variances = ({ list, likely }: Draw) => list(() => ({ variance: likely(), df: likely() }), 6);
const variance = ({ likely }: Draw) => ({ variance: likely(), df: likely() });
const design = ({ chance, oneOf, whole }: Draw): statistics.GroupDesign => ({
  level: chance(),
  margin: oneOf([null, chance()]),
  scale: oneOf(["as measured", "log"] as const),
  reference: oneOf([null, whole(4)]),
  spread: oneOf(["common", "separate"] as const),
});
const law = ({ oneOf }: Draw) => oneOf(["constant", "proportional", "squared"] as const);
const upTo =
  (count: number) =>
  ({ number }: Draw) =>
    Array.from({ length: count }, number);

const ofStatistics: Calls = {
  bartlettTest: ({ list, likely }) =>
    statistics.bartlettTest(list(() => ({ sumOfSquares: likely(), df: likely() }))),
  benjaminiHochberg: ({ list, chance }) => statistics.benjaminiHochberg(list(chance)),
  blockAnova: (draw) => statistics.blockAnova(tables(draw)),
  brownForsythe: (draw) => statistics.brownForsythe(tables(draw)),
  changePoint: (draw) => statistics.changePoint(values(draw)),
  changePointInterval: (draw) => {
    const given = values(draw);
    const found = statistics.changePoint(given);
    return found === null ? null : statistics.changePointInterval(given, found, level(draw));
  },
  coefficientOfVariation: (draw) => statistics.coefficientOfVariation(values(draw), level(draw)),
  compareBlocks: (draw) => {
    const width = draw.whole(4);
    const row = () =>
      Array.from({ length: width }, () => draw.oneOf([null, draw.likely(), draw.likely()]));
    return statistics.compareBlocks(draw.list(row, 6), design(draw));
  },
  compareGroups: (draw) => statistics.compareGroups(tables(draw), design(draw)),
  cusumChart: (draw) =>
    statistics.cusumChart(values(draw), {
      target: draw.likely(),
      allowance: draw.likely(),
      decision: draw.likely(),
    }),
  detectableEffect: ({ likely, chance }) =>
    statistics.detectableEffect(likely(), chance(), chance()),
  ewmaChart: (draw) =>
    statistics.ewmaChart(values(draw), {
      target: draw.likely(),
      standardDeviation: draw.likely(),
      weight: draw.chance(),
      width: draw.likely(),
    }),
  fitRandomEffects: ({ list, likely, whole }) =>
    statistics.fitRandomEffects(
      list(() => ({ estimate: likely(), variance: likely(), df: whole(9) }) as never),
    ),
  fitThroughOrigin: (draw) => statistics.fitThroughOrigin(points(draw), law(draw)),
  generalizedEsd: (draw) => statistics.generalizedEsd(values(draw), draw.whole(5), level(draw)),
  grubbsTest: (draw) =>
    statistics.grubbsTest(
      values(draw),
      draw.oneOf(["two-sided", "largest", "smallest"] as const),
      level(draw),
    ),
  holm: ({ list, chance }) => statistics.holm(list(chance)),
  howeToleranceFactor: ({ likely, chance }) =>
    statistics.howeToleranceFactor(
      { n: likely(), df: likely() },
      { content: chance(), confidence: chance() },
    ),
  individualsChart: (draw) => statistics.individualsChart(values(draw), draw.likely()),
  inverseVarianceMean: ({ list, likely }) =>
    statistics.inverseVarianceMean(
      list(() => ({ value: likely(), standardUncertainty: likely() }) as never),
    ),
  lackOfFit: (draw) => statistics.lackOfFit(statistics.fitThroughOrigin(points(draw), law(draw))),
  lineAt: (draw) =>
    statistics.lineAt(statistics.weightedLine(values(draw), values(draw)), draw.likely()),
  mannKendall: (draw) => statistics.mannKendall(values(draw)),
  mean: (draw) => statistics.mean(values(draw)),
  median: (draw) => statistics.median(values(draw)),
  normalisedError: ({ likely }) =>
    statistics.normalisedError(
      { value: likely(), expanded: likely() },
      { value: likely(), expanded: likely() },
    ),
  oneWayAnova: (draw) => statistics.oneWayAnova(tables(draw)),
  pooledSlope: (draw) =>
    statistics.pooledSlope(
      draw.list(() => {
        const length = draw.whole(6);
        const some = () => Array.from({ length }, draw.likely);
        return { x: some(), y: some(), weights: some() };
      }, 4),
    ),
  predict: (draw) => {
    const [first, second, y] = regressed(draw);
    const rows = first.map((x, i) => [x, second[i] ?? 0]);
    return statistics.predict(statistics.regression(["a", "b"], rows, y), [
      draw.likely(),
      draw.likely(),
    ]);
  },
  propagateUncertainty: (draw) =>
    statistics.propagateUncertainty(
      ([a = 0, b = 1]) => a / b,
      [0, 1].map((i) => ({
        name: String(i),
        value: draw.likely(),
        standardUncertainty: draw.likely(),
        law: draw.oneOf(["normal", "rectangular", "t"] as const),
        df: draw.oneOf([null, draw.likely()]),
      })) as never,
      level(draw),
    ),
  regression: (draw) => {
    const [first, second, y] = regressed(draw);
    return statistics.regression(
      ["a", "b"],
      first.map((x, i) => [x, second[i] ?? 0]),
      y,
      level(draw),
    );
  },
  sampleOf: (draw) => statistics.sampleOf(values(draw)),
  sampleStandardDeviation: (draw) => statistics.sampleStandardDeviation(values(draw)),
  tTestPower: ({ number, likely }) => statistics.tTestPower(number(), likely(), number()),
  theilSen: (draw) => {
    const [x, y] = regressed(draw);
    return statistics.theilSen(x, y);
  },
  trendTest: (draw) => statistics.trendTest(values(draw)),
  typicalDeviation: (draw) =>
    statistics.typicalDeviation(variances(draw), draw.likely(), level(draw)),
  vangelInterval: (draw) => statistics.vangelInterval(draw.likely(), draw.likely(), level(draw)),
  varianceHeterogeneity: (draw) =>
    statistics.varianceHeterogeneity(
      draw.list(() => variances(draw), 4),
      level(draw),
    ),
  varianceRatioTest: (draw) =>
    statistics.varianceRatioTest(variance(draw), variance(draw), level(draw)),
  weightedLine: (draw) => {
    const [x, y, weights] = regressed(draw);
    return statistics.weightedLine(x, y, draw.oneOf([undefined, weights]));
  },
  welchOneWay: ({ list, likely, whole }) =>
    statistics.welchOneWay(list(() => ({ n: whole(9), mean: likely(), variance: likely() }), 5)),
  welchSatterthwaite: ({ list, likely, oneOf }) =>
    statistics.welchSatterthwaite(
      list(() => ({ contribution: likely(), df: oneOf([null, likely()]) })),
    ),
};

/** Three lists of one length. */
function regressed({ whole, likely }: Draw): readonly [number[], number[], number[]] {
  const length = whole(9);
  const some = () => Array.from({ length }, likely);
  return [some(), some(), some()];
}

/** Of Dunnett's, the loadings of the contrasts; of all others plain numbers, as hard as there are. */
const ofDistributions: Calls = Object.fromEntries(
  Object.entries(distributions).map(([name, routine]) => [
    name,
    (draw: Draw) => {
      const given = upTo(3)(draw).map((any) => draw.oneOf([any, draw.likely(), draw.chance()]));
      const [first = 0, second = 0, third = 0] = given;
      return name.startsWith("dunnett")
        ? (routine as typeof distributions.dunnettQuantile)(first, draw.list(draw.chance, 4), third)
        : (routine as typeof distributions.fQuantile)(first, second, third);
    },
  ]),
);

const isFunction = ([, value]: readonly [string, unknown]) => typeof value === "function";

describe("any input to a routine of the statistics", () => {
  it("is tried of every one", () => {
    const names = Object.entries(statistics)
      .filter(isFunction)
      .map(([name]) => name);
    expect(Object.keys(ofStatistics).toSorted()).toEqual(names.toSorted());
  });

  it.each(Object.entries({ ...ofStatistics, ...ofDistributions }))(
    "%s answers or says what is wrong with it",
    async (_, call) => {
      await fc.assert(
        fc.asyncProperty(fc.gen(), async (g) => {
          expect(await wrongWith(() => call(drawing(g)))).toBeNull();
        }),
        { numRuns: 150, seed: 1, endOnFailure: true },
      );
    },
  );
});
