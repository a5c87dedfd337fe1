import { massKinds, massUnits } from "../column-kinds.ts";
import { catchColumns } from "../columns.ts";

const known = catchColumns.flatMap(({ name }): readonly string[] => {
  const kind = massKinds.find((one) => name === `${one}_kg`);
  return kind === undefined ? [name] : massUnits.map((unit) => `${kind}_${unit}`);
});

/** Each column once: known ones as in an empty sheet, others behind them by name, so that their order in a file is no matter. */
export function columnOrder(names: Iterable<string>): readonly string[] {
  const all = new Set(names);
  const others = [...all].filter((name) => !known.includes(name)).sort();
  return [...known.filter((name) => all.has(name)), ...others];
}
