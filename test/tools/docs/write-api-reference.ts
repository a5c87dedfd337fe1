// Writes anew what is made from the source: reports/api.md, and the caution codes in README.md. `npm run api`
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { root } from "../../support/compiler.ts";
import { apiReference } from "./api-reference.ts";
import { cautionGroups, cautionTable, withCautionTable } from "./caution-list.ts";
import { withDeclarations } from "./declarations.ts";

await writeFile(join(root, "reports", "api.md"), await withDeclarations(apiReference));

const readme = join(root, "README.md");
const text = await readFile(readme, "utf8");
await writeFile(readme, withCautionTable(text, cautionTable(cautionGroups())));
