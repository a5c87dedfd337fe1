import { describe, expect, it } from "vitest";
import {
  blocks,
  chart,
  details,
  grid,
  list,
  paragraph,
  section,
  table,
} from "../../src/report/blocks.ts";

const fills = [
  { fill: 1, delivery: "0.31" },
  { fill: 2, delivery: "0.29" },
];

describe("a table", () => {
  it("has every cell under the heading of its column, in the order of its rows", () => {
    const given = table({
      id: "fills",
      caption: "Fills",
      rows: fills,
      columns: [
        { heading: "Delivery", align: "end", cell: ({ delivery }) => delivery },
        { heading: "Place", cell: ({ fill }, place) => `${fill} at ${place}` },
      ],
    });
    expect(given).toEqual({
      kind: "table",
      id: "fills",
      caption: "Fills",
      rowHeaders: true,
      columns: [{ heading: "Delivery", align: "end" }, { heading: "Place" }],
      rows: [{ cells: ["0.31", "1 at 0"] }, { cells: ["0.29", "2 at 1"] }],
    });
  });

  it("does without a column that is null, head and cells alike", () => {
    const { columns, rows } = grid({
      rows: fills,
      columns: [null, { heading: "Fill", cell: ({ fill }) => String(fill) }],
    });
    expect(columns).toEqual([{ heading: "Fill" }]);
    expect(rows).toEqual([{ cells: ["1"] }, { cells: ["2"] }]);
  });

  it("marks the rows it is told to", () => {
    const { rows } = grid({
      rows: fills,
      columns: [],
      tone: ({ fill }) => (fill === 2 ? "attention" : null),
    });
    expect(rows).toEqual([{ cells: [] }, { cells: [], tone: "attention" }]);
  });

  it("is nothing without rows", () => {
    expect(table({ id: "a", caption: "A", rows: [], columns: [] })).toBeNull();
  });
});

describe("what there is nothing to say of", () => {
  it("is no block", () => {
    expect(paragraph(null)).toBeNull();
    expect(list([null])).toBeNull();
    expect(chart("a", null)).toBeNull();
    expect(details("a", "More", null, list([]))).toBeNull();
  });

  it("is left out by what holds it, and the rest stays in order", () => {
    const [first, second] = [paragraph("First."), list(["Second.", null])];
    expect(blocks(first, null, second)).toEqual([first, second]);
    expect(section("a", "A", null, second).blocks).toEqual([second]);
    expect(details("a", "More", first, null)?.blocks).toEqual([first]);
  });
});

it("a chart takes title and description from its specification", () => {
  const spec = { title: "Fills", description: "Two fills." };
  expect(chart("bin-1-drift", spec)).toEqual({
    kind: "chart",
    id: "bin-1-drift-chart",
    title: "Fills",
    description: "Two fills.",
    spec,
    specFile: "charts/bin-1-drift.vl.json",
  });
});

it("a chart shows the remark beneath its title as a caption", () => {
  const title = { text: "Drift", subtitle: "500 of 2,000 fills are drawn." };
  expect(chart("drift", { title, description: "Fills." })).toMatchObject({
    title: "Drift",
    caption: "500 of 2,000 fills are drawn.",
    description: "Fills.",
  });
});
