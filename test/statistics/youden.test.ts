import { describe, expect, it } from "vitest";
import { randomStream } from "../../src/numeric/random.ts";
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
      n <- length(d)
      sd(d) / sqrt(2) * sqrt(2 * qf(0.95, 2, n - 1) * (1 + 1 / n))`);
    expect(radius).toBeCloseTo(present(inR), 9);
  });

  // About the medians, a little less than about the means: 94 to 95 % here.
  it.each([3, 5, 9])(
    "holds one more pair of %i at its level, where only chance moves either",
    (n) => {
      const random = randomStream(20261129);
      const drawn = () => ({ x: random.normal(), y: random.normal() });
      const logs = 4000;
      let held = 0;
      for (let log = 0; log < logs; log++) {
        const { center, radius } = present(youdenCircle(Array.from({ length: n }, drawn), 0.95));
        const one = drawn();
        if (Math.hypot(one.x - center.x, one.y - center.y) <= radius) held += 1;
      }
      expect(held / logs).toBeGreaterThan(0.925);
      expect(held / logs).toBeLessThan(0.965);
    },
  );

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
