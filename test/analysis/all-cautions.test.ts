import { describe, expect, it } from "vitest";
import { allCautions } from "../../src/analysis/all-cautions.ts";
import { analyse } from "../../src/analysis/analyse.ts";
import { readCatchesFile } from "../../src/node.ts";
import { command, demo, fileWith, inFolder } from "../support/command.ts";

/** Every list named cautions, however deep it lies. */
function listed(value: unknown): readonly unknown[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    key === "cautions" && Array.isArray(inner) ? inner : listed(inner),
  );
}

describe("the findings of an analysis", () => {
  it.each(["season", "first-morning", "product-trial"])(
    "are all there, whatever answer of %s they stand in",
    async (name) => {
      const log = await readCatchesFile(demo(`${name}/catches.csv`));
      const analysis = analyse(log, null, {
        comparison: { when: "always" },
        scaleDivisionKg: 0.02,
      });
      const all = allCautions(analysis);
      expect(all.length).toBeGreaterThan(0);
      for (const found of listed(analysis)) expect(all).toContainEqual(found);
      expect(all.some(({ where }) => where.bin === null)).toBe(name !== "first-morning");
    },
  );

  it("let --fail-on see what is wrong with a comparison of products only", async () => {
    await inFolder(async (folder) => {
      const rows = ["oats", "wheat"].flatMap((product, p) =>
        [0.01, -0.01, 0.006, -0.007].flatMap((ofFill, f) =>
          [0.003, 0.001, -0.002, -0.001].map((ofCatch, c) => {
            const netKg = 20 * (0.3 + 0.02 * p) * (1 + ofFill + ofCatch);
            return `bin ${p + 1},${product},${f + 1},${c + 1},20,${netKg.toFixed(3)}`;
          }),
        ),
      );
      const text = ["bin,product,fill,catch,turns,net_kg", ...rows].join("\n");
      const catches = await fileWith(folder, "catches.csv", text);
      const flags = ["report", catches, "--out", `${folder}/out`, "--fail-on", "serious"];
      expect((await command(...flags)).code).toBe(0);
      const compared = await command(...flags, "--compare", "--json");
      expect(compared.out).toContain("products-in-different-bins");
      expect(compared.code).toBe(1);
    });
  });
});
