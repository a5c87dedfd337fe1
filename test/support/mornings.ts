import fc from "fast-check";
import type { Cells } from "../../src/page/app/cells.ts";
import type { Action, PageEvent } from "../../src/page/app/events.ts";
import type { BinField, MachineField, Typed } from "../../src/page/app/typed.ts";

/** Events of one log, named and dated by their place. */
export function eventsOf(actions: readonly Action[]): readonly PageEvent[] {
  return actions.map((action, i) => ({
    id: `e${i}`,
    log: "a log",
    at: "2026-04-12T06:00:00.000Z",
    action,
  }));
}

export function added(row: string, cells: Cells): Action {
  return { kind: "catch-added", row, cells };
}

const text = (from: number, to: number, decimals: number) =>
  fc.double({ min: from, max: to, noNaN: true }).map((value) => value.toFixed(decimals));

const typed = (value: fc.Arbitrary<string>, ...units: readonly (string | null)[]) =>
  fc.record<Typed>({ text: value, unit: fc.constantFrom(...units) });

const machine: Readonly<Partial<Record<MachineField, fc.Arbitrary<Typed>>>> = {
  tolerance: typed(text(1, 10, 1), "%"),
  confidence: typed(fc.constantFrom("90", "95", "99"), "%"),
  division: typed(fc.constantFrom("0.01", "0,02", "0.1"), "kg", "lb"),
  capacity: typed(text(8, 40, 1), "kg", "lb"),
  drive: typed(fc.constantFrom("none", "motor", "ground-wheel"), null),
  steps: typed(fc.constantFrom("0.8 0.85 0.9", "1;2;3", "0,5 0,55"), null),
  width: typed(text(3, 18, 2), "m", "ft"),
  wheel: typed(text(1, 9, 2), "m", "ft"),
  slip: typed(text(0, 10, 1), "%"),
  currency: typed(fc.constantFrom("EUR", "$"), null),
  hour: typed(text(20, 200, 0), null),
  minutes: typed(text(1, 9, 1), null),
  setUp: typed(text(0, 30, 0), null),
  season: typed(text(50, 900, 0), "ha", "ac"),
  fillArea: typed(text(2, 60, 1), "ha", "ac"),
};

const ofBin: Readonly<Record<BinField, fc.Arbitrary<Typed>>> = {
  target: typed(text(40, 250, 0), "kg/ha", "lb/ac"),
  tooMuch: typed(text(0, 3, 2), "ha", "ac"),
  tooLittle: typed(text(0, 3, 2), "ha", "ac"),
};

/** Some of the settings, as a person types them. */
export const settings: fc.Arbitrary<readonly Action[]> = fc
  .subarray(Object.keys(machine) as MachineField[])
  .chain((fields) =>
    fc.tuple(
      ...fields.map((field) =>
        (machine[field] ?? fc.constant({ text: "", unit: null })).map(
          (value): Action => ({ kind: "machine-typed", field, typed: value }),
        ),
      ),
    ),
  );

export const settingsOf = (bin: string): fc.Arbitrary<readonly Action[]> =>
  fc
    .subarray(Object.keys(ofBin) as BinField[])
    .chain((fields) =>
      fc.tuple(
        ...fields.map((field) =>
          ofBin[field].map((value): Action => ({ kind: "bin-typed", bin, field, typed: value })),
        ),
      ),
    );

interface Weighing {
  readonly turns: number;
  readonly off: number;
  readonly out: boolean;
}

const weighing = fc.record<Weighing>({
  turns: fc.constantFrom(10, 20, 20, 20, 40),
  off: fc.double({ min: -0.06, max: 0.06, noNaN: true }),
  out: fc.boolean(),
});

const filling = fc.record({
  perTurn: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
  unit: fc.constantFrom("kg", "lb"),
  gross: fc.boolean(),
  fills: fc.array(fc.array(weighing, { minLength: 1, maxLength: 5 }), {
    minLength: 1,
    maxLength: 3,
  }),
});

/** A morning at the drill as a list of actions: bins, fills, catches, some of them left out or checked, and settings. */
export const mornings: fc.Arbitrary<readonly Action[]> = fc
  .array(filling, { minLength: 1, maxLength: 3 })
  .chain((bins) =>
    fc.tuple(
      fc.constant(bins.flatMap(actionsOf)),
      settings,
      ...bins.map((_, i) => settingsOf(nameOf(i))),
    ),
  )
  .map((parts) => parts.flat());

const nameOf = (index: number) => `${index + 1}`;

function actionsOf(
  { perTurn, unit, gross, fills }: typeof filling extends fc.Arbitrary<infer T> ? T : never,
  index: number,
): readonly Action[] {
  const bin = nameOf(index);
  const product = `product ${bin}`;
  return fills.flatMap((catches, fill): readonly Action[] => [
    fill === 0 ? { kind: "bin-added", bin, product } : { kind: "fill-started", bin, product },
    ...catches.flatMap(({ turns, off, out }, i): readonly Action[] => {
      const row = `${bin}.${fill}.${i}`;
      const net = (perTurn * turns * (1 + off)).toFixed(2);
      const mass: Cells = gross
        ? { [`gross_${unit}`]: (Number(net) + 0.42).toFixed(2), [`tare_${unit}`]: "0.42" }
        : { [`net_${unit}`]: net };
      const caught = added(row, {
        bin,
        product,
        fill: String(fill + 1),
        turns: String(turns),
        ...mass,
        taken_at: `2026-04-${12 + fill}T07:0${i}`,
      });
      // Now and then a bag slips.
      const slipped = out && i === 3;
      return slipped
        ? [caught, { kind: "catch-changed", row, cells: { exclude: "yes", reason: "bag slipped" } }]
        : [caught];
    }),
  ]);
}
