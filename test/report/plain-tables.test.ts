import { describe, expect, it } from "vitest";
import { rowsToLatex, rowsToMarkdown } from "../../src/report/plain-tables.ts";

const rows = [
  { product: "wheat lot A", delivery: 0.416116667, fills: 5, note: null },
  { product: "pea_2 & 50 % rye", delivery: -0.3992, fills: 4, note: "a|b" },
];

describe("rows as a Markdown table", () => {
  it("escapes words and puts numbers at the end of their cells", () => {
    expect(rowsToMarkdown(rows)).toBe(
      [
        "| product               | delivery | fills | note |",
        "| :-------------------- | -------: | ----: | :--- |",
        "| wheat lot A           |   0.4161 |     5 |      |",
        "| pea\\_2 &amp; 50 % rye |  -0.3992 |     4 | a\\|b |",
        "",
      ].join("\n"),
    );
  });
});

describe("rows as a LaTeX table", () => {
  it("is a tabular with the lines of the package booktabs", () => {
    const columns = ["product", "delivery"];
    const headings = { delivery: "Delivery (kg/turn)", product: "Product" };
    expect(rowsToLatex(rows, { columns, headings, digits: 3 })).toBe(
      [
        "\\begin{tabular}{lr}",
        "\\toprule",
        "Product & Delivery (kg/turn) \\\\",
        "\\midrule",
        "wheat lot A & 0.416 \\\\",
        "pea\\_2 \\& 50 \\% rye & $-$0.399 \\\\",
        "\\bottomrule",
        "\\end{tabular}",
        "",
      ].join("\n"),
    );
  });

  it("floats with a caption and a label that LaTeX takes", () => {
    const text = rowsToLatex(rows, { caption: "Products & 95 % intervals", label: "tab:my table" });
    expect(text).toContain("\\caption{Products \\& 95 \\% intervals}");
    expect(text).toContain("\\label{tab:my-table}");
    expect(text.startsWith("\\begin{table}")).toBe(true);
  });

  it("keeps the zeros that say how precise a number is", () => {
    expect(rowsToLatex([{ a: 0.5 }])).toContain("0.5000");
  });
});

describe("tables without rows", () => {
  it("have their headings", () => {
    expect(rowsToMarkdown([], { columns: ["a"] })).toContain("| a");
    expect(rowsToLatex([], { columns: ["a"] })).toContain("a \\\\");
  });
});
