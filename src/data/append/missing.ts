import type { KeyColumn } from "../column-kinds.ts";

/** What has to be told before anything can be added. */
export type Missing =
  | { readonly is: "bin"; readonly names: readonly string[] }
  /** The newest fill of the bin holds this; null: nothing was caught from it yet. */
  | { readonly is: "product"; readonly bin: string; readonly held: string | null }
  | { readonly is: "tare" }
  | { readonly is: "column"; readonly name: string }
  /** Several of them, or a season that is over. */
  | { readonly is: "key"; readonly name: KeyColumn; readonly names: readonly string[] }
  /** The file has no columns for why a catch without a mass is left out. */
  | { readonly is: "spilled" }
  | { readonly is: "again"; readonly catches: number };
