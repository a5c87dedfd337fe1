import type { Page } from "playwright-core";
import { pageFile } from "../../src/page/page-file.ts";
import type { PageWords } from "../../src/wording/words.ts";
import { bundlePage } from "../tools/bundle-page.ts";
import { wordsBy } from "./words.ts";

export type Tag = keyof typeof wordsBy;

const made = new Map<string, Promise<string>>();

/** The page as the command writes it, with no setup. */
export function drillPage(language: Tag): Promise<string> {
  const page = made.get(language) ?? write(language);
  made.set(language, page);
  return page;
}

async function write(language: Tag): Promise<string> {
  const { page } = wordsBy[language];
  const { code } = await bundlePage(language);
  return pageFile({
    language,
    title: page.title,
    noScript: page.noScript,
    script: code,
    given: { units: "metric", setup: null },
  });
}

/** A person at the page, who knows it by its words. */
export function personAt(page: Page, { page: say }: Pick<PageWords, "page">, delay = 0) {
  const press = async (name: string) => {
    await page.waitForTimeout(delay);
    await page.getByRole("button", { name, exact: true }).click();
  };
  const type = async (label: string | RegExp, text: string) => {
    const field = page.getByLabel(label, { exact: true });
    await page.waitForTimeout(delay);
    await field.fill("");
    await field.pressSequentially(text, { delay: delay / 4 });
  };
  const binName = page.getByLabel(say.binName, { exact: true });
  const newBin = page.getByRole("button", { name: say.addBin, exact: true });
  return {
    press,
    type,
    addBin: async (bin: string, product: string) => {
      // Until the device's list is open the page shows neither.
      await binName.or(newBin).first().waitFor();
      if ((await binName.count()) === 0) await press(say.addBin);
      await type(say.binName, bin);
      await type(say.product, product);
      await press(say.add);
    },
    catches: async (turns: string, weight: string) => {
      await type(say.turns, turns);
      await type(say.weighed.net("kg"), weight);
      await press(say.addCatch);
    },
    /** Once the device keeps so many catches: what is typed is answered first and kept after. */
    kept: async (catches: number) => {
      await page.waitForFunction(areKept, catches);
    },
    /** The large line. */
    action: async () => (await page.locator(".action").textContent()) ?? "",
    /** What leaves as a file, by the button that hands it over. */
    saved: async (name: string) => {
      await press(say.bar.log);
      const [download] = await Promise.all([page.waitForEvent("download"), press(name)]);
      const stream = await download.createReadStream();
      const parts: Buffer[] = [];
      for await (const part of stream) parts.push(part as Buffer);
      await press(say.back);
      return Buffer.concat(parts).toString("utf8");
    },
  };
}

/** Runs in the page. */
function areKept(catches: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open("evencatch");
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const database = opening.result;
      const reading = database.transaction("events").objectStore("events").getAll();
      reading.onerror = () => reject(reading.error);
      reading.onsuccess = () => {
        database.close();
        const added = reading.result.filter(({ action }) => action.kind === "catch-added");
        resolve(added.length === catches);
      };
    };
  });
}
