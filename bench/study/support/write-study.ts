import { writeFileSync } from "node:fs";

/** Writes a study's figures and its page into reports. */
export function writeStudy(name: string, figures: object, lines: readonly string[]): void {
  const file = (ending: string) => new URL(`../../../reports/${name}.${ending}`, import.meta.url);
  writeFileSync(file("json"), `${JSON.stringify({ kind: name, ...figures }, null, 2)}\n`);
  writeFileSync(file("md"), `${lines.join("\n")}\n`);
  console.log(`reports/${name}.md and reports/${name}.json written.`);
}
