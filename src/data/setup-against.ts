import type { DataIssue } from "../errors/data-issue.ts";
import { dataIssue, type Place } from "./issues.ts";
import type { Setup } from "./setup.ts";
import type { CatchLog } from "./types.ts";

/**
 * Do setup and catches belong together?  Bins, and products of bins, that the setup names and the catches lack.
 *
 * @returns  one issue for each such name; empty when all are there. Catches the setup does not mention are fine.
 */
export function checkSetupAgainst(setup: Setup, log: CatchLog): readonly DataIssue[] {
  const place: Place = { source: setup.source, rowWord: "line" };
  const products = new Map<string, Set<string>>();
  for (const { bin, product } of log.catches) {
    products.set(bin, (products.get(bin) ?? new Set()).add(product));
  }
  const named = [
    ...setup.bins.map((entry, index) => ({ ...entry, path: `bins[${index}]` })),
    ...setup.fieldChecks.map((entry, index) => ({ ...entry, path: `field_checks[${index}]` })),
  ];
  return named.flatMap(({ bin, product, path }) => {
    const ofBin = products.get(bin);
    if (ofBin === undefined) {
      return unknownName(
        { ...place, column: `${path}.bin` },
        bin,
        "bins",
        [...products.keys()],
        log,
      );
    }
    return product === null || ofBin.has(product)
      ? []
      : unknownName(
          { ...place, column: `${path}.product` },
          product,
          `products of bin ${bin}`,
          [...ofBin],
          log,
        );
  });
}

function unknownName(
  place: Place,
  received: string,
  what: string,
  known: readonly string[],
  log: CatchLog,
): DataIssue {
  return dataIssue(place, {
    code: "setup-unknown-bin",
    received,
    expected: `one of the ${what} in ${log.source}: ${known.join(", ")}`,
    remedy: "Spell it as the catches do, or delete the entry.",
  });
}
