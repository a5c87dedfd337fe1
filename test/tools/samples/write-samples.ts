/** Writes the sample reports and the pictures that the README shows: `npm run samples`. */
import { rm } from "node:fs/promises";
import { writeOutput } from "../../../src/cli/output.ts";
import { english } from "../../support/words.ts";
import { takePictures } from "./pictures.ts";
import { sampleFiles, samples } from "./samples.ts";

for (const sample of samples) {
  const folder = `reports/${sample.name}`;
  await rm(folder, { recursive: true, force: true });
  const files = await sampleFiles(sample);
  const output = { command: "report", folder, files, inputs: [], replace: false } as const;
  await writeOutput(output, english().command);
}
await takePictures();
