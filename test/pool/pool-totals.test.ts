import { mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { analyseTotals } from "../../src/analysis/analyse-totals.ts";
import { DataError } from "../../src/errors/errors.ts";
import { type FillRecord, fillTotals } from "../../src/model/fill-record.ts";
import { agreeExactly } from "../../src/model/totals.ts";
import { readCatchesFile } from "../../src/node.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { openEngine, usualEngine } from "../../src/pool/engine.ts";
import { type PoolOptions, type PoolProgress, poolTotals } from "../../src/pool.ts";
import { inventedPool } from "./invented-logs.ts";
import { worstDifference } from "./same-totals.ts";

const demo = join(import.meta.dirname, "../../data-demo");
let folder = "";

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "evencatch-test-"));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

async function pooled(
  patterns: string | readonly string[],
  options: PoolOptions = {},
): Promise<FillRecord[]> {
  const records: FillRecord[] = [];
  for await (const record of poolTotals(patterns, {
    memory: "500MB",
    threads: 1,
    folder,
    ...options,
  }))
    records.push(record);
  return records;
}

async function written(name: string, text: string): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
}

async function parquet(csv: string, path: string, columns: string): Promise<string> {
  const engine = await openEngine({ ...usualEngine, folder });
  await engine.run(
    `COPY (SELECT ${columns} FROM read_csv('${csv}', all_varchar = true)) TO '${path}'`,
  );
  await engine.close();
  return path;
}

it("takes off the apostrophes that keep names from being worked out", async () => {
  const rows = ["'=1+1,'@oats,1,1,20,5.89", "'=1+1,'@oats,1,2,20,5.9"];
  const path = await written(
    "guarded.csv",
    `bin,product,fill,catch,turns,net_kg\n${rows.join("\n")}\n`,
  );
  expect(await pooled(path)).toMatchObject([{ bin: "=1+1", product: "@oats" }]);
});

describe("the totals are those of the in-memory path to twelve digits", () => {
  it.each(["season", "product-trial", "three-bins", "first-morning"])("of %s", async (name) => {
    const path = join(demo, name, "catches.csv");
    const { catches } = await readCatchesFile(path);
    expect(worstDifference(fillTotals(catches), await pooled(path))).toBeLessThan(1e-12);
  });

  it("of farms, seasons, outlets, catches left out and fills of equal catches in a heavy container", async () => {
    const path = await written(
      "invented.csv",
      inventedPool(["Hill Farm", "Low Farm"], randomStream(3)),
    );
    const { catches } = await readCatchesFile(path);
    const expected = fillTotals(catches);
    const equal = expected.filter(({ sums }) => agreeExactly(sums));
    expect(equal.length).toBeGreaterThan(5);
    const found = await pooled(path);
    expect(worstDifference(expected, found)).toBeLessThan(1e-12);
    expect(worstDifference(expected, found.slice(1))).toBe(Number.POSITIVE_INFINITY);
  });

  it("of three equal catches whose sums differ in their last bits, and of three that are not equal", async () => {
    const lines = ["bin,product,fill,catch,turns,gross_kg,tare_kg"];
    for (let fill = 1; fill <= 50; fill++)
      for (const number of [1, 2, 3]) {
        const net = (fill % 5 === 0 && number === 3 ? 5.891 : 5.89) * 1.7 ** (fill % 7);
        lines.push(`1,wheat,${fill},${number},20,${(99_000 + net).toFixed(4)},99000`);
      }
    const path = await written("equal.csv", `${lines.join("\n")}\n`);
    const records = await pooled(path);
    for (const { fill, sums } of records)
      expect(agreeExactly(sums), String(fill)).toBe(fill % 5 !== 0);
    expect(
      worstDifference(fillTotals((await readCatchesFile(path)).catches), records),
    ).toBeLessThan(1e-12);
  });

  it("of a Parquet file with figures, dates and truth values of their own types", async () => {
    const csv = await written("typed.csv", inventedPool(["Hill Farm"], randomStream(4)));
    const typed = await parquet(
      csv,
      join(folder, "typed.parquet"),
      `farm, machine, season, bin, product, CAST(fill AS SMALLINT) AS fill, CAST("catch" AS BIGINT) AS "catch", outlet, CAST(turns AS DOUBLE) AS turns, CAST(gross_kg AS DECIMAL(12, 3)) AS gross_kg, CAST(tare_kg AS FLOAT) AS tare_kg, CAST(division_kg AS DOUBLE) AS division_kg, CAST(taken_at AS TIMESTAMP) AS taken_at, exclude = 'yes' AS exclude, reason, [1, 2] AS mine`,
    );
    const expected = fillTotals((await readCatchesFile(csv)).catches);
    const seconds = (takenAt: string | null) => `${takenAt}:00`;
    expect(
      worstDifference(
        expected.map((one) => ({ ...one, takenAt: seconds(one.takenAt) })),
        await pooled(typed),
      ),
    ).toBeLessThan(1e-12);
  });

  it("of a Parquet file whose names are figures, and whose faults are told by entry and field", async () => {
    const csv = await written(
      "named.csv",
      "bin,season,product,fill,catch,turns,gross_kg,tare_kg,net_kg\n1,2026,wheat,1,1,20,6,1,5\n2,2026,wheat,1,1,-20,7,1,6\n",
    );
    const types =
      'CAST(bin AS DOUBLE) AS bin, CAST(season AS FLOAT) AS season, product, CAST(fill AS DOUBLE) AS fill, "catch", CAST(turns AS DOUBLE) AS turns, CAST(gross_kg AS DOUBLE) AS gross_kg, tare_kg, CAST(net_kg AS DECIMAL(9, 2)) AS net_kg';
    const path = await parquet(csv, join(folder, "named.parquet"), types);
    await expect(pooled(path)).rejects.toThrow(
      `${path}, entry 2, field turns: found "-20"; needed`,
    );
    const [record] = await pooled(
      await parquet(
        csv,
        join(folder, "one.parquet"),
        `${types}`.replace("CAST(turns AS DOUBLE)", "abs(CAST(turns AS DOUBLE))"),
      ),
    );
    expect(record).toMatchObject({
      bin: "1",
      season: "2026",
      fill: 1,
      sums: { massKg: 5, turns: 20 },
    });
  });

  it("of a sheet with a semicolon, decimal commas, a byte order mark, told separator and a header in two lines", async () => {
    const path = await written(
      "european.csv",
      '\ufeffsep=;\r\n\r\nbin;product;fill;catch;turns;net kg;"my\nown"\r\n1;wheat;1;1;20;5,890;a\r\n1;wheat;1;2;20;5,91;b\r\n',
    );
    const { catches } = await readCatchesFile(path);
    expect(worstDifference(fillTotals(catches), await pooled(path))).toBeLessThan(1e-12);
  });

  it("so that the same answers follow, in the same order", async () => {
    const path = join(demo, "season", "catches.csv");
    const expected = analyseTotals(fillTotals((await readCatchesFile(path)).catches)).meters;
    const found = analyseTotals(await pooled(path)).meters;
    expect(found.map(({ bin, product }) => [bin, product])).toEqual(
      expected.map(({ bin, product }) => [bin, product]),
    );
    for (const [i, { drift, delivery, fills }] of expected.entries()) {
      const one = found[i];
      expect(one?.drift.verdict).toBe(drift.verdict);
      expect(one?.fills).toBe(fills);
      expect(one?.delivery.halfWidth ?? 0).toBeCloseTo(delivery.halfWidth ?? 0, 11);
      expect(one?.delivery.estimate.value).toBeCloseTo(delivery.estimate.value ?? 0, 12);
    }
  });
});

describe("several files", () => {
  const header = "bin,product,fill,catch,turns,net_kg";

  it("are one log, whatever their columns are called and in which order they stand", async () => {
    await written("many-1.csv", `${header}\n1,wheat,1,1,20,5.89\n`);
    await written(
      "many-2.tsv",
      "Catch\tFill\tproduct\tBin\tnet g\tturns\n2\t1\twheat\t1\t5900\t20\n",
    );
    const csv = await written("rest.csv", `${header}\n1,wheat,2,1,20,5.91\n`);
    await parquet(csv, join(folder, "many-3.parquet"), "*");
    const [one, two] = await pooled([join(folder, "many-*"), join(folder, "many-1.csv")]);
    expect(one?.sums.catches).toBe(2);
    expect(one?.sums.massKg).toBeCloseTo(11.79, 12);
    expect(two?.fill).toBe(2);
  });

  it("may not hold the same catch, and each problem between them names both", async () => {
    const a = await written("twin-a.csv", `${header}\n1,wheat,1,1,20,5.89\n1,wheat,1,2,20,5.89\n`);
    const b = await written(
      "twin-b.csv",
      `${header}\n\n1,wheat,1,1,20,5.89\n1,wheat,1,2,20,5.9\n1,Wheat,2,2,20,5.9\n`,
    );
    const error = await pooled([a, b]).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(DataError);
    const texts = error instanceof DataError ? error.issues.map(({ text }) => text) : [];
    expect(texts).toEqual([
      `${b}, row 3, column catch: found catch 1 of bin 1, wheat, fill 1 again, first in ${a}, row 2; needed each catch once. Two machines, or two seasons? Name them in a column machine or season. Otherwise give the catch a number of its own. The same is wrong in 1 more row.`,
      `${b}, row 5, column product: found "Wheat"; needed "wheat" as in ${a}, row 2, or a name that differs in more than capitals. Spell each product in one way throughout.`,
    ]);
  });

  it("name machines in all of them, or in none", async () => {
    const a = await written("keyed-a.csv", `Maschine,${header}\nnorth,1,wheat,1,1,20,5.89\n`);
    const b = await written("keyed-b.csv", `${header}\n1,wheat,1,1,20,5.89\n1,wheat,2,1,20,5.89\n`);
    const error = await pooled([b, a]).catch((thrown: unknown) => thrown);
    expect(error instanceof DataError && error.issues.map(({ text }) => text)).toEqual([
      `${b}, row 2, column Maschine: found nothing; needed a Maschine in every row, since ${a}, row 2 names "north". Fill in Maschine in every row, or in none. The same is wrong in 1 more row.`,
    ]);
  });

  it("are refused, each for its own problem, equal ones counted", async () => {
    const rows = Array.from(
      { length: 5000 },
      (_, i) => `1,wheat,${i + 1},1,${i % 2 === 0 ? 20 : -20},5.89`,
    );
    const path = await written("many-wrong.csv", `${header}\n${rows.join("\n")}\n`);
    const error = await pooled(path).catch((thrown: unknown) => thrown);
    expect(error instanceof DataError && error.message).toBe(
      `${path}: 2500 problems\n${path}, row 3, column turns: found "-20"; needed a number from 0.001 to 1000000, in turns. Correct the figure, or delete the row. The same is wrong in 2499 more rows.`,
    );
  });
});

describe("a run", () => {
  it("tells of its steps, and leaves nothing behind", async () => {
    const steps: PoolProgress[] = [];
    await pooled(join(demo, "season", "catches.csv"), {
      onProgress: (progress) => steps.push(progress),
    });
    expect([...new Set(steps.map(({ step }) => step))]).toEqual([
      "reading",
      "checking",
      "adding up",
      "handing out",
    ]);
    expect(steps.at(-1)?.rows).toBe(123);
    expect((await readdir(folder)).filter((name) => name.startsWith("evencatch-pool-"))).toEqual(
      [],
    );
  });

  it("ends with its signal, before and in the middle", async () => {
    const path = join(demo, "season", "catches.csv");
    await expect(pooled(path, { signal: AbortSignal.abort(new Error("enough")) })).rejects.toThrow(
      "enough",
    );
    const control = new AbortController();
    const onProgress = ({ step }: PoolProgress) => {
      if (step === "adding up") control.abort(new Error("no more"));
    };
    await expect(pooled(path, { signal: control.signal, onProgress })).rejects.toThrow("no more");
    expect((await readdir(folder)).filter((name) => name.startsWith("evencatch-pool-"))).toEqual(
      [],
    );
  });

  it("ends with its loop", async () => {
    for await (const _ of poolTotals(join(demo, "season", "catches.csv"), { folder, threads: 1 }))
      break;
    expect((await readdir(folder)).filter((name) => name.startsWith("evencatch-pool-"))).toEqual(
      [],
    );
  });

  it("needs a pattern", async () => {
    await expect(pooled([])).rejects.toThrow('Option "patterns" is "none"');
  });
});
