import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCatches } from "../../src/data/read-catches.ts";
import { csv, logOf } from "../support/catch-files.ts";

describe("a file of catches", () => {
  it("is read into kg, with everything the columns hold", async () => {
    const log = await readCatches(
      csv(
        "bin,product,fill,catch,turns,gross_g,tare_g,division_g,taken_at,meter_rpm,outlet,operator,note,checked,exclude,reason",
        "1,wheat,3,1,20.5,6310,420,10,2026-04-12 07:30,30,4,A,after rain,weighed again,x,bag tore",
        "1,wheat,3,2,20,6300,420,10,2026-04-12 07:40,30,4,A,,,,",
      ),
    );
    const ofFirst = { catches: log.catches.slice(0, 1), written: log.written?.slice(0, 1) };
    expect({ ...log, ...ofFirst }).toEqual({
      source: "catches.csv",
      massUnit: "g",
      catches: [
        {
          row: 2,
          farm: null,
          machine: null,
          season: null,
          bin: "1",
          product: "wheat",
          fill: 3,
          catch: 1,
          turns: 20.5,
          netKg: 5.89,
          grossKg: 6.31,
          tareKg: 0.42,
          divisionKg: 0.01,
          takenAt: "2026-04-12T07:30",
          meterRpm: 30,
          bulkDensityKgPerM3: null,
          moisturePercent: null,
          binLevelPercent: null,
          outlet: "4",
          operator: "A",
          note: "after rain",
          checked: "weighed again",
          leftOut: "bag tore",
          extra: {},
        },
      ],
      written: [{ row: 2, unit: "g", gross: "6310", tare: "420", net: null }],
      cautions: [],
    });
  });

  it("may change its mass unit from row to row, and is said to be in the commoner one", async () => {
    const log = await logOf(
      csv(
        "bin,product,fill,catch,turns,net_kg,net_lb,division_g",
        "1,wheat,1,1,20,,13,10",
        "1,wheat,1,2,20,5.9,,5",
        "1,wheat,1,3,20,5.8,,5",
      ),
    );
    expect(log.massUnit).toBe("kg");
    expect(log.catches.map(({ netKg }) => netKg)).toEqual([5.89670081, 5.9, 5.8]);
    expect(log.catches.map(({ divisionKg }) => divisionKg)).toEqual([0.01, 0.005, 0.005]);
  });

  it("joins spaces within names and takes off those around them", async () => {
    const log = await logOf(
      csv(
        "bin,product,fill,catch,turns,net_kg",
        "1 , hard  wheat,1,1,20,5.89",
        "1,hard wheat,1,2,20,5.9",
      ),
    );
    expect(new Set(log.catches.map(({ product }) => product))).toEqual(new Set(["hard wheat"]));
  });

  it.each(["yes", "Y", "TRUE", "1", "x", "X"])("leaves a catch out at %j", async (answer) => {
    const log = await logOf(
      csv(
        "bin,product,fill,catch,turns,net_kg,exclude,reason",
        `1,wheat,1,1,20,5.89,${answer},tore`,
        "1,wheat,1,2,20,5.9,,",
      ),
    );
    expect(log.catches[0]?.leftOut).toBe("tore");
  });

  it.each(["no", "N", "false", "0", ""])("keeps a catch at %j", async (answer) => {
    const log = await logOf(
      csv("bin,product,fill,catch,turns,net_kg,exclude", `1,wheat,1,1,20,5.89,${answer}`),
    );
    expect(log.catches[0]?.leftOut).toBeNull();
  });

  it("may hold nothing net in a catch that is left out", async () => {
    const log = await logOf(
      csv(
        "bin,product,fill,catch,turns,net_kg,exclude,reason",
        "1,wheat,1,1,20,0,x,bridged",
        "1,wheat,1,2,20,5.9,,",
      ),
    );
    expect(log.catches[0]?.netKg).toBe(0);
  });
});

const grams = fc.integer({ min: 1, max: 500_000 });
const rowOf = fc.record({
  bin: fc.constantFrom("1", "2"),
  fill: fc.integer({ min: 1, max: 9 }),
  turns: fc.integer({ min: 1, max: 400 }).map((quarter) => quarter / 4),
  net: grams,
  tare: fc.integer({ min: 0, max: 5000 }),
});
const rowsOf = fc.array(rowOf, { minLength: 1, maxLength: 12 });
type Row = typeof rowOf extends fc.Arbitrary<infer R> ? R : never;

function lines(rows: readonly Row[], masses: (row: Row) => string): readonly string[] {
  return rows.map(
    (row, index) => `${row.bin},wheat,${row.fill},${index + 1},${row.turns},${masses(row)}`,
  );
}

const columns = "bin,product,fill,catch,turns";
const inKg = (whole: number) => (whole / 1000).toFixed(3);

describe("properties of reading", () => {
  it("does not depend on the order of rows", async () => {
    await fc.assert(
      fc.asyncProperty(rowsOf, fc.infiniteStream(fc.nat()), async (rows, random) => {
        const written = lines(rows, ({ net }) => `${net}`);
        const keys = new Map(written.map((line) => [line, random.next().value ?? 0]));
        const shuffled = written.toSorted(
          (one, other) => (keys.get(one) ?? 0) - (keys.get(other) ?? 0),
        );
        const byCatch = async (text: readonly string[]) => {
          const log = await logOf(csv(`${columns},net_g`, ...text));
          const catches = log.catches.map((row) => ({ ...row, row: 0 }));
          return {
            catches: catches.toSorted((one, other) => one.catch - other.catch),
            codes: log.cautions.map((found) => JSON.stringify(found)).toSorted(),
          };
        };
        expect(await byCatch(shuffled)).toEqual(await byCatch(written));
      }),
    );
  });

  it("gives the same mass from grams, from kilograms, and from gross and tare", async () => {
    await fc.assert(
      fc.asyncProperty(rowsOf, async (rows) => {
        const nets = async (header: string, masses: (row: Row) => string) => {
          const log = await logOf(csv(`${columns},${header}`, ...lines(rows, masses)));
          return log.catches.map(({ netKg }) => netKg);
        };
        const exact = rows.map(({ net }) => Number(inKg(net)));
        expect(await nets("net_g", ({ net }) => `${net}`)).toEqual(exact);
        expect(await nets("gross_g,tare_g", ({ net, tare }) => `${net + tare},${tare}`)).toEqual(
          exact,
        );
        expect(
          await nets(
            "net_kg,gross_kg,tare_kg",
            ({ net, tare }) => `${inKg(net)},${inKg(net + tare)},${inKg(tare)}`,
          ),
        ).toEqual(exact);
      }),
    );
  });

  it("leaves net unchanged when the same tare is added to gross and tare", async () => {
    await fc.assert(
      fc.asyncProperty(rowsOf, grams, async (rows, more) => {
        const net = async (added: number) => {
          const masses = (row: Row) =>
            `${inKg(row.net + row.tare + added)},${inKg(row.tare + added)}`;
          const log = await logOf(csv(`${columns},gross_kg,tare_kg`, ...lines(rows, masses)));
          return log.catches.map(({ netKg }) => netKg);
        };
        expect(await net(more)).toEqual(await net(0));
      }),
    );
  });

  it("gives the same log from a decimal point and from a decimal comma", async () => {
    await fc.assert(
      fc.asyncProperty(rowsOf, async (rows) => {
        const settling = "1,oats,99,1,0.5,0.5";
        const text = [`${columns},net_kg`, ...lines(rows, ({ net }) => inKg(net)), settling];
        const european = text.map((line) => line.replaceAll(",", ";").replaceAll(".", ","));
        expect(await logOf(csv(...european))).toEqual(await logOf(csv(...text)));
      }),
    );
  });

  it("survives being written to JSON and back", async () => {
    const log = await logOf(csv(`${columns},net_kg,lot`, "1,wheat,1,1,20,5.89,a"));
    expect(JSON.parse(JSON.stringify(log))).toEqual(log);
  });
});
