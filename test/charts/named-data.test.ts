import { describe, expect, it } from "vitest";
import { withNamedData } from "../../src/charts/named-data.ts";
import { baseSpec } from "../../src/charts/theme.ts";
import { inlined } from "../support/chart-keys.ts";
import { faultsOf } from "../support/vega-lite.ts";

const rows = [{ a: 1 }, { a: 2 }];
const encoding = { x: { field: "a", type: "quantitative" } };
const layer = (values: readonly object[], mark: object) => ({ data: { values }, mark, encoding });
const spec = {
  ...baseSpec({ title: "One", description: "One thing." }),
  layer: [
    layer(rows, { type: "line", style: "estimate" }),
    layer([...rows], { type: "point", style: "observation" }),
    layer([{ a: 3 }], { type: "point", style: "observation" }),
    layer([{ a: 4 }], { type: "point", style: "observation" }),
  ],
};

describe("data under a name", () => {
  it("stand once, under the role of what shows them first", () => {
    const named = withNamedData(spec);
    expect(named.datasets).toEqual({
      estimate: rows,
      observation: [{ a: 3 }],
      "observation-2": [{ a: 4 }],
    });
    const names = (named.layer as readonly { data: unknown }[]).map(({ data }) => data);
    expect(names).toEqual([
      { name: "estimate" },
      { name: "estimate" },
      { name: "observation" },
      { name: "observation-2" },
    ]);
  });

  it("make the same chart, which is sound", async () => {
    expect(inlined(withNamedData(spec))).toEqual(spec);
    expect(await faultsOf(withNamedData(spec))).toEqual([]);
  });

  it("are found in views one above the other too", () => {
    const { layer, ...frame } = spec;
    const stacked = { ...frame, vconcat: [{ layer }, { layer }] };
    expect(Object.keys(withNamedData(stacked).datasets as object)).toHaveLength(3);
  });
});
