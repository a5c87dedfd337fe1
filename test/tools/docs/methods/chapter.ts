import type { ReferenceKey } from "../../../../src/wording/references.ts";
import type { Demo } from "./demo.ts";
import type { Studies } from "./studies.ts";

/** What simulation found, said with its figures. */
export interface Evidence {
  readonly said: string;
  /** The file under reports that the figures are read from. */
  readonly file: string;
}

/** A figure worked out by hand from printed numbers, beside the one that the library gives. */
export interface HandFigure {
  readonly name: string;
  readonly byHand: number;
  readonly inLibrary: number;
}

export interface Example {
  readonly text: string;
  readonly figures: readonly HandFigure[];
}

/** One question of a report: how it is answered, what that rests on, and what stands behind it. */
export interface Chapter {
  readonly title: string;
  readonly asks: string;
  /** Markdown; formulas between double dollar signs. */
  readonly method: string;
  readonly assumes: readonly string[];
  readonly evidence: (studies: Studies) => readonly Evidence[];
  readonly sources: readonly ReferenceKey[];
  readonly example?: (demo: Demo) => Example;
}
