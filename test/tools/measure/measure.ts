import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { zippedBytes } from "../../support/zipped.ts";
import type { Counted } from "./budgets.ts";

const phone = { width: 390, height: 844 };
const desk = { width: 1280, height: 900 };

/** Counts what a reader has before them: words that can be seen, screens, printed pages. */
export async function countPage(
  browser: Browser,
  html: string,
  about: Pick<Counted, "name" | "edition">,
  before: (page: Page) => Promise<void> = async () => {},
): Promise<Counted> {
  const folder = await mkdtemp(join(tmpdir(), "evencatch-counted-"));
  const file = join(folder, "page.html");
  await writeFile(file, html);
  const page = await browser.newPage({ viewport: phone });
  await page.goto(pathToFileURL(file).href);
  await before(page);
  const seen = await page.evaluate(() => ({
    // biome-ignore lint/performance/useDomNodeTextContent: what is folded away is not seen
    words: document.body.innerText.split(/\s+/).filter((part) => /[\p{L}\p{N}]/u.test(part)).length,
    height: document.documentElement.scrollHeight,
    firstAction: document.querySelector(".call")?.getBoundingClientRect().bottom ?? 0,
  }));
  await page.setViewportSize(desk);
  const heightWide = await page.evaluate(() => document.documentElement.scrollHeight);
  const pdf = await page.pdf({ format: "A4" });
  await page.close();
  await rm(folder, { recursive: true });
  return {
    ...about,
    words: seen.words,
    screens: tenths(seen.height / phone.height),
    screensWide: tenths(heightWide / desk.height),
    firstAction: Math.round(seen.firstAction),
    pages: (pdf.toString("latin1").match(/\/Type\s*\/Page[^s]/g) ?? []).length,
    bytes: Buffer.byteLength(html),
    bytesZipped: zippedBytes(html),
  };
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}
