import { type Caution, caution, type Where } from "../results/caution.ts";
import { keyColumns } from "./column-kinds.ts";
import { nearest } from "./nearest.ts";
import type { Setup } from "./setup.ts";
import type { CatchLog } from "./types.ts";

/**
 * What is worth a word about a setup beside the catches: names of an earlier version (old-name), and names that the two
 * spell differently (setup-name-not-caught). A setup may well hold bins and products that were not caught, and catches may
 * lack a setup; neither is worth a word. A name without catches that is nearly one with catches is; and so is a machine, farm
 * or season in the setup where no catch names any, and a fill that a number alone does not name.
 *
 * @returns  a caution for each such name of the setup, in its order
 */
export function checkSetupAgainst(setup: Setup, log: CatchLog): readonly Caution[] {
  return onceEach([
    ...setup.cautions,
    ...notesOn(setup.bins, log),
    ...notesOn(setup.fieldChecks, log),
    ...notesOnKeys(setup, log),
    ...seasonsMissing(setup, log),
  ]);
}

interface Entry {
  readonly bin: string;
  readonly product: string | null;
}

/** Notes on one list of the setup. A name that another entry of the list spells right is free to nobody else. */
function notesOn(entries: readonly Entry[], log: CatchLog): readonly Caution[] {
  const bins = new Set(log.catches.map(({ bin }) => bin));
  const products = new Set(log.catches.map(({ product }) => product));
  return entries.flatMap(({ bin, product }) => {
    if (!bins.has(bin)) {
      const free = [...bins].filter((name) => !entries.some((entry) => entry.bin === name));
      return noteOn({}, "bin", bin, free);
    }
    if (product === null || products.has(product)) return [];
    const free = productsOf(log, bin).filter(
      (name) => !entries.some((entry) => entry.bin === bin && entry.product === name),
    );
    return noteOn({ bin }, "product", product, free);
  });
}

/** The note on a name without catches; none where it is like no name that is free to be meant. */
function noteOn(
  where: Partial<Where>,
  what: "bin" | "product",
  name: string,
  free: readonly string[],
): readonly Caution[] {
  const instead = misspelt(name, free);
  return instead === null ? [] : [caution("setup-name-not-caught", where, { what, name, instead })];
}

/** What the setup says of a machine that no catch names counts for nothing, which must not go unsaid. */
function notesOnKeys(setup: Setup, { catches }: CatchLog): readonly Caution[] {
  const entries = [...setup.bins, ...setup.fieldChecks, ...setup.answered];
  return keyColumns.flatMap((key) => {
    const caught = [...new Set(catches.flatMap((row) => row[key] ?? []))];
    return entries.flatMap(({ bin, [key]: name }) => {
      if (name == null || caught.includes(name)) return [];
      const instead = misspelt(name, caught);
      return caught.length > 0 && instead === null
        ? []
        : caution("setup-key-not-caught", { bin }, { key, name, instead });
    });
  });
}

function seasonsMissing(setup: Setup, { catches }: CatchLog): readonly Caution[] {
  if (new Set(catches.map(({ season }) => season)).size < 2) return [];
  const named = [
    ...setup.bins.map((entry) => ({ ...entry, fill: entry.startsAfresh })),
    ...setup.fieldChecks,
    ...setup.answered,
  ];
  return named.flatMap(({ bin, fill, season }) =>
    fill === null || season != null
      ? []
      : caution("setup-season-missing", { bin }, { number: fill }),
  );
}

function productsOf({ catches }: CatchLog, bin: string): readonly string[] {
  return [...new Set(catches.filter((row) => row.bin === bin).map(({ product }) => product))];
}

/** The name that is meant by one without catches; names that differ in their digits are different names. */
function misspelt(name: string, known: readonly string[]): string | null {
  const digits = (text: string) => text.replace(/\D+/g, " ").trim();
  const alike = known.filter((other) => digits(other) === digits(name));
  const sameLetters = alike.find((other) => other.toLowerCase() === name.toLowerCase());
  return sameLetters ?? nearest(name, alike);
}

function onceEach(found: readonly Caution[]): readonly Caution[] {
  const keys = found.map((one) => JSON.stringify([one.where, one.facts]));
  return found.filter((_, i) => keys.indexOf(keys[i] ?? "") === i);
}
