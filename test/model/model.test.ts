import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { usualBorrowing } from "../../src/model/lenders.ts";
import { newestFill } from "../../src/model/meters.ts";
import {
  estimateOf,
  fitModel,
  type MeterModel,
  type Model,
  type ModelChoices,
  type ModelOptions,
} from "../../src/model/model.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { digits, present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const options: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const nobody: ModelChoices = { borrowing: { ...usualBorrowing, borrow: "none" } };

/** Whether no catch stands out, so that who lends to whom decides about no catch. */
function isClean({ meters }: Model): boolean {
  return meters.every(
    (meter) =>
      meter.fills.every(({ notLent }) => notLent.length === 0) &&
      meter.screening.findings.every(
        ({ inFill, setAside }) => inFill.length === 0 && setAside.length === 0,
      ) &&
      estimateOf(meter, newestFill(meter), options).disagree === null,
  );
}

/** Logs of a few bins with a few fills of a few clean catches. */
const logs = fc
  .record({ seed: fc.integer({ min: 1, max: 50_000 }), bins: fc.integer({ min: 2, max: 4 }) })
  .map(({ seed, bins }): readonly (readonly Catch[])[] => {
    const random = randomStream(seed);
    const upTo = (most: number) => 1 + Math.floor(random.uniform() * most);
    return Array.from({ length: bins }, (_, i) =>
      inventedFills(
        {
          fills: upTo(6),
          catches: upTo(4),
          spread: 0.02,
          scatter: 0.015,
          delivery: 0.1 + 0.1 * i,
          bin: String(i + 1),
        },
        random,
      ),
    );
  })
  .filter((bins) =>
    [
      fitModel(bins.flat(), options),
      fitModel(bins.flat(), options, nobody),
      ...bins.map((own) => fitModel(own, options)),
    ].every(isClean),
  );

/** All that a meter says which is relative to what it delivers. */
function relativeFigures(
  meter: MeterModel,
  given: ModelOptions = options,
): readonly (number | null)[] {
  const { estimate, halfWidth, byItself, ifTypical, scatter } = estimateOf(
    meter,
    newestFill(meter),
    given,
  );
  const { across, history, constantMass } = meter;
  const upTo = ({ value, interval }: typeof across.nextFill) =>
    interval?.upper == null ? null : interval.upper / value;
  return [
    estimate.df,
    halfWidth,
    byItself?.halfWidth ?? null,
    ifTypical?.halfWidth ?? null,
    scatter.df,
    across.spread.df,
    across.spread.relative,
    upTo(across.nextFill),
    upTo(across.mean),
    across.byItself?.halfWidth ?? null,
    across.ifTypical?.halfWidth ?? null,
    constantMass?.pValue ?? null,
    ...history.steps.flatMap(({ pValue, evidence }) => [pValue, evidence]),
  ];
}

/** The same figures, to what adding up in another order leaves of them. */
function expectAlike(found: readonly (number | null)[], wanted: readonly (number | null)[]): void {
  expect(found.map((value) => value === null)).toEqual(wanted.map((value) => value === null));
  for (const [i, value] of found.entries())
    if (value !== null) expect(digits(value, present(wanted[i]))).toBeGreaterThan(8);
}

describe("bins that lend each other their spreads", () => {
  it("say the same, relative to what they deliver, in any unit of mass", () => {
    fc.assert(
      fc.property(logs, fc.constantFrom(2.2046226, 0.001, 1000), (bins, factor) => {
        const heavier = bins.flat().map((row) => ({ ...row, netKg: factor * row.netKg }));
        const scaled = { ...options, scaleDivisionKg: 0.02 * factor };
        const [plain, other] = [fitModel(bins.flat(), options), fitModel(heavier, scaled)];
        for (const [i, meter] of plain.meters.entries())
          expectAlike(relativeFigures(present(other.meters[i]), scaled), relativeFigures(meter));
      }),
      { numRuns: 25 },
    );
  });

  it("say nothing of what another delivers: where one gives twice as much the others say the same", () => {
    const unread = { ...options, scaleDivisionKg: null };
    fc.assert(
      fc.property(logs, ([first = [], ...rest]) => {
        const twice = first.map((row) => ({ ...row, netKg: 2 * row.netKg }));
        const [plain, other] = [first, twice].map((own) =>
          fitModel([...own, ...rest.flat()], unread),
        );
        for (const [i, meter] of present(plain).meters.slice(1).entries()) {
          const same = present(present(other).meters[i + 1]);
          expectAlike(relativeFigures(same, unread), relativeFigures(meter, unread));
          expect(same.across.mean.value).toBe(meter.across.mean.value);
        }
      }),
      { numRuns: 25 },
    );
  });

  it("say the same in whatever order the log names them", () => {
    fc.assert(
      fc.property(logs, (bins) => {
        const [there, back] = [bins, bins.toReversed()].map((order) =>
          fitModel(order.flat(), options),
        );
        for (const meter of present(there).meters) {
          const same = present(present(back).meters.find(({ bin }) => bin === meter.bin));
          expectAlike(relativeFigures(same), relativeFigures(meter));
          expect(same.history.status).toBe(meter.history.status);
        }
      }),
      { numRuns: 25 },
    );
  });

  it("say, where one is alone, what it says when nobody is to lend", () => {
    fc.assert(
      fc.property(logs, (bins) => {
        const apart = fitModel(bins.flat(), options, nobody);
        for (const [i, own] of bins.entries()) {
          const alone = present(fitModel(own, options).meters[0]);
          const among = present(apart.meters[i]);
          expect(relativeFigures(among)).toEqual(relativeFigures(alone));
          expect(among.across).toEqual(alone.across);
          expect(among.spreadVote).toBeNull();
          expect(alone.spreadVote).toBeNull();
        }
      }),
      { numRuns: 25 },
    );
  });

  it("lend from a library what they would lend from the log", () => {
    fc.assert(
      fc.property(logs, ([own = [], ...others]) => {
        const together = fitModel([...own, ...others.flat()], options);
        const library = together.meters.slice(1).map(({ record }) => record);
        const choices = { borrowing: { ...usualBorrowing, library } };
        const alone = present(fitModel(own, options, choices).meters[0]);
        expectAlike(relativeFigures(alone), relativeFigures(present(together.meters[0])));
      }),
      { numRuns: 25 },
    );
  });

  it("say beside it what each says by itself: the line when nobody is to lend", () => {
    fc.assert(
      fc.property(logs, (bins) => {
        const [lent, apart] = [
          fitModel(bins.flat(), options),
          fitModel(bins.flat(), options, nobody),
        ];
        for (const [i, meter] of lent.meters.entries()) {
          const alone = present(apart.meters[i]);
          const estimates = [meter, alone].map((one) => estimateOf(one, newestFill(one), options));
          const { byItself } = present(estimates[0]);
          if (byItself !== null) expect(byItself.halfWidth).toBe(present(estimates[1]).halfWidth);
          if (meter.history.stretches.length === 1 && alone.history.stretches.length === 1)
            expect(meter.across.byItself?.nextFill ?? alone.across.nextFill).toEqual(
              alone.across.nextFill,
            );
        }
      }),
      { numRuns: 25 },
    );
  });
});
