// Writes the demo sets anew. The seeds are fixed, so every run gives the same bytes.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { demoSets } from "../../data-demo/scenario/demo-sets.ts";
import { filesOf } from "../../data-demo/scenario/files.ts";

for (const set of demoSets()) {
  const folder = join(import.meta.dirname, "..", "..", "data-demo", set.name);
  mkdirSync(folder, { recursive: true });
  for (const [name, content] of Object.entries(filesOf(set))) {
    writeFileSync(join(folder, name), content);
    console.log(`data-demo/${set.name}/${name}`);
  }
}
