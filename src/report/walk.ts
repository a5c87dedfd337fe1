import { OptionError } from "../errors/errors.ts";
import type { Block, Chart } from "./document.ts";

/** Every block of a tree, parents before children, in reading order. */
export function* walkBlocks(blocks: readonly Block[]): Generator<Block> {
  for (const block of blocks) {
    yield block;
    if (block.kind === "section" || block.kind === "details") yield* walkBlocks(block.blocks);
  }
}

/** Every chart of a tree, in reading order. */
export function chartsIn(blocks: readonly Block[]): readonly Chart[] {
  return [...walkBlocks(blocks)].filter((block) => block.kind === "chart");
}

/**
 * Checks that ids can stand in a page and in a file name, and that no two blocks share one: a repeated id
 * would send a reference, a caption or a clip path to the wrong place without a sound.
 *
 * @throws OptionError `bad-option`
 */
export function checkIds(blocks: readonly Block[]): void {
  const seen = new Set<string>();
  for (const block of walkBlocks(blocks)) {
    if (!("id" in block) || block.id === undefined) continue;
    if (!/^[a-z][a-z0-9-]*$/.test(block.id)) {
      throw new OptionError("id", block.id, "lower-case letters, digits and hyphens");
    }
    if (seen.has(block.id)) throw new OptionError("id", block.id, "unique in the document");
    seen.add(block.id);
  }
}
