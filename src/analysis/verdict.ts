import type { AcrossFillsAnswer } from "../questions/across-fills.ts";
import type { Delivery } from "../questions/delivery.ts";

/** Where one bin stands, in a word. The wording layer makes the sentence and the next step of it. */
export type Verdict =
  | { readonly code: "check-first" }
  | { readonly code: "moved" }
  | { readonly code: "known-well-enough" }
  /** null: more catches of these turns alone do not reach the tolerance. */
  | { readonly code: "not-yet"; readonly moreCatches: number | null }
  | { readonly code: "unknown" };

/**
 * Sums up one bin. A serious finding about the fill in the bin comes before everything else, because the figure may
 * be wrong whatever its interval says.
 */
export function verdictOf(delivery: Delivery, across: AcrossFillsAnswer): Verdict {
  if (delivery.cautions.some(({ severity }) => severity === "serious"))
    return { code: "check-first" };
  const halfWidth = relativeHalfWidth(delivery);
  if (halfWidth === null) return { code: "unknown" };
  const { curve } = across;
  if (halfWidth <= curve.tolerance) return { code: "known-well-enough" };
  const enough = curve.points.find(
    ({ catches, halfWidth: width }) =>
      catches > delivery.input.catches && width !== null && width <= curve.tolerance,
  );
  return {
    code: "not-yet",
    moreCatches: enough === undefined ? null : enough.catches - delivery.input.catches,
  };
}

function relativeHalfWidth({ estimate }: Delivery): number | null {
  const upper = estimate.interval?.upper ?? null;
  return upper === null ? null : (upper - estimate.value) / estimate.value;
}
