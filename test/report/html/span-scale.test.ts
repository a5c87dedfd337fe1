import { describe, expect, test } from "vitest";
import type { SpanToTolerance } from "../../../src/report/document.ts";
import { spanScale } from "../../../src/report/html/span-scale.ts";

const span: SpanToTolerance = {
  estimate: 0.41,
  lower: 0.4,
  upper: 0.42,
  band: { lower: 0.39, upper: 0.43 },
  caption: "within 3 % <",
};

function drawn(of: SpanToTolerance) {
  const html = spanScale(of);
  const rectangle = (name: string) => {
    const match = new RegExp(`<rect class="${name}" x="([^"]*)" y="\\d+" width="([^"]*)"`).exec(
      html,
    );
    const [x, width] = [Number(match?.[1]), Number(match?.[2])];
    return { left: x, right: x + width };
  };
  const needle = Number(/<path class="needle" d="M([\d.]+) /.exec(html)?.[1]);
  return { html, band: rectangle("band"), bar: rectangle("bar"), needle };
}

describe("spanScale", () => {
  test("draws to scale: band, interval and estimate about the middle", () => {
    const { band, bar, needle } = drawn(span);
    expect(needle).toBeCloseTo(130, 1);
    expect((band.left + band.right) / 2).toBeCloseTo(130, 1);
    expect((bar.right - bar.left) / (band.right - band.left)).toBeCloseTo(0.5, 2);
  });

  test("keeps an interval far outside the band on the scale, and in its order", () => {
    const { band, bar, needle } = drawn({ ...span, estimate: 0.9, lower: 0.8, upper: 1 });
    expect(band.right).toBeLessThan(bar.left);
    expect(needle).toBeGreaterThan(bar.left);
    expect(bar.right).toBeGreaterThan(needle);
    expect(bar.right).toBeLessThanOrEqual(252);
  });

  test("lets an unbounded side run off with an arrow", () => {
    expect(drawn({ ...span, lower: null }).bar.left).toBe(8);
    expect(drawn({ ...span, upper: null }).bar.right).toBeCloseTo(252, 6);
    const arrows = (of: SpanToTolerance) => spanScale(of).split("bar-end").length - 1;
    expect([arrows(span), arrows({ ...span, lower: null, upper: null })]).toEqual([0, 2]);
  });

  test("survives a band and an interval of no width", () => {
    const { html } = drawn({
      ...span,
      lower: 0.41,
      upper: 0.41,
      band: { lower: 0.41, upper: 0.41 },
    });
    expect(html).not.toMatch(/NaN|Infinity/);
  });

  test("says in words what it shows", () => {
    expect(spanScale(span)).toContain('role="img" aria-label="within 3 % &lt;"');
  });
});
