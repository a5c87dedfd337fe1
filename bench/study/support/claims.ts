/** What a row of the study is held to, fractions. */
export interface Claim {
  readonly from?: number;
  readonly to?: number;
}

export type Verdict = "met" | "missed";

/** Whether a rate keeps its claim, allowing for two standard errors of the simulation itself. */
export function verdictOn(found: number, { from = 0, to = 1 }: Claim, seasons: number): Verdict {
  // Two successes and two failures added (Agresti & Coull 1998), so that 100 % is not taken for certain.
  const share = (found * seasons + 2) / (seasons + 4);
  const error = 2 * Math.sqrt((share * (1 - share)) / (seasons + 4));
  return found + error >= from && found - error <= to ? "met" : "missed";
}

const two = (rate: number) => String(rate).replace(/^0/, "");

/** As the page has it: "≥ .60", ".04 to .055". */
export function claimWords({ from, to }: Claim): string {
  if (from === undefined) return to === undefined ? "" : `≤ ${two(to)}`;
  return to === undefined ? `≥ ${two(from)}` : `${two(from)} to ${two(to)}`;
}
