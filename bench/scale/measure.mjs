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

const now = () => ({ clock: performance.now() / 1000, used: cpuUsage() });
const since = (from, to) => ({
  seconds: to.clock - from.clock,
  processors: (to.used.user + to.used.system - from.used.user - from.used.system) / 1e6,
});
const start = now();
const log = await readCatchesFile(file);
const read = now();
const table = meterTable(log);
const decided = now();
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
  reading: since(start, read),
  deciding: since(read, decided),
  peakMegabytes: resourceUsage().maxRSS / 1024,
};
stdout.write(`${JSON.stringify(measured)}\n`);
