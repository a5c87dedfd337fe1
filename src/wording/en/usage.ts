import type { KeyColumn } from "../../data/column-kinds.ts";

/** What the parser of the command line gives away of a name nobody knows. */
export interface UnknownName {
  readonly name: string;
  /** Known names that are nearly the same. */
  readonly near: readonly string[];
}

const didYouMean = (near: readonly string[]) => {
  const names = near.join(", ");
  if (near.length === 0) return "";
  return near.length === 1 ? `\n(Did you mean ${names}?)` : `\n(Did you mean one of ${names}?)`;
};

/** What is said of a command line itself: around its help, and where it cannot be understood. */
export const usage = {
  titles: {
    "Usage:": "Usage:",
    "Arguments:": "Arguments:",
    "Options:": "Options:",
    "Commands:": "Commands:",
  },
  options: "[options]",
  command: "[command]",
  help: "display help for command",
  version: "output the version number",
  choices: (choices: string) => `choices: ${choices}`,
  fallback: (value: string) => `default: ${value}`,
  /** How the help names what stands behind a command or a flag. */
  values: {
    whom: "whom",
    "bin:fill:catch": "bin:fill:catch",
    catches: "catches",
    "column=value": "column=value",
    column: "column",
    dir: "dir",
    file: "file",
    "header=column": "header=column",
    formats: "formats",
    "key=name": "key=name",
    "kg/m³": "kg/m³",
    length: "length",
    law: "law",
    list: "list",
    mark: "mark",
    mass: "mass",
    n: "n",
    name: "name",
    names: "names",
    product: "product",
    order: "order",
    rate: "rate",
    row: "row",
    sources: "files or folders",
    speed: "speed",
    products: "products",
    severity: "severity",
    share: "share",
    system: "system",
    tag: "tag",
    unit: "unit",
  },
  refused: {
    unknownCommand: (f: UnknownName) => `error: unknown command '${f.name}'${didYouMean(f.near)}`,
    unknownOption: (f: UnknownName) => `error: unknown option '${f.name}'${didYouMean(f.near)}`,
    missingArgument: (name: string) => `error: missing required argument '${name}'`,
    missingValue: (option: string) => `error: option '${option}' argument missing`,
    /** Why is a sentence of `needed`. */
    badValue: (f: { readonly option: string; readonly value: string; readonly why: string }) =>
      `error: option '${f.option}' argument '${f.value}' is invalid. ${f.why}`,
    tooManyArguments: (f: {
      readonly command: string;
      readonly most: number;
      readonly given: number;
    }) =>
      `error: too many arguments for '${f.command}'. Expected ${f.most === 1 ? "1 argument" : `${f.most} arguments`} but got ${f.given}.`,
  },
  needed: {
    choice: (choices: string) => `Allowed choices are ${choices}.`,
    /** Of these one, or more with a comma between. */
    someOf: (choices: string) => `It must be one or more of ${choices}, with a comma between.`,
    twoReadings: (f: { readonly decimal: string; readonly thousands: string }) =>
      `It can be read in two ways: write ${f.decimal} or ${f.thousands}.`,
    percent: 'It must be above 0 % and below 100 %, such as "3%".',
    percentOrShare: (f: { readonly small: string; readonly large: string }) =>
      `It may be ${f.small} percent or ${f.large} percent: write ${f.small}% or ${f.large}%.`,
    chance: 'It must be above 0 % and below 100 %, such as "95%" or 0.95.',
    amount: "It must be a number above zero.",
    /** Such as: how the number may be meant. */
    oneNumber: (suchAs: readonly string[]) =>
      `It must be one number, with a decimal point and without a comma${suchAs.length === 0 ? "" : `, such as ${suchAs.join(" or ")}`}.`,
    mass: 'It must be a mass with its unit, such as "15kg" or "33lb".',
    quantity: 'It must be a figure with its unit, such as "110kg/ha" or "12m".',
    typedCatch: (found: string) =>
      `"${found}" is no catch: write its mass, such as 6.3 or 6.3kg, with its turns before a colon where they differ, such as 20:6.3. A file that is called so is meant by "./${found}".`,
    typedTurns: (found: string) =>
      `"${found}" does not say how many turns it took: add --turns 20 for all, or write 20:${found}.`,
    typedAndFile: (f: { readonly typed: string; readonly file: string }) =>
      `"${f.typed}" is a catch and "${f.file}" is a file: give files, or catches alone.`,
    addBin: (names: readonly string[]) =>
      names.length === 0
        ? "No catch stands there yet: say which bin these are from, such as --bin 1, and --product wheat."
        : `Say which bin these are from: --bin ${names.join(" or --bin ")}, or a new one.`,
    addProduct: (bin: string) =>
      `No catch of bin ${bin} stands there yet: say what is in it, such as --product wheat.`,
    addNewFill: (f: { readonly bin: string; readonly held: string }) =>
      `This fill of bin ${f.bin} holds ${f.held}: add --new-fill if the bin was filled with something else.`,
    addTare:
      "The file keeps gross and tare: say what the empty container weighs, such as --tare 0.42; 0 if the scale was set to zero with it.",
    addColumn: (name: string) => `The file has no column ${name}.`,
    addKey: ({ key, names }: { readonly key: KeyColumn; readonly names: readonly string[] }) =>
      `Say which ${key} these are from: ${names.map((name) => `--key "${key}=${name}"`).join(" or ")}, or a new one.`,
    addSpilled:
      "A catch without a mass is noted with why it is left out, and the file has no columns exclude and reason: add both names to the end of its header line, or leave the catch out.",
    addAgain: (catches: number) =>
      `These ${catches} catches are the newest of their fill already. Nothing was added; --again adds them once more.`,
    pair: 'It must be two names with "=" between them, such as "revs=turns".',
    row: 'It must be the number of a row, such as 12, or with its sheet "April:12".',
    keyOfStream:
      "Standard input has neither file nor folder: write the name itself, such as --key season=2026.",
    key: 'It must be farm, machine or season with its name, such as "machine=north" or "season=2026".',
    catch: 'It must name bin, fill and catch, such as "3:4:2".',
  },
};
