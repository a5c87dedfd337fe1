import { describe, expect, it } from "vitest";
import { youdenCircle } from "../../src/statistics/youden.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const pairs = [
  { x: 35.1, y: 33 },
  { x: 23, y: 23.2 },
  { x: 23.8, y: 22.3 },
  { x: 25.6, y: 24.1 },
  { x: 23.7, y: 23.6 },
];

describe("Youden's circle", () => {
  it("is about the medians, as wide as R makes it", async () => {
    const { center, radius } = present(youdenCircle(pairs, 0.95));
    expect(center).toEqual({ x: 23.8, y: 23.6 });
    const [inR] = await evalR(`
      d <- c(${pairs.map(({ x, y }) => x - y).join(",")})
      sqrt(qchisq(0.95, 2)) * sd(d) / sqrt(2)`);
    expect(radius).toBeCloseTo(present(inR), 9);
  });

  it("takes no notice of how different the things themselves are", () => {
    const moved = pairs.map(({ x, y }, i) => ({ x: x + 10 * i, y: y + 10 * i }));
    expect(youdenCircle(moved, 0.95)?.radius).toBeCloseTo(
      present(youdenCircle(pairs, 0.95)).radius,
      9,
    );
  });

  it("is unknown of two, and of differences that agree", () => {
    expect(youdenCircle(pairs.slice(0, 2), 0.95)).toBeNull();
    expect(
      youdenCircle(
        [1, 2, 3].map((x) => ({ x, y: x })),
        0.95,
      ),
    ).toBeNull();
  });
});
