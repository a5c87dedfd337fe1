import {
  type CodeCell,
  codeCells,
  type Notebook,
  type ShownByCell,
  storedOutputs,
} from "../../../notebooks/support/notebook-file.ts";
import { commandOf, type ProgramName, programs } from "../../../notebooks/support/programs.ts";

const names = Object.keys(programs) as ProgramName[];

/** Languages beside its own that a cell says it asks, as tags of the cell. */
export function languagesOf({ metadata }: Pick<CodeCell, "metadata">): readonly ProgramName[] {
  const { tags } = metadata;
  return names.filter((name) => Array.isArray(tags) && tags.includes(name));
}

/** Languages a notebook asks that this machine does not have. */
export function missingLanguages(
  notebook: Notebook,
  has: (name: ProgramName) => boolean = (name) => commandOf(name) !== null,
): readonly ProgramName[] {
  const asked = new Set(codeCells(notebook).flatMap(languagesOf));
  return [...asked].filter((name) => !has(name));
}

/** What was shown, but for cells that ask a missing language: of these, what is stored, since they can only say they were skipped. */
export function withoutSkipped(
  notebook: Notebook,
  shown: ShownByCell,
  missing: readonly ProgramName[],
): ShownByCell {
  const stored = storedOutputs(notebook);
  const skipped = codeCells(notebook).filter((cell) =>
    languagesOf(cell).some((name) => missing.includes(name)),
  );
  return { ...shown, ...Object.fromEntries(skipped.map(({ id }) => [id, stored[id] ?? []])) };
}

/** Why a part of a notebook was not looked at, for a report of tests. */
export function reasonOf(missing: readonly ProgramName[]): string {
  const needs = missing.map((name) => programs[name].needs).join(" and ");
  return `${needs}: not on this machine; the cells that ask for it were not looked at`;
}
