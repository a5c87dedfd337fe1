import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import { fitModel } from "../../../src/model/model.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { splittingColumns } from "../../../src/questions/drift/splitting-columns.ts";
import { drift } from "../../../src/questions/drift.ts";
import { defaults } from "../../../src/results/defaults.ts";
import { aCatch } from "../../support/catches.ts";
import { digits, present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";
import { evalR } from "../../support/webr.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.001 };
const deliveries = [0.4, 0.412, 0.398, 0.414, 0.401, 0.411, 0.397, 0.413];
const turnabout = ["A", "B", "A", "B", "A", "B", "A", "B"];
const inTurn = ["A", "A", "A", "A", "B", "B", "B", "B"];

interface Noted {
  readonly operator?: readonly string[];
  readonly scale?: readonly string[];
  readonly batch?: readonly string[];
}

/** A pair of catches a fill, so that the fill's delivery is what the list says, with what was noted of each fill. */
function logOf(noted: Noted, of: readonly number[] = deliveries): readonly Catch[] {
  return of.flatMap((delivery, f) =>
    [0.99, 1.01].map((part, c) => {
      const { scale, batch } = noted;
      return aCatch({
        fill: f + 1,
        catch: c + 1,
        turns: 20,
        netKg: 20 * delivery * part,
        operator: noted.operator?.[f] ?? null,
        extra: {
          ...(scale === undefined ? {} : { scale: scale[f] ?? "" }),
          ...(batch === undefined ? {} : { batch: batch[f] ?? "" }),
        },
      });
    }),
  );
}

function found(catches: readonly Catch[], meters = 1) {
  const { fills, history } = present(fitModel(catches, options).meters[0]);
  return splittingColumns(fills, history, meters);
}

describe("a column that parts the fills of a meter", () => {
  it("is told with the p of R's analysis of variance", async () => {
    const [split] = found(logOf({ operator: turnabout }));
    expect(split).toMatchObject({
      columns: ["operator"],
      low: "A",
      high: "B",
      explainsSince: null,
    });
    expect(present(split).difference).toBeCloseTo(0.4125 / 0.399 - 1, 12);
    const [p] = await evalR("anova(lm(y ~ g))[['Pr(>F)']][1]", {
      y: deliveries,
      g: turnabout.map((name) => (name === "A" ? 0 : 1)),
    });
    expect(digits(present(split).pValue, present(p))).toBeGreaterThan(8);
  });

  it("is any column of the person's own, with the p that Holm leaves it among several", async () => {
    const batch = ["x", "x", "y", "y", "x", "x", "y", "y"];
    const [split, ...others] = found(logOf({ scale: turnabout, batch }));
    expect(others).toEqual([]);
    const [p] = await evalR(
      "p <- c(anova(lm(y ~ s))[['Pr(>F)']][1], anova(lm(y ~ b))[['Pr(>F)']][1]); p.adjust(p, 'holm')[1]",
      {
        y: deliveries,
        s: turnabout.map((name) => (name === "A" ? 0 : 1)),
        b: batch.map((name) => (name === "x" ? 0 : 1)),
      },
    );
    expect(split).toMatchObject({ columns: ["scale"] });
    expect(digits(present(split).pValue, present(p))).toBeGreaterThan(8);
  });

  it("is judged with all meters of the log in mind", () => {
    const [alone] = found(logOf({ operator: turnabout }));
    const [among] = found(logOf({ operator: turnabout }), 5);
    expect(present(among).pValue).toBeCloseTo(5 * present(alone).pValue, 12);
  });

  it("stands with others that part the fills in the same way, as one", () => {
    const scale = turnabout.map((name) => (name === "A" ? "old" : "new"));
    const splits = found(logOf({ operator: turnabout, scale }));
    expect(splits).toMatchObject([{ columns: ["operator", "scale"], low: "A", high: "B" }]);
  });

  it("may have three names", () => {
    const scale = ["a", "b", "c", "a", "b", "c"];
    const of = [0.4, 0.41, 0.42, 0.401, 0.411, 0.421];
    expect(found(logOf({ scale }, of))).toMatchObject([{ low: "a", high: "c" }]);
    // Those of b and c overlap, those of a lie apart.
    expect(found(logOf({ scale }, [0.4, 0.41, 0.412, 0.401, 0.411, 0.4105]))).toEqual([]);
  });

  it("explains a change that was found where the column changed", () => {
    const of = [0.4, 0.401, 0.399, 0.4, 0.42, 0.421, 0.419, 0.42];
    expect(found(logOf({ operator: inTurn }, of))).toMatchObject([{ explainsSince: 5 }]);
    // Two fills of the second name came before: the meter moved without it.
    const early = ["A", "A", "B", "B", "B", "B", "B", "B"];
    expect(found(logOf({ operator: early }, of))).toEqual([]);
  });

  it("is passed over where names overlap, stand for one fill, change within fills, or are too many", () => {
    const mixed = [0.4, 0.412, 0.398, 0.414, 0.4125, 0.411, 0.397, 0.413];
    expect(found(logOf({ operator: turnabout }, mixed))).toEqual([]);
    expect(found(logOf({ operator: ["A", "A", "A", "A", "A", "A", "A", "B"] }))).toEqual([]);
    const within = logOf({}).map((row) => ({ ...row, operator: row.catch === 1 ? "A" : "B" }));
    expect(found(within)).toEqual([]);
    const lots = ["1", "2", "3", "4", "5"].flatMap((lot) => [lot, lot]);
    const rising = lots.map((_, i) => 0.4 + 0.01 * Math.floor(i / 2) + 0.0001 * (i % 2));
    expect(found(logOf({ batch: lots }, rising))).toEqual([]);
  });

  it("passes over fills without a name, and cannot judge names whose fills agree exactly", () => {
    const later = ["", "", "", "", "A", "B", "A", "B"];
    expect(found(logOf({ scale: later }))).toEqual([]);
    const exact = turnabout.map((name) => (name === "A" ? 0.4 : 0.41));
    expect(found(logOf({ operator: turnabout }, exact))).toEqual([]);
  });
});

describe("the caution on it", () => {
  const said = (catches: readonly Catch[]) => {
    const { meters } = fitModel(catches, options);
    const asked = { ...options, shiftOfInterest: defaults.shiftOfInterest };
    return drift(present(meters[0]), asked, meters).cautions;
  };

  it("comes with whether the meter has moved", () => {
    expect(said(logOf({ operator: turnabout }))).toContainEqual(
      expect.objectContaining({
        code: "column-splits-fills",
        severity: "doubt",
        asks: "to-know",
        where: { bin: "1", product: "wheat", fill: null, catches: [] },
      }),
    );
  });

  it("comes in at most 1 of 100 clean logs of three meters that note two columns", () => {
    const stream = randomStream(20_261);
    const logs = 1500;
    const told = Array.from({ length: logs }, () => {
      const fills = ["1", "2", "3"].flatMap((bin) => {
        const noted = Array.from({ length: 8 }, () => ({
          operator: stream.uniform() < 0.5 ? "A" : "B",
          scale: stream.uniform() < 0.5 ? "old" : "new",
        }));
        return inventedFills(
          { fills: 8, catches: 2, spread: 0.02, scatter: 0.01, bin },
          stream,
        ).map((row) => {
          const { operator, scale } = present(noted[row.fill - 1]);
          return { ...row, operator, extra: { scale } };
        });
      });
      const { meters } = fitModel(fills, options);
      return meters.some(
        (meter) => splittingColumns(meter.fills, meter.history, meters.length).length > 0,
      );
    }).filter(Boolean).length;
    // An exact p at the limit would tell of 15; the standard error of such a count is 4.
    expect(told / logs).toBeLessThanOrEqual(0.01 + 2 * Math.sqrt(0.01 / logs));
    expect(told).toBeGreaterThan(0);
  });
});
