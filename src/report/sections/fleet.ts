import type { Analysis, MeterAnswers } from "../../analysis/analyse.ts";
import { type Fleet, type FleetStanding, needsAttention } from "../../analysis/fleet.ts";
import type { ChartSpec } from "../../charts/chart-spec.ts";
import { fleetDeliveryChart, fleetFunnelChart, fleetSpreadChart } from "../../charts/fleet.ts";
import type { Words } from "../../wording/words.ts";
import { chart, details, list, type MaybeBlock, paragraph, section, table } from "../blocks.ts";
import { answersAbout } from "../chapters.ts";
import type { Section, Text } from "../document.ts";
import { slugs } from "../slug.ts";
import { decisionLines } from "./decision.ts";

const id = "fleet";

/**
 * Many meters together: how many are to be set, caught again or looked at, who needs attention and why, what a find may be
 * worth, the pictures, and every meter in a table.
 *
 * @param idOf      of the section about a meter
 * @param chapters  that follow
 */
export function fleetSection(
  fleet: Fleet,
  analysis: Analysis,
  words: Words,
  idOf: (answers: MeterAnswers) => string,
  chapters: readonly MeterAnswers[],
): Section {
  const say = words.fleet;
  const rows = fleet.meters.map((standing) => rowOf(standing, analysis, words));
  const needing = rows.filter(({ standing }) => needsAttention(standing));
  return section(
    id,
    say.heading,
    paragraph(say.counts(fleet), "lead"),
    needing.length === 0
      ? paragraph(say.none)
      : paragraph([{ kind: "strong", text: say.attention }]),
    list(needing.map((row) => attentionItem(row, words, idOf))),
    paragraph(caughtAgain(rows, words)),
    paragraph(say.falseDiscoveries(fleet)),
    paragraph(say.chapters(chapters.length, fleet)),
    details(`${id}-all`, say.table.all, meterTable(rows, words)),
    ...pictures(fleet, words),
    paragraph([{ kind: "strong", text: say.factors }]),
    list([...fleet.factors.compared.map(say.factor), ...say.uncompared(fleet)]),
  );
}

/** A meter among the others, with its own answers in words. */
interface FleetRow {
  readonly standing: FleetStanding;
  readonly answers: MeterAnswers | null;
  readonly action: string;
  readonly why: readonly string[];
}

function rowOf(standing: FleetStanding, analysis: Analysis, words: Words): FleetRow {
  const answers = answersAbout(standing, analysis.meters);
  const action = answers === null ? "" : decisionLines(answers, analysis, words).action;
  const why = standing.why.map((one) => words.fleet.why(one, standing, answers?.drift ?? null));
  return { standing, answers, action, why };
}

/** Who needs attention and why, a line a meter. */
export function attentionLines(fleet: Fleet, analysis: Analysis, words: Words): readonly string[] {
  return fleet.meters
    .filter(needsAttention)
    .map((standing) => rowOf(standing, analysis, words))
    .map((row) => `${words.fleet.who(row.standing)}: ${reasonsOf(row)}`);
}

/** What to look at is said in full, in place of that one is to look. */
function reasonsOf({ standing, action, why }: FleetRow): string {
  return standing.why.map((one, i) => (one === "look-first" ? action : (why[i] ?? ""))).join("; ");
}

function attentionItem(
  row: FleetRow,
  { fleet }: Words,
  idOf: (answers: MeterAnswers) => string,
): Text {
  const name = fleet.who(row.standing);
  return [
    row.answers === null ? name : { kind: "reference", to: idOf(row.answers), text: name },
    `: ${reasonsOf(row)}`,
  ];
}

function caughtAgain(rows: readonly FleetRow[], { fleet, format }: Words): Text | null {
  const names = rows
    .filter(({ standing }) => standing.action === "catch-more")
    .map(({ standing }) => fleet.who(standing));
  return names.length === 0 ? null : fleet.caughtAgain(format.list(names));
}

function meterTable(rows: readonly FleetRow[], { format, decision, fleet }: Words) {
  const say = fleet.table;
  const percent = (value: number | null | undefined) =>
    value == null ? fleet.unknown : format.percent(value, 1);
  return table({
    id: `${id}-table`,
    caption: say.caption,
    rows,
    tone: ({ standing }) =>
      standing.action === "look-first" ? "problem" : needsAttention(standing) ? "attention" : null,
    columns: [
      { heading: say.bin, cell: ({ standing }) => standing.bin },
      { heading: say.product, cell: ({ standing }) => standing.product },
      { heading: say.action, cell: ({ action }) => action },
      {
        heading: say.known,
        align: "end",
        cell: ({ answers }) =>
          answers?.delivery.halfWidth == null
            ? decision.unknown
            : format.plusMinus(answers.delivery.halfWidth),
      },
      {
        heading: say.ratio,
        align: "end",
        cell: ({ standing }) => percent(standing.delivery?.ratio.value),
      },
      {
        heading: say.scatter,
        align: "end",
        cell: ({ standing }) => percent(standing.scatter?.relative),
      },
      {
        heading: say.spread,
        align: "end",
        cell: ({ standing }) => percent(standing.spread?.relative),
      },
      { heading: say.why, cell: ({ why }) => why.join("; ") },
    ],
  });
}

/** Products with a level by themselves; the spreads of the others together. */
function pictures(fleet: Fleet, words: Words): readonly MaybeBlock[] {
  const products = [...new Set(fleet.meters.map(({ product }) => product))];
  const slugOf = slugs(products);
  const leveled = products.filter((product) =>
    fleet.meters.some((one) => one.product === product && one.delivery !== null),
  );
  const named = (kind: string, product: string) => `${id}-${kind}-${slugOf.get(product)}`;
  const spreadsOf = (kind: "scatter" | "spread") =>
    leveled.length === 0
      ? [described(`${id}-${kind}`, fleetSpreadChart(fleet, kind, null, words))]
      : leveled.map((product) =>
          described(named(kind, product), fleetSpreadChart(fleet, kind, product, words)),
        );
  return [
    leveled.length === 0 ? null : paragraph(words.fleet.key, "small"),
    ...leveled.map((product) =>
      described(named("delivery", product), fleetDeliveryChart(fleet, product, words)),
    ),
    paragraph(words.fleet.withoutLevel(fleet), "small"),
    described(`${id}-funnel`, fleetFunnelChart(fleet, words)),
    details(`${id}-spreads`, words.fleet.detail, ...spreadsOf("scatter"), ...spreadsOf("spread")),
  ];
}

/** What is drawn of many meters, and what is not, is said to everybody. */
function described(name: string, spec: ChartSpec | null): MaybeBlock {
  const drawn = chart(name, spec);
  return drawn === null ? null : { ...drawn, caption: drawn.description };
}
