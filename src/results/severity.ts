/**
 * note: worth knowing · doubt: read before relying on the number · serious: do not rely on the number until this is
 * settled. The signal words of injury are left to the hazards of the work.
 */
export type Severity = "note" | "doubt" | "serious";

/**
 * What a finding asks for before the drive is set, the strongest first. The action for a fill is the strongest ask of all
 * findings about it.
 */
export type Ask = "look-first" | "catch-more" | "to-know";

/**
 * What ends a finding that asks to look first · more-catches: further catches of the fill · checked: the word of the person
 * who looked, in the column `checked` · excluded: the catch left out with a reason · corrected: the file put right · setup:
 * the setup put right · field-check: a later field check that agrees · answered: an entry in the setup's `answered`.
 */
export type Ending =
  | "more-catches"
  | "checked"
  | "excluded"
  | "corrected"
  | "setup"
  | "field-check"
  | "answered";

/** How a finding stands: how grave it is, what it asks for, and, where it stops the work, what ends it. */
export type Standing =
  | { readonly severity: Severity; readonly asks: "catch-more" | "to-know" }
  | {
      readonly severity: Severity;
      readonly asks: "look-first";
      readonly endedBy: readonly [Ending, ...Ending[]];
    };
