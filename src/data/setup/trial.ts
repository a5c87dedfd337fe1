import { entryOf, optional } from "./field.ts";
import { list, name, oneOf, percentage, text, wholeFrom1 } from "./values.ts";

/** A planned trial: what the catches were made for. A setup that has one says that its log is a trial. */
export interface TrialSetup {
  /** Compared, in the order planned; null: every product of the log, in its order. */
  readonly products: readonly string[] | null;
  /** What makes a block: a column of the catches, "bin" or "date"; null: fills of different products share nothing. */
  readonly blocks: string | null;
  /** Fills of each product that are planned. */
  readonly fills: number | null;
  /** Product that every other one is compared with; null: all pairs. */
  readonly reference: string | null;
  /** Largest difference that counts as none, a fraction. */
  readonly equivalenceMargin: number | null;
  /** null: by design. */
  readonly spread: "common" | "separate" | null;
  /** null: as planned. */
  readonly order: "planned" | "size" | null;
}

/** @internal */
export const trial = entryOf<TrialSetup>({
  products: optional(
    "products",
    list(name).meta({ title: "list of names" }),
    "Products compared, in the order the report is to keep; all where left out",
    ["wheat", "barley"],
  ),
  blocks: optional(
    "blocks",
    text,
    "Column that names the blocks every product was filled in once, or bin or date",
    "block",
  ),
  fills: optional("fills", wholeFrom1, "Fills of each product that are planned", 5),
  reference: optional(
    "reference",
    name,
    "Product that every other one is compared with; every two where left out",
    "wheat",
  ),
  equivalenceMargin: optional(
    "equivalence_margin_percent",
    percentage(0.1, 50),
    "Largest difference that counts as none, fixed before the catches",
    3,
  ),
  spread: optional(
    "spread",
    oneOf("common", "separate"),
    "Whether fills of every product spread alike or each its own way; by design where left out",
    "common",
  ),
  order: optional(
    "order",
    oneOf("planned", "size"),
    "Order of the products in the report: as planned, or the heaviest first",
    "size",
  ),
});
