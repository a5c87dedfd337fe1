import { describe, expect, test } from "vitest";
import { chartPictures } from "../../src/report/chart-pictures.ts";
import type { Chart } from "../../src/report/document.ts";
import { frame } from "../../src/wording/en/frame.ts";
import { sampleDeliveryChart } from "../support/sample-charts.ts";

const chart = (name: string, more: Partial<Chart> = {}): Chart => ({
  kind: "chart",
  id: `${name}-chart`,
  title: "On the page",
  description: "On the page.",
  spec: sampleDeliveryChart("1"),
  specFile: `charts/${name}.vl.json`,
  ...more,
});

const documentOf = (...blocks: Chart[]) =>
  ({ title: "One", language: "en", words: frame, meta: [], blocks }) as const;

describe("pictures of charts", () => {
  test("stand alone: with a name beside the specification, a title and paper", async () => {
    const pictures = await chartPictures(documentOf(chart("a"), chart("b")));
    expect(pictures.map(({ name }) => name)).toEqual(["charts/a", "charts/b"]);
    for (const { svg } of pictures) {
      expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 720 \d+"/);
      expect(svg).toMatch(/<rect [^>]*fill="#ffffff"/);
      expect(svg).toContain(">Net mass against turns, 1</text>");
    }
  });

  test("are not made of a chart that has no file", async () => {
    const { specFile: _, ...unsaved } = chart("a");
    expect(await chartPictures(documentOf(unsaved))).toEqual([]);
  });

  test("say which chart could not be drawn", async () => {
    const broken = documentOf(chart("a", { spec: { mark: 1 } }));
    await expect(chartPictures(broken)).rejects.toThrow(/Chart "a-chart"/);
  });
});
