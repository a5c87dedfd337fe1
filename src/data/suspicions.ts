import type { Caution } from "../results/caution.ts";
import type { Setup } from "./setup.ts";
import { bagNotEmptied } from "./suspicions/bag-not-emptied.ts";
import { binsSwapped } from "./suspicions/bins-swapped.ts";
import { counterNotReset } from "./suspicions/counter-not-reset.ts";
import { exclusionsNotRead } from "./suspicions/exclusions-not-read.ts";
import { farFromFellows } from "./suspicions/far-from-fellows.ts";
import { farFromOthers } from "./suspicions/far-from-others.ts";
import { farFromSetup } from "./suspicions/far-from-setup.ts";
import { fillsSpanSeasons } from "./suspicions/fills-span-seasons.ts";
import { nearlySameNames } from "./suspicions/nearly-same-names.ts";
import { netAndTurnsSwapped } from "./suspicions/net-and-turns-swapped.ts";
import { pastedAgain } from "./suspicions/pasted-again.ts";
import { percentsLookFractions } from "./suspicions/percents-look-fractions.ts";
import { sharesLookFractions } from "./suspicions/shares-look-fractions.ts";
import { type CountedLog, countedLog, type Suspicion } from "./suspicions/suspect.ts";
import { turnsAllEqual } from "./suspicions/turns-all-equal.ts";
import { unitLooksWrong } from "./suspicions/unit-looks-wrong.ts";
import { yearsLookWrong } from "./suspicions/years-look-wrong.ts";
import type { Catch, CatchLog, MassUnit, WrittenWeights } from "./types.ts";

/** Of columns that somebody names; at the drill they have the names that are read. */
const ofColumns: readonly Suspicion[] = [exclusionsNotRead, percentsLookFractions];

/** Of when catches were taken. */
const ofDates: readonly Suspicion[] = [yearsLookWrong, fillsSpanSeasons];

/** Of turns and masses. */
const ofFigures: readonly Suspicion[] = [
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

/** What happens where somebody weighs and writes, or takes over what another wrote, in the order in which it is said: causes before what they bring about. */
const ofRows: readonly Suspicion[] = [nearlySameNames, ...ofDates, ...ofFigures];

/** Asks what is suspected of catches. */
export type Suspecting = (
  catches: readonly Catch[],
  massUnit: MassUnit,
  written?: readonly WrittenWeights[],
) => readonly Caution[];

/**
 * What is possible in a file of catches but rarely meant: turns counted on from catch to catch, a unit that no meter would
 * bear out, a catch far from its fellows. Catches that are left out are not looked at. Nothing is changed.
 *
 * @param written  weights as somebody wrote them, where a file was read
 */
export const suspicions: Suspecting = (catches, massUnit, written = []) => {
  const log = countedLog(catches, massUnit, written);
  return [...ofColumns, ...ofRows].flatMap((asks) => asks(log));
};

/** The same of catches that were typed under the names that are read. */
export const suspicionsOfTyped: Suspecting = (catches, massUnit, written = []) => {
  const log = countedLog(catches, massUnit, written);
  return ofRows.flatMap((asks) => asks(log));
};

/** The same of catches of which nothing but turns, masses and names is known. */
export const suspicionsOfPlain: Suspecting = (catches, massUnit, written = []) => {
  const log = countedLog(catches, massUnit, written);
  return [nearlySameNames, ...ofFigures].flatMap((asks) => asks(log));
};

/** What is suspected of catches and the setup beside one another. */
const besideSetup: readonly ((setup: Setup, log: CountedLog) => readonly Caution[])[] = [
  farFromSetup,
  sharesLookFractions,
];

/** What is possible in a setup beside these catches but rarely meant; without a setup nothing. */
export function suspicionsBeside(
  setup: Setup | null,
  { catches, massUnit, written = [] }: CatchLog,
): readonly Caution[] {
  if (setup === null) return [];
  const log = countedLog(catches, massUnit, written);
  return besideSetup.flatMap((asks) => asks(setup, log));
}
