/**
 * Totals of every fill by `poolTotals`, with the library as it is compiled for its users: read, checked, summed up in two
 * passes and handed out.
 *
 *   node bench/scale/pool.mjs .cache/scale/library .cache/scale/log-10000.csv
 */
import { argv, cpuUsage, resourceUsage, stdout } from "node:process";
import { pathToFileURL } from "node:url";

const [library = "", file = ""] = argv.slice(2);
const { poolTotals } = await import(pathToFileURL(`${library}/pool.js`).href);
const { version } = await import(pathToFileURL(`${library}/version.js`).href);

const start = performance.now();
let fills = 0;
let deliveries = 0;
for await (const { sums } of poolTotals(file, { memory: "2GB" })) {
  fills += 1;
  deliveries += sums.massKg / sums.turns;
}
const { user, system } = cpuUsage();
const took = {
  fills,
  deliveries,
  seconds: (performance.now() - start) / 1000,
  processors: (user + system) / 1e6,
  peakMegabytes: resourceUsage().maxRSS / 1024,
  version: `evencatch ${version}`,
};
stdout.write(`${JSON.stringify(took)}\n`);
