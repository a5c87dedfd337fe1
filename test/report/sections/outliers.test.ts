import { expect, test } from "vitest";
import type { Block } from "../../../src/report/document.ts";
import { outliersSection } from "../../../src/report/sections/outliers.ts";
import { fillOf, outliersIn, quietFills } from "../../support/outliers.ts";
import { english } from "../../support/words.ts";

const words = english("metric");

function flat(blocks: readonly Block[]): readonly Block[] {
  return blocks.flatMap((block) => ("blocks" in block ? [block, ...flat(block.blocks)] : [block]));
}

test("a suspect is led by a sentence, listed, drawn, and marked in the table with its verdict", () => {
  const result = outliersIn(...quietFills, fillOf(4, [6.02, 6.44, 5.95, 6.0]));
  const blocks = outliersSection(result, words, "1");
  expect(blocks[0]).toMatchObject({ kind: "paragraph", role: "lead" });
  expect(blocks[1]).toMatchObject({
    kind: "list",
    items: [words.outliers.suspect(result.suspects[0] as never)],
  });
  const ids = flat(blocks).flatMap((block) => ("id" in block ? (block.id ?? []) : []));
  expect(ids).toEqual(["1-residuals-chart", "1-detail", "1-influence-chart", "1-catches"]);
  const table = flat(blocks).find((block) => block.kind === "table");
  expect(table?.rows.map(({ tone }) => tone)).toEqual([undefined, "problem", undefined, undefined]);
  expect(table?.rows[1]?.cells.at(-1)).toBe("stands out");
  for (const row of table?.rows ?? []) expect(row.cells).toHaveLength(table?.columns.length ?? 0);
});

test("a fill in which nothing stands out has a sentence, a drawing and the figures, and no list", () => {
  const result = outliersIn(...quietFills, fillOf(4, [6.02, 6.04, 5.95, 6.0]));
  expect(outliersSection(result, words, "1").map(({ kind }) => kind)).toEqual([
    "paragraph",
    "chart",
    "details",
  ]);
});

test("catches that could not be judged have dashes, not numbers", () => {
  const blocks = flat(outliersSection(outliersIn(fillOf(1, [6.0, 6.1, 6.05])), words, "1"));
  const table = blocks.find((block) => block.kind === "table");
  expect(table?.rows[0]?.cells.filter((cell) => cell === "–")).toHaveLength(5);
  expect(blocks.filter(({ kind }) => kind === "chart")).toHaveLength(1);
});
