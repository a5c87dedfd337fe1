import { OptionError } from "../errors/errors.ts";
import type { Meter } from "../model/meters.ts";
import { type Caution, caution } from "../results/caution.ts";
import type { Question } from "../results/question.ts";

type Ask = <T>(question: Question, answer: () => T) => T | null;

/** Asks questions so that one that fails takes nothing from the others. */
export interface Asking {
  /** For answers that what to set rests on: a failure asks to look first. */
  readonly needed: Ask;
  /** For the others: a failure is told. */
  readonly wanted: Ask;
  /** The failures so far, as findings. */
  readonly failures: () => readonly Caution[];
}

/** @throws OptionError of a question: what was asked for cannot be meant, and nothing is to be answered */
export function askingFor({ bin, product }: Pick<Meter, "bin" | "product">): Asking {
  const found: Caution[] = [];
  const ask =
    (code: "needed-not-computed" | "not-computed"): Ask =>
    (question, answer) => {
      try {
        return answer();
      } catch (error) {
        if (error instanceof OptionError) throw error;
        const reason = error instanceof Error ? error.message : String(error);
        found.push(caution(code, { bin, product }, { question, reason }));
        return null;
      }
    };
  return {
    needed: ask("needed-not-computed"),
    wanted: ask("not-computed"),
    failures: () => found,
  };
}
