import type { sheets as templates } from "../en/sheets.ts";
import type { Format } from "../format.ts";

/** Which words stand on the sheets to print. */
export function sheetsSayings(format: Format, say: typeof templates) {
  const plain: Readonly<Record<string, string>> = say.columns;
  return {
    ...say.labels,
    /** What is to be seen to before the first catch, in the order it is done. */
    prepared: ({ primingTurns }: { readonly primingTurns: number }): readonly string[] => [
      say.prepared.scale,
      say.prepared.bin(format.units),
      say.prepared.places,
      say.prepared.primed(format.count(primingTurns)),
    ],
    /** A column of a file of catches, as a person calls it; one that nobody knows keeps its name. */
    column: (name: string): string => {
      const [kind, unit] = name.split("_");
      if ((kind === "gross" || kind === "tare") && unit !== undefined)
        return say.masses[kind](unit);
      return plain[name] ?? name;
    },
    cell: (value: string | number | null): string =>
      typeof value === "number" ? format.plain(value, 6) : (value ?? ""),
  };
}
