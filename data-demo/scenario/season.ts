import { columns, type DemoSet } from "./demo-set.ts";
import { type Chance, chance } from "./random.ts";
import {
  type Bin,
  bins,
  divisionKg,
  fillsPerBin,
  plannedFaultTurns,
  planted,
  seasonSeed,
  startOfFill,
  turnPlans,
} from "./season-plan.ts";
import { seasonSetup } from "./season-setup.ts";
import { deliveryOfFill, massOfCatch, reading } from "./weighing.ts";

const bagKg = 0.42;
const minutesPerCatch = 4;

const seasonColumns = [
  columns.bin,
  columns.product,
  columns.fill,
  columns.catch,
  columns.turns,
  columns.gross,
  columns.tare,
  columns.takenAt,
  columns.meterRpm,
  columns.binLevel,
  columns.operator,
  columns.note,
];

/** The catch log of an invented farm's spring: one drill, three bins, nine fills of each, in order of time. */
export function season(seed: number = seasonSeed): DemoSet {
  const random = chance(seed);
  const deliveries = new Map(bins.map((bin) => [bin, deliveriesOf(bin, random)]));
  const rows = [...deliveries].flatMap(([bin, ofFills]) =>
    ofFills.flatMap((delivery, index) => fillRows(bin, index + 1, delivery, random)),
  );
  return {
    name: "season",
    title: "A season of catches",
    description:
      "Invented data: one drill, bins of wheat, pea and starter fertiliser, nine fills of each, spring 2026.",
    columns: seasonColumns,
    rows: inOrderOfTime(rows),
    setup: seasonSetup(deliveries),
  };
}

/** True delivery of each fill of a bin, kg/turn. */
function deliveriesOf(bin: Bin, random: Chance): number[] {
  return Array.from({ length: fillsPerBin }, (_, index) => {
    const { drift } = planted;
    const hasMoved = bin.bin === drift.bin && index + 1 >= drift.fromFill;
    return deliveryOfFill(bin, random) * (hasMoved ? 1 + drift.change : 1);
  });
}

function fillRows(bin: Bin, fill: number, delivery: number, random: Chance): string[][] {
  const binLevel = random.whole(16, 20) * 5;
  const operator = random.whole(0, 2) === 0 ? "B" : "A";
  return turnsOf(bin, fill, random).map((turns, index) => [
    bin.bin,
    bin.product,
    String(fill),
    String(index + 1),
    String(turns),
    ...weigh(bin, fill, index + 1, turns, delivery, random),
    timeOf(bin, fill, index),
    String(random.whole(...bin.catchRpm)),
    String(binLevel),
    operator,
    noteOf(bin, fill, index + 1),
  ]);
}

/** Turns written for each catch of a fill. Fills with a planted fault have a fixed plan, so that it sits where it should. */
function turnsOf(bin: Bin, fill: number, random: Chance): readonly number[] {
  const { forgottenTare, miscountedTurn, coarseScale } = planted;
  const faults = [forgottenTare, miscountedTurn, coarseScale];
  if (faults.some((fault) => fault.bin === bin.bin && fault.fill === fill)) {
    return plannedFaultTurns;
  }
  return random.shuffled(turnPlans[random.whole(0, turnPlans.length - 1)] ?? []);
}

/** Gross and tare as the operator wrote them. */
function weigh(
  bin: Bin,
  fill: number,
  number: number,
  turnsWritten: number,
  delivery: number,
  random: Chance,
): [gross: string, tare: string] {
  const { forgottenTare, miscountedTurn, coarseScale } = planted;
  const miscounted = isAt(miscountedTurn, bin, fill, number);
  const turns = miscounted ? miscountedTurn.turnsMade : turnsWritten;
  const net = massOfCatch(delivery, bin, turns, random);
  const bag = bagKg + 0.008 * random.normal();
  const coarse = bin.bin === coarseScale.bin && fill === coarseScale.fill;
  const division = coarse ? coarseScale.divisionKg : divisionKg;
  const tare = isAt(forgottenTare, bin, fill, number) ? 0 : bag;
  return [reading(net + bag, division), reading(tare, division)];
}

function isAt(
  place: { readonly bin: string; readonly fill: number; readonly catch: number },
  bin: Bin,
  fill: number,
  number: number,
): boolean {
  return place.bin === bin.bin && place.fill === fill && place.catch === number;
}

function timeOf(bin: Bin, fill: number, index: number): string {
  const { day, minutes } = startOfFill(bin, fill);
  const at = minutes + index * minutesPerCatch;
  const twoDigits = (value: number): string => String(value).padStart(2, "0");
  return `${day}T${twoDigits(Math.floor(at / 60))}:${twoDigits(at % 60)}`;
}

function noteOf(bin: Bin, fill: number, number: number): string {
  const { coarseScale, drift } = planted;
  if (bin.bin === coarseScale.bin && fill === coarseScale.fill) {
    return "hanging scale, reads to 0.2 kg";
  }
  const firstAfterMove = bin.bin === drift.bin && fill === drift.fromFill && number === 1;
  return firstAfterMove ? "rain overnight" : "";
}

function inOrderOfTime(rows: readonly string[][]): string[][] {
  const takenAt = seasonColumns.indexOf(columns.takenAt);
  return [...rows].sort((a, b) => ((a[takenAt] ?? "") < (b[takenAt] ?? "") ? -1 : 1));
}
