import { describe, expect, it } from "vitest";
import { Markdown, mimeBundle } from "../../../notebooks/support/mime-bundle.ts";
import { ownChart } from "../../../notebooks/support/own-chart.ts";

describe("what a viewer gets", () => {
  it("is plain text for a sentence", async () => {
    expect(await mimeBundle("Take one more catch.")).toEqual({
      "text/plain": "Take one more catch.",
    });
  });

  it("is Markdown, and the same as plain text, for marked text", async () => {
    expect(await mimeBundle(new Markdown("**go**"))).toEqual({
      "text/markdown": "**go**",
      "text/plain": "**go**",
    });
  });

  it("is JSON with rounded numbers for any other value", async () => {
    const { "text/plain": text } = await mimeBundle({ value: 1 / 3, lower: null, unit: "kg" });
    expect(JSON.parse(String(text))).toEqual({ value: 0.333333, lower: null, unit: "kg" });
    expect(await mimeBundle(undefined)).toEqual({ "text/plain": "undefined" });
  });

  it("is a table for a list of rows, with gaps as dashes and marks as they were typed", async () => {
    const bundle = await mimeBundle([
      { bin: "007", net: 5.8900000001 },
      { bin: "<b>", tare: null },
    ]);
    expect(bundle["text/plain"]).toBe("bin   net  tare\n007  5.89  –\n<b>     –  –");
    expect(bundle["text/html"]).toContain('<td style="text-align:left">&lt;b&gt;</td>');
  });

  it("is a table for a data frame", async () => {
    const frame = { columns: ["turns"], values: [[20], [30]], dtypes: ["int32"] };
    expect((await mimeBundle(frame))["text/plain"]).toBe("turns\n   20\n   30");
  });

  it("is JSON, not a table, for rows that hold more than plain values", async () => {
    const { "text/plain": text } = await mimeBundle([{ estimate: { value: 1 } }]);
    expect(JSON.parse(String(text))).toEqual([{ estimate: { value: 1 } }]);
  });

  it("is the spec and a picture for a chart, with letters in it", async () => {
    const chart = (title: string): object => ({
      $schema: "https://vega.github.io/schema/vega-lite/v6.json",
      title,
      description: "Nothing but a title",
      data: { values: [] },
      mark: "point",
      width: "container",
    });
    const [wordy, silent] = [await mimeBundle(chart("Delivery")), await mimeBundle(chart(""))];
    expect(wordy["application/vnd.vegalite.v5+json"]).toEqual(chart("Delivery"));
    expect(wordy["text/plain"]).toBe("Chart\nDelivery\nNothing but a title");
    const picture = Buffer.from(String(wordy["image/png"]), "base64");
    expect(picture.subarray(1, 4).toString()).toBe("PNG");
    expect(picture.readUInt32BE(16)).toBeGreaterThan(1000);
    // Without fonts the letters vanish silently, and both pictures are the same.
    expect(inkOf(wordy)).toBeGreaterThan(inkOf(silent));
  });

  it("is a chart with ten digits, so that machines which differ in the last bit store the same", async () => {
    const chart = (delivery: number) => ({
      ...emptyChart,
      data: { values: [{ delivery, fill: 3, note: null }] },
    });
    const bundle = await mimeBundle(chart(0.4 + Number.EPSILON / 4));
    expect(shownChart(bundle).data).toEqual({
      values: [{ delivery: 0.4, fill: 3, note: null }],
    });
    expect(bundle).toEqual(await mimeBundle(chart(0.4)));
  });

  it("is a chart fitted in width only, for in a fitted height the title may leave the picture", async () => {
    const fitted = { ...emptyChart, autosize: { type: "fit", contains: "padding" } };
    const padded = { ...emptyChart, autosize: { type: "pad" } };
    expect(shownChart(await mimeBundle(fitted)).autosize).toEqual({
      type: "fit-x",
      contains: "padding",
    });
    expect(shownChart(await mimeBundle(padded)).autosize).toEqual({ type: "pad" });
    expect(shownChart(await mimeBundle(emptyChart))).not.toHaveProperty("autosize");
  });

  it("is a chart in the library's looks for one of the notebook's own", async () => {
    const own = ownChart("Odds", "The odds of skipping.", { data: { values: [] }, mark: "point" });
    const bundle = await mimeBundle(own);
    expect(bundle["text/plain"]).toBe("Chart\nOdds\nThe odds of skipping.");
    expect(shownChart(bundle)).toMatchObject({
      mark: "point",
      config: { title: { anchor: "start" } },
    });
  });
});

const emptyChart = {
  $schema: "https://vega.github.io/schema/vega-lite/v6.json",
  title: "Fills",
  data: { values: [] as object[] },
  mark: "point",
};

function shownChart(bundle: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return { ...Object(bundle["application/vnd.vegalite.v5+json"]) };
}

/** More on a picture takes more bytes. */
function inkOf(bundle: Readonly<Record<string, unknown>>): number {
  return String(bundle["image/png"]).length;
}
