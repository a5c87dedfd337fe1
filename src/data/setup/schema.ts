import * as z from "zod";
import { type Caution, type CautionCode, cautionCodes } from "../../results/caution.ts";
import { type BinSetup, bin } from "./bin.ts";
import { entryOf, entryOrEmpty, needed, optional, optionalEntry } from "./field.ts";
import { type FieldCheckSetup, fieldCheck } from "./field-check.ts";
import { type CartSetup, cart, type ScaleSetup, scale } from "./machine.ts";
import { type MoneySetup, money } from "./money.ts";
import { messageOf } from "./needs.ts";
import { isOfSame, leavesOpen, type SetupPlace } from "./place.ts";
import { farm, machine, season } from "./place-fields.ts";
import { type TrialSetup, trial } from "./trial.ts";
import { list, name, oneOf, percentage, text, textError, wholeFrom1 } from "./values.ts";

/**
 * What the operator, the cart, the scale and the farm add to the catches. Everything is optional: null switches off what
 * needs it. Units are in the names; percentages of the file are fractions here, except where a name ends in Percent.
 */
export interface Setup {
  /** File name as the user gave it. */
  readonly source: string;
  readonly title: string | null;
  /** Largest rate error that is accepted, 0.05 for 5 %. */
  readonly tolerance: number | null;
  /** Confidence level of the intervals. */
  readonly confidence: number | null;
  /** Chance wanted of reaching the width aimed at. */
  readonly assurance: number | null;
  /** Whether other bins speak for how much a bin's catches and fills scatter. */
  readonly borrow: "other bins" | "none" | null;
  /** Taken for granted where no other bin speaks: relative standard deviation of fills, and of a catch of 20 turns. */
  readonly assumedSpread: number | null;
  readonly assumedScatter: number | null;
  /** File with a library of spreads, beside the setup; who reads files passes its records to the analysis. */
  readonly library: string | null;
  readonly scale: ScaleSetup;
  readonly cart: CartSetup;
  readonly bins: readonly BinSetup[];
  readonly money: MoneySetup;
  readonly fieldChecks: readonly FieldCheckSetup[];
  /** Null or left out: the log is no trial. */
  readonly trial?: TrialSetup | null | undefined;
  /** Findings that were looked into, in the words of the person who did. */
  readonly answered: readonly AnsweredSetup[];
  /** What reading the file found that is worth a word. */
  readonly cautions: readonly Caution[];
}

export interface AnsweredSetup extends Omit<SetupPlace, "product"> {
  readonly code: CautionCode;
  /** null: whichever fill is in the bin. */
  readonly fill: number | null;
  /** Of that fill, where the catches hold several. */
  readonly season?: string | null | undefined;
  readonly note: string;
}

const code = z
  .enum(cautionCodes as [CautionCode, ...CautionCode[]], {
    error: messageOf({ problem: "setup-finding", facts: {} }),
  })
  .meta({ title: "code of a finding" });

const answered = entryOf<AnsweredSetup>({
  code: needed(
    "code",
    code,
    "A finding without a catch that you looked into; must be given",
    "field-disagrees",
  ),
  bin: needed("bin", name, "Bin it is about; must be given", "1"),
  machine,
  farm,
  fill: optional("fill", wholeFrom1, "Fill it is about; every fill where left out", 1),
  season,
  note: needed("note", text, "What you found; must be given", "area measured again"),
});

/** Two entries that hold for the same bin and product of a machine would leave open which of them counts. */
function eachOnce(bins: readonly BinSetup[], context: z.RefinementCtx): void {
  bins.forEach((entry, index) => {
    const other = bins.slice(0, index).find((earlier) => leavesOpen(earlier, entry, bins));
    if (other !== undefined) {
      const problem = isOfSame(other, entry) ? "setup-bin-twice" : "setup-bin-open";
      context.addIssue({
        code: "custom",
        message: messageOf({ problem, facts: {} }),
        path: [index, "bin"],
      });
    }
  });
}

/**
 * What a setup file may hold, and what is made of it: in kg, m, ha and fractions, null where the file says nothing. The one
 * place where fields are listed; everything else that speaks of them is read from here. All are optional except where the
 * description says so; nothing is allowed that is not listed.
 * @internal
 */
export const setupSchema = entryOf<Omit<Setup, "source" | "cautions">>(
  {
    title: optional("title", text, "Heading of the report", "Spring wheat, north farm"),
    tolerance: optional(
      "tolerance_percent",
      percentage(0.2, 100),
      "Largest rate error that is accepted",
      5,
    ),
    confidence: optional(
      "confidence_percent",
      percentage(50, 99.99),
      "Confidence level of the intervals",
      95,
    ),
    assurance: optional(
      "assurance_percent",
      percentage(50, 99.99),
      "Chance wanted of reaching the width aimed at",
      80,
    ),
    borrow: optional(
      "borrow",
      oneOf("other bins", "none"),
      "Who speaks for how much a bin's catches and fills scatter besides itself: the other bins, or nobody",
      "none",
    ),
    assumedSpread: optional(
      "assumed_spread_percent",
      percentage(0.1, 50),
      "How much fills differ (standard deviation), taken for granted where no other bin tells it",
      3,
    ),
    assumedScatter: optional(
      "assumed_scatter_percent",
      percentage(0.1, 50),
      "How much a catch of 20 turns scatters (standard deviation), taken for granted where no other bin tells it",
      1.5,
    ),
    library: optional(
      "library",
      text,
      "File with a library of spreads of other meters, beside this file: its meters lend as other bins do",
      "spreads.json",
    ),
    scale: entryOrEmpty("scale", scale, {}),
    cart: entryOrEmpty("cart", cart, {}),
    bins: entryOrEmpty("bins", list(bin).superRefine(eachOnce), []),
    money: entryOrEmpty("money", money, {}),
    fieldChecks: entryOrEmpty("field_checks", list(fieldCheck), []),
    trial: optionalEntry("trial", trial),
    answered: entryOrEmpty("answered", list(answered), []),
  },
  {
    unread: [
      optional(
        "$schema",
        z.string({ error: textError }).meta({ title: "text" }),
        "Where an editor finds the schema of this file; not read",
        "setup.schema.json",
      ),
    ],
  },
);
