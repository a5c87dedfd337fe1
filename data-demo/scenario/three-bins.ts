import { columns, type DemoSet } from "./demo-set.ts";

/** Net masses of 20 turns, kg, as they were read: marks every 20 g, read to the half. */
const bins = [
  { bin: "A", product: "wheat", netKg: ["6.02", "5.91", "6.10"], hour: "06" },
  { bin: "B", product: "barley", netKg: ["5.48", "5.57", "5.50"], hour: "07" },
  { bin: "C", product: "oats", netKg: ["6.33", "6.20", "6.28"], hour: "08" },
] as const;
const turns = 20;

/** Three bins of one morning, three catches each, no history: what each says by itself, and with the others beside it. */
export function threeBins(): DemoSet {
  return {
    name: "three-bins",
    title: "Three bins on one morning",
    description:
      "Invented data: the first fills of three bins, three catches of 20 turns each, no history.",
    columns: [
      columns.bin,
      columns.product,
      columns.fill,
      columns.catch,
      columns.turns,
      columns.net,
      columns.takenAt,
    ],
    rows: bins.flatMap(({ bin, product, netKg, hour }) =>
      netKg.map((net, i) => [
        bin,
        product,
        "1",
        String(i + 1),
        String(turns),
        net,
        `2026-04-09T${hour}:${String(10 + 4 * i)}`,
      ]),
    ),
    setup: {
      title: "Three bins on one morning (invented)",
      tolerance_percent: 2,
      confidence_percent: 95,
      scale: { division: { value: 20, unit: "g" } },
    },
  };
}
