import { bagNotEmptied } from "./bag-not-emptied.ts";
import { binsSwapped } from "./bins-swapped.ts";
import { counterNotReset } from "./counter-not-reset.ts";
import { farFromFellows } from "./far-from-fellows.ts";
import { farFromOthers } from "./far-from-others.ts";
import { netAndTurnsSwapped } from "./net-and-turns-swapped.ts";
import { pastedAgain } from "./pasted-again.ts";
import type { Suspicion } from "./suspect.ts";
import { turnsAllEqual } from "./turns-all-equal.ts";
import { unitLooksWrong } from "./unit-looks-wrong.ts";

/** Of turns and masses. */
export const ofFigures: readonly Suspicion[] = [
  pastedAgain,
  binsSwapped,
  counterNotReset,
  bagNotEmptied,
  netAndTurnsSwapped,
  unitLooksWrong,
  farFromOthers,
  farFromFellows,
  turnsAllEqual,
];
