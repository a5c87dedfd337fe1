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

/** How a finding stands: how grave it is, and what it asks for. */
export interface Standing {
  readonly severity: Severity;
  readonly asks: Ask;
}
