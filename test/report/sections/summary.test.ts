import { expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { summarySection } from "../../../src/report/sections/summary.ts";
import { demo } from "../../support/demo.ts";
import { present } from "../../support/reference.ts";
import { english } from "../../support/words.ts";

it("a card counts every fill of the log, also those before the meter moved", async () => {
  const { log, setup } = await demo("season");
  const starter = { ...log, catches: log.catches.filter(({ bin }) => bin === "3") };
  const analysis = analyse(starter, setup);
  // The level in force began with fill 6 of 9.
  expect(analysis.meters[0]?.acrossFills?.fills).toBe(4);
  const cards = present(summarySection(analysis, english(), "full")).blocks.flatMap((block) =>
    block.kind === "key-figures" ? block.cards : [],
  );
  expect(present(cards[0]).facts).toContainEqual({ term: "Fills in the log", description: "9" });
});
