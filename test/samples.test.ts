import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { entriesOf, manifestName, manifestText, sha256Of } from "../src/cli/manifest.ts";
import { sampleFiles, samples } from "./tools/samples/samples.ts";

const reports = new URL("../reports/", import.meta.url).pathname;

describe("the sample reports", () => {
  it.each(samples.map((sample) => [sample.name, sample] as const))(
    "of %s are what the code writes now (`npm run samples` writes them anew)",
    async (name, sample) => {
      const files = await sampleFiles(sample);
      const kept = await readFile(join(reports, name, manifestName), "utf8");
      expect(kept).toBe(manifestText(entriesOf("report", files)));
    },
  );

  it.each(samples.filter(({ whole }) => whole).map(({ name }) => name))(
    "of %s are all there, as their manifest says",
    async (name) => {
      const folder = join(reports, name);
      const { files } = JSON.parse(await readFile(join(folder, manifestName), "utf8"));
      const kept = (await readdir(folder, { recursive: true, withFileTypes: true }))
        .filter((entry) => entry.isFile() && !entry.name.endsWith(".png"))
        .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1));
      expect(kept.sort()).toEqual([...Object.keys(files), manifestName].sort());
      for (const [file, { sha256 }] of Object.entries<{ sha256: string }>(files))
        expect(sha256Of(await readFile(join(folder, file))), file).toBe(sha256);
    },
  );
});
