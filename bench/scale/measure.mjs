/**
 * One measurement in a process of its own, so that its memory is nobody else's: reads a file and decides every meter, with the
 * library as it is compiled for its users.
 *
 *   node bench/scale/measure.mjs .cache/scale/library .cache/scale/log-10000.csv
 */
import { argv, resourceUsage, stdout } from "node:process";
import { pathToFileURL } from "node:url";

const [library = "", file = ""] = argv.slice(2);
const load = (name) => import(pathToFileURL(`${library}/${name}`).href);
const { readCatchesFile } = await load("node.js");
const { fleet } = await load("index.js");

const start = performance.now();
const log = await readCatchesFile(file);
const read = performance.now();
const table = fleet(log);
const decided = performance.now();
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
  fleetSeconds: (decided - read) / 1000,
  peakMegabytes: resourceUsage().maxRSS / 1024,
};
stdout.write(`${JSON.stringify(measured)}\n`);
