import { OptionError } from "../errors/errors.ts";
import type { Meter } from "../model/meters.ts";
import { type Caution, caution } from "../results/caution.ts";
import { type Question, questions } from "../results/question.ts";

/** Asks questions so that one that fails takes nothing from the others. */
export interface Asking {
  /** The answer; null: it could not be computed. */
  readonly ask: <T>(question: Question, answer: () => T) => T | null;
  /** The failures so far, as findings. */
  readonly failures: () => readonly Caution[];
}

const needed: ReadonlySet<Question> = new Set(
  questions.filter(({ answer }) => answer === "needed").map(({ name }) => name),
);

/** @throws OptionError of a question: what was asked for cannot be meant, and nothing is to be answered */
export function askingFor({ bin, product }: Pick<Meter, "bin" | "product">): Asking {
  const found: Caution[] = [];
  return {
    ask: (question, answer) => {
      try {
        return answer();
      } catch (error) {
        if (error instanceof OptionError) throw error;
        const reason = error instanceof Error ? error.message : String(error);
        const code = needed.has(question) ? "needed-not-computed" : "not-computed";
        found.push(caution(code, { bin, product }, { question, reason }));
        return null;
      }
    },
    failures: () => found,
  };
}
