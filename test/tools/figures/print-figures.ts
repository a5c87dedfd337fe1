// Prints every figure of README, notebooks' prose and sentences with its source. `npm run figures`
import { passages } from "./find.ts";
import { sourcedFigures } from "./list.ts";

const all = passages().flatMap(sourcedFigures);
for (const { place, figure, text, source } of all)
  console.log(`${place}\t${figure}\t${source ?? "NO SOURCE"}\t${text.slice(0, 100)}`);
const gaps = all.filter(({ source }) => source === null).length;
console.log(`${all.length} figures, ${gaps} without a source`);
process.exitCode = gaps === 0 ? 0 : 1;
