import { describe, expect, it } from "vitest";
import { exponents, type Measured, middleOf } from "../../bench/scale/growth.ts";
import { inventedLog } from "../../bench/scale/invented-log.ts";
import { scaleChart, scalePage } from "../../bench/scale/page.ts";
import { meterTable } from "../../src/analysis/meter-table.ts";
import { readCatches } from "../../src/data/read-catches.ts";

const ground = { seed: 1, node: "v20", flags: ["--a"], cores: 2, emptyNode: 0.1 };

function took(rows: number, seconds: number): Measured {
  return {
    rows,
    meters: rows / 50,
    fills: rows / 5,
    actions: {},
    reading: { seconds, processors: seconds },
    deciding: { seconds: 2 * seconds, processors: 2 * seconds },
    beside: {
      other: {
        fills: rows / 5,
        deliveries: 1,
        seconds: seconds / 7,
        processors: seconds / 7,
        peakMegabytes: 50,
        version: "other 1.0",
      },
    },
    peakMegabytes: 100,
  };
}

describe("the invented logs", () => {
  it("are the same from the same seed, and others from another", () => {
    expect(inventedLog(120, 3)).toBe(inventedLog(120, 3));
    expect(inventedLog(120, 3)).not.toBe(inventedLog(120, 4));
  });

  it("have so many rows, are read without a word, and hold meters that are set and meters that are not", async () => {
    const log = await readCatches({ name: "invented.csv", text: inventedLog(3000, 1) });
    expect(log.catches).toHaveLength(3000);
    const table = meterTable(log);
    expect(table.input).toEqual({ catches: 3000, fills: 600, meters: 60 });
    expect(new Set(table.meters.map(({ decision }) => decision?.action)).size).toBeGreaterThan(1);
  });

  it("begin alike however long they are", () => {
    expect(inventedLog(1000, 2).startsWith(inventedLog(200, 2).trimEnd())).toBe(true);
  });
});

describe("growth", () => {
  it("is 1 in proportion and 2 with the square", () => {
    const linear = [took(100, 1), took(1000, 10), took(10_000, 100)];
    const square = [took(100, 1), took(1000, 100)];
    for (const one of exponents(linear, ({ reading }) => reading.seconds))
      expect(one).toBeCloseTo(1, 12);
    expect(exponents(square, ({ reading }) => reading.seconds)[0]).toBeCloseTo(2, 12);
  });

  it("is that of the middle run", () => {
    expect(middleOf([took(10, 3), took(10, 1), took(10, 2)])).toEqual(took(10, 2));
    expect(middleOf([took(10, 3)])).toEqual(took(10, 3));
  });

  it("is told with every aim that is missed", () => {
    const said = scalePage([took(10_000, 0.1), took(100_000, 2)], [], ground).join("\n");
    expect(said).toContain("100,000 rows: time above the aim.");
    // Half as long again at 0.1 s for the empty Node: 4.2 s are more than three and less than four and a half.
    const slower = scalePage([took(100_000, 1.4)], [], ground).join("\n");
    expect(slower).toContain("100,000 rows: time above the aim, within it at this machine's pace.");
    expect(slower).toContain("| < 3 (4.48) |");
    expect(scalePage([took(10_000, 0.1)], [], ground).join("\n")).toContain("Every aim is met.");
    expect(said).toContain("| 100,000 | 6.00 | 0.29 | 100 | 50 |");
    expect(said).not.toContain("Other work");
    const busy = { ...took(10_000, 1), reading: { seconds: 20, processors: 1 } };
    expect(scalePage([busy], [], ground).join("\n")).toContain("Other work had the machine");
    expect(JSON.stringify(scaleChart([took(10_000, 0.1)], []))).toContain("10000");
  });

  it("is told of pooled logs, with their aim as it was met", () => {
    const one = (seconds: number, processors: number) => ({
      fills: 2_000_000,
      deliveries: 1,
      seconds,
      processors,
      peakMegabytes: 1500,
      version: "database 1.0",
    });
    const told = (seconds: number, processors: number) =>
      scalePage(
        [took(10_000, 0.1)],
        [
          { rows: 1_000_000, pool: one(3, 6), alone: one(1, 2) },
          { rows: 10_000_000, pool: one(seconds, processors), alone: one(5, 9) },
        ],
        ground,
      ).join("\n");
    expect(told(30, 60)).toContain("| pooled | 1.00 |");
    expect(told(30, 60)).toContain("less than 60 s on two processors, and is met.");
    expect(told(90, 80)).toContain("not met on the clock of this run: 90.00 s, of which");
  });
});

/** Processor time of the best of some runs: other work on the machine lengthens it less than that on the clock. */
function best(of: () => void): number {
  const runs = Array.from({ length: 3 }, () => {
    const start = process.cpuUsage();
    of();
    const { user, system } = process.cpuUsage(start);
    return user + system;
  });
  return Math.min(...runs);
}

it("decides in time about proportional to the meters: eight times as many take less than twenty times as long", async () => {
  const [few, many] = [
    await readCatches({ name: "few.csv", text: inventedLog(2500, 1) }),
    await readCatches({ name: "many.csv", text: inventedLog(20_000, 1) }),
  ];
  meterTable(few);
  // The square would be sixty-four times; other work on the machine is allowed for.
  expect(best(() => meterTable(many)) / best(() => meterTable(few))).toBeLessThan(20);
}, 300_000);
