import type {
  BinSetup,
  CartSetup,
  DriveSetup,
  FieldCheckSetup,
  Measured,
  MoneyResponse,
  MoneySetup,
  Setup,
} from "./setup.ts";
import type { SetupFile } from "./setup-schema.ts";

type FileBin = NonNullable<SetupFile["bins"]>[number];

/** The setup as the library knows it: every field there, null where the file says nothing. */
export function setupFromFile(file: SetupFile, source: string): Setup {
  return {
    source,
    title: file.title ?? null,
    tolerance: file.tolerance_percent ?? null,
    confidence: file.confidence_percent ?? null,
    assurance: file.assurance_percent ?? null,
    scale: {
      divisionKg: file.scale?.division ?? null,
      capacityKg: file.scale?.capacity ?? null,
      testedError: file.scale?.tested_error_percent ?? null,
    },
    cart: cartFrom(file.cart),
    bins: (file.bins ?? []).map(binFrom),
    money: moneyFrom(file.money),
    fieldChecks: (file.field_checks ?? []).map(fieldCheckFrom),
    answered: (file.answered ?? []).map(({ fill, ...rest }) => ({ ...rest, fill: fill ?? null })),
  };
}

function cartFrom(cart: SetupFile["cart"]): CartSetup {
  return {
    workingWidthM: cart?.working_width ?? null,
    speedKmPerH: cart?.speed ?? null,
    wheelCircumferenceM: cart?.wheel_circumference ?? null,
    skid: measured(cart?.skid_percent, cart?.skid_standard_uncertainty_percent),
    turnCountStandardUncertainty: cart?.turn_count_standard_uncertainty ?? null,
  };
}

function moneyFrom(money: SetupFile["money"]): MoneySetup {
  return {
    currency: money?.currency ?? null,
    valueOfHour: money?.value_of_hour ?? null,
    minutesPerCatch: money?.minutes_per_catch ?? null,
    minutesToSetUp: money?.minutes_to_set_up ?? null,
    areaHectares: money?.area_ha ?? null,
    areaPerFillHectares: money?.area_per_fill_ha ?? null,
  };
}

function binFrom({ seed, money, ...bin }: FileBin): BinSetup {
  return {
    bin: bin.bin,
    product: bin.product ?? null,
    targetRate: bin.target_rate ?? null,
    bookValueKgPerTurn: bin.book_value ?? null,
    assumed: bin.assumed ?? null,
    turnsPerHectare: bin.turns_per_hectare ?? null,
    drive: driveFrom(bin.drive),
    seed: seed === undefined ? null : seedFrom(seed),
    money:
      money === undefined
        ? null
        : {
            pricePerKg: money.price_per_kg ?? null,
            response: responseFrom(money.response),
            areaHectares: money.area_ha ?? null,
          },
  };
}

function seedFrom(seed: NonNullable<FileBin["seed"]>) {
  return {
    thousandKernelMassG: measured(
      seed.thousand_kernel_mass_g,
      seed.thousand_kernel_mass_standard_uncertainty_g,
    ),
    germination: measured(seed.germination_percent, seed.germination_standard_uncertainty_percent),
    emergence: measured(seed.emergence_percent, seed.emergence_standard_uncertainty_percent),
  };
}

function driveFrom(drive: FileBin["drive"]): DriveSetup | null {
  if (drive === undefined) return null;
  if (drive.kind === "motor") {
    return { kind: "motor", meterSpeedTurnsPerMin: drive.meter_speed ?? null };
  }
  return {
    kind: "ground-wheel",
    ratio: drive.ratio ?? null,
    steps: drive.steps ?? null,
    stepNames: drive.step_names ?? null,
  };
}

function responseFrom(response: NonNullable<FileBin["money"]>["response"]): MoneyResponse | null {
  if (response === undefined) return null;
  return response.kind === "linear"
    ? {
        kind: "linear",
        heavyCostPerHectarePerPercent: response.heavy_cost_per_ha_per_percent,
        lightCostPerHectarePerPercent: response.light_cost_per_ha_per_percent,
      }
    : {
        kind: "quadratic",
        curvaturePerHectarePerPercentSquared: response.curvature_per_ha_per_percent_squared,
      };
}

function fieldCheckFrom(check: NonNullable<SetupFile["field_checks"]>[number]): FieldCheckSetup {
  return {
    bin: check.bin,
    product: check.product ?? null,
    fill: check.fill ?? null,
    date: check.date ?? null,
    filledKg: check.filled,
    leftKg: check.left,
    areaHectares: check.area,
    intendedRateKgPerHectare: check.intended_rate ?? null,
    assumedDeliveryKgPerTurn: check.assumed_delivery ?? null,
  };
}

function measured(value: number | undefined, uncertainty: number | undefined): Measured | null {
  return value === undefined ? null : { value, standardUncertainty: uncertainty ?? null };
}
