/** Counts words, screens, printed pages and bytes of the reports on the demo data: `npm run counts`. */
import { writeFileSync } from "node:fs";
import { table } from "../../../bench/study/support/markdown.ts";
import { editions } from "../../../src/report/editions/edition.ts";
import { drillPage } from "../../support/at-the-drill.ts";
import { launchChromium } from "../../support/chromium.ts";
import { present } from "../../support/reference.ts";
import { threeCatchesIn } from "../samples/pictures.ts";
import { sampleFiles, samples, seasonSheets } from "../samples/samples.ts";
import { budgets, type Counted } from "./budgets.ts";
import { countPage } from "./measure.ts";

const browser = await launchChromium();
const counted: Counted[] = [];
for (const sample of samples)
  for (const edition of editions) {
    const files = await sampleFiles(sample, edition);
    const about = { name: sample.name, edition };
    counted.push(await countPage(browser, present(files["report.html"]), about));
  }
for (const language of ["en", "de"] as const)
  counted.push(
    await countPage(
      browser,
      await drillPage(language),
      { name: "page at the drill, three catches", edition: language },
      threeCatchesIn(language),
    ),
  );
for (const [file, html] of Object.entries(await seasonSheets()))
  counted.push(await countPage(browser, html, { name: "season", edition: file }));
await browser.close();
writeFileSync("reports/counts.json", `${JSON.stringify(counted, null, 2)}\n`);
const lines = table(
  [
    "report",
    "edition",
    "words",
    "phone screens",
    "screens at 1280 × 900",
    "printed pages",
    "first action ends at",
    "bytes",
    "zipped",
  ],
  counted.map((one) => {
    const budget = one.edition === "short" ? budgets[one.name] : undefined;
    const of = (found: number, most: number | undefined) =>
      most === undefined ? `${found}` : `${found} of ${most}`;
    return [
      one.name,
      one.edition,
      of(one.words, budget?.words),
      of(one.screens, budget?.screens),
      one.screensWide,
      of(one.pages, budget?.pages),
      `${one.firstAction} px`,
      one.bytes,
      one.bytesZipped,
    ];
  }),
);
const text = [
  "# What a reader has before them",
  "",
  "Words that can be seen with everything folded, screens of a phone (390 × 844), printed A4 pages, bytes: of the reports and",
  "sheets on the demo data and of the page with three catches typed, in Debian's chromium. `npm run counts` writes this; a test",
  "holds it to the budgets.",
  "",
  ...lines,
  "",
].join("\n");
writeFileSync("reports/counts.md", text);
console.log(lines.join("\n"));
