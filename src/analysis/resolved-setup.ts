import { binSetup, type Setup } from "../data/setup.ts";
import { type DriveGeometry, noDrive } from "../model/drive.ts";
import type { FreshStart } from "../model/history.ts";
import { type FieldCheckChoices, fieldCheckDefaults } from "../questions/field-check/options.ts";
import { type SettingChoices, settingDefaults } from "../questions/setting/options.ts";
import {
  type UncertaintyBudgetChoices,
  uncertaintyBudgetDefaults,
} from "../questions/uncertainty-budget/options.ts";

/** What each question about drive and field is told by the setup; null where the setup says nothing. */

export function settingChoices(setup: Setup | null, bin: string, product: string): SettingChoices {
  if (setup === null) return settingDefaults;
  const entry = binSetup(setup, bin, product);
  return {
    ...driveGeometry(setup, bin, product),
    target: entry?.targetRate ?? null,
    seed: entry?.seed ?? null,
    speedKmPerH: setup.cart.speedKmPerH,
  };
}

export function uncertaintyBudgetChoices(
  setup: Setup | null,
  bin: string,
  product: string,
): UncertaintyBudgetChoices {
  if (setup === null) return uncertaintyBudgetDefaults;
  return {
    ...uncertaintyBudgetDefaults,
    ...driveGeometry(setup, bin, product),
    scaleTestedError: setup.scale.testedError,
    turnCountStandardUncertainty: setup.cart.turnCountStandardUncertainty,
  };
}

export function fieldCheckChoices(
  setup: Setup | null,
  bin: string,
  product: string,
): FieldCheckChoices {
  if (setup === null) return fieldCheckDefaults;
  const checks = fieldChecksOf(setup, bin, product);
  return { ...driveGeometry(setup, bin, product), checks, checksInLog: setup.fieldChecks.length };
}

/** Fills before which the setup says that a meter was opened or changed. */
export function freshStarts({ bins }: Setup): readonly FreshStart[] {
  return bins.flatMap(({ bin, product, startsAfresh }) =>
    startsAfresh === null ? [] : [{ bin, product, fill: startsAfresh }],
  );
}

function driveGeometry(setup: Setup, bin: string, product: string): DriveGeometry {
  const entry = binSetup(setup, bin, product);
  return {
    ...noDrive,
    workingWidthM: setup.cart.workingWidthM,
    wheelTravelM: setup.cart.wheelCircumferenceM,
    slip: setup.cart.slip,
    drive: entry?.drive ?? null,
    turnsPerHectare: entry?.turnsPerHectare ?? null,
  };
}

/** A check that names no product belongs to whatever is in the bin. Dated checks come in order of time, the others last. */
function fieldChecksOf(
  { fieldChecks }: Setup,
  bin: string,
  product: string,
): FieldCheckChoices["checks"] {
  const last = "9999";
  return fieldChecks
    .filter((check) => check.bin === bin && (check.product === null || check.product === product))
    .sort((a, b) => ((a.date ?? last) < (b.date ?? last) ? -1 : a.date === b.date ? 0 : 1));
}
