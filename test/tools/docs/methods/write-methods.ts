// Writes anew the methods, with what the studies found: reports/methods.md and methods.html. `npm run methods`
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { root } from "../../../support/compiler.ts";
import { readDemo } from "./demo.ts";
import { methodsDocument } from "./document.ts";
import { methodsPage } from "./page.ts";
import { readStudies } from "./studies.ts";

const markdown = methodsDocument(readStudies(), await readDemo());
await writeFile(join(root, "reports", "methods.md"), markdown);
await writeFile(join(root, "reports", "methods.html"), methodsPage(markdown));
