import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import type { Counted } from "./budgets.ts";

const phone = { width: 390, height: 844 };
const desk = { width: 1280, height: 900 };

/** Counts what a reader has before them: words that can be seen, screens, printed pages. */
export async function countPage(
  browser: Browser,
  html: string,
  about: Pick<Counted, "name" | "edition">,
): Promise<Counted> {
  const page = await browser.newPage({ viewport: phone });
  await page.setContent(html);
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
  return {
    ...about,
    words: seen.words,
    screens: tenths(seen.height / phone.height),
    screensWide: tenths(heightWide / desk.height),
    firstAction: Math.round(seen.firstAction),
    pages: (pdf.toString("latin1").match(/\/Type\s*\/Page[^s]/g) ?? []).length,
    bytes: Buffer.byteLength(html),
    bytesZipped: gzipSync(html).length,
  };
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}
