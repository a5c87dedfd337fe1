/**
 * The database alone: the text read and every fill summed up in one pass, with no check of a row and no scatter.
 *
 *   node bench/scale/duckdb.mjs .cache/scale/log-10000.csv
 */
import { argv, cpuUsage, resourceUsage, stdout } from "node:process";
import { DuckDBInstance, version } from "@duckdb/node-api";

const start = performance.now();
const instance = await DuckDBInstance.create(":memory:", { memory_limit: "2GB" });
const connection = await instance.connect();
const result =
  await connection.run(`SELECT count(*)::INTEGER AS fills, sum(mass / turns) AS deliveries FROM (
SELECT sum(turns) AS turns, sum(gross_kg - tare_kg) AS mass FROM read_csv('${argv[2]}') GROUP BY bin, product, fill)`);
const [row] = await result.getRowObjectsJS();
const { user, system } = cpuUsage();
const took = {
  fills: row?.fills,
  deliveries: row?.deliveries,
  seconds: (performance.now() - start) / 1000,
  processors: (user + system) / 1e6,
  peakMegabytes: resourceUsage().maxRSS / 1024,
  version: `DuckDB ${version()}`,
};
stdout.write(`${JSON.stringify(took)}\n`);
