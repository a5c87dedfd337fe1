import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { analyseTotals } from "../../src/analysis/analyse-totals.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { type FillRecord, fillTotals } from "../../src/model/fill-record.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { fillRecords, type PoolStatement, poolSql, poolStatements } from "../../src/pool.ts";
import { postgresPrograms, type Server, startPostgres } from "../support/postgres.ts";
import { inventedPool } from "./invented-logs.ts";
import { worstDifference } from "./same-totals.ts";

const programs = postgresPrograms();
if (programs === null && process.env.CI === undefined)
  process.stderr.write("skipped: PostgreSQL is not installed (apt-get install postgresql)\n");

const guide = readFileSync(join(import.meta.dirname, "../../notebooks/recipes/pool.md"), "utf8");
const farms = ["Hill Farm", "Low Farm"] as const;
const texts = farms.map((farm, i) => inventedPool([farm], randomStream(7, i)));
const columns = texts[0]?.split("\n")[0]?.split(",") ?? [];
const statements = poolStatements("postgres", { name: "own.log", columns });

describe.skipIf(programs === null && process.env.CI === undefined)(
  "the same SQL on PostgreSQL",
  () => {
    const servers: Server[] = [];
    let coordinator: Server;
    let expected: readonly FillRecord[];

    beforeAll(async () => {
      expect(programs, "apt-get install postgresql").not.toBeNull();
      for (const text of texts) {
        const server = await startPostgres(programs ?? "");
        servers.push(server);
        await fill(server, text);
      }
      coordinator = await startPostgres(programs ?? "");
      servers.push(coordinator);
      const text = [
        texts[0],
        ...texts.slice(1).map((one) => one.slice(one.indexOf("\n") + 1)),
      ].join("");
      expected = fillTotals((await readCatches({ name: "both.csv", text })).catches);
    }, 120_000);

    afterAll(async () => {
      for (const server of servers) await server.stop();
    });

    it("gives the totals of the in-memory path to twelve digits, on one server", async () => {
      const [server] = servers;
      const rows = (await server?.query(of(statements, "evencatch_totals").select)) ?? [];
      const own = expected.filter(({ farm }) => farm === farms[0]);
      expect(worstDifference(own, fillRecords(rows))).toBeLessThan(1e-12);
    });

    it("tells what is wrong, by the keys of the same problems", async () => {
      const [server] = servers;
      const { select } = of(statements, "evencatch_problems");
      expect(await server?.query(select)).toEqual([]);
      await server?.query("BEGIN");
      await server?.query(
        `UPDATE own.log SET turns = '-3' WHERE fill = '1' AND "catch" = '2' AND machine = 'north' AND season = '2025' AND bin = '1';
       UPDATE own.log SET "catch" = '1' WHERE fill = '2' AND "catch" = '2' AND machine = 'north' AND season = '2025' AND bin = '1';
       UPDATE own.log SET tare_kg = '0,42' WHERE fill = '4' AND "catch" = '2' AND machine = 'north' AND season = '2025' AND bin = '1';
       UPDATE own.log SET taken_at = '2026-02-30', product = 'Wheat' WHERE fill = '3' AND "catch" = '2' AND machine = 'north' AND season = '2025' AND bin = '1'`,
      );
      const found = (await server?.query(`${select} ORDER BY 1`)) ?? [];
      await server?.query("ROLLBACK");
      expect(found.map(({ problem, column_name }) => `${problem} ${column_name}`)).toEqual([
        "catch-repeated catch",
        "not-a-date taken_at",
        "not-a-number tare_kg",
        "out-of-range turns",
        "product-spelt-twice product",
      ]);
    });

    it("pools servers, each of which adds up its own farms", async () => {
      await coordinator.query(joined(servers.slice(0, 2)));
      const first = of(statements, "evencatch_fills").select;
      const plan = (await coordinator.query(`EXPLAIN (VERBOSE) ${first}`)).map((row) =>
        String(row["QUERY PLAN"]),
      );
      expect(remoteSql(plan)).toHaveLength(2);
      for (const remote of remoteSql(plan)) expect(remote).toMatch(/sum\(turns\).*GROUP BY/);
      await coordinator.query(`INSERT INTO evencatch_fills ${first}`);
      for (const server of servers.slice(0, 2)) await server.query("ANALYZE evencatch_pooled");
      const last = of(statements, "evencatch_totals").select;
      const whole = (await coordinator.query(`EXPLAIN (VERBOSE) ${last}`)).map((row) =>
        String(row["QUERY PLAN"]),
      );
      const scattering = remoteSql(whole).filter((remote) => remote.includes("INNER JOIN"));
      expect(scattering).toHaveLength(2);
      for (const remote of scattering) expect(remote).toMatch(/sum\(.*GROUP BY/);
      const records = fillRecords(await coordinator.query(last));
      expect(worstDifference(expected, records)).toBeLessThan(1e-12);
    });

    it("then has the same answers", async () => {
      const records = fillRecords(
        await coordinator.query(of(statements, "evencatch_totals").select),
      );
      const byMeter = (all: readonly FillRecord[]) =>
        analyseTotals(all)
          .meters.map(({ bin, product, drift, delivery }) => ({
            bin,
            product,
            verdict: drift.verdict,
            halfWidth: delivery.halfWidth?.toPrecision(9),
            estimate: delivery.estimate.value?.toPrecision(11),
          }))
          .sort((a, b) => (`${a.bin}${a.product}` < `${b.bin}${b.product}` ? -1 : 1));
      expect(byMeter(records)).toEqual(byMeter(expected));
    });
  },
);

it("is printed as a script", () => {
  expect(poolSql("postgres", { name: "own.log", columns })).toMatch(
    /^CREATE VIEW evencatch_catches AS[\s\S]*CREATE TABLE evencatch_fills AS[\s\S]*-- evencatch_totals/,
  );
});

function of(all: readonly PoolStatement[], name: string): PoolStatement {
  const found = all.find((one) => one.name === name);
  if (found === undefined) throw new Error(name);
  return found;
}

/** The log as texts, as a database holds what people brought, with the views over it and an empty table for the first pass. */
async function fill(server: Server, text: string): Promise<void> {
  const [, ...lines] = text.trimEnd().split("\n");
  const rows = lines.map(
    (line) =>
      `(${line
        .split(",")
        .map((cell) => (cell === "" ? "NULL" : `'${cell}'`))
        .join(", ")})`,
  );
  await server.query("CREATE SCHEMA own");
  await server.query(
    `CREATE TABLE own.log (${columns.map((name) => `"${name}" TEXT`).join(", ")})`,
  );
  await server.query(`INSERT INTO own.log VALUES ${rows.join(",\n")}`);
  for (const { name, keptAs, select } of statements)
    if (keptAs !== null) await server.query(`CREATE ${keptAs} ${name} AS ${select}`);
  await server.query("CREATE TABLE evencatch_pooled (LIKE evencatch_fills)");
  await server.query("ANALYZE");
}

/** The guide's own SQL, with the servers of this test for those of its example. */
function joined(members: readonly Server[]): string {
  const [, sql = ""] = [...guide.matchAll(/```sql\n([\s\S]*?)```/g)].map(
    ([, block]) => block ?? "",
  );
  const [hill, low] = members.map(({ port }) => `host '127.0.0.1', port '${port}'`);
  return sql
    .replace("host 'hill.example', port '5432'", hill ?? "")
    .replace("host 'low.example', port '5432'", low ?? "");
}

function remoteSql(plan: readonly string[]): readonly string[] {
  return plan.flatMap((line) => /Remote SQL: (.*)/.exec(line)?.[1] ?? []);
}
