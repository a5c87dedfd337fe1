import type { OptionValues } from "commander";
import type { GivenKeys } from "../data/given-keys.ts";
import { dateOrders, type ImportOptions } from "../data/import/result.ts";
import { parseAmount, parseKey, parseNames, parsePair, parseRows } from "./arguments.ts";
import {
  asWritten,
  choice,
  type Flag,
  flag,
  given,
  type SettingFlag,
  sets,
  toggle,
} from "./flag.ts";

/** Answers to what `import` asks. */
const answers: readonly SettingFlag<ImportOptions>[] = [
  sets(flag("--map <header=column>", "importMap", parsePair), (map) => ({ map })),
  sets(flag("--set <column=value>", "importSet", parsePair), (set) => ({ set })),
  sets(choice("--dates <order>", "importDates", dateOrders), (dates) => ({ dates })),
  sets(choice("--decimal <mark>", "importDecimal", ["comma", "point"]), (decimal) => ({ decimal })),
  sets(flag("--fill-down <column>", "importFillDown", parseNames), (fillDown) => ({ fillDown })),
  sets(flag("--aside <row>", "importAside", parseRows), (aside) => ({ aside })),
  sets(flag("--sheet <name>", "importSheets", parseNames), (sheets) => ({ sheets })),
];

export const importing = [
  flag("--out <file>", "importFile", asWritten, "catches.csv"),
  ...answers,
] as const;

/** The answers that `import` was given. */
export function importGiven(values: OptionValues): ImportOptions {
  return given(answers, values);
}

/** Where catches that are added belong. */
export const adding: readonly (
  | Flag<string>
  | Flag<number>
  | Flag<boolean>
  | Flag<GivenKeys>
  | Flag<Readonly<Record<string, string>>>
)[] = [
  flag("--key <key=name>", "addKey", parseKey),
  flag("--bin <name>", "addBin", asWritten),
  flag("--product <name>", "addProduct", asWritten),
  flag("--fill <n>", "addFill", parseAmount),
  toggle("--new-fill", "addNewFill"),
  flag("--turns <n>", "addTurns", parseAmount),
  flag("--tare <n>", "addTare", asWritten),
  flag("--set <column=value>", "addSet", parsePair),
  toggle("--again", "addAgain"),
];
