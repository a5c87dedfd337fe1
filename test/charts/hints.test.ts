import { describe, expect, it } from "vitest";
import { hints, sentenceHint } from "../../src/charts/hints.ts";
import { baseSpec } from "../../src/charts/theme.ts";
import { renderSvg } from "../../src/report/svg.ts";
import { faultsOf } from "../support/vega-lite.ts";

const chart = (hint: object) => ({
  ...baseSpec({ title: "One", description: "One thing." }),
  data: { values: [{ a: 0.123456789, said: "0.12", words: 'a "quoted" word' }] },
  mark: "point",
  encoding: { x: { field: "a", type: "quantitative" }, ...hint },
});

describe("what a mark says to a pointer", () => {
  it("is words under their names, without the digits of the data", async () => {
    const spec = chart(
      hints([
        { field: "said", title: 'The "a"' },
        { field: "words", title: "Words" },
      ]),
    );
    expect(await faultsOf(spec)).toEqual([]);
    const hint = /<title>([^<]*)<\/title>/.exec(await renderSvg(spec, { id: "one" }))?.[1];
    expect(hint).toBe("The &quot;a&quot;: 0.12; Words: a &quot;quoted&quot; word");
  });

  it("is a sentence as it stands", async () => {
    const spec = chart(sentenceHint("said"));
    expect(await faultsOf(spec)).toEqual([]);
    expect(await renderSvg(spec, { id: "one" })).toContain("<title>0.12</title>");
  });
});
