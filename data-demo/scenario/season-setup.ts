import { mean } from "simple-statistics";
import { type Bin, pea, planted, starter, wheat } from "./season-plan.ts";

const kg = (value: number): object => ({ value, unit: "kg" });
const ha = (value: number): object => ({ value, unit: "ha" });
const metres = (value: number): object => ({ value, unit: "m" });
const kmPerHour = (value: number): object => ({ value, unit: "km/h" });
const kgPerHa = (value: number): object => ({ value, unit: "kg/ha" });
const kgPerTurn = (value: number): object => ({ value, unit: "kg/turn" });

/** Meters deliver a little less in a moving field than in the yard; the share is invented. */
const fieldShare = 0.985;

/**
 * The setup that goes with the season. Two field checks belong to it: one of a fill that ran as intended, one of the
 * starter bin after its meter had moved while the drive still stood as before.
 *
 * @param deliveries true delivery of each fill, kg/turn
 */
export function seasonSetup(deliveries: ReadonlyMap<Bin, readonly number[]>): object {
  const ofFill = (bin: Bin, fill: number): number => deliveries.get(bin)?.[fill - 1] ?? Number.NaN;
  const starterBefore = mean((deliveries.get(starter) ?? []).slice(0, planted.drift.fromFill - 1));
  return {
    title: "Three bins, spring 2026 (invented)",
    tolerance_percent: 3,
    confidence_percent: 95,
    scale: { division: { value: 20, unit: "g" } },
    cart: {
      working_width: metres(12),
      speed: { from: kmPerHour(7), to: kmPerHour(9) },
      wheel_circumference: metres(2.2),
    },
    bins: [
      seedBin(wheat, 0.4, { thousandKernelMass: 42, price: 0.42, heavy: 0.6, light: 1.3 }),
      seedBin(pea, 0.55, { thousandKernelMass: 240, price: 0.55, heavy: 1.1, light: 1.9 }),
      starterBin(),
    ],
    money: {
      currency: "EUR",
      value_of_hour: 40,
      minutes_per_catch: 4,
      minutes_to_set_up: 6,
      area_ha: 270,
      area_per_fill_ha: 30,
    },
    field_checks: [
      fieldCheck(wheat, 3, 4400, 1),
      fieldCheck(starter, 8, 3800, ofFill(starter, 8) / starterBefore),
    ],
  };
}

function seedBin(
  bin: Bin,
  bookKgPerTurn: number,
  seed: { thousandKernelMass: number; price: number; heavy: number; light: number },
): object {
  return {
    bin: bin.bin,
    product: bin.product,
    target_rate: kgPerHa(bin.targetKgPerHa),
    book_value: kgPerTurn(bookKgPerTurn),
    assumed: "book value",
    drive: {
      kind: "motor",
      meter_speed: {
        from: { value: 20, unit: "turns/min" },
        to: { value: 120, unit: "turns/min" },
      },
    },
    seed: {
      thousand_kernel_mass_g: seed.thousandKernelMass,
      germination_percent: 95,
      emergence_percent: 90,
    },
    money: money(seed.price, seed.heavy, seed.light),
  };
}

function starterBin(): object {
  return {
    bin: starter.bin,
    product: starter.product,
    target_rate: kgPerHa(starter.targetKgPerHa),
    book_value: kgPerTurn(0.19),
    assumed: "book value",
    drive: { kind: "ground-wheel", ratio: 0.88, steps: [0.8, 0.84, 0.88, 0.92, 0.96] },
    money: money(0.75, 0.45, 0.9),
  };
}

function money(pricePerKg: number, heavy: number, light: number): object {
  return {
    price_per_kg: pricePerKg,
    response: {
      kind: "linear",
      heavy_cost_per_ha_per_percent: heavy,
      light_cost_per_ha_per_percent: light,
    },
  };
}

/** @param share what the meter delivered, over what the drive was set for */
function fieldCheck(bin: Bin, fill: number, filledKg: number, share: number): object {
  const used = bin.haPerFill * bin.targetKgPerHa * share * fieldShare;
  return {
    bin: bin.bin,
    product: bin.product,
    fill,
    filled: kg(filledKg),
    left: kg(Math.round((filledKg - used) / 10) * 10),
    area: ha(bin.haPerFill),
    intended_rate: kgPerHa(bin.targetKgPerHa),
  };
}
