// usage: snap.ts <repo> <out>
const [repo, out] = process.argv.slice(2) as [string, string];

import { mkdirSync, writeFileSync } from "node:fs";

const m = async (p: string) => await import(`${repo}/src/${p}`);
const { readCatchesFile, readSetupFile } = await m("node.ts");
const { analyse } = await m("analysis/analyse.ts");
const { wordsFor } = await m("wording/languages.ts");
const { reportDocument } = await m("report/report.ts");
const { renderMarkdown } = await m("report/markdown.ts");
const { decisionText, answerTable } = await m("cli/answer-table.ts");
const { catchesNeededSection } = await m("report/sections/catches-needed.ts");
mkdirSync(out, { recursive: true });
const walk = (b: any): any[] => [b, ...((b.blocks ?? []) as any[]).flatMap(walk)];
for (const set of ["first-morning", "season", "product-trial"]) {
  const log = await readCatchesFile(`${repo}/data-demo/${set}/catches.csv`);
  const setup = await readSetupFile(`${repo}/data-demo/${set}/setup.json`).catch(() => null);
  for (const [name, s] of [
    ["setup", setup],
    ["bare", null],
  ] as const) {
    const a = analyse({ ...log, source: "c" }, s, {
      comparison: { when: "always", equivalenceMargin: 0.03 },
    });
    for (const l of ["en", "de"])
      for (const u of ["metric", "us"]) {
        const w = wordsFor(l, u);
        const d = reportDocument(a, { title: null, setupSource: null, version: "0" }, w);
        const specs = d.blocks
          .flatMap(walk)
          .filter((b: any) => b.kind === "chart")
          .map((b: any) => JSON.stringify(b));
        writeFileSync(
          `${out}/${set}-${name}-${l}-${u}.md`,
          [
            renderMarkdown(d),
            ...specs,
            answerTable(a, w),
            ...a.meters.map((x: any) => decisionText(x, a, w)),
          ].join("\n"),
        );
      }
  }
}
