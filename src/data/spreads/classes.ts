import { dataError } from "../../errors/data-error.ts";
import type { DataIssue } from "../../errors/data-issue.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "../issues.ts";
import { readTextTable } from "../read-text.ts";
import { type CatchSource, formatOf } from "../source.ts";
import { cellText, type Table, tidyText } from "../table.ts";

/** Class of a product by its name, written small. */
export type ProductClasses = ReadonlyMap<string, string>;

/** A name as it is compared with those of other logs, whatever their capitals. */
export function sameName(name: string): string {
  return tidyText(name).toLowerCase();
}

/**
 * Classes of products in a table with the columns product and class.
 *
 * @throws DataError with every problem found
 */
export function readProductClasses(source: CatchSource): ProductClasses {
  const table = readTextTable(source, formatOf(source.name) === "json" ? "json" : "csv");
  const classes = table.ok ? classesIn(table.value, source.name) : table;
  if (!classes.ok) throw dataError(source.name, classes.issues);
  return classes.value;
}

const columns = ["product", "class"] as const;

function classesIn(table: Table, source: string): Checked<ProductClasses> {
  const place: Place = { source, rowKind: table.rowKind };
  const places = columns.map((name) =>
    table.headers.findIndex((header) => sameName(header) === name),
  );
  const missing = columns.filter((_, i) => places[i] === -1);
  if (missing.length > 0)
    return failed(
      missing.map((name) =>
        dataIssue(place, { problem: "classes-column-missing", facts: { name } }),
      ),
    );
  const issues: DataIssue[] = [...table.issues];
  const classes = new Map<string, string>();
  for (const { number, cells } of table.rows) {
    const [product = "", productClass = ""] = places.map((at) => tidyText(cellText(cells[at])));
    const at = (column: string): Place => ({ ...place, row: number, column });
    const wanted = { problem: "value-missing", facts: { kind: "text" } } as const;
    if (product === "") issues.push(dataIssue(at("product"), wanted));
    if (productClass === "") issues.push(dataIssue(at("class"), wanted));
    const first = classes.get(sameName(product));
    if (first !== undefined && first !== productClass)
      issues.push(
        dataIssue(
          at("class"),
          { problem: "classes-product-twice", facts: { first } },
          productClass,
        ),
      );
    classes.set(sameName(product), first ?? productClass);
  }
  return issues.length > 0 ? failed(issues) : passed(classes);
}
