import { describe, expect, it } from "vitest";
import { DataError } from "../../src/errors/errors.ts";
import { openEngine, usualEngine } from "../../src/pool/engine.ts";
import { fillRecords, poolSql, poolStatements } from "../../src/pool.ts";

const columns = ["Bin", "product", "Fill", "catch", "turns", "net kg", 'it\'s "mine"'];

describe("the statements", () => {
  it("run one after the other in DuckDB as they are printed", async () => {
    const engine = await openEngine({ ...usualEngine, threads: 1 });
    try {
      const names = columns.map((name) => `"${name.replaceAll('"', '""')}" TEXT`).join(", ");
      await engine.run(`CREATE TABLE "my log" (${names})`);
      await engine.run(
        `INSERT INTO "my log" VALUES ('1', 'wheat', '1', '1', '20', '5.89', ''), ('1', 'wheat', '1', '2', '20', '5.91', '')`,
      );
      const table = { name: "my log", columns };
      const statements = poolStatements("duckdb", table);
      for (const { name, keptAs, select } of statements)
        if (keptAs !== null) await engine.run(`CREATE ${keptAs} ${name} AS ${select}`);
      expect(await engine.rows(statements[1]?.select ?? "")).toEqual([]);
      const [record] = fillRecords(await engine.rows(statements.at(-1)?.select ?? ""));
      expect(record?.sums.massKg).toBeCloseTo(11.8, 12);
      expect(record?.sums.scatterSum).toBeCloseTo(0.02 ** 2 / 2 / 20, 15);
      expect(poolSql("duckdb", table)).toContain('FROM "my log"');
    } finally {
      await engine.close();
    }
  });

  it("are the same for both databases but for a few words", () => {
    const of = (dialect: "duckdb" | "postgres") =>
      poolStatements(dialect, { name: "log", columns })
        .slice(1)
        .map(({ select }) => select);
    expect(of("duckdb")).toEqual(of("postgres"));
  });

  it("are refused for a table that has no catches, by its name", () => {
    const refused = () => poolSql("postgres", { name: "log", columns: ["bin", "product"] });
    expect(refused).toThrow(DataError);
    expect(refused).toThrow("log, field turns");
  });
});
