/**
 * How long does the main job take, as a person meets it? Runs `npm start`'s command as a process of its own, three times,
 * and prints each wall time with what the analysis alone takes inside it.
 */
import { execFileSync } from "node:child_process";
import { analyse } from "../src/analysis/analyse.ts";
import { readCatchesFile, readSetupFile } from "../src/node.ts";

const season = "data-demo/season";
const command = ["--import", "tsx", "src/cli/main.ts", "report", `${season}/catches.csv`];
const flags = ["--setup", `${season}/setup.json`, "--out", ".cache/bench-report"];

const seconds = [1, 2, 3].map(() => {
  const from = performance.now();
  execFileSync(process.execPath, [...command, ...flags], { stdio: "ignore" });
  return ((performance.now() - from) / 1000).toFixed(2);
});
const log = await readCatchesFile(`${season}/catches.csv`);
const setup = await readSetupFile(`${season}/setup.json`);
const from = performance.now();
analyse(log, setup);
const analysis = (performance.now() - from).toFixed(0);
console.log(
  `report on the season: ${seconds.join(", ")} s a run; the analysis alone ${analysis} ms`,
);
