import type { Where } from "../../results/caution.ts";

/** A sentence or two for every code that has facts, or it does not compile: what was found, what it means, what to do. */
export type CautionSentences<Facts> = {
  readonly [Code in keyof Facts]: (facts: Facts[Code], where: Where) => string;
};
