import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { entriesOf, manifestName, manifestText } from "../src/cli/manifest.ts";
import { sampleFiles, samples } from "./samples/samples.ts";

const reports = new URL("../reports/", import.meta.url).pathname;

describe("the sample reports", () => {
  it.each(samples.map((sample) => [sample.name, sample] as const))(
    "of %s are what the code writes now (`npm run samples` writes them anew)",
    async (name, sample) => {
      const written = await sampleFiles(sample);
      const files = {
        ...written,
        [manifestName]: manifestText(entriesOf("report", written)),
      };
      const folder = join(reports, name);
      const kept = (await readdir(folder, { recursive: true, withFileTypes: true }))
        .filter((entry) => entry.isFile() && !entry.name.endsWith(".png"))
        .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1));
      expect(kept.sort()).toEqual(Object.keys(files).sort());
      for (const [file, text] of Object.entries(files))
        expect(await readFile(join(folder, file), "utf8"), file).toBe(text);
    },
  );
});
