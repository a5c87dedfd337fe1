import { NumericalError } from "../../src/errors/errors.ts";
import * as chi from "../../src/numeric/distributions/chi-squared.ts";
import { dunnettQuantile, dunnettUpperTail } from "../../src/numeric/distributions/dunnett.ts";
import * as f from "../../src/numeric/distributions/f.ts";
import * as noncentral from "../../src/numeric/distributions/noncentral-t.ts";
import * as normal from "../../src/numeric/distributions/normal.ts";
import * as t from "../../src/numeric/distributions/student-t.ts";
import * as range from "../../src/numeric/distributions/studentized-range.ts";
import { inverseTrigamma } from "../../src/numeric/inverse-trigamma.ts";
import type { RandomStream } from "../../src/numeric/random.ts";
import { type Attack, below, inTime, oneOf } from "./attack.ts";

type Argument = "any" | "chance" | "positive" | "count" | "loadings";

/** Every distribution, with what its arguments are about. */
const routines: readonly (readonly [(...given: never[]) => number, ...Argument[]])[] = [
  [chi.chiSquaredLowerTail, "any", "positive"],
  [chi.chiSquaredUpperTail, "any", "positive"],
  [chi.chiSquaredQuantile, "chance", "positive"],
  [chi.chiSquaredUpperQuantile, "chance", "positive"],
  [dunnettUpperTail, "any", "loadings", "positive"],
  [dunnettQuantile, "chance", "loadings", "positive"],
  [f.fLowerTail, "any", "positive", "positive"],
  [f.fUpperTail, "any", "positive", "positive"],
  [f.fQuantile, "chance", "positive", "positive"],
  [noncentral.noncentralTLowerTail, "any", "positive", "any"],
  [noncentral.noncentralTUpperTail, "any", "positive", "any"],
  [normal.normalDensity, "any"],
  [normal.normalLowerTail, "any"],
  [normal.normalUpperTail, "any"],
  [normal.normalQuantile, "chance"],
  [t.studentTDensity, "any", "positive"],
  [t.studentTLowerTail, "any", "positive"],
  [t.studentTUpperTail, "any", "positive"],
  [t.studentTTwoSided, "any", "positive"],
  [t.studentTQuantile, "chance", "positive"],
  [range.studentizedRangeUpperTail, "any", "count", "positive"],
  [range.studentizedRangeQuantile, "chance", "count", "positive"],
  [inverseTrigamma, "positive"],
];

export const numerics: Attack = {
  name: "numerical functions",
  about:
    "every distribution over its whole domain and beyond: a number, or an error that says what is wrong",
  run: async function* (random, effort) {
    for (let i = 0; i < effort; i++) {
      const [routine, ...kinds] = routines[i % routines.length] ?? routines[0] ?? [() => 0];
      const given = kinds.map((kind) => argument(kind, random));
      const outcome = await inTime(() => {
        try {
          const value = routine(...(given as never[]));
          return Number.isNaN(value) ? "wrong" : "right";
        } catch (error) {
          if (error instanceof NumericalError) return "refused";
          throw error;
        }
      });
      yield { name: `${routine.name}(${JSON.stringify(given)})`, outcome };
    }
  },
};

function argument(kind: Argument, random: RandomStream): number | readonly number[] {
  switch (kind) {
    case "any":
      return oneOf(random, [
        wide(random),
        -wide(random),
        0,
        -0,
        Infinity,
        -Infinity,
        5e-324,
        1.7e308,
      ]);
    case "positive":
      return oneOf(random, [
        wide(random),
        wide(random),
        wide(random),
        Infinity,
        5e-324,
        1e300,
        0,
        -1,
      ]);
    case "chance":
      return oneOf(random, [
        random.uniform(),
        10 ** (-300 * random.uniform()),
        1 - 2 ** -53,
        0.5,
        0,
        1,
      ]);
    case "count":
      return oneOf(random, [2, 3 + below(random, 200), 3 + below(random, 20), 1, 2.5]);
    case "loadings":
      return Array.from({ length: 1 + below(random, 8) }, () => random.uniform());
  }
}

/** From 1e-12 to 1e12, by orders of magnitude. */
function wide(random: RandomStream): number {
  return 10 ** (24 * random.uniform() - 12);
}
