import type { EstimatedConstant, ReEstimate, SpreadLibrary } from "../../data/spreads/schema.ts";
import type { spreads as templates } from "../en/spreads.ts";
import type { Format } from "../format.ts";

/** Sizes are told in percent, differences between meters or fills by a factor. */
const sizes: readonly EstimatedConstant[] = ["typical_spread", "typical_scatter"];

/** Which sentences are said about a library of spreads. */
export function spreadsSayings(format: Format, say: typeof templates) {
  const factor = (heterogeneity: number) => format.plain(Math.exp(2 * heterogeneity), 2);
  const constant = (one: ReEstimate, level: number): string => {
    const { name, differs, sources, estimate, declared } = one;
    const isSize = sizes.includes(name);
    const written = isSize ? format.percent : (value: number) => format.plain(value, 2);
    const facts = {
      name,
      differs,
      sources,
      estimate: written(estimate),
      from: written(one.from),
      to: written(one.to),
      declared: written(declared),
      level: format.percent(level, 0),
    };
    if (isSize) return say.size(facts);
    const declaredFactor = factor(declared);
    return estimate === 0
      ? say.alike({ ...facts, declaredFactor })
      : say.factor({ ...facts, factor: factor(estimate), declaredFactor });
  };
  return {
    made: say.made,
    class: say.class,
    leftOut: say.leftOut,
    notEstimated: say.notEstimated,
    constant,
    /** The library with its constants told in sentences. */
    told: (library: SpreadLibrary): SpreadLibrary => {
      const { estimates } = library;
      if (estimates === null) return library;
      const { level, constants } = estimates;
      return {
        ...library,
        estimates: {
          level,
          constants: constants.map((one) => ({ ...one, said: constant(one, level) })),
        },
      };
    },
  };
}
