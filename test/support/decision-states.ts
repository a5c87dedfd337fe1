import { type Analysis, analyse } from "../../src/analysis/analyse.ts";
import type { AnalysisOptions } from "../../src/analysis/options.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { readSetup } from "../../src/data/read-setup.ts";

/** Catches and a setup as the texts of the files that a person has. */
export interface State {
  readonly catches: string;
  /** null: none. */
  readonly setup: object | null;
}

/** A fill of bin 1 by its masses, 20 turns each unless said. */
export interface FillOfMasses {
  readonly fill?: number;
  readonly product?: string;
  readonly bin?: string;
  /** Of every catch, or of each. */
  readonly turns?: number | readonly number[];
  readonly masses: readonly number[];
  /** Numbers of catches that are left out. */
  readonly leftOut?: readonly number[];
  readonly date?: string;
}

export function catchesOf(...fills: readonly FillOfMasses[]): string {
  const rows = fills.flatMap(
    ({ fill = 1, product = "pea", bin = "1", turns = 20, masses, leftOut = [], date = "" }) =>
      masses.map((mass, i) => {
        const out = leftOut.includes(i + 1) ? "yes,spilled" : ",";
        const each = typeof turns === "number" ? turns : turns[i];
        return [bin, product, fill, i + 1, each, mass, out, date].join(",");
      }),
  );
  return `bin,product,fill,catch,turns,net_kg,exclude,reason,taken_at\n${rows.join("\n")}\n`;
}

export async function analysisOf(
  { catches, setup }: State,
  options: Partial<AnalysisOptions> = {},
): Promise<Analysis> {
  const log = await readCatches({ name: "catches.csv", text: catches });
  const read =
    setup === null ? null : readSetup({ name: "setup.json", text: JSON.stringify(setup) });
  return analyse(log, read, options);
}

const scale = { division: { value: 20, unit: "g" } };

/** A cart that is 9 m wide and driven at 7 to 9 km/h. */
const cart = {
  working_width: { value: 9, unit: "m" },
  speed: { from: { value: 7, unit: "km/h" }, to: { value: 9, unit: "km/h" } },
  wheel_circumference: { value: 2.2, unit: "m" },
};

/** A motor from 20 to 120 turns a minute with a target rate. */
export function motorFor(kgPerHectare: number) {
  return {
    bin: "1",
    target_rate: { value: kgPerHectare, unit: "kg/ha" },
    drive: {
      kind: "motor",
      meter_speed: {
        from: { value: 20, unit: "turns/min" },
        to: { value: 120, unit: "turns/min" },
      },
    },
  };
}

/** A ground wheel with these ratios, and a target rate; at 0.3233 kg/turn 160 kg/ha need a ratio of 0.98. */
export function stepsFor(kgPerHectare: number, steps: readonly number[]) {
  return {
    bin: "1",
    target_rate: { value: kgPerHectare, unit: "kg/ha" },
    drive: { kind: "ground-wheel", steps },
  };
}

/** A field check of fill 1 that got so much of the 160 kg/ha that were intended. */
export function fieldCheckOf(share: number, date: string) {
  return {
    bin: "1",
    fill: 1,
    date,
    filled: { value: 1600 * share + 50, unit: "kg", standard_uncertainty: 3 },
    left: { value: 50, unit: "kg", standard_uncertainty: 1 },
    area: { value: 10, unit: "ha", standard_uncertainty: 0.05 },
    intended_rate: { value: 160, unit: "kg/ha" },
    assumed_delivery: { value: 0.323125, unit: "kg/turn" },
  };
}

const morning = [6.36, 6.48, 6.56];
/** Known within ± 10 %. */
const morningWide = [6.1, 6.48, 6.62];
/** Eight catches that agree to a third of a percent: known within ± 0.6 %. */
const eight = [6.46, 6.48, 6.44, 6.46, 6.48, 6.46, 6.44, 6.48];
const earlier: readonly FillOfMasses[] = [
  { fill: 1, masses: [6.42, 6.5, 6.44] },
  { fill: 2, masses: [6.3, 6.22, 6.26] },
  { fill: 3, masses: [6.52, 6.6, 6.56] },
];

const seven: readonly FillOfMasses[] = [
  ...earlier,
  { fill: 4, masses: [6.4, 6.44, 6.5] },
  { fill: 5, masses: [6.36, 6.3, 6.4] },
  { fill: 6, masses: [6.5, 6.44, 6.48] },
  { fill: 7, masses: [6.4, 6.5, 6.45] },
];

/** Rates that label or law sets, in kg/ha; null: none of that end. */
function lawful(lowest: number | null, highest: number | null) {
  const rate = (value: number) => ({ value, unit: "kg/ha" });
  return {
    ...(lowest === null ? {} : { lowest_rate: rate(lowest) }),
    ...(highest === null ? {} : { highest_rate: rate(highest) }),
  };
}

const byLaw = (...ends: Parameters<typeof lawful>) => ({ ...motorFor(160), ...lawful(...ends) });

/** Two bins of the same morning. */
const otherBins: readonly FillOfMasses[] = [
  { bin: "2", masses: [5.48, 5.57, 5.5] },
  { bin: "3", masses: [6.33, 6.2, 6.28] },
];

const of = (fills: readonly FillOfMasses[], tolerance: number, setup: object = {}): State => ({
  catches: catchesOf(...fills),
  setup: { tolerance_percent: tolerance, scale, cart, ...setup },
});
const today = (masses: readonly number[], tolerance: number, setup: object = {}) =>
  of([{ masses }], tolerance, setup);

/** Catches of which every further one has a price, and a rate error too, on so many hectares; nobody gave a tolerance. */
const priced = (hectares: number, masses: readonly number[] = morning): State => ({
  catches: catchesOf({ masses }),
  setup: {
    scale,
    money: { currency: "CAD", cost_per_catch: 4, cost_to_set_up: 8, area_per_fill_ha: hectares },
    bins: [
      {
        bin: "1",
        money: {
          response: {
            kind: "linear",
            heavy_cost_per_ha_per_percent: 0.6,
            light_cost_per_ha_per_percent: 0.6,
          },
        },
      },
    ],
  },
});

/** A state for every way in which a decision can come about, by what is special about it. */
export const states = {
  "one catch": today([6.4], 5),
  "one catch after other fills": of([...earlier, { fill: 4, masses: [6.4] }], 5),
  "one catch beside other bins": of([{ masses: [6.02] }, ...otherBins], 3),
  "two catches beside other bins": of([{ masses: [6.02, 5.91] }, ...otherBins], 3),
  "two catches": today([6.36, 6.48], 5),
  "two catches after other fills": of([...earlier, { fill: 4, masses: [6.36, 6.48] }], 3),
  "equal weights, no division": {
    catches: catchesOf({ masses: [6.4, 6.4, 6.4] }),
    setup: { tolerance_percent: 3 },
  },
  /** Of more figures than a scale shows, so that nothing can be read from them. */
  "equal weights, worked out": {
    catches: catchesOf({ masses: [6.4000001, 6.4000001, 6.4000001] }),
    setup: { tolerance_percent: 3 },
  },
  "equal weights": today([6.4, 6.4, 6.4], 3),
  "short of the tolerance": today(morning, 3),
  "a tolerance that longer catches reach": today([6.36, 6.48, 6.56, 6.4, 6.5, 6.44], 1),
  "a tolerance that no catches reach": today(morning, 0.5, {
    scale: { ...scale, capacity: { value: 7, unit: "kg" } },
  }),
  "as many catches as there may be": today([6.36, 6.48, 6.56, 6.3, 6.42, 6.5, 6.34, 6.52], 0.5),
  "a scale too coarse": today([6, 6.5, 6, 6.5], 5, {
    scale: { division: { value: 500, unit: "g" }, capacity: { value: 40, unit: "kg" } },
  }),
  enough: today(eight, 3, { bins: [motorFor(160)] }),
  "enough, nothing to drive": today(eight, 3),
  "enough, assumed tolerance": {
    catches: catchesOf({ masses: eight }),
    setup: { scale },
  },
  "enough, a step of a ground wheel": today(eight, 3, {
    bins: [stepsFor(160, [0.9, 0.978, 1.06])],
  }),
  "enough, any ratio": today(eight, 3, {
    bins: [{ ...stepsFor(160, [1]), drive: { kind: "ground-wheel" } }],
  }),
  "a target out of reach": today(morning, 3, { bins: [motorFor(600)] }),
  "the nearest step too far off": today(eight, 3, { bins: [stepsFor(160, [0.8, 1.2])] }),
  "a step that uses up some of the tolerance": today([6.4, 6.48, 6.45], 3, {
    bins: [stepsFor(160, [0.9, 0.963, 1.1])],
  }),
  "a step that leaves a chance": today(eight, 3, { bins: [stepsFor(160, [0.9, 0.952, 1.1])] }),
  "rates by law, kept": today(eight, 3, { bins: [byLaw(140, 180)] }),
  "rates by law after seven fills": of(seven, 5, { bins: [byLaw(150, 175)] }),
  "a rate that may break the law": today(eight, 3, { bins: [byLaw(null, 160.3)] }),
  "a rate that may break the law, and catches left": today([6.46, 6.48, 6.44, 6.46], 3, {
    bins: [byLaw(null, 160.4)],
  }),
  "a target against the law": today(eight, 3, { bins: [byLaw(null, 150)] }),
  "a step against the law": today(eight, 3, {
    bins: [{ ...stepsFor(160, [0.9, 0.963, 1.1]), ...lawful(158, null) }],
  }),
  "a field check that disagrees": today(eight, 3, {
    bins: [motorFor(160)],
    field_checks: [fieldCheckOf(0.875, "2026-04-12")],
  }),
  "a field check that disagreed before": today(eight, 3, {
    bins: [motorFor(160)],
    field_checks: [fieldCheckOf(0.875, "2026-04-12"), fieldCheckOf(1, "2026-04-20")],
  }),
  "a field check answered": today(eight, 3, {
    bins: [motorFor(160)],
    field_checks: [fieldCheckOf(0.875, "2026-04-12")],
    answered: [{ code: "field-disagrees", bin: "1", note: "area measured again" }],
  }),
  "another unit": today([6400, 6500, 6450], 3),
  "another unit, answered": today([6400, 6500, 6450], 3, {
    answered: [{ code: "unit-looks-wrong", bin: "1", fill: 1, note: "a grain auger" }],
  }),
  "enough by money": priced(10),
  "catches that pay": priced(120),
  "wide, and enough by money": priced(1, morningWide),
  "a tolerance beside money": {
    ...priced(10),
    setup: { ...priced(10).setup, tolerance_percent: 5 },
  },
  "a misplaced decimal": today([6.3, 6.4, 6.35, 64], 3),
  "the newest fill left out": of([...earlier, { fill: 4, masses: [9.1, 9.2], leftOut: [1, 2] }], 3),
  "another product in the bin": of(
    [
      { fill: 1, masses: morning, date: "2026-04-01" },
      { fill: 2, product: "oat", masses: eight, date: "2026-04-09" },
    ],
    3,
  ),
  "a tare left in": of(
    [{ turns: [10, 10, 40, 40, 20], masses: [3.4, 3.42, 12.42, 12.38, 6.42] }],
    3,
  ),
  "a delivery not told from zero": today([6, 6.7], 3, {
    confidence_percent: 99,
    bins: [motorFor(160)],
  }),
  "two catches that disagree": today([6, 3.1], 5),
  "three catches that disagree": today([6.3, 6.4, 12.7], 5),
  "a suspect catch": of([...earlier, { fill: 4, masses: [6.4, 6.45, 7.3, 6.42, 6.38] }], 3),
  "more suspects than can be told": of(
    [...earlier, { fill: 4, masses: [6.42, 7.9, 6.5, 5.1, 6.38, 8.6] }],
    3,
  ),
  "a pair that disagrees": of([...earlier, { fill: 4, masses: [6.1, 8.2] }], 3),
} as const satisfies Readonly<Record<string, State>>;

export type StateName = keyof typeof states;
