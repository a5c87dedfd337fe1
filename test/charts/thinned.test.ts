import { describe, expect, it } from "vitest";
import { thinned } from "../../src/charts/thinned.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { languageTags, wordsFor } from "../../src/wording/languages.ts";

const words = await wordsFor("en", "metric");
const none = () => false;

function heights(count: number): readonly { readonly height: number }[] {
  const random = randomStream(count);
  return Array.from({ length: count }, () => ({ height: random.normal() }));
}

describe("a chart of many things", () => {
  it("draws all where they are few, and says nothing of it", () => {
    const things = heights(1000);
    expect(thinned(things, "catches", ({ height }) => height, none, words)).toEqual({
      drawn: things,
      remark: null,
    });
  });

  it("keeps the outline: the highest and the lowest of all are drawn, in their order", () => {
    const things = heights(10_000);
    const { drawn } = thinned(things, "catches", ({ height }) => height, none, words);
    const found = drawn.map(({ height }) => height);
    const all = things.map(({ height }) => height);
    expect(drawn.length).toBeLessThanOrEqual(1000);
    expect(Math.max(...found)).toBe(Math.max(...all));
    expect(Math.min(...found)).toBe(Math.min(...all));
    const places = drawn.map((one) => things.indexOf(one));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it("leaves a cloud of catches as dense in its middle as it was", () => {
    const things = heights(20_000);
    const { drawn } = thinned(things, "catches", ({ height }) => height, none, words);
    // Half of a normal law lies within .6745 standard deviations of its middle; 4.5 standard errors of the share of 950.
    const within = drawn.filter(({ height }) => Math.abs(height) < 0.6745).length / drawn.length;
    expect(Math.abs(within - 0.5)).toBeLessThan(0.073);
  });

  it("draws what must not go missing, whatever its height", () => {
    const things = heights(5000);
    const odd = new Set([things[7], things[1234], things[4321]]);
    const { drawn } = thinned(
      things,
      "catches",
      ({ height }) => height,
      (one) => odd.has(one),
      words,
    );
    for (const one of odd) expect(drawn).toContain(one);
  });

  it("counts without heights for nothing", () => {
    const things = heights(3000).map(({ height }, i) => ({ height: i % 2 === 0 ? null : height }));
    const { drawn } = thinned(things, "fills", ({ height }) => height, none, words);
    expect(drawn.every(({ height }) => height !== null)).toBe(true);
  });

  it.each(languageTags)("says how many it draws of how many: %s", async (tag) => {
    const said = await wordsFor(tag, "metric");
    const things = heights(2500);
    const { drawn, remark } = thinned(things, "fills", ({ height }) => height, none, said);
    expect(remark).toContain(said.format.count(things.length));
    expect(remark).toContain(said.format.count(drawn.length));
  });
});
