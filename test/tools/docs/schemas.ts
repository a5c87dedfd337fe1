import { setupJsonSchema } from "../../../src/data/setup/json-schema.ts";
import { spreadLibraryJsonSchema } from "../../../src/data/spreads/schema.ts";
import { reportJsonSchema } from "../../../src/report/schema/report-schema.ts";

/** The JSON Schemas that the package ships in its folder schema, by file name, each with that name as its own. */
export function schemaFiles(): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries({
      "report.schema.json": reportJsonSchema(),
      "setup.schema.json": setupJsonSchema(),
      "spreads.schema.json": spreadLibraryJsonSchema(),
    }).map(([name, { $schema, ...schema }]) => [
      name,
      `${JSON.stringify({ $schema, $id: name, ...schema }, null, 2)}\n`,
    ]),
  );
}
