import { resolveOptions } from "../../src/analysis/options.ts";
import { questionOptions } from "../../src/analysis/resolved-setup.ts";
import type { FieldCheckSetup } from "../../src/data/setup.ts";
import type { Catch } from "../../src/data/types.ts";
import { fitModel } from "../../src/model/model.ts";
import { delivery } from "../../src/questions/delivery.ts";
import {
  type FieldCheckChoices,
  fieldCheckOptions,
} from "../../src/questions/field-check/options.ts";
import { type FieldCheck, fieldCheck } from "../../src/questions/field-check.ts";
import { type OutletsChoices, outletsOptions } from "../../src/questions/outlets/options.ts";
import { type Outlets, outlets } from "../../src/questions/outlets.ts";
import { type SettingChoices, settingOptions } from "../../src/questions/setting/options.ts";
import { type Setting, setting } from "../../src/questions/setting.ts";
import { type SpeedLinearity, speedLinearity } from "../../src/questions/speed-linearity.ts";
import {
  type UncertaintyBudgetChoices,
  uncertaintyBudgetOptions,
} from "../../src/questions/uncertainty-budget/options.ts";
import {
  type UncertaintyBudget,
  uncertaintyBudget,
} from "../../src/questions/uncertainty-budget.ts";
import { aCatch } from "./catches.ts";
import { demo } from "./demo.ts";
import { present } from "./reference.ts";
import { inventedFills } from "./simulated-fills.ts";

export const model = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };

/** Five invented fills of about 0.3 kg/turn, turned at 40 and 60 turns/min. */
export const log: readonly Catch[] = inventedFills(
  { fills: 5, catches: 4, spread: 0.02, scatter: 0.012 },
  17,
).map((row, i) => ({ ...row, meterRpm: i % 2 === 0 ? 40 : 60 }));

const measured = (value: number, standardUncertainty: number | null = null) => ({
  value,
  standardUncertainty,
});

/** An invented ground-wheel drive with everything measured. */
export const wheelDrive = {
  workingWidthM: measured(12, 0.05),
  wheelTravelM: measured(2.2, 0.01),
  slip: measured(0.03, 0.01),
  drive: {
    kind: "ground-wheel",
    ratio: 0.9,
    steps: [0.8, 0.9, 1, 1.1],
    stepNames: ["low", "middle", "high", "top"],
  },
} as const;

export const motorDrive = {
  workingWidthM: measured(12),
  drive: { kind: "motor", meterSpeedTurnsPerMin: { from: 20, to: 120 } },
} as const;

export const speeds = { speedKmPerH: { from: 6, to: 8 } };
export const wanted = { target: { kind: "mass", kgPerHectare: 110 } } as const;

function meterOf(catches: readonly Catch[], place = 0) {
  const meter = present(fitModel(catches, model).meters[place]);
  return { meter, answer: delivery(meter, { ...model, varianceLaw: "proportional" }) };
}

export function set(given: Partial<SettingChoices>, catches = log): Setting {
  const { meter, answer } = meterOf(catches);
  return setting(meter, answer, settingOptions(model, given));
}

export function speedOf(catches = log): SpeedLinearity {
  return present(speedLinearity(meterOf(catches).meter, model));
}

export function budgetOf(
  given: Partial<UncertaintyBudgetChoices>,
  catches = log,
): UncertaintyBudget {
  const { meter, answer } = meterOf(catches);
  return uncertaintyBudget(
    meter,
    answer,
    uncertaintyBudgetOptions(model, { draws: 20_000, ...given }),
  );
}

/** An invented field check of a fill, 110 kg/ha intended. */
export function aCheck(leftKg: number, given: Partial<FieldCheckSetup> = {}): FieldCheckSetup {
  return {
    bin: "1",
    product: "wheat",
    fill: 2,
    date: "2026-04-12",
    filledKg: measured(3000, 5),
    leftKg: measured(leftKg, 5),
    areaHectares: measured(25, 0.1),
    intendedRateKgPerHectare: 110,
    assumedDeliveryKgPerTurn: 0.3,
    ...given,
  };
}

export function checked(
  checks: readonly FieldCheckSetup[],
  given: Partial<FieldCheckChoices> = {},
): FieldCheck {
  const { meter } = meterOf(log);
  return present(fieldCheck(meter, fieldCheckOptions(model, { checks, ...given })));
}

/** Outlets a, b, c … caught once each, or twice. */
export function evenness(
  relative: readonly number[],
  times = 1,
  given: Partial<OutletsChoices> = {},
): Outlets {
  const rows = Array.from({ length: times }, (_, time) =>
    relative.map((size, i) =>
      aCatch({
        catch: 1 + i + time * relative.length,
        turns: 10,
        netKg: 3 * (1 + size) * (1 + 0.004 * time),
        outlet: String.fromCharCode(97 + i),
      }),
    ),
  ).flat();
  return present(outlets(meterOf(rows).meter, outletsOptions(model, given)));
}

/** The settings of the demo season, one a bin. */
export async function seasonSettings(): Promise<readonly Setting[]> {
  const { log: season, setup } = await demo("season");
  const options = resolveOptions(model, setup);
  return fitModel(season.catches, model).meters.map((meter) => {
    const { massUnit } = season;
    const asked = questionOptions({ options, toleranceFrom: "option", setup, massUnit }, meter);
    return setting(meter, delivery(meter, asked.delivery), asked.setting);
  });
}
