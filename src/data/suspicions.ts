import type { Caution } from "../results/caution.ts";
import { bagNotEmptied } from "./suspicions/bag-not-emptied.ts";
import { counterNotReset } from "./suspicions/counter-not-reset.ts";
import { farFromFellows } from "./suspicions/far-from-fellows.ts";
import { countedLog, type Suspicion } from "./suspicions/suspect.ts";
import { turnsAllEqual } from "./suspicions/turns-all-equal.ts";
import { unitLooksWrong } from "./suspicions/unit-looks-wrong.ts";
import type { Catch, MassUnit, WrittenWeights } from "./types.ts";

/** What is suspected of catches by themselves, in the order in which it is said: causes before what they bring about. */
const ofCatches: readonly Suspicion[] = [
  counterNotReset,
  bagNotEmptied,
  unitLooksWrong,
  farFromFellows,
  turnsAllEqual,
];

/**
 * What is possible in a file of catches but rarely meant: turns counted on from catch to catch, a unit that no meter would
 * bear out, a catch far from its fellows. Catches that are left out are not looked at. Nothing is changed.
 *
 * @param written  weights as somebody wrote them, where a file was read
 */
export function suspicions(
  catches: readonly Catch[],
  massUnit: MassUnit,
  written: readonly WrittenWeights[] = [],
): readonly Caution[] {
  const log = countedLog(catches, massUnit, written);
  return ofCatches.flatMap((asks) => asks(log));
}
