import type { Setup } from "../../data/setup.ts";
import { type Edit, inBase, put, withoutDust } from "./setup-edit.ts";
import { type MachineTyped, numberIn, type Typed } from "./typed.ts";

/** What was typed of machine, scale and money, as changes of the setup. */
export function machineEdits(typed: MachineTyped): readonly Edit[] {
  const number = (
    one: Typed | undefined,
    path: readonly [string] | readonly [string, string],
    setup: (setup: Setup, value: number) => Setup,
    as: (value: number) => number = (value) => value,
  ): readonly Edit[] => {
    const value = one === undefined ? null : numberIn(one.text);
    if (value === null) return [];
    return [{ setup: (old) => setup(old, as(value)), file: (old) => put(old, path, value) }];
  };
  const quantity = (
    one: Typed | undefined,
    path: readonly [string, string],
    base: "kg" | "m",
    setup: (setup: Setup, value: number) => Setup,
  ): readonly Edit[] => {
    const value = one === undefined ? null : numberIn(one.text);
    const unit = one?.unit ?? base;
    if (value === null) return [];
    return [
      {
        setup: (old) => setup(old, inBase(value, unit, base)),
        file: (old) => put(old, path, { value, unit }),
      },
    ];
  };
  const area = (
    one: Typed | undefined,
    key: string,
    name: "areaHectares" | "areaPerFillHectares",
  ) => {
    const value = one === undefined ? null : numberIn(one.text);
    if (value === null) return [];
    const hectares = inBase(value, one?.unit ?? "ha", "ha");
    return number(
      { text: String(withoutDust(hectares)), unit: null },
      ["money", key],
      (setup, found) => money(setup, { [name]: found }),
    );
  };
  const exactly = (value: number) => ({ value, standardUncertainty: null });
  return [
    ...number(
      typed.tolerance,
      ["tolerance_percent"],
      (old, tolerance) => ({ ...old, tolerance }),
      share,
    ),
    ...number(
      typed.confidence,
      ["confidence_percent"],
      (old, confidence) => ({ ...old, confidence }),
      share,
    ),
    ...quantity(typed.division, ["scale", "division"], "kg", (old, divisionKg) => ({
      ...old,
      scale: { ...old.scale, divisionKg },
    })),
    ...quantity(typed.capacity, ["scale", "capacity"], "kg", (old, capacityKg) => ({
      ...old,
      scale: { ...old.scale, capacityKg },
    })),
    ...quantity(typed.width, ["cart", "working_width"], "m", (old, value) => ({
      ...old,
      cart: { ...old.cart, workingWidthM: exactly(value) },
    })),
    ...quantity(typed.wheel, ["cart", "wheel_circumference"], "m", (old, value) => ({
      ...old,
      cart: { ...old.cart, wheelCircumferenceM: exactly(value) },
    })),
    ...number(
      typed.slip,
      ["cart", "slip_percent"],
      (old, value) => ({ ...old, cart: { ...old.cart, slip: exactly(value) } }),
      share,
    ),
    ...(typed.currency === undefined ? [] : [currencyEdit(typed.currency.text.trim())]),
    ...number(typed.hour, ["money", "value_of_hour"], (old, valueOfHour) =>
      money(old, { valueOfHour }),
    ),
    ...number(typed.minutes, ["money", "minutes_per_catch"], (old, minutesPerCatch) =>
      money(old, { minutesPerCatch }),
    ),
    ...number(typed.setUp, ["money", "minutes_to_set_up"], (old, minutesToSetUp) =>
      money(old, { minutesToSetUp }),
    ),
    ...area(typed.season, "area_ha", "areaHectares"),
    ...area(typed.fillArea, "area_per_fill_ha", "areaPerFillHectares"),
  ];
}

function currencyEdit(currency: string): Edit {
  return {
    setup: (old) => money(old, { currency }),
    file: (old) => put(old, ["money", "currency"], currency),
  };
}

function money(setup: Setup, change: Partial<Setup["money"]>): Setup {
  return { ...setup, money: { ...setup.money, ...change } };
}

function share(percent: number): number {
  return percent / 100;
}
