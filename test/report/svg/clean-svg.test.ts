import { describe, expect, test } from "vitest";
import { cleanSvg } from "../../../src/report/svg/clean-svg.ts";

const naming = { id: "c", title: "T", description: "D" };

function cleaned(inside: string): string {
  const svg = cleanSvg(
    `<svg class="marks" width="9" height="9" viewBox="0 0 9 9">${inside}</svg>`,
    naming,
  );
  return svg.slice(svg.indexOf("</desc>") + "</desc>".length, -"</svg>".length);
}

describe("cleanSvg", () => {
  test("drops what is never seen, with all inside it", () => {
    expect(
      cleaned(
        '<g><text opacity="0">gone <tspan>too</tspan></text><text opacity="1">kept</text></g>',
      ),
    ).toBe('<g><text opacity="1">kept</text></g>');
    expect(cleaned('<path d=""/><path d="M0,0h0v0h0Z"/><path d="M1,1" display="none"/>')).toBe("");
  });

  test("keeps a number in a label but shortens one in an outline", () => {
    expect(cleaned('<text transform="translate(1.23456,-0.0001)">1.23456</text>')).toBe(
      '<text transform="translate(1.23,0)">1.23456</text>',
    );
    expect(cleaned('<path d="M-2.7386,1e-12h5.4772A1.006,2,0,1,1,0.5,3"/>')).toBe(
      '<path d="M-2.74,0h5.48A1.01,2,0,1,1,0.5,3"/>',
    );
  });

  test("renames ids and what points at them alike", () => {
    expect(
      cleaned(
        '<g clip-path="url(#clip7)"/><defs><clipPath id="clip7"/><clipPath id="clip9"/></defs>',
      ),
    ).toBe('<g clip-path="url(#c_1)"/><defs><clipPath id="c_1"/><clipPath id="c_2"/></defs>');
  });

  test("turns the label of a point into a hint, and drops all other labels and styles", () => {
    expect(
      cleaned(
        '<path role="graphics-symbol" aria-label="a: 1 &gt; 0" aria-roledescription="point" d="M1,1"/>',
      ),
    ).toBe('<path d="M1,1"><title>a: 1 &gt; 0</title></path>');
    expect(
      cleaned(
        '<path aria-label="a: 1" aria-roledescription="line mark" style="mix-blend-mode: multiply;" d="M1,1"/>',
      ),
    ).toBe('<path d="M1,1"/>');
  });
});
