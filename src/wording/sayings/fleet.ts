import type { Fleet, FleetStanding, WhyAttention } from "../../analysis/fleet.ts";
import type { Drift } from "../../questions/drift.ts";
import type { ComparedFactor, Funnel } from "../../questions/fleet/result.ts";
import type { fleet as templates } from "../en/fleet.ts";
import type { Format } from "../format.ts";
import { limits } from "./limits.ts";
import { sentences } from "./sentences.ts";

export type SpreadKind = "scatter" | "spread";

/** Meters of a picture: all of them, and those it has room for. */
export interface Drawn {
  readonly drawn: readonly FleetStanding[];
  readonly of: readonly FleetStanding[];
}

/** Which sentences are said about many meters together. */
export function fleetSayings(format: Format, say: typeof templates) {
  const percent = (fraction: number) => format.percent(fraction, 1);
  const thinned = ({ drawn, of }: Drawn) =>
    drawn.length === of.length ? null : say.thinned({ drawn: drawn.length, of: of.length });
  const sides = (standing: FleetStanding, side: "more" | "less"): string => {
    const ratio = standing.delivery?.ratio.value ?? 1;
    return say.delivers[side]({ size: percent(Math.abs(ratio - 1)), product: standing.product });
  };
  const among = (spread: FleetStanding["scatter"]) => ({
    own: percent(spread?.relative ?? 0),
    others: percent(spread?.typical ?? 0),
  });
  const movedWords = (drift: Drift | null): string => {
    if (drift?.moved != null) return say.movedSince(String(drift.moved.since.fill));
    if (drift?.trending != null) return say.trendingSince(String(drift.trending.from.fill));
    return drift?.differs == null ? say.moved : say.fillDiffers(String(drift.differs.fill));
  };
  const names = (factors: Fleet["factors"]["uncompared"]) =>
    format.list(factors.map(({ factor }) => say.factor.names[factor]));

  return {
    ...say.labels,
    who: say.who,
    key: say.key,
    caughtAgain: say.caughtAgain,
    /** In a picture, where there is little room. */
    brief: ({ bin, product }: Pick<FleetStanding, "bin" | "product">) => `${bin}, ${product}`,
    counts: ({ meters, counts }: Fleet): string => say.counts({ meters: meters.length, ...counts }),
    /** Why a meter needs attention; what is to be looked at is said by the decision. */
    why: (why: WhyAttention, standing: FleetStanding, drift: Drift | null): string => {
      switch (why) {
        case "look-first":
          return say.labels.lookFirst;
        case "moved":
          return movedWords(drift);
        case "delivers-more":
          return sides(standing, "more");
        case "delivers-less":
          return sides(standing, "less");
        case "catches-scatter":
          return say.scatters(among(standing.scatter));
        case "fills-differ":
          return say.differs(among(standing.spread));
      }
    },
    falseDiscoveries: ({ meters, tests, options, watched }: Fleet): string =>
      sentences(
        say.found({
          found: meters.flatMap(({ delivery, scatter, spread }) =>
            [delivery, scatter, spread].filter((test) => test !== null && test.unlike !== null),
          ).length,
          tests,
          share: format.percent(options.falseDiscoveries, 0),
        }),
        watched.meters === 0
          ? null
          : say.watched({ meters: watched.meters, byChance: format.plain(watched.byChance, 1) }),
      ),
    chapters: (shown: number, { meters }: Fleet): string =>
      say.chapters({ shown, meters: meters.length }),
    /** Whose deliveries are compared with nobody's; null: all are. */
    withoutLevel: ({ meters, options }: Fleet): string | null => {
      const least = options.metersForLevel;
      if (meters.every(({ delivery }) => delivery === null)) return say.noLevels({ least });
      const products = [
        ...new Set(meters.flatMap((one) => (one.delivery === null ? [one.product] : []))),
      ];
      return products.length === 0
        ? null
        : say.withoutLevel({ least, products: format.list(products) });
    },
    ratio: {
      title: say.ratioTitle,
      description: (drawing: Drawn, product: string): string =>
        sentences(
          say.ratioDescription({
            product,
            meters: drawing.of.length,
            unlike: drawing.of.filter(({ delivery }) => delivery?.unlike != null).length,
          }),
          thinned(drawing),
        ),
    },
    spread: {
      title: (kind: SpreadKind, product: string | null) => say.spreadTitles[kind](product),
      axis: (kind: SpreadKind, turns: number): string => say.spreadAxes[kind](format.plain(turns)),
      description: (kind: SpreadKind, drawing: Drawn): string =>
        sentences(
          say.spreadDescription({
            meters: drawing.of.length,
            unlike: drawing.of.filter((one) => one[kind]?.unlike != null).length,
          }),
          thinned(drawing),
        ),
    },
    funnel: {
      title: say.funnelTitle,
      description: ({ meters }: Fleet, { betweenMeters }: Funnel): string =>
        say.funnelDescription({
          meters: meters.filter(({ delivery }) => delivery !== null).length,
          unlike: meters.filter(({ delivery }) => delivery?.unlike != null).length,
          between: percent(betweenMeters),
        }),
    },
    factor: ({ factor, within, meters, levels, adjusted, differ }: ComparedFactor): string =>
      (differ ? say.factor.differ : say.factor.alike)({
        name: say.factor.names[factor],
        where: say.factor.within[within](meters),
        p: format.pValue(adjusted),
        levels: format.list(
          levels.map(({ label, ratio }) =>
            say.factor.level({
              label,
              ratio: percent(ratio.value),
              range: limits(ratio.interval, percent, format) ?? say.labels.unknown,
            }),
          ),
        ),
      }),
    /** Those not compared for one reason share a sentence. */
    uncompared: ({ factors, options }: Fleet): readonly string[] =>
      [...new Set(factors.uncompared.map(({ why }) => why))].map((why) =>
        say.factor.uncompared({
          names: names(factors.uncompared.filter((one) => one.why === why)),
          why: say.factor.why[why](options.metersForFactor),
        }),
      ),
  };
}
