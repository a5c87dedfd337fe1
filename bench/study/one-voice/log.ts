import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";

/** A log and a setup of a kind that people keep, as texts of the files. */
export interface InventedLog {
  readonly seed: number;
  /** What was planted in it. */
  readonly features: readonly string[];
  readonly rows: readonly InventedCatch[];
  /** null: no setup. */
  readonly setup: InventedSetup | null;
}

export interface InventedCatch {
  readonly bin: string;
  readonly product: string;
  readonly fill: number;
  readonly catch: number;
  readonly turns: number;
  readonly netKg: number;
  readonly checked: string;
  readonly exclude: string;
  readonly reason: string;
}

export type InventedSetup = Readonly<Record<string, unknown>> & {
  readonly bins: readonly Readonly<Record<string, unknown>>[];
};

const products = ["barley", "vetch"] as const;

/** Catches of 1 to 6 a fill: equal, tied, wild, coarsely weighed, shifted, trending, with suspects old and new. */
export function inventedLog(seed: number): InventedLog {
  const random = randomStream(seed, 11);
  const features: string[] = [];
  const has = (name: string, chance: number) => {
    if (random.uniform() >= chance) return false;
    features.push(name);
    return true;
  };
  const bins = has("two bins", 0.3) ? ["east", "west"] : ["east"];
  const rows = bins.flatMap((bin, i) => catchesOf(bin, products[i] ?? "barley", random, has));
  return {
    seed,
    features,
    rows,
    setup: has("setup", 0.6) ? setupFor(bins, rows, random, has) : null,
  };
}

type Has = (name: string, chance: number) => boolean;

function catchesOf(bin: string, product: string, random: RandomStream, has: Has): InventedCatch[] {
  const fills = random.uniform() < 0.4 ? 1 : random.integer(2, 8);
  const most = random.integer(1, 6);
  const delivery = 0.05 + 0.5 * random.uniform();
  const scatter = [0.003, 0.01, 0.02, 0.04][random.integer(0, 3)] ?? 0.01;
  const spread = [0.005, 0.02, 0.03][random.integer(0, 2)] ?? 0.02;
  const step = has("coarse scale", 0.25) ? 0.1 : 0.01;
  const turns = random.integer(1, 4) * 10;
  const twoLevels = has("two turn levels", 0.3);
  const shift = has("shifted", 0.2) ? 1 + (random.uniform() < 0.5 ? -0.08 : 0.08) : 1;
  const shiftAt = random.integer(2, Math.max(2, fills));
  const trend = has("trending", 0.1) ? 0.015 : 0;
  const changes = fills >= 3 && has("new product", 0.1);
  const equal = has("equal", 0.1);
  const wild = has("wild today", 0.12);
  const suspect = has("suspect today", 0.15);
  const old = fills > 1 && has("suspect before", 0.2);
  return Array.from({ length: fills }, (_, f) => {
    const number = f + 1;
    const moved = number >= shiftAt ? shift : 1;
    const level = delivery * (1 + spread * random.normal()) * moved * (1 + trend * f);
    const count = f === fills - 1 ? random.integer(1, most) : most;
    const isToday = number === fills;
    return Array.from({ length: count }, (_, c) => {
      const each = twoLevels && c % 2 === 1 ? 2 * turns : turns;
      const noise = equal ? 0 : scatter * Math.sqrt(20 / each) * random.normal();
      const mishap =
        c === count - 1 && isToday && wild
          ? 2
          : c === 0 && isToday && suspect
            ? 1.1
            : c === 0 && f === 0 && old
              ? 2
              : 1;
      const mass = level * each * (1 + noise) * mishap;
      return {
        bin,
        product: changes && isToday ? "oats" : product,
        fill: number,
        catch: c + 1,
        turns: each,
        netKg: Math.max(step, Math.round(mass / step) * step),
        checked: "",
        exclude: "",
        reason: "",
      };
    });
  }).flat();
}

function setupFor(
  bins: readonly string[],
  rows: readonly InventedCatch[],
  random: RandomStream,
  has: Has,
): InventedSetup {
  const tolerance = [1, 2, 3, 5, 10][random.integer(0, 4)] ?? 5;
  const entries = bins.map((bin) => {
    const ofBin = rows.filter((row) => row.bin === bin);
    const perTurn =
      ofBin.reduce((sum, { netKg, turns }) => sum + netKg / turns, 0) / Math.max(1, ofBin.length);
    return { bin, ...driveFor(perTurn, random, has) };
  });
  const checked = rows.at(-1);
  const perTurn = checked === undefined ? 0.3 : checked.netKg / checked.turns;
  const off = has("field disagrees", 0.15) ? 0.85 : 1;
  const setup = {
    ...(has("division given", 0.6) ? { scale: { division: { value: 10, unit: "g" } } } : {}),
    cart: {
      working_width: { value: 8, unit: "m" },
      speed: { from: { value: 7, unit: "km/h" }, to: { value: 8, unit: "km/h" } },
      wheel_circumference: { value: 2.2, unit: "m" },
    },
    bins: entries,
    ...(checked !== undefined && has("field check", 0.3)
      ? {
          field_checks: [
            {
              bin: checked.bin,
              product: checked.product,
              fill: checked.fill,
              filled: {
                value: perTurn * 350 * 12 * off + 100,
                unit: "kg",
                standard_uncertainty: 2,
              },
              left: { value: 100, unit: "kg", standard_uncertainty: 2 },
              area: { value: 12, unit: "ha", standard_uncertainty: 0.02 },
              intended_rate: { value: perTurn * 350, unit: "kg/ha" },
              assumed_delivery: { value: perTurn, unit: "kg/turn" },
            },
          ],
        }
      : {}),
  };
  // Last, so that what was drawn before does not depend on it.
  const priced = has("prices", 0.5) ? withPrices(setup, random) : setup;
  return has("no tolerance", 0.4) ? priced : { tolerance_percent: tolerance, ...priced };
}

function withPrices(setup: InventedSetup, random: RandomStream): InventedSetup {
  const each = [0.2, 0.8, 2][random.integer(0, 2)] ?? 0.8;
  const response =
    random.uniform() < 0.8
      ? {
          kind: "linear",
          heavy_cost_per_ha_per_percent: each,
          light_cost_per_ha_per_percent: 2 * each,
        }
      : { kind: "quadratic", curvature_per_ha_per_percent_squared: each / 10 };
  return {
    ...setup,
    money: {
      currency: "CAD",
      cost_per_catch: 4,
      cost_to_set_up: 8,
      area_per_fill_ha: [2, 15, 40, 150][random.integer(0, 3)] ?? 40,
    },
    bins: setup.bins.map((entry) => ({ ...entry, money: { response } })),
  };
}

function driveFor(
  perTurn: number,
  random: RandomStream,
  has: Has,
): Readonly<Record<string, unknown>> {
  if (has("no target", 0.3)) return {};
  const rate = perTurn * 350;
  if (has("ground wheel with steps", 0.4)) {
    const hectaresPerTurn = (8 * 2.2) / 10_000;
    const ratio = 350 * hectaresPerTurn;
    const offset = [1, 1.01, 1.02, 1.2][random.integer(0, 3)] ?? 1;
    return {
      target_rate: { value: rate, unit: "kg/ha" },
      drive: { kind: "ground-wheel", steps: [0.5 * ratio, offset * ratio, 2 * ratio] },
    };
  }
  const unreachable = has("target out of reach", 0.15) ? 9 : 1;
  return {
    target_rate: { value: rate * unreachable, unit: "kg/ha" },
    drive: {
      kind: "motor",
      meter_speed: {
        from: { value: 10, unit: "turns/min" },
        to: { value: 90, unit: "turns/min" },
      },
    },
  };
}

/** The catches as the file a person would have. */
export function csvOf(rows: readonly InventedCatch[]): string {
  const lines = rows.map((row) =>
    [
      row.bin,
      row.product,
      row.fill,
      row.catch,
      row.turns,
      row.netKg.toFixed(2),
      row.checked,
      row.exclude,
      row.reason,
    ].join(","),
  );
  return ["bin,product,fill,catch,turns,net_kg,checked,exclude,reason", ...lines, ""].join("\n");
}
