import { decisionText } from "./src/cli/answer-table.ts";
import { wordsFor } from "./src/wording/languages.ts";
import { analysisOf, states } from "./test/support/decision-states.ts";

const only = process.argv.slice(2);
for (const [name, st] of Object.entries(states)) {
  if (only.length && !only.some((o) => name.includes(o))) continue;
  try {
    const a = await analysisOf(st as any);
    for (const m of a.meters) {
      console.log(
        "##",
        name,
        m.product,
        JSON.stringify(m.decision),
        m.noDecision,
        m.delivery.halfWidth?.toFixed(4),
        m.catchesNeeded?.standing,
      );
      console.log(decisionText(m, a, wordsFor("en", "metric")));
    }
  } catch (e) {
    console.log("##", name, "ERR", (e as Error).message);
  }
}
