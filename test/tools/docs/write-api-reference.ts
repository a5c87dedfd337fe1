// Writes anew what is made from the source: reports/api.md and reports/reference.md. `npm run api`
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { root } from "../../support/compiler.ts";
import { apiReference } from "./api-reference.ts";
import { withDeclarations } from "./declarations.ts";
import { reference } from "./reference.ts";

await writeFile(join(root, "reports", "api.md"), await withDeclarations(apiReference));
await writeFile(join(root, "reports", "reference.md"), reference());
