import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { drillPage, personAt, type Tag } from "../../support/at-the-drill.ts";
import { launchChromium } from "../../support/chromium.ts";
import { inFolder } from "../../support/command.ts";
import { wordsBy } from "../../support/words.ts";
import { seasonSheets } from "./samples.ts";

const folder = "reports/pictures";
const sizes = [
  { name: "phone", viewport: { width: 390, height: 844 } },
  { name: "desk", viewport: { width: 1280, height: 900 } },
] as const;

/** The page with a bin's first three catches, the season's short report and both sheets, on a phone and at a desk. */
export async function takePictures(): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  const browser = await launchChromium();
  await inFolder(async (at) => {
    for (const [file, html] of Object.entries(await seasonSheets()))
      await writeFile(join(at, file), html);
    await writeFile(join(at, "page.html"), await drillPage("en"));
    for (const { name, viewport } of sizes) {
      const take = async (what: string, file: string, before?: (page: Page) => Promise<void>) => {
        const page = await browser.newPage({ viewport });
        await page.goto(pathToFileURL(file).href);
        await before?.(page);
        await page.screenshot({ path: `${folder}/${what}-${name}.png` });
        await page.close();
      };
      await take("page", join(at, "page.html"), threeCatchesIn("en"));
      await take("report", resolve("reports/season/report.html"));
      await take("cab-sheet", join(at, "cab-sheet.html"));
      await take("catch-sheet", join(at, "catch-sheet.html"));
    }
  });
  await sideBySide(browser, ["page-phone", "report-desk", "report-phone"]);
  await browser.close();
}

/** A bin and its first three catches, typed in. */
export function threeCatchesIn(language: Tag): (page: Page) => Promise<void> {
  const words = wordsBy[language];
  return async (page) => {
    const person = personAt(page, words);
    await person.press(words.page.safety.read);
    await person.addBin("1", "barley");
    for (const kg of ["6.36", "6.48", "6.56"])
      await person.catches("20", language === "de" ? kg.replace(".", ",") : kg);
    await page.evaluate(() => window.scrollTo(0, 0));
  };
}

/** One picture for the README. */
async function sideBySide(browser: Browser, names: readonly string[]): Promise<void> {
  const images = await Promise.all(
    names.map(async (name) => (await readFile(`${folder}/${name}.png`)).toString("base64")),
  );
  const page = await browser.newPage({ viewport: { width: 1180, height: 480 } });
  await page.setContent(
    `<style>body{margin:0;display:flex;gap:16px;align-items:start}img{height:480px;outline:1px solid #ccc}</style>${images
      .map((image) => `<img src="data:image/png;base64,${image}">`)
      .join("")}`,
  );
  // It goes with the package, where a third of the bytes counts for more than the edge of a letter.
  await page
    .locator("body")
    .screenshot({ path: `${folder}/overview.jpg`, type: "jpeg", quality: 85 });
  await page.close();
}
