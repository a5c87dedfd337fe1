import { type MeterPlace, meterKey } from "../data/identity.ts";
import { readSetup } from "../data/read-setup.ts";
import { type BinSetup, binSetup, type Setup } from "../data/setup.ts";
import { known } from "../results/options.ts";
import type { Quantity, QuantitySpan } from "./quantities.ts";

/** What flags say that a setup file would; undefined: not given. */
export interface TypedSetup {
  readonly target?: Quantity;
  /** Mass of a bushel, for a target in bu/ac. */
  readonly bushel?: Quantity;
  readonly width?: Quantity;
  readonly speed?: QuantitySpan;
  /** Travel per turn of the drive wheel. */
  readonly wheel?: Quantity;
  /** A fraction. */
  readonly slip?: number;
  /** Meter turns per wheel turn that can be set. */
  readonly steps?: readonly number[];
  readonly meterSpeed?: QuantitySpan;
}

/**
 * The setup with what flags say put over it, by the checks that a file goes through. Target and drive go for every bin that
 * was caught.
 *
 * @param file  null: there is none
 * @throws      DataError for a value or a unit that no setup can have
 */
export function withTypedSetup(
  file: Setup | null,
  typed: TypedSetup,
  catches: readonly MeterPlace[],
): Setup | null {
  if (Object.values(typed).every((value) => value === undefined)) return file;
  const told = readSetup({ name: "flags.json", text: JSON.stringify(asFile(typed, catches)) });
  if (file === null) return told;
  const meters = distinct(catches).map((meter): BinSetup | null => {
    const own = binSetup(told, meter);
    const before = binSetup(file, meter);
    if (own === null || before === null) return own ?? before;
    return { ...before, ...known({ targetRate: own.targetRate, drive: own.drive }), ...meter };
  });
  const named = meters.flatMap((entry) => entry ?? []);
  return {
    ...file,
    cart: { ...file.cart, ...known(told.cart) },
    bins: [...named, ...file.bins.filter((entry) => !named.some((one) => isAlso(one, entry)))],
  };
}

function isAlso(one: BinSetup, other: BinSetup): boolean {
  return (
    one.bin === other.bin &&
    one.product === other.product &&
    (one.machine ?? null) === (other.machine ?? null) &&
    (one.farm ?? null) === (other.farm ?? null)
  );
}

function distinct(catches: readonly MeterPlace[]): readonly MeterPlace[] {
  return [
    ...new Map(
      catches.map((row) => {
        const { farm, machine, bin, product } = row;
        return [meterKey(row), { farm, machine, bin, product }];
      }),
    ).values(),
  ];
}

function asFile(
  { target, bushel, width, speed, wheel, slip, steps, meterSpeed }: TypedSetup,
  catches: readonly MeterPlace[],
) {
  const drive =
    wheel !== undefined || steps !== undefined
      ? { kind: "ground-wheel", steps: steps?.toSorted((a, b) => a - b) }
      : meterSpeed !== undefined
        ? { kind: "motor", meter_speed: meterSpeed }
        : undefined;
  return {
    cart: {
      working_width: width,
      speed,
      wheel_circumference: wheel,
      slip_percent: slip === undefined ? undefined : 100 * slip,
    },
    bins: [...new Set(catches.map(({ bin }) => bin))].map((bin) => ({
      bin,
      // A bushel alone is no rate, which the setup's own check then says.
      target_rate: target === undefined && bushel === undefined ? undefined : { ...target, bushel },
      drive,
    })),
  };
}
