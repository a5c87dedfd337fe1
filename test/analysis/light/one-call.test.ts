import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { planBeforeAnyCatch } from "../../../src/analysis/next-fill.ts";
import { checkText } from "../../../src/data/read-text.ts";
import { dataError } from "../../../src/errors/data-error.ts";
import { DataError, OptionError } from "../../../src/errors/errors.ts";
import {
  delivery,
  drift,
  enough,
  history,
  type OneCallOptions,
  outliers,
  type PlainCatches,
  plan,
  repeatability,
  skipping,
} from "../../../src/light.ts";
import { present } from "../../support/reference.ts";

/** The analysis of the same catches as text of a file. */
function fromFile({ turns, netKg, fill, bin, product }: PlainCatches, options: OneCallOptions) {
  const one = <T>(given: T | readonly T[], i: number) => (Array.isArray(given) ? given[i] : given);
  const named = fill !== undefined || bin !== undefined || product !== undefined;
  const made = new Map<string, number>();
  const lines = netKg.map((mass, i) => {
    const least = `${one(turns, i)},${mass}`;
    if (!named) return least;
    const place = [one(bin ?? "1", i), one(product ?? "–", i), one(fill ?? 1, i)].join();
    made.set(place, (made.get(place) ?? 0) + 1);
    return `${least},${place},${made.get(place)}`;
  });
  const header = named ? "turns,net_kg,bin,product,fill,catch" : "turns,net_kg";
  const log = checkText({ name: "catches", text: [header, ...lines].join("\n") });
  if (!log.ok) throw dataError("catches", log.issues);
  const { bin: asked, product: of, ...rest } = options;
  const { meters } = analyse(log.value, null, rest);
  return present(
    meters.find((one) => one.bin === (asked ?? one.bin) && one.product === (of ?? one.product)),
  );
}

/** A file's first row is its header. */
function withoutRows<T>(answer: T): unknown {
  return JSON.parse(JSON.stringify(answer, (name, value) => (name === "row" ? null : value)));
}

const mass = fc.integer({ min: 600, max: 700 }).map((tens) => tens / 100);
const turns = fc.constantFrom(20, 25, 30.5);
const catches = fc.integer({ min: 1, max: 12 }).chain((count) =>
  fc.record<PlainCatches>(
    {
      turns: fc.oneof(turns, fc.array(turns, { minLength: count, maxLength: count })),
      netKg: fc.array(mass, { minLength: count, maxLength: count }),
      fill: fc.oneof(
        fc.constant(2),
        fc.constant(Array.from({ length: count }, (_, i) => 1 + Math.floor(i / 3))),
      ),
      bin: fc.oneof(
        fc.constant("1"),
        fc.constant(Array.from({ length: count }, (_, i) => (i % 4 === 3 ? "3" : "1"))),
      ),
      product: fc.constant("oats"),
    },
    { requiredKeys: ["turns", "netKg"] },
  ),
);
const options = fc.record<OneCallOptions>(
  {
    tolerance: fc.constantFrom(0.01, 0.03, 0.05),
    level: fc.constantFrom(0.9, 0.95),
    scaleDivisionKg: fc.constantFrom(null, 0.02),
  },
  { requiredKeys: [] },
);

describe("a question in one call", () => {
  it("has the answers of a file of the same catches, to the digit", () => {
    fc.assert(
      fc.property(catches, options, (given, chosen) => {
        const asked = Array.isArray(given.bin) ? { ...chosen, bin: "1" } : chosen;
        const truth = fromFile(given, asked);
        const found = enough(given, { ...asked, history });
        // What is worth knowing besides, an analysis finds in more questions.
        const { also, ...decision } = present(found.decided.decision ?? truth.decision);
        const { also: alsoFound, ...decisionOfFile } = present(truth.decision);
        expect(decision).toEqual(decisionOfFile);
        expect(alsoFound).toEqual(expect.arrayContaining([...also]));
        expect(withoutRows(found.decided.catchesNeeded)).toEqual(withoutRows(truth.catchesNeeded));
        expect(withoutRows(delivery(given, asked))).toEqual(withoutRows(truth.delivery));
        expect(withoutRows(outliers(given, asked))).toEqual(withoutRows(truth.outliers));
        expect(withoutRows(drift(given, asked))).toEqual(withoutRows(truth.drift));
        expect(withoutRows(repeatability(given, asked))).toEqual(withoutRows(truth.repeatability));
        expect(withoutRows(skipping(given, asked))).toEqual(withoutRows(truth.skipping));
        expect(found).toMatchObject({
          enough: truth.decision?.action === "set",
          more: truth.decision?.catches?.further ?? 0,
          kgPerTurn: truth.delivery.estimate.value,
          halfWidth: truth.delivery.halfWidth,
        });
      }),
      { numRuns: 25, seed: 20260411 },
    );
  });

  it("needs no history for catches of one fill, and has the same answers, to the digit", () => {
    fc.assert(
      fc.property(catches, options, ({ fill: _, ...given }, chosen) => {
        const asked = Array.isArray(given.bin) ? { ...chosen, bin: given.bin[0] } : chosen;
        const { decided } = enough(given, asked);
        expect(decided).toEqual(enough(given, { ...asked, history }).decided);
        const truth = fromFile(given, asked);
        const names = ["setting", "drift", "fieldCheck", "delivery", "outliers"] as const;
        for (const name of names)
          expect(withoutRows(decided[name])).toEqual(withoutRows(truth[name]));
      }),
      { numRuns: 25, seed: 20260411 },
    );
  });

  it("plans as the command does before any catch", () => {
    expect(plan({ tolerance: 0.02 })).toEqual(planBeforeAnyCatch(null, { tolerance: 0.02 }));
    expect(plan().options.tolerance).toBe(0.05);
  });

  it("leaves what it is given as it is", () => {
    const given = Object.freeze({ turns: 20, netKg: Object.freeze([6.42, 6.51]), fill: 3 });
    expect(enough(given).decided.delivery.fill).toBe(3);
  });
});

describe("what cannot be meant is refused:", () => {
  const of = (given: object, chosen: object = {}) => {
    try {
      enough(given as PlainCatches, chosen);
    } catch (error) {
      return error;
    }
    return null;
  };

  it.each([
    ["a mass below nothing", { turns: 20, netKg: [6.4, -1] }, { row: 2, column: "net_kg" }],
    ["a mass that is no number", { turns: 20, netKg: [6.4, Number.NaN] }, { row: 2 }],
    ["no turns", { turns: 0, netKg: [6.4] }, { row: 1, column: "turns" }],
    ["half a fill", { turns: 20, netKg: [6.4], fill: 1.5 }, { row: 1, column: "fill" }],
    ["no catch at all", { turns: 20, netKg: [] }, {}],
  ])("%s", (_, given, issue) => {
    const error = of(given);
    expect(error).toBeInstanceOf(DataError);
    expect((error as DataError).issues[0]).toMatchObject(issue);
  });

  it.each([
    ["a name nobody knows", { turns: 20, netkg: [6.4] }, {}, "netkg"],
    ["lists of two lengths", { turns: [20], netKg: [6.4, 6.5] }, {}, "turns"],
    ["a mass that is no list", { turns: 20, netKg: 6.4 }, {}, "netKg"],
    ["an unknown option", { turns: 20, netKg: [6.4] }, { tolerence: 0.03 }, "tolerence"],
    ["a tolerance in percent", { turns: 20, netKg: [6.4] }, { tolerance: 3 }, "tolerance"],
    [
      "several fills without a history",
      { turns: 20, netKg: [6.4, 6.5], fill: [1, 2] },
      {},
      "history",
    ],
    ["two bins and none named", { turns: 20, netKg: [6.4, 6.5], bin: ["a", "b"] }, {}, "bin"],
    ["a bin that was not caught", { turns: 20, netKg: [6.4] }, { bin: "b" }, "bin"],
    [
      "two products",
      { turns: 20, netKg: [6.4, 6.5], product: ["a", "b"], fill: [1, 2] },
      { history },
      "product",
    ],
  ])("%s", (_, given, chosen, option) => {
    const error = of(given, chosen);
    expect(error).toBeInstanceOf(OptionError);
    expect((error as OptionError).option).toBe(option);
  });
});
