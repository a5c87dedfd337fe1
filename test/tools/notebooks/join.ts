import {
  type CodeCell,
  codeCells,
  type Notebook,
  wholeText,
} from "../../../notebooks/support/notebook-file.ts";

/** The code of a notebook as one module, and the way back from its lines to the cells. */
export interface JoinedNotebook {
  readonly source: string;
  /** Where a line of the module (from 1) stands in the notebook. */
  readonly placeOf: (line: number) => string;
}

/**
 * Joins the code cells of a notebook into one module, to be put beside the notebook so that its relative imports hold.
 *
 * @param collectModule  address of collect.ts as the module should import it
 */
export function joinCells(notebook: Notebook, collectModule: string): JoinedNotebook {
  const cells = codeCells(notebook);
  const starts: { readonly line: number; readonly name: string }[] = [];
  const lines = [`import { beginCell } from ${JSON.stringify(collectModule)};`];
  cells.forEach((cell, index) => {
    lines.push(`beginCell(${JSON.stringify(cell.id)});`);
    starts.push({ line: lines.length, name: nameOf(cell, index) });
    lines.push(...wholeText(cell.source).split("\n"));
  });
  const placeOf = (line: number): string => {
    const start = starts.findLast((candidate) => candidate.line < line);
    return start === undefined
      ? "before the first cell"
      : `${start.name}, line ${line - start.line}`;
  };
  return { source: `${lines.join("\n")}\nexport {};\n`, placeOf };
}

export function nameOf(cell: CodeCell, index: number): string {
  return `code cell ${index + 1} (${cell.id})`;
}
