import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { apparentDivision } from "../../src/data/apparent-division.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { aFill } from "../support/catches.ts";
import { demo } from "../support/demo.ts";
import { present } from "../support/reference.ts";

/** Of a file with these columns of masses; every row is another catch of one fill. */
async function readFrom(header: string, rows: readonly string[], separator = ",") {
  const columns = ["bin", "product", "fill", "catch", "turns", header].join(separator);
  const lines = rows.map((row, i) => ["1", "oats", 1, i + 1, 20, row].join(separator));
  return readCatches({ name: "catches.csv", text: [columns, ...lines].join("\n") });
}

async function stepOf(header: string, rows: readonly string[]): Promise<number | null> {
  return apparentDivision(await readFrom(header, rows))?.step ?? null;
}

describe("the step that weights end in", () => {
  // Each by hand: the digits that all weights share at their end.
  it.each([
    ["ends with the last place", "net_kg", ["6.01", "5.98", "6.07", "6.03"], 0.01],
    ["is 2, 5 or 10 of it", "net_kg", ["6.02", "5.98", "6.06", "6.04"], 0.02],
    ["5", "net_kg", ["6.05", "5.90", "6.15", "6.00", "6.10"], 0.05],
    ["10", "net_kg", ["6.10", "5.90", "6.20", "6.00", "6.50"], 0.1],
    ["is never another number", "net_kg", ["6.03", "6.06", "6.09", "6.00", "6.12"], 0.01],
    ["is told from whole numbers too", "net_g", ["6020", "5980", "6060", "6040"], 20],
    ["of which noughts may be many", "net_g", ["6050", "6000", "6100"], 50],
    ["is that of gross and tare", "gross_kg,tare_kg", ["6.75,0.45", "6.80,0.40"], 0.05],
    ["where the tare may be the finer", "gross_kg,tare_kg", ["6.75,0.43", "6.80,0.41"], 0.01],
    ["unless it is one bag", "gross_kg,tare_kg", ["6.75,0.432", "6.80,0.432", "6.65,0.432"], 0.05],
    ["or none at all", "gross_kg,tare_kg", ["6.75,0", "6.80,0", "6.65,0"], 0.05],
    ["of gross is not that of their differences", "gross_kg,tare_kg", ["6.01,0", "6.06,0"], 0.01],
    ["nor of gross and tare", "gross_kg,tare_kg", ["6.51,0.46", "6.56,0.41"], 0.01],
    ["of nets is that of their differences", "net_kg", ["6.32", "6.37", "6.22", "6.47"], 0.05],
    ["is at most 10 of the last place for few", "net_kg", ["6.00", "7.00", "6.00"], 0.1],
    ["however many for four", "net_kg", ["6.00", "6.50", "6.00", "6.50"], 0.5],
    ["but none that is more than a tenth of a weight", "net_kg", ["5", "10", "5.0", "10"], 0.5],
    ["nor finer than the last place for that", "net_kg", ["5", "7", "10", "5"], 1],
  ])("%s", async (_, header, rows, step) => {
    expect(await stepOf(header, rows)).toBe(step);
  });

  it.each([
    ["6.40", 0.05],
    ["6.42", 0.02],
    ["6.43", 0.01],
    ["6.4", 0.2],
    ["6.0", 0.5],
    ["6000", 50],
    ["6040", 20],
    ["13", 1],
  ])("of weights that are all %s is the coarsest that bears them", async (weight, step) => {
    expect(await stepOf("net_kg", [weight, weight, weight])).toBe(step);
  });

  it("is not read where all weights are alike to a thousandth of them: no meter repeats so well", async () => {
    for (const weight of ["6.018", "6.020", "12.43", "6043"])
      expect(await stepOf("net_kg", [weight, weight])).toBeNull();
    expect(await stepOf("net_kg", ["9.99", "9.99"])).toBe(0.01);
  });

  it("says what it was read from", async () => {
    const log = await readFrom("gross_lb,tare_lb", ["14.05,0.95", "14.20,0.95", "13.85,0.90"]);
    expect(apparentDivision(log)).toEqual({
      divisionKg: expect.closeTo(0.0226796185, 12),
      step: 0.05,
      unit: "lb",
      weights: 6,
      different: 5,
    });
  });

  it("is not read from one weight, from none, or from weights of more than six figures", async () => {
    expect(await stepOf("net_kg", ["6.40"])).toBeNull();
    expect(await stepOf("gross_kg,tare_kg", ["6.8333333,0.42", "6.8166667,0.44"])).toBeNull();
    expect(apparentDivision({ catches: [] })).toBeNull();
    expect(await stepOf("net_kg", ["6.0833333", "6.1166667", "6.1499999"])).toBeNull();
    expect(await stepOf("net_kg", ["6.0833333", "6.10", "6.15"])).toBe(0.05);
    expect(await stepOf("net_kg", ["6.020000", "6.040000", "5.980000", "6.060000"])).toBe(0.02);
  });

  it("comes from a comma as from a point", async () => {
    const rows = ["6.05", "5.90", "6.15"];
    const [point, comma] = await Promise.all([
      readFrom("net_kg", rows, ";"),
      readFrom(
        "net_kg",
        rows.map((row) => row.replace(".", ",")),
        ";",
      ),
    ]);
    expect(apparentDivision(comma)).toEqual(apparentDivision(point));
    expect(apparentDivision(comma)?.step).toBe(0.05);
  });

  it("comes from catches made in code by their shortest form in kg, whatever binary arithmetic left", () => {
    const catches = aFill([
      [20, 6.32 - 0.43],
      [20, 5.94],
      [20, 5.79],
    ]);
    expect(6.32 - 0.43).not.toBe(5.89);
    expect(apparentDivision({ catches })).toEqual({
      divisionKg: 0.05,
      step: 0.05,
      unit: "kg",
      weights: 3,
      different: 3,
    });
    const computed = aFill([
      [20, Math.PI],
      [20, Math.E],
    ]);
    expect(apparentDivision({ catches: computed })).toBeNull();
  });

  it("is that of the catches that count and name no division of their own", async () => {
    const header = "bin,product,fill,catch,turns,net_kg,division_kg,exclude,reason";
    const text = [
      header,
      "1,oats,1,1,20,6.05,,,",
      "1,oats,1,2,20,5.90,,,",
      "1,oats,1,3,20,6.15,,,",
      "1,oats,1,4,20,0.6011,,yes,slipped point",
      "1,oats,1,5,20,6.013,0.001,,",
    ].join("\n");
    const log = await readCatches({ name: "catches.csv", text });
    expect(apparentDivision(log)?.step).toBe(0.05);
    const all = log.catches.map((row) => ({ ...row, leftOut: null, divisionKg: null }));
    expect(apparentDivision({ ...log, catches: all })?.step).toBe(0.0001);
  });
});

describe("logs as people keep them", () => {
  it("with decimals as they come: 6.4, 6.35, 6.40 and 6", async () => {
    expect(await stepOf("net_kg", ["6.4", "6.35", "6.40", "6", "6.45"])).toBe(0.05);
  });

  it("with one row in pounds among kilograms: the kilograms speak", async () => {
    const log = await readFrom("net_kg,net_lb", ["6.02,", "5.98,", ",13.3", "6.06,", "6.04,"]);
    expect(apparentDivision(log)).toMatchObject({ step: 0.02, unit: "kg", weights: 4 });
  });

  it("with as many rows in either: the coarser step", async () => {
    const log = await readFrom("net_kg,net_lb", ["6.02,", ",13.3", ",13.1", "5.97,"]);
    expect(apparentDivision(log)).toMatchObject({ step: 0.2, unit: "lb" });
  });

  it("with gross and tare in some rows, and the net alone in others: the finer of both", async () => {
    const rows = ["6.75,0.45,", "6.80,0.40,", ",,6.30", ",,6.32", ",,6.38"];
    expect(await stepOf("gross_kg,tare_kg,net_kg", rows)).toBe(0.02);
    const alike = ["6.75,0.45,", "6.80,0.40,", ",,6.31", ",,6.31"];
    expect(await stepOf("gross_kg,tare_kg,net_kg", alike)).toBe(0.05);
  });

  it("with a gross but no tare beside the net", async () => {
    expect(await stepOf("gross_kg,net_kg", ["6.75,6.32", "6.80,6.37", "6.65,6.22"])).toBe(0.05);
  });
});

/** A scale's division by the last place its display shows, and weights in whole divisions. */
const weighed = fc.record({
  leading: fc.constantFrom(1, 2, 5),
  decimals: fc.integer({ min: 1, max: 3 }),
  // From ten divisions, below which nobody weighs, to a thousand, beyond which no meter repeats.
  counts: fc.array(fc.integer({ min: 10, max: 1000 }), { minLength: 2, maxLength: 12 }),
});

const written = (texts: readonly string[], kind: "net" | "gross") => ({
  catches: aFill(texts.map((text) => [20, Number(text)] as const)),
  written: texts.map((text, i) => ({
    row: i + 2,
    unit: "kg" as const,
    gross: null,
    tare: null,
    net: null,
    [kind]: text,
  })),
});
const texts = (counts: readonly number[], leading: number, decimals: number) =>
  counts.map((count) => ((count * leading) / 10 ** decimals).toFixed(decimals));

it.each(["season", "first-morning", "product-trial"] as const)(
  "the demo log %s ends in the steps of the scale that its setup names",
  async (name) => {
    const { log, setup } = await demo(name);
    expect(apparentDivision(log)?.divisionKg).toBe(setup.scale.divisionKg);
  },
);

describe("properties of the step", () => {
  it("is never below a division of which every weight is a multiple", () => {
    fc.assert(
      fc.property(weighed, fc.constantFrom("net", "gross"), (scale, kind) => {
        const { leading, decimals, counts } = scale;
        const found = apparentDivision(written(texts(counts, leading, decimals), kind));
        const division = leading / 10 ** decimals;
        expect(present(found).step).toBeGreaterThanOrEqual(division * (1 - 1e-9));
      }),
    );
  });

  it("nor of whole numbers that bear it a hundredfold", () => {
    const division = fc.constantFrom(1, 2, 5, 10, 20, 50);
    const counts = fc.array(fc.integer({ min: 100, max: 1000 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(division, counts, (step, many) => {
        const found = apparentDivision(
          written(
            many.map((count) => `${count * step}`),
            "net",
          ),
        );
        expect(present(found).step).toBeGreaterThanOrEqual(step);
      }),
    );
  });

  it("divides the differences of all weights", () => {
    fc.assert(
      fc.property(weighed, ({ leading, decimals, counts }) => {
        const found = present(apparentDivision(written(texts(counts, leading, decimals), "net")));
        const thousandths = Math.round(found.step * 1000);
        const [first = 0] = counts;
        for (const count of counts) {
          const apart = Math.round(((count - first) * leading * 1000) / 10 ** decimals);
          expect(Math.abs(apart % thousandths)).toBe(0);
        }
      }),
    );
  });

  it("moves with the decimal point, and not with the order of rows", () => {
    fc.assert(
      fc.property(weighed, ({ leading, decimals, counts }) => {
        const of = (some: readonly number[], places: number) =>
          present(apparentDivision(written(texts(some, leading, places), "net"))).step;
        const step = of(counts, decimals);
        expect(of(counts, decimals + 1) * 10).toBeCloseTo(step, 9);
        expect(of([...counts].reverse(), decimals)).toBe(step);
      }),
    );
  });

  it("is above a division of one last place no more often than N nets all end alike by chance", () => {
    const stream = randomStream(5);
    for (const many of [2, 4, 6]) {
      const runs = 2_000;
      const above = Array.from({ length: runs }, () => {
        const counts = Array.from({ length: many }, () => stream.integer(500, 700));
        return present(apparentDivision(written(texts(counts, 1, 2), "net"))).step;
      }).filter((step) => step > 0.011).length;
      // N − 1 differences that are all even, or all end in a nought or a five.
      expect(above / runs).toBeLessThan(2 ** (1 - many) + 5 ** (1 - many) + 0.03);
    }
  });
});

describe("weights with many figures", () => {
  it("are read up to six, and worked out by somebody beyond", async () => {
    const six = ["601.805", "603.115", "605.325", "604.445"];
    expect(await stepOf("net_kg", six)).toBe(0.01);
    expect(
      await stepOf(
        "net_kg",
        six.map((text) => `1${text}`),
      ),
    ).toBeNull();
  });
});
