// Writes anew what is made from the source: reports/api.md, reports/reference.md and schema. `npm run api`
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { root } from "../../support/compiler.ts";
import { apiReference } from "./api-reference.ts";
import { withDeclarations } from "./declarations.ts";
import { reference } from "./reference.ts";
import { schemaFiles } from "./schemas.ts";

await writeFile(join(root, "reports", "api.md"), await withDeclarations(apiReference));
await writeFile(join(root, "reports", "reference.md"), reference());
await mkdir(join(root, "schema"), { recursive: true });
for (const [name, text] of Object.entries(schemaFiles()))
  await writeFile(join(root, "schema", name), text);
