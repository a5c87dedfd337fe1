/** Writes the sample reports and the picture of the first page that the README shows: `npm run samples`. */
import { rm } from "node:fs/promises";
import { resolve } from "node:path";
import { writeOutput } from "../../../src/cli/output.ts";
import { launchChromium } from "../../support/chromium.ts";
import { english } from "../../support/words.ts";
import { sampleFiles, samples } from "./samples.ts";

for (const sample of samples) {
  const folder = `reports/${sample.name}`;
  await rm(folder, { recursive: true, force: true });
  const files = await sampleFiles(sample);
  const output = { command: "report", folder, files, inputs: [], replace: false } as const;
  await writeOutput(output, english().command);
}
const browser = await launchChromium();
const page = await browser.newPage({ viewport: { width: 1180, height: 940 } });
await page.goto(`file://${resolve("reports/season/report.html")}`);
await page.screenshot({ path: "reports/season/first-page.png" });
await browser.close();
