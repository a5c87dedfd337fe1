/**
 * One measurement in a process of its own, so that its memory is nobody else's: reads a file and decides every meter, with the
 * library as it is compiled for its users.
 *
 *   node bench/scale/measure.mjs .cache/scale/library .cache/scale/log-10000.csv
 */
import { argv, cpuUsage, resourceUsage, stdout } from "node:process";
import { pathToFileURL } from "node:url";

const [library = "", file = ""] = argv.slice(2);
const load = (name) => import(pathToFileURL(`${library}/${name}`).href);
const { readCatchesFile } = await load("node.js");
const { meterTable } = await load("index.js");

const [start, used] = [performance.now(), cpuUsage()];
const log = await readCatchesFile(file);
const read = performance.now();
const table = meterTable(log);
const decided = performance.now();
const { user, system } = cpuUsage(used);
const actions = {};
for (const { decision } of table.meters) {
  const action = decision?.action ?? "none";
  actions[action] = (actions[action] ?? 0) + 1;
}
const measured = {
  rows: log.catches.length,
  meters: table.meters.length,
  fills: table.input.fills,
  actions,
  readSeconds: (read - start) / 1000,
  tableSeconds: (decided - read) / 1000,
  processors: (user + system) / 1e6,
  peakMegabytes: resourceUsage().maxRSS / 1024,
};
stdout.write(`${JSON.stringify(measured)}\n`);
