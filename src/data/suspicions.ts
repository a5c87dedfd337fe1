import type { Caution } from "../results/caution.ts";
import type { Setup } from "./setup.ts";
import { exclusionsNotRead } from "./suspicions/exclusions-not-read.ts";
import { farFromSetup } from "./suspicions/far-from-setup.ts";
import { fillsSpanSeasons } from "./suspicions/fills-span-seasons.ts";
import { nearlySameNames } from "./suspicions/nearly-same-names.ts";
import { ofFigures } from "./suspicions/of-figures.ts";
import { percentsLookFractions } from "./suspicions/percents-look-fractions.ts";
import { sharesLookFractions } from "./suspicions/shares-look-fractions.ts";
import {
  type CountedLog,
  countedLog,
  type Suspecting,
  type Suspicion,
} from "./suspicions/suspect.ts";
import { yearsLookWrong } from "./suspicions/years-look-wrong.ts";
import type { CatchLog } from "./types.ts";

export type { Suspecting } from "./suspicions/suspect.ts";

/** Of columns that somebody names; at the drill they have the names that are read. */
const ofColumns: readonly Suspicion[] = [exclusionsNotRead, percentsLookFractions];

/** Of when catches were taken. */
const ofDates: readonly Suspicion[] = [yearsLookWrong, fillsSpanSeasons];

/** What happens where somebody weighs and writes, or takes over what another wrote, in the order in which it is said: causes before what they bring about. */
const ofRows: readonly Suspicion[] = [nearlySameNames, ...ofDates, ...ofFigures];

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
