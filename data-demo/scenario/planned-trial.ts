import { setupOfPlan } from "../../src/cli/setup-of-plan.ts";
import { trialPlanOptions } from "../../src/questions/trial-plan/options.ts";
import type { SheetRow } from "../../src/questions/trial-plan/result.ts";
import { trialPlan } from "../../src/questions/trial-plan.ts";
import { columns, type DemoSet } from "./demo-set.ts";
import { type Chance, chance } from "./random.ts";
import { massOfCatch, reading } from "./weighing.ts";

/** How the seed was chosen is told in README.md. */
export const plannedTrialSeed = 1;

const divisionKg = 0.005;
const tareKg = 0.42;
const blockSpread = 0.01;
const fillSpread = 0.005;
const catchScatter = 0.01;

/** Long-run delivery of each product, kg/turn: what the simulation knows. */
export const plannedProducts = {
  "wheat untreated": 0.42,
  "wheat treated": 0.4112,
  durum: 0.4195,
  rye: 0.371,
} as const;

/** As `evencatch plan "wheat untreated" "wheat treated" durum rye --bin bench --margin 4% --seed 7` plans it. */
const planned = trialPlanOptions({
  products: Object.keys(plannedProducts),
  bin: "bench",
  analysis: "blocks",
  equivalenceMargin: 0.04,
  seed: 7,
});

const dates = ["2026-03-02", "2026-03-03", "2026-03-04", "2026-03-05", "2026-03-06"];

/** The sheet of a planned trial, filled in: four products, each filled once in each of five blocks. */
export function plannedTrial(seed: number = plannedTrialSeed): DemoSet {
  const random = chance(seed);
  const blockEffects = dates.map(() => 1 + blockSpread * random.normal());
  const deliveries = new Map<string, number>();
  return {
    name: "planned-trial",
    title: "A planned trial of four products",
    description:
      "Invented data: the catch sheet of a planned trial, filled in; four products, each filled once in each of five blocks.",
    columns: [
      columns.bin,
      columns.product,
      columns.fill,
      columns.catch,
      columns.turns,
      columns.gross,
      columns.tare,
      columns.takenAt,
      columns.block,
    ],
    rows: trialPlan(planned).rows.map((row) => caught(row, blockEffects, deliveries, random)),
    setup: {
      title: "Four products in a planned trial (invented)",
      tolerance_percent: 3,
      scale: { division: { value: 5, unit: "g" } },
      ...JSON.parse(setupOfPlan(planned)),
    },
  };
}

/** One row of the sheet with its masses, in the order of `columns`. */
function caught(
  { bin, product, fill, catch: place, turns, block }: SheetRow,
  blockEffects: readonly number[],
  deliveries: Map<string, number>,
  random: Chance,
): string[] {
  const kgPerTurn = deliveryOf(String(product));
  const number = Number(block) - 1;
  const key = String(fill);
  const delivery =
    deliveries.get(key) ??
    kgPerTurn * (blockEffects[number] ?? 1) * (1 + fillSpread * random.normal());
  deliveries.set(key, delivery);
  const meter = { kgPerTurn, fillSpread, catchScatter };
  const net = massOfCatch(delivery, meter, Number(turns), random);
  return [
    String(bin),
    String(product),
    key,
    String(place),
    String(turns),
    reading(net + tareKg, divisionKg),
    reading(tareKg, divisionKg),
    timeOf(dates[number] ?? "", (Number(fill) - 1) % planned.products.length, Number(place) - 1),
    String(block),
  ];
}

function deliveryOf(product: string): number {
  return new Map<string, number>(Object.entries(plannedProducts)).get(product) ?? 0;
}

function timeOf(date: string, place: number, catchPlace: number): string {
  return `${date}T${String(9 + place).padStart(2, "0")}:${String(catchPlace * 6).padStart(2, "0")}`;
}
