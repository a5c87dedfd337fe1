import { OptionError } from "../errors/errors.ts";
import { type KeyColumn, keyColumns } from "./column-kinds.ts";
import { meanings, spelled } from "./header-names.ts";
import { type Table, tidyText } from "./table.ts";

/** Farm, machine or season of all rows of a file that has no column for it. */
export type GivenKeys = Readonly<Partial<Record<KeyColumn, string>>>;

/**
 * The table with a column for each key that is given for all its rows.
 *
 * @throws OptionError for a key of another name, an empty one, and one that the file has a column for: which of the two counts
 *         nobody could tell
 */
export function withKeys(table: Table, keys: GivenKeys): Table {
  const given = Object.entries(keys).filter(([, value]) => value !== undefined);
  for (const [name, value] of given) {
    const option = `key ${name}`;
    if (!keyColumns.some((known) => known === name))
      throw new OptionError(option, value, { need: "listed", facts: { choices: keyColumns } });
    if (tidyText(value) === "") throw new OptionError(option, value, { need: "name", facts: {} });
    if (table.headers.some((header) => isFor(header, name)))
      throw new OptionError(option, value, { need: "no-column-beside", facts: { column: name } });
  }
  if (given.length === 0) return table;
  const places = table.headers.length;
  return {
    ...table,
    headers: [...table.headers, ...given.map(([name]) => name)],
    rows: Array.from(table.rows, (row) => ({
      ...row,
      cells: [
        ...Array.from({ length: places }, (_, column) => row.cells[column] ?? null),
        ...given.map(([, value]) => value),
      ],
    })),
  };
}

function isFor(header: string, name: string): boolean {
  const meaning = meanings.get(spelled(header).spelling);
  return meaning !== undefined && "plain" in meaning && meaning.plain === name;
}
