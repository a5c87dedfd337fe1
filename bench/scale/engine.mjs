/**
 * The engine alone: the text parsed and every fill summed up, with no check of a row and no model.
 *
 *   node bench/scale/engine.mjs .cache/scale/log-10000.csv
 */
import { readFileSync } from "node:fs";
import { argv, cpuUsage, resourceUsage, stdout, version } from "node:process";
import Papa from "papaparse";

const start = performance.now();
const { data } = Papa.parse(readFileSync(argv[2] ?? "", "utf8"), {
  header: true,
  skipEmptyLines: true,
});
const fills = new Map();
for (const row of data) {
  const key = `${row.bin}|${row.product}|${row.fill}`;
  const fill = fills.get(key) ?? { turns: 0, mass: 0 };
  fill.turns += Number(row.turns);
  fill.mass += Number(row.gross_kg) - Number(row.tare_kg);
  fills.set(key, fill);
}
let deliveries = 0;
for (const { turns, mass } of fills.values()) deliveries += mass / turns;
const { user, system } = cpuUsage();
const took = {
  fills: fills.size,
  deliveries,
  seconds: (performance.now() - start) / 1000,
  processors: (user + system) / 1e6,
  peakMegabytes: resourceUsage().maxRSS / 1024,
  version: `papaparse on Node ${version}`,
};
stdout.write(`${JSON.stringify(took)}\n`);
