import type { Analysis, MeterAnswers } from "../analysis/analyse.ts";
import { type FleetStanding, needsAttention } from "../analysis/fleet.ts";
import { OptionError } from "../errors/errors.ts";

/**
 * The bins and products that a report has a chapter about: all of them, or, of a fleet, those that need attention and those
 * asked for.
 *
 * @param asked  names of bins
 * @throws       OptionError for a name that no bin has
 */
export function chaptersOf(
  { meters, fleet, source }: Analysis,
  asked: readonly string[],
): readonly MeterAnswers[] {
  for (const name of asked)
    if (!meters.some(({ bin }) => bin === name))
      throw new OptionError("bin", name, `a bin that is in ${source}`);
  if (fleet === undefined) return meters;
  return fleet.meters
    .filter((one) => needsAttention(one) || asked.includes(one.bin))
    .flatMap((one) => answersAbout(one, meters) ?? []);
}

/** The answers about one meter of a fleet. */
export function answersAbout(
  { bin, product }: Pick<FleetStanding, "bin" | "product">,
  meters: readonly MeterAnswers[],
): MeterAnswers | null {
  return meters.find((one) => one.bin === bin && one.product === product) ?? null;
}
