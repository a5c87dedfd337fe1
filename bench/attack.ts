/** Tries to make it fail, and says what became of it. Writes reports/trust.md. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { attacks } from "./attack/attacks.ts";
import { type Noticed, type Tally, tallyOf, trustPage } from "./attack/trust.ts";

const { values } = parseArgs({
  options: {
    seed: { type: "string", default: "1" },
    effort: { type: "string", default: "1000" },
    only: { type: "string" },
  },
});
const [seed, effort] = [Number(values.seed), Number(values.effort)];
/** As `npm run mutation` left it. */
function noticedOf(): Noticed | null {
  const page = new URL("../reports/mutation.json", import.meta.url);
  return existsSync(page) ? JSON.parse(readFileSync(page, "utf8")) : null;
}

const tallies: Tally[] = [];
for (const attack of attacks) {
  if (values.only !== undefined && attack.name !== values.only) continue;
  const start = performance.now();
  const tally = await tallyOf(attack, seed, effort);
  tallies.push(tally);
  const seconds = ((performance.now() - start) / 1000).toFixed(0);
  console.log(attack.name, tally.counts, `${seconds} s`);
  for (const one of tally.bad.slice(0, 5)) console.log(`  ${one.outcome}: ${one.name}`);
}
if (values.only === undefined) {
  writeFileSync(
    new URL("../reports/trust.md", import.meta.url),
    `${trustPage(tallies, seed, effort, noticedOf()).join("\n")}\n`,
  );
  console.log("reports/trust.md written.");
}
