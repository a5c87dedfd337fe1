import { figuresIn, type Passage } from "./find.ts";
import { type Rule, rules } from "./sources.ts";

/** A figure as it stands, and where it comes from; null: nobody says. */
export interface Sourced {
  readonly place: string;
  readonly figure: string;
  readonly text: string;
  readonly source: string | null;
}

/** Each figure of a passage with its source: the first rule whose words stand round it. */
export function sourcedFigures(passage: Passage): readonly Sourced[] {
  const { place, text, beside } = passage;
  const spans = rules
    .filter(({ where }) => where.test(place))
    .flatMap((rule) =>
      [...text.matchAll(rule.says)].map((match) => ({
        from: match.index,
        to: match.index + match[0].length,
        source: rule.source,
      })),
    );
  return figuresIn(text).map(({ figure, at }) => {
    const span = spans.find(({ from, to }) => from <= at && at + figure.length <= to);
    const own = beside.has(figure) ? "a cell of this notebook, which is run anew" : null;
    return { place, figure, text, source: span?.source ?? own };
  });
}

/** What a rule read from a file says, and what the passages say in its place; null where no passage says it. */
export function toldAndKept(rule: Rule, all: readonly Passage[]) {
  const found = all
    .filter(({ place }) => rule.where.test(place))
    .flatMap(({ text }) => [...text.matchAll(rule.says)])
    .map(([said]) => figuresIn(said).map(({ figure }) => figure));
  return { told: found, kept: rule.values?.() ?? null };
}
