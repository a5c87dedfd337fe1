import { at } from "../../errors/at.ts";
import { dfOfInterval } from "../../model/interval-df.ts";
import {
  type ChanceOutsideLaw,
  chanceOutsideLaw,
  type LawfulRates,
  lawfulErrors,
} from "../../model/lawful-rates.ts";
import type { LawfulSetting, RateAtSetting, Setting } from "./result.ts";

const unknown: ChanceOutsideLaw = { below: null, above: null, either: null };

/**
 * How likely does the rate break label or law once the drive is set as said: to the nearest step where it has steps, else
 * to the setting needed? Student's t about that rate, on its standard error and the degrees of freedom that make its interval
 * of it, so that chance and interval say the same.
 */
export function lawfulSetting(
  rates: LawfulRates,
  answer: Pick<Setting, "target" | "steps" | "nearest" | "around" | "ratio" | "turnsPerHectare">,
): LawfulSetting {
  const onceSet = rateOnceSet(answer);
  if (onceSet === null) return { ...rates, rate: null, ofStep: false, chance: unknown };
  const { rate, ofStep } = onceSet;
  const { value, standardError } = rate;
  const df = dfOfInterval(rate);
  if (standardError === null || df === null) return { ...rates, rate, ofStep, chance: unknown };
  const law = { location: 0, scale: standardError / value, df };
  return { ...rates, rate, ofStep, chance: chanceOutsideLaw(law, lawfulErrors(rates, value)) };
}

/** @returns null: without a target nobody knows what is set */
function rateOnceSet({
  target,
  steps,
  nearest,
  around,
  ratio,
  turnsPerHectare,
}: Parameters<typeof lawfulSetting>[1]):
  | (Pick<LawfulSetting, "ofStep"> & Pick<RateAtSetting, "rate">)
  | null {
  if (target === null) return null;
  if (nearest !== null) return { rate: at(steps, nearest.nearest).rate, ofStep: true };
  const needed = (ratio ?? turnsPerHectare)?.value;
  const row = around?.rows.find(({ setting }) => setting === needed);
  return row === undefined ? null : { rate: row.rate, ofStep: false };
}
