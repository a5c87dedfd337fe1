import type { Analysis, MeterAnswers } from "../analysis/analyse.ts";
import { type FleetStanding, needsAttention } from "../analysis/fleet.ts";
import { OptionError } from "../errors/errors.ts";
import type { Edition } from "./editions/edition.ts";

/**
 * The bins and products that a report has a chapter about: all of them; of a fleet, those that need attention and those
 * asked for; of a trial in the short edition, those asked for.
 *
 * @param asked  names of bins
 * @throws       OptionError for a name that no bin has
 */
export function chaptersOf(
  { meters, fleet, trial, source }: Analysis,
  asked: readonly string[],
  edition: Edition,
): readonly MeterAnswers[] {
  for (const name of asked)
    if (!meters.some(({ bin }) => bin === name))
      throw new OptionError("bin", name, { need: "bin-in", facts: { source } });
  if (trial !== undefined && edition === "short")
    return meters.filter(({ bin }) => asked.includes(bin));
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
