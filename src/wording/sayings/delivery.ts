import type { Delivery } from "../../questions/delivery.ts";
import { defaults } from "../../results/defaults.ts";
import type { delivery as templates } from "../en/delivery.ts";
import type { Format } from "../format.ts";
import { lenderFacts, otherMeters } from "./lenders.ts";
import { numbered } from "./numbered.ts";

/** Which sentences are said about the delivery of one fill. */
export function deliverySayings(format: Format, say: typeof templates) {
  const { interval, value, level } = deliveryFigures(format);
  const plusMinus = ({ halfWidth }: Delivery) =>
    halfWidth === null ? null : format.plusMinus(halfWidth);

  return {
    plusMinus,
    value,
    interval,
    /** The one sentence a person at the machine takes away. */
    sentence: (result: Delivery): string => {
      const { bin, product, fill, input, disagree } = result;
      const found = { bin, product, fill, value: value(result), catches: input.catches };
      if (disagree !== null) return say.disagree(found);
      const [range, error] = [interval(result), plusMinus(result)];
      return range === null || error === null
        ? say.errorUnknown(found)
        : say.goodTo({ ...found, level: level(result), range, error });
    },
    /** What the bin says by itself beside what others make of it; null: nobody does, or it comes to the same. */
    twoLines: ({ byItself, halfWidth, scatter, ifTypical }: Delivery): string | null => {
      if (halfWidth === null) return null;
      if (byItself !== null) {
        const own = byItself.halfWidth === null ? null : format.plusMinus(byItself.halfWidth);
        const lent = format.plusMinus(halfWidth);
        const { assumed } = scatter.lentBy;
        return own === lent
          ? null
          : say.twoLines({ byItself: own, lent, ...otherMeters(scatter.lentBy), assumed });
      }
      return ifTypical?.halfWidth == null
        ? null
        : say.ifTypical({
            byItself: format.plusMinus(halfWidth),
            typical: format.percent(defaults.assumedScatter.relative),
            turns: format.plain(defaults.assumedScatter.turns),
            halfWidth: format.plusMinus(ifTypical.halfWidth),
          });
    },
    /** Both bands, where a catch stands out. */
    hull: ({ hull, estimate }: Delivery): string | null => {
      if (hull === null) return null;
      const band = ({ interval: ends }: Delivery["estimate"]) =>
        ends === null ? "" : format.interval(ends, "delivery", estimate.standardError);
      return say.hull({
        count: hull.catches.length,
        catches: format.list(hull.catches.map(String)),
        with: band(hull.with),
        without: band(hull.without),
      });
    },
    scatter: ({ scatterOfTypicalCatch: typical, scatter, input }: Delivery): string => {
      if (typical === null) return say.scatterUnknown;
      if (typical.relative === 0) return say.scatterHidden;
      const size = {
        relative: format.percent(typical.relative),
        turns: numbered(typical.turns, format),
      };
      return scatter.source === "lent"
        ? say.scatterLent({
            ...size,
            ...lenderFacts(scatter.lentBy),
            catches: input.catches,
            df: numbered(scatter.df, format),
          })
        : say.scatterOwn({ ...size, catches: input.catches });
    },
  };
}

/** Figures of a delivery as every language writes them. */
export function deliveryFigures(format: Format) {
  return {
    interval: ({ estimate }: Delivery) => format.estimateInterval(estimate, "delivery"),
    value: ({ estimate }: Delivery) =>
      format.value(estimate.value, "delivery", estimate.standardError),
    level: ({ options }: Delivery) => format.percent(options.level, 0),
  };
}
