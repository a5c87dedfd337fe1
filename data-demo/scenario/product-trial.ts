import { columns, type DemoSet } from "./demo-set.ts";
import { type Chance, chance } from "./random.ts";
import { massOfCatch, reading } from "./weighing.ts";

/** How the seed was chosen is told in README.md. */
export const productTrialSeed = 67;

export const days = 5;
const divisionKg = 0.005;
const litresPerTurn = 0.54;
const daySpread = 0.008;
const fillSpread = 0.009;
const catchScatter = 0.01;

/** What each turn/min above 55 takes off the delivery, as a fraction: cells fill less well at speed. */
const speedEffect = -0.00035;

/** A product of the trial, with what the simulation knows and the researcher does not. */
export interface Product {
  readonly product: string;
  /** Long-run bulk density, kg/m³. */
  readonly bulkDensity: number;
  /** How well it fills the meter's cells, over what its bulk density alone would let expect. */
  readonly filling: number;
  readonly moisturePercent: number;
}

/** The two wheat lots deliver the same mass a turn: the denser one fills the cells a little less well. */
export const products: readonly Product[] = [
  { product: "wheat lot A", bulkDensity: 770, filling: 1.0, moisturePercent: 12.5 },
  { product: "wheat lot B", bulkDensity: 782, filling: 0.987, moisturePercent: 13.4 },
  { product: "pea", bulkDensity: 790, filling: 0.93, moisturePercent: 14.1 },
  { product: "barley", bulkDensity: 630, filling: 0.975, moisturePercent: 12.9 },
];

/** Long-run delivery of a product, kg/turn. */
export function trueDelivery(product: Product): number {
  return (product.bulkDensity * litresPerTurn * product.filling) / 1000;
}

/** Turn levels crossed with meter speeds: the four catches of every fill. */
const treatments = [
  { turns: 20, rpm: 40 },
  { turns: 20, rpm: 70 },
  { turns: 40, rpm: 40 },
  { turns: 40, rpm: 70 },
];

const dates = ["2026-02-10", "2026-02-11", "2026-02-12", "2026-02-13", "2026-02-16"];

/** Four products, each filled once a day for five days in random order, four catches a fill. */
export function productTrial(seed: number = productTrialSeed): DemoSet {
  const random = chance(seed);
  const rows = dates.flatMap((date, index) => dayRows(date, index + 1, random));
  return {
    name: "product-trial",
    title: "Four products on one meter",
    description:
      "Invented data: four products on one meter, a fill of each on five days, catches of 20 and 40 turns at two meter speeds.",
    columns: [
      columns.bin,
      columns.product,
      columns.fill,
      columns.catch,
      columns.turns,
      columns.net,
      columns.takenAt,
      columns.meterRpm,
      columns.bulkDensity,
      columns.moisture,
      columns.day,
    ],
    rows,
    setup: productTrialSetup,
  };
}

/** A day is a block: its air and its hands are common to the products filled on it. */
function dayRows(date: string, day: number, random: Chance): string[][] {
  const dayEffect = 1 + daySpread * random.normal();
  return random.shuffled(products).flatMap((product, order) => {
    const fill = (day - 1) * products.length + order + 1;
    return fillRows(product, { date, day, fill, order }, dayEffect, random);
  });
}

function fillRows(
  product: Product,
  at: { date: string; day: number; fill: number; order: number },
  dayEffect: number,
  random: Chance,
): string[][] {
  // A fill that lies denser also delivers more; the cylinder sees that density with an error of its own.
  const packing = 1 + 0.006 * random.normal();
  const measuredDensity = product.bulkDensity * packing * (1 + 0.002 * random.normal());
  const moisture = product.moisturePercent + 0.3 * random.normal();
  const delivery = trueDelivery(product) * dayEffect * packing * (1 + fillSpread * random.normal());
  return random.shuffled(treatments).map(({ turns, rpm }, index) => {
    const meter = { kgPerTurn: trueDelivery(product), fillSpread, catchScatter };
    const atSpeed = delivery * (1 + speedEffect * (rpm - 55));
    return [
      "bench",
      product.product,
      String(at.fill),
      String(index + 1),
      String(turns),
      reading(massOfCatch(atSpeed, meter, turns, random), divisionKg),
      timeOf(at.date, at.order, index),
      String(rpm),
      measuredDensity.toFixed(0),
      moisture.toFixed(1),
      String(at.day),
    ];
  });
}

function timeOf(date: string, order: number, index: number): string {
  const minutes = String(index * 6).padStart(2, "0");
  return `${date}T${String(9 + order + (order > 2 ? 1 : 0)).padStart(2, "0")}:${minutes}`;
}

const productTrialSetup = {
  title: "Four products on one meter (invented)",
  tolerance_percent: 3,
  confidence_percent: 95,
  scale: { division: { value: 5, unit: "g" } },
};
