import { at } from "../../src/errors/at.ts";
import { type RandomStream, randomStream } from "../../src/numeric/random.ts";

const products = ["wheat", "barley", "oats", "rye", "peas", "starter fertiliser"] as const;
const header = "bin,product,fill,catch,turns,gross_kg,tare_kg,taken_at,operator";
const fillsOfMeter = 10;
const catchesOfFill = 5;
const binsOfMachine = 4;

/** Relative standard deviations of one kind or another, and how often a meter or a catch goes wrong. */
const spread = { fills: 0.015, catches: 0.01 } as const;
const chance = { moved: 0.05, badCatch: 0.002 } as const;
const tareKg = 0.42;
const divisionKg = 0.01;

/**
 * A log as a fleet would write it over a season: meters of ten fills of five catches, some of which move and some of whose
 * catches are wrong, so that no part of an analysis is spared. The same seed and number of rows give the same text.
 *
 * @param rows  catches; the last meter has what is left
 */
export function inventedLog(rows: number, seed: number): string {
  return [...inventedLines(rows, seed)].join("");
}

/** The same line by line, for a log that is no text. */
export function* inventedLines(rows: number, seed: number): Generator<string> {
  yield `${header}\n`;
  let written = 0;
  for (let meter = 0; written < rows; meter++) {
    const random = randomStream(seed, meter);
    for (const line of meterLines(meter, random)) if (written++ < rows) yield `${line}\n`;
  }
}

function* meterLines(meter: number, random: RandomStream): Generator<string> {
  const bin = `M${1 + Math.floor(meter / binsOfMachine)}-${1 + (meter % binsOfMachine)}`;
  const product = at(products, random.integer(0, products.length - 1));
  const operator = `op ${random.integer(1, 40)}`;
  const level = 0.1 + 0.4 * random.uniform();
  const movesAt =
    random.uniform() < chance.moved ? random.integer(5, fillsOfMeter) : fillsOfMeter + 1;
  for (let fill = 1; fill <= fillsOfMeter; fill++) {
    const moved = fill >= movesAt ? 1.08 : 1;
    const perTurn = level * moved * (1 + spread.fills * random.normal());
    const day = `2026-${two(3 + Math.floor(fill / 4))}-${two(1 + random.integer(0, 6) + 7 * (fill % 4))}`;
    for (let number = 1; number <= catchesOfFill; number++) {
      const turns = random.uniform() < 0.5 ? 20 : 30;
      const wrong = random.uniform() < chance.badCatch ? 1.15 : 1;
      const scatter = (spread.catches * random.normal()) / Math.sqrt(turns / 20);
      const net = perTurn * turns * wrong * (1 + scatter);
      const gross = Math.round((net + tareKg) / divisionKg) * divisionKg;
      const time = `${day}T06:${two(4 * number)}`;
      yield `${bin},${product},${fill},${number},${turns},${gross.toFixed(2)},${tareKg},${time},${operator}`;
    }
  }
}

function two(value: number): string {
  return String(value).padStart(2, "0");
}
