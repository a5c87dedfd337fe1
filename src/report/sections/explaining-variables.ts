import { max } from "simple-statistics";
import { explainingVariablesChart } from "../../charts/explaining-variables.ts";
import type { ExplainingVariables } from "../../questions/explaining-variables/result.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";
import { smallestError } from "../smallest-error.ts";

/** What goes with the delivery: whether density explains the differences, what else does, and a new product. */
export function explainingVariablesSection(
  result: ExplainingVariables,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.explainingVariables;
  const tables = blocks(volumeTable(result, words, id), effectTable(result, words, id));
  return blocks(
    paragraph(say.sentence(result), "lead"),
    chart(id, explainingVariablesChart(result, words)),
    list([
      say.volumes(result),
      say.afterDensity(result),
      ...result.withinFills.map((effect) => say.withinFill(effect, result)),
      say.prediction(result),
    ]),
    tables.length === 0
      ? null
      : details(`${id}-detail`, say.detail, ...tables, paragraph(say.causes, "small")),
  );
}

function volumeTable(result: ExplainingVariables, words: Words, id: string) {
  if (result.density === null) return null;
  const { format, explainingVariables } = words;
  const say = explainingVariables.volumeTable;
  const { products } = result.density;
  const delivery = max(products.map((one) => one.deliveryKgPerTurn));
  const density = max(products.map((one) => one.densityKgPerM3));
  const error = smallestError(products.map(({ volume }) => volume));
  return table({
    id: `${id}-volumes`,
    caption: say.caption,
    rows: products,
    columns: [
      { heading: say.product, cell: ({ product }) => product },
      { heading: say.fills, align: "end", cell: ({ fills }) => format.count(fills) },
      {
        heading: say.density(format.unit("density", density)),
        align: "end",
        cell: ({ densityKgPerM3 }) => format.number(densityKgPerM3, "density", density),
      },
      {
        heading: say.delivery(format.unit("delivery", delivery)),
        align: "end",
        cell: ({ deliveryKgPerTurn }) => format.number(deliveryKgPerTurn, "delivery", delivery),
      },
      {
        heading: say.volume,
        align: "end",
        cell: ({ volume }) => explainingVariables.volume(volume, error),
      },
      {
        heading: say.interval,
        align: "end",
        cell: ({ volume }) =>
          explainingVariables.volumeRange(volume, error) ?? explainingVariables.unknown,
      },
    ],
  });
}

function effectTable(result: ExplainingVariables, words: Words, id: string) {
  const { format, explainingVariables } = words;
  const { variables } = result;
  const say = explainingVariables.effectTable;
  const regressions = [
    ...result.betweenProducts,
    ...(result.withinProducts === null ? [] : [result.withinProducts]),
  ];
  return table({
    id: `${id}-effects`,
    caption: say.caption,
    rows: regressions.flatMap(({ units, effects }) =>
      effects.map((effect) => ({
        ...effect,
        units,
        others: effects.filter((one) => one !== effect).map((one) => one.variable),
      })),
    ),
    columns: [
      {
        heading: say.variable,
        cell: ({ variable }) =>
          `${explainingVariables.variable(variable)} (${say.effectUnit(variable, variables)})`,
      },
      {
        heading: say.between,
        cell: ({ units, others }) => `${say.units[units]}${say.withOthers(others)}`,
      },
      {
        heading: say.perUnit,
        align: "end",
        cell: ({ perUnit, variable }) => say.value(perUnit, variable, variables),
      },
      {
        heading: say.interval,
        align: "end",
        cell: ({ perUnit, variable }) =>
          say.range(perUnit, variable, variables) ?? explainingVariables.unknown,
      },
      {
        heading: say.elasticity,
        align: "end",
        cell: ({ elasticity }) => format.fixed(elasticity, 2),
      },
      {
        heading: say.pValue,
        align: "end",
        cell: ({ pValue }) =>
          pValue === null ? explainingVariables.unknown : format.pNumber(pValue),
      },
    ],
  });
}
