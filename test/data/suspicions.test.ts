import { describe, expect, it } from "vitest";
import { suspicions } from "../../src/data/suspicions.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { csv, logOf } from "../support/catch-files.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const header = "bin,product,fill,catch,turns,net_kg,gross_kg,tare_kg,outlet,exclude,reason";

async function cautionsOf(...rows: readonly string[]) {
  return (await logOf(csv(header, ...rows))).cautions;
}

async function codesOf(...rows: readonly string[]) {
  return (await cautionsOf(...rows)).map(({ code }) => code);
}

/** Rows of one bin's catches from fill, turns and net mass. */
function rows(...catches: readonly (readonly [fill: number, turns: number, net: number])[]) {
  return catches.map(([fill, turns, net], index) => `1,wheat,${fill},${index + 1},${turns},${net}`);
}

describe("ordinary catches", () => {
  it("raise no suspicion", async () => {
    expect(await codesOf(...rows([1, 20, 5.89], [1, 40, 11.8], [2, 20, 6.1]))).toEqual([]);
  });

  it("raise none where a single catch is all there is", async () => {
    expect(await codesOf(...rows([1, 20, 5.89]))).toEqual([]);
  });
});

describe("clean logs", () => {
  it("are asked about in one of a hundred at most, whatever their size and scale", () => {
    const stream = randomStream(20_260_403);
    const steps = [0.005, 0.01, 0.02, 0.05, 0.1];
    const found = Array.from({ length: 400 }, (_, i) => {
      const step = steps[i % steps.length] ?? 0.01;
      const plan = { fills: 1 + (i % 9), catches: 1 + (i % 6), spread: 0.03, scatter: 0.02 };
      const names = ["front", "rear", "middle", "seed 1", "seed 2"].slice(0, 1 + (i % 5));
      const catches = names.flatMap((bin) =>
        inventedFills({ ...plan, bin, delivery: 0.3 * (1 + 0.1 * stream.normal()) }, stream),
      );
      return suspicions(
        catches.map((row) => {
          const turns = i % 2 === 0 && row.catch % 2 === 0 ? 40 : 20;
          const netKg = (row.netKg * turns) / 20;
          return { ...row, turns, netKg: Number((Math.round(netKg / step) * step).toFixed(3)) };
        }),
        "kg",
      ).filter(({ severity }) => severity !== "note");
    }).filter((one) => one.length > 0);
    expect(found.length).toBeLessThanOrEqual(4);
  });
});

describe("a catch far from its fellows", () => {
  it("is named with how many times the median of its fill it delivers", async () => {
    const found = await cautionsOf(...rows([1, 20, 6], [1, 40, 12], [1, 20, 60], [2, 30, 9]));
    expect(found).toEqual([
      {
        code: "catch-far-from-fellows",
        severity: "serious",
        asks: "look-first",
        where: { bin: "1", product: "wheat", fill: 1, catches: [3] },
        facts: { timesMedian: 10 },
      },
    ]);
  });

  it.each([
    [4.9, []],
    [5, ["catch-far-from-fellows"]],
    [0.21, []],
    [0.2, ["catch-far-from-fellows"]],
  ])("starts at five times or a fifth: %s times", async (times, codes) => {
    expect(await codesOf(...rows([1, 1, 1], [1, 2, 2], [1, 4, 4 * times]))).toEqual(codes);
  });

  it("is found by its bin and product where its fill has no other catch", async () => {
    const found = await cautionsOf(...rows([1, 20, 6], [2, 40, 12], [3, 20, 0.6]));
    expect(found.map(({ where }) => where.catches)).toEqual([[3]]);
  });

  it("is found where a whole fill was entered in another unit", async () => {
    const found = await cautionsOf(
      ...rows([1, 20, 6], [1, 40, 12], [1, 20, 6], [2, 20, 6000], [2, 40, 12000]),
    );
    expect(found.map(({ where }) => [where.fill, where.catches])).toEqual([
      [2, [4]],
      [2, [5]],
    ]);
  });

  it("is both of a pair, since nobody can say which is wrong", async () => {
    const found = await cautionsOf(...rows([1, 20, 6], [1, 40, 96]));
    expect(found.map(({ facts }) => facts)).toEqual([{ timesMedian: 0.125 }, { timesMedian: 8 }]);
  });

  it("is not looked for among catches that are left out", async () => {
    expect(
      await codesOf(...rows([1, 20, 6], [1, 40, 12]), "1,wheat,1,3,20,60,,,,x,wrong bag"),
    ).toEqual([]);
  });

  it("is judged apart in each bin and product", async () => {
    expect(
      await codesOf(...rows([1, 20, 6], [1, 40, 12]), "2,canola,1,1,20,0.6", "2,canola,1,2,40,1.2"),
    ).toEqual([]);
  });
});

describe("a unit that looks wrong", () => {
  it("is named with the median delivery", async () => {
    const found = await cautionsOf(...rows([1, 20, 589], [1, 40, 1180]));
    expect(found).toEqual([
      {
        code: "unit-looks-wrong",
        severity: "serious",
        asks: "look-first",
        where: { bin: "1", product: "wheat", fill: null, catches: [] },
        facts: {
          unit: "kg",
          medianKgPerTurn: (589 / 20 + 1180 / 40) / 2,
          medianCatchKg: (589 + 1180) / 2,
        },
      },
    ]);
  });

  it.each([
    [20, 2, []],
    [20.1, 2, ["unit-looks-wrong"]],
    [0.0005, 100, []],
    [0.0004, 100, ["unit-looks-wrong"]],
  ])("is outside 0.5 g to 20 kg a turn: %s kg", async (perTurn, turns, codes) => {
    expect(
      await codesOf(...rows([1, turns, turns * perTurn], [1, 2 * turns, 2 * turns * perTurn])),
    ).toEqual(codes);
  });

  it.each([
    [80, []],
    [80.1, ["unit-looks-wrong"]],
    [0.03, []],
    [0.029, ["unit-looks-wrong"]],
  ])("is outside 30 g to 80 kg a catch: %s kg", async (net, codes) => {
    expect(await codesOf(...rows([1, 20, net]))).toEqual(codes);
  });

  it("allows for the small share of a single outlet", async () => {
    expect(await codesOf("1,canola,1,1,10,0.0012,,,3", "1,canola,1,2,20,0.0025,,,3")).toEqual([]);
  });
});

describe("turns that are all equal", () => {
  it("are noted, with what one tare left in would add", async () => {
    const found = await cautionsOf("1,wheat,1,1,20,,6.4,0.4", "1,wheat,2,1,20,,6.5,0.5");
    expect(found).toEqual([
      {
        code: "turns-all-equal",
        severity: "note",
        asks: "to-know",
        where: { bin: "1", product: "wheat", fill: null, catches: [] },
        facts: { turns: 20, tareShare: 0.45 / 6 },
      },
    ]);
  });

  it("are noted without a share where no tare is known", async () => {
    const found = await cautionsOf(...rows([1, 20, 6], [2, 20, 6.1]));
    expect(found.map(({ facts }) => facts)).toEqual([{ turns: 20, tareShare: null }]);
  });
});
