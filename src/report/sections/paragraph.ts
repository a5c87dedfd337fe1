import type { Block } from "../document.ts";

/** A sentence as a block, or nothing where there is nothing to say. */
export function paragraph(text: string | null): readonly Block[] {
  return text === null ? [] : [{ kind: "paragraph", text }];
}
