import { expect } from "vitest";
import type { Block } from "../../src/report/document.ts";

/** Ids of blocks and of the blocks inside them. */
export function idsOf(blocks: readonly Block[]): string[] {
  return blocks.flatMap((block) => [
    ...("id" in block && block.id !== undefined ? [block.id] : []),
    ...("blocks" in block ? idsOf(block.blocks) : []),
  ]);
}

/** A lead sentence first, every id its own, every row as long as its head, and no word of code on the page. */
export function expectSound(blocks: readonly Block[]): void {
  expect(blocks[0]).toMatchObject({ kind: "paragraph", role: "lead" });
  const ids = idsOf(blocks);
  expect(new Set(ids).size).toBe(ids.length);
  const tables = blocks
    .flatMap((block) => ("blocks" in block ? block.blocks : [block]))
    .filter((block) => block.kind === "table");
  for (const { columns, rows } of tables)
    for (const { cells } of rows) expect(cells).toHaveLength(columns.length);
  const words = JSON.stringify(blocks, (key, value) => (key === "spec" ? null : value));
  expect(words).not.toMatch(/NaN|undefined|Infinity|\[object/);
}
