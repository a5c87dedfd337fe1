import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { embeddedJson, escapeHtml } from "../../../src/report/html/escape.ts";

describe("escapeHtml", () => {
  test("turns what HTML reads as markup into words", () => {
    expect(escapeHtml(`<a href="x">'&`)).toBe("&lt;a href=&quot;x&quot;&gt;&#39;&amp;");
  });

  test("shows a control character as a mark, but keeps line breaks and tabs", () => {
    expect(escapeHtml("a\u0000\u0008b\tc\nd\u007f\u0085")).toBe("a\ufffd\ufffdb\tc\nd\ufffd\ufffd");
  });
});

describe("embeddedJson", () => {
  test("cannot end the element it stands in", () => {
    expect(embeddedJson({ bin: "</script><!--\u2028" })).toBe(
      String.raw`{"bin":"\u003c/script>\u003c!--\u2028"}`,
    );
  });

  test("gives back the value it was given", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = embeddedJson(value);
        expect(text).not.toContain("<");
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });
});
