import type { Analysis, MeterAnswers } from "../../analysis/analyse.ts";
import type { ComparisonMethod } from "../../statistics/comparison-layout.ts";
import type { methods as templates } from "../en/methods.ts";
import type { Format } from "../format.ts";
import { citation, type ReferenceKey, references } from "../references.ts";

/** A paragraph on methods, and the sources it cites, as they stand in a list of references. */
export interface MethodsParagraph {
  readonly text: string;
  readonly references: readonly string[];
}

const howCompared: Readonly<
  Record<
    ComparisonMethod,
    {
      readonly design: "blocksAll" | "blocksApart" | "groups";
      readonly sources: readonly ReferenceKey[];
    }
  >
> = {
  "games-howell": { design: "groups", sources: ["gamesHowell"] },
  "tukey-kramer": { design: "groups", sources: ["tukey", "kramer"] },
  "dunnett-separate": { design: "groups", sources: ["dunnett"] },
  dunnett: { design: "groups", sources: ["dunnett"] },
  "paired-bonferroni": { design: "blocksApart", sources: ["snedecorCochran"] },
  "tukey-blocks": { design: "blocksAll", sources: ["tukey"] },
  "dunnett-blocks": { design: "blocksAll", sources: ["dunnett"] },
};

/** The methods behind an analysis: a sentence for each one that it used, and no other. */
export function methodsSayings(format: Format, say: typeof templates) {
  return {
    ...say.labels,
    /** @param version  of evencatch */
    paragraph: (analysis: Analysis, version: string): MethodsParagraph => {
      const cited = new Set<ReferenceKey>();
      const cite = (...keys: readonly ReferenceKey[]): string => {
        for (const key of keys) cited.add(key);
        return keys.map((key) => citation(key, say.labels.and)).join("; ");
      };
      const sentences = [
        say.catches({
          catches: analysis.input.catches,
          fills: analysis.input.fills,
          meters: analysis.meters.length,
          version,
          level: format.percent(analysis.options.level, 0),
        }),
        ...meterSentences(analysis, format, say, cite),
        ...productSentences(analysis, format, say, cite),
        analysis.fleet === undefined ? null : say.fleet({ discovery: cite("benjaminiHochberg") }),
      ];
      return {
        text: sentences.filter((one) => one !== null).join(" "),
        references: [...cited]
          .map((key) => references[key])
          .toSorted((a, b) => a.localeCompare(b, "en")),
      };
    },
  };
}

type Cite = (...keys: readonly ReferenceKey[]) => string;
type Said = readonly (string | null)[];

function meterSentences(
  { options, meters }: Analysis,
  format: Format,
  say: typeof templates,
  cite: Cite,
): Said {
  const { varianceLaw, scaleDivisionKg, tolerance } = options;
  return [
    say.delivery[varianceLaw]({ ratio: cite("cochran") }),
    scatterSentence(meters, say, cite),
    divisionSentence(meters, scaleDivisionKg, format, say, cite),
    meters.some(({ outliers }) => outliers !== null)
      ? say.screening({ outliers: cite("cookWeisberg", "rosner") })
      : null,
    meters.some(({ acrossFills }) => acrossFills?.nextFill.interval != null)
      ? say.acrossFills({ interval: cite("hahnMeeker") })
      : null,
    meters.some(({ acrossFills }) => isWidened(acrossFills)) ? say.widened : null,
    meters.some(({ drift }) => drift?.fills.some(({ step }) => step?.evidence != null))
      ? say.drift({ shift: cite("jeffreys", "shiryaev", "roberts") })
      : null,
    meters.some(({ catchesNeeded }) => catchesNeeded?.decides === "tolerance")
      ? say.catchesNeeded({
          tolerance: format.percent(tolerance, 1),
          assurance: cite("hahnMeeker"),
        })
      : null,
    meters.some(({ uncertaintyBudget }) => uncertaintyBudget?.total != null)
      ? say.budget({ gum: cite("gum", "gumMonteCarlo") })
      : null,
  ];
}

function scatterSentence(meters: Analysis["meters"], say: typeof templates, cite: Cite): string {
  const lent = meters.flatMap(({ delivery: { scatter } }) =>
    scatter.source === "lent" ? [scatter.lentBy] : [],
  );
  if (lent.length === 0) return say.scatter.own;
  const [fills, others] = [lent.some((by) => by.fills > 0), lent.some((by) => by.meters > 0)];
  const { lenders } = say.scatter;
  const from = fills
    ? others
      ? lenders.both
      : lenders.fills
    : others
      ? lenders.meters
      : lenders.assumed;
  return say.scatter.lent({ lenders: from, moderated: cite("smyth") });
}

/** The division of the log, or of its rows, where they have one of their own. */
function divisionSentence(
  meters: Analysis["meters"],
  scaleDivisionKg: number | null,
  format: Format,
  say: typeof templates,
  cite: Cite,
): string {
  if (scaleDivisionKg !== null)
    return say.division({ division: format.value(scaleDivisionKg, "mass"), gum: cite("gum") });
  return meters.some(({ delivery }) => delivery.variance.division === null)
    ? say.noDivision
    : say.divisionOfCatches({ gum: cite("gum") });
}

function isWidened(fills: MeterAnswers["acrossFills"]): boolean {
  const [mean, plain] = [fills?.mean.interval, fills?.meanIfIndependent.interval];
  return mean != null && plain != null && mean.upper !== plain.upper;
}

function productSentences(
  { products }: Analysis,
  format: Format,
  say: typeof templates,
  cite: Cite,
): Said {
  const method = products?.comparison.method ?? null;
  if (products === null || method === null) return [];
  const { design, sources } = howCompared[method];
  const { equivalenceMargin } = products.comparison.options;
  return [
    say.products[design]({ multiple: cite(...sources) }),
    equivalenceMargin === null
      ? null
      : say.products.margin({
          margin: format.percent(equivalenceMargin, 0),
          equivalence: cite("schuirmann"),
        }),
  ];
}
