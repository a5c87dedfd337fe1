import type { Where } from "../../results/caution.ts";

/** A sentence for every code, or it does not compile. */
export type CautionSayings<Facts> = {
  readonly [C in keyof Facts]: (facts: Facts[C], where: Where) => string;
};
