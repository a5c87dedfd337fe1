import type { Words } from "../../wording/words.ts";
import { list, section } from "../blocks.ts";
import type { Section } from "../document.ts";

/**
 * The three lines about safety that stand at the head of whatever sends somebody to a machine.
 *
 * @param words  of the language it is read in
 */
export function safetyStrip({ report }: SafetyWords): Section {
  const { heading, lines } = report.safety.strip;
  return { ...section("safety-strip", heading, list(lines)), sign: "hazard" };
}

/** The words it needs of all. */
export interface SafetyWords {
  readonly report: Pick<Words["report"], "safety">;
}
