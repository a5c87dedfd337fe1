import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { escapeMarkdown, markdownText } from "../../../src/report/markdown/text.ts";

describe("escapeMarkdown", () => {
  test.each([
    ["# heading", String.raw`\# heading`],
    ["- item", String.raw`\- item`],
    ["+ item", String.raw`\+ item`],
    ["---", String.raw`\---`],
    ["===", String.raw`\===`],
    ["1. item", String.raw`1\. item`],
    ["2) item", String.raw`2\) item`],
    ["> quote", "&gt; quote"],
    ["a*b_c`d", "a\\*b\\_c\\`d"],
    ["[a](b)", String.raw`\[a\](b)`],
    ["![a](b)", String.raw`!\[a\](b)`],
    ["<b>&amp;", "&lt;b&gt;&amp;amp;"],
    ["~~gone~~ $x$", String.raw`\~\~gone\~\~ \$x\$`],
    ["two\nlines\n\n# no heading", "two lines # no heading"],
    ["back\\slash", "back\\\\slash"],
    ["nul\u0000", "nul\ufffd"],
  ])("turns %j into %j", (text, escaped) => {
    expect(escapeMarkdown(text)).toBe(escaped);
  });

  test.each([
    "0.4127 kg/turn",
    "−3 %",
    "-3.1",
    "+1.239",
    "12.5 to 13.0",
    "Wheat bin (row 33)",
    "3\u00a0%",
  ])("leaves %j as it is", (text) => {
    expect(escapeMarkdown(text)).toBe(text);
  });

  test("never lets a live sign through, and loses no word", () => {
    const signs = fc.constantFrom(..."\\`*_[]|~$<>&#+-=1.) ax\n");
    fc.assert(
      fc.property(fc.string({ unit: signs }), (text) => {
        const escaped = escapeMarkdown(text);
        const live = escaped.replace(/\\[^\sa-z0-9]/g, "e").replace(/&(amp|lt|gt);/g, "e");
        expect(live).not.toMatch(/[\\`*_[\]|~$<>&\n]/);
        expect(live).not.toMatch(/^ {0,3}(#{1,6}|[+-]|=+|\d+[.)])( |$)/);
        const back = escaped
          .replace(/\\([^\sa-z0-9])/g, "$1")
          .replace(/&lt;/g, "<")
          .replace(/&gt;/g, ">")
          .replace(/&amp;/g, "&");
        expect(back).toBe(text.replace(/[\n ]+/g, " "));
      }),
    );
  });
});

describe("markdownText", () => {
  test("marks words, and fences code by one backtick more than it holds", () => {
    expect(
      markdownText([
        "a ",
        { kind: "strong", text: "b*" },
        { kind: "emphasis", text: "c" },
        { kind: "code", text: "d``e" },
        { kind: "reference", to: "x", text: "f_g" },
      ]),
    ).toBe("a **b\\***" + "*c*" + "``` d``e ```" + "f\\_g");
  });
});
