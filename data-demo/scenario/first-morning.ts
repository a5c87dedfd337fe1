import { columns, type DemoSet } from "./demo-set.ts";
import { chance } from "./random.ts";
import { deliveryOfFill, type Meter, massOfCatch, reading } from "./weighing.ts";

/** How the seed was chosen is told in README.md. */
export const firstMorningSeed = 8;

const meter: Meter = { kgPerTurn: 0.34, fillSpread: 0.02, catchScatter: 0.012 };
const divisionKg = 0.02;
const turns = 20;

/** One bin, its first fill, three catches, nothing known from before. */
export function firstMorning(seed: number = firstMorningSeed): DemoSet {
  const random = chance(seed);
  const delivery = deliveryOfFill(meter, random);
  const rows = ["06:50", "06:54", "06:58"].map((time, index) => {
    const net = massOfCatch(delivery, meter, turns, random);
    const bag = 0.4 + 0.008 * random.normal();
    return [
      "1",
      "barley",
      "1",
      String(index + 1),
      String(turns),
      reading(net + bag, divisionKg),
      reading(bag, divisionKg),
      `2026-03-18T${time}`,
    ];
  });
  return {
    name: "first-morning",
    title: "Three catches before drilling",
    description: "Invented data: the first fill of one bin, three catches of 20 turns, no history.",
    columns: [
      columns.bin,
      columns.product,
      columns.fill,
      columns.catch,
      columns.turns,
      columns.gross,
      columns.tare,
      columns.takenAt,
    ],
    rows,
    setup: firstMorningSetup,
  };
}

const firstMorningSetup = {
  title: "First morning (invented)",
  tolerance_percent: 3,
  confidence_percent: 95,
  scale: { division: { value: 20, unit: "g" } },
  cart: {
    working_width: { value: 9, unit: "m" },
    speed: { from: { value: 7, unit: "km/h" }, to: { value: 9, unit: "km/h" } },
  },
  bins: [
    {
      bin: "1",
      product: "barley",
      target_rate: { value: 160, unit: "kg/ha" },
      book_value: { value: 0.31, unit: "kg/turn" },
      assumed: "book value",
      drive: {
        kind: "motor",
        meter_speed: {
          from: { value: 20, unit: "turns/min" },
          to: { value: 120, unit: "turns/min" },
        },
      },
    },
  ],
};
