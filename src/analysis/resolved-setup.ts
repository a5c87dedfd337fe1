import {
  type BinSetup,
  binSetup,
  type FieldCheckSetup,
  holdsFor,
  type Setup,
} from "../data/setup.ts";
import type { MassUnit } from "../data/types.ts";
import type { DriveGeometry } from "../model/drive.ts";
import { fillPricesOf } from "../model/fill-prices.ts";
import { isLawSet, lawfulRates } from "../model/lawful-rates.ts";
import type { Meter } from "../model/meters.ts";
import { type ModelChoices, modelOptionsOf } from "../model/model.ts";
import { rateAsMass } from "../model/rate-as-mass.ts";
import type { AssumedValue } from "../model/rate-error.ts";
import {
  type CatchesNeededChoices,
  type CatchesNeededOptions,
  catchesNeededOptions,
} from "../questions/catches-needed/options.ts";
import { costOptions, priceRules } from "../questions/cost/options.ts";
import { fieldCheckOptions } from "../questions/field-check/options.ts";
import { outletsOptions } from "../questions/outlets/options.ts";
import { outliersOptions } from "../questions/outliers/options.ts";
import { settingOptions } from "../questions/setting/options.ts";
import { type LawfulAim, skippingOptions } from "../questions/skipping/options.ts";
import { uncertaintyBudgetOptions } from "../questions/uncertainty-budget/options.ts";
import { defaults } from "../results/defaults.ts";
import { known, resolve, type ToleranceFrom } from "../results/options.ts";
import type { AnalysisOptions } from "./options.ts";

/** What plans rest on. */
export interface PlanningGround {
  readonly options: AnalysisOptions;
  readonly toleranceFrom: ToleranceFrom;
  readonly setup: Setup | null;
}

/** What the answers about every bin of a log rest on. */
export interface Ground extends PlanningGround {
  readonly massUnit: MassUnit;
}

/**
 * The options of every question about one bin and product; what the setup does not say keeps its default.
 *
 * @throws OptionError for a value that cannot be meant
 */
export function questionOptions(ground: Ground, meter: Pick<Meter, "place" | "product">) {
  const { options, setup } = ground;
  const entry = entryAbout(meter, setup);
  const plain = modelOptionsOf(options);
  const assumed = known({ assumed: assumedValue(entry) });
  const drive = setup === null ? {} : known(driveOf(setup, entry));
  const prices = resolve(priceRules, pricesGiven(setup, entry));
  return {
    ...plainOptions(ground),
    acrossFills: plain,
    catchesNeeded: planningOptions(ground, meter),
    cost: costOptions(plain, { ...assumed, prices: pricesGiven(setup, entry) }),
    fieldCheck: fieldCheckOptions(plain, {
      ...drive,
      ...(setup === null ? {} : fieldChecks(setup, meter)),
    }),
    outlets: outletsOptions(plain),
    setting: settingOptions(plain, {
      ...drive,
      ...known({
        target: entry?.targetRate,
        lowestRate: entry?.lowestRate,
        highestRate: entry?.highestRate,
        seed: entry?.seed,
        speedKmPerH: setup?.cart.speedKmPerH,
      }),
    }),
    skipping: skippingOptions(plain, { ...assumed, ...known({ lawful: lawfulAim(entry) }) }),
    speedLinearity: plain,
    uncertaintyBudget: uncertaintyBudgetOptions(plain, {
      ...drive,
      ...known({
        scaleTestedError: setup?.scale.testedError,
        turnCountStandardUncertainty: setup?.cart.turnCountStandardUncertainty,
        response: prices.response,
        currency: prices.currency,
      }),
    }),
  };
}

/** How a bin's meter is driven over the ground, as the setup tells it. */
export function driveOf({ cart }: Setup, entry: BinSetup | null): DriveGeometry {
  return {
    workingWidthM: cart.workingWidthM,
    drive: entry?.drive ?? null,
    wheelTravelM: cart.wheelCircumferenceM,
    slip: cart.slip,
    turnsPerHectare: entry?.turnsPerHectare ?? null,
  };
}

/** The options of the questions that no setup has to be asked for. */
export function plainOptions({ options, massUnit }: Pick<Ground, "options" | "massUnit">) {
  const plain = modelOptionsOf(options);
  return {
    delivery: options,
    drift: { ...plain, shiftOfInterest: defaults.shiftOfInterest },
    outliers: outliersOptions(plain, { massUnit }),
    repeatability: plain,
  };
}

/**
 * How further catches are planned.
 *
 * @param meter  the bin and product; null: before any catch, when none is known yet
 */
export function planningOptions(
  ground: PlanningGround,
  meter: Pick<Meter, "place" | "product"> | null,
): CatchesNeededOptions {
  const { setup } = ground;
  const entry = meter === null ? null : entryAbout(meter, setup);
  return plannedBy(
    ground,
    known({
      assurance: setup?.assurance,
      heaviestCatchKg: setup?.scale.capacityKg,
      prices: fillPricesOf(resolve(priceRules, pricesGiven(setup, entry))),
      assumed: assumedValue(entry),
      lawfulRates: entry !== null && isLawSet(entry) ? "given" : null,
    }),
  );
}

/**
 * The same by options alone.
 *
 * @param told  what a setup says; the options count before it
 */
export function plannedBy(
  { options, toleranceFrom }: Pick<PlanningGround, "options" | "toleranceFrom">,
  told: Partial<CatchesNeededChoices> = {},
): CatchesNeededOptions {
  return catchesNeededOptions(options, { toleranceFrom, ...told, ...options.planning });
}

/** How the log is to be read; the setup says before which of the fills a meter was opened or changed. */
export function modelChoices(
  { drift, borrow, library, assumedSpread, assumedScatter }: AnalysisOptions,
  setup: Setup | null,
): ModelChoices {
  const startsAfresh = (setup?.bins ?? []).flatMap(({ startsAfresh: fill, ...entry }) => {
    const { bin, product, machine, farm, season } = entry;
    return fill === null ? [] : [{ bin, product, fill, ...known({ machine, farm, season }) }];
  });
  const assumed = { spread: assumedSpread, scatter: assumedScatter };
  return { asked: drift, startsAfresh, borrowing: { borrow, library, assumed } };
}

function entryAbout(
  { place, product }: Pick<Meter, "place" | "product">,
  setup: Setup | null,
): BinSetup | null {
  return setup === null ? null : binSetup(setup, { ...place, product });
}

/** What the setup says of prices: for every bin, and for this one. */
function pricesGiven(setup: Setup | null, entry: BinSetup | null) {
  return {
    ...known(setup?.money),
    ...known(entry?.money),
    ...known({ targetKgPerHectare: targetMass(entry) }),
  };
}

/** What the drive would be left at, as the setup says; null: it does not say, or names a book value without one. */
function assumedValue(entry: BinSetup | null): AssumedValue | null {
  const source = entry?.assumed ?? "book value";
  if (source !== "book value") return { source };
  const book = entry?.bookValueKgPerTurn;
  return book == null ? null : { source, kgPerTurn: book.value };
}

/** What label or law sets, beside the target as mass; null: nothing. */
function lawfulAim(entry: BinSetup | null): LawfulAim | null {
  const byLaw = entry === null ? null : lawfulRates(entry, entry.seed);
  if (entry === null || byLaw === null) return null;
  const target = entry.targetRate === null ? null : rateAsMass(entry.targetRate, entry.seed).rate;
  return { ...byLaw.rates, targetKgPerHa: target?.value ?? null };
}

function targetMass(entry: BinSetup | null): number | null {
  return entry?.targetRate?.kind === "mass" ? entry.targetRate.kgPerHectare : null;
}

/** A check that names no product belongs to whatever is in the bin. Dated checks come in order of time, the others last. */
function fieldChecks(
  { fieldChecks: all }: Setup,
  { place, product }: Pick<Meter, "place" | "product">,
) {
  const last = "9999";
  const ofMeter = (check: FieldCheckSetup) => holdsFor(check, { ...place, product });
  const checks = all
    .filter(ofMeter)
    .sort((a, b) => ((a.date ?? last) < (b.date ?? last) ? -1 : a.date === b.date ? 0 : 1));
  return { checks, checksInLog: all.length };
}
