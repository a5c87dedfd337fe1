import { explainingVariablesChart } from "../../charts/explaining-variables.ts";
import type {
  DensityExplanation,
  Effect,
  ExplainingVariables,
} from "../../questions/explaining-variables/result.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Row } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/** What goes with the delivery: whether density explains the differences, what else does, and a new product. */
export function explainingVariablesSection(
  result: ExplainingVariables,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.explainingVariables;
  const chart = explainingVariablesChart(result, words);
  const items = [
    say.volumes(result),
    say.afterDensity(result),
    ...result.withinFills.map((effect) => say.withinFill(effect, result)),
    say.prediction(result),
  ].flatMap((text) => text ?? []);
  const tables = [
    ...(result.density === null ? [] : [volumeTable(result.density, words, id)]),
    ...effectTable(result, words, id),
  ];
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...(chart === null ? [] : [chartBlock(`${id}-density`, chart)]),
    ...(items.length === 0 ? [] : [{ kind: "list", items } as const]),
    ...(tables.length === 0
      ? []
      : [
          {
            kind: "details",
            id: `${id}-explaining-detail`,
            summary: say.detail,
            blocks: [...tables, { kind: "paragraph", role: "small", text: say.causes }],
          } as const,
        ]),
  ];
}

function volumeTable({ products }: DensityExplanation, words: Words, id: string): Block {
  const { format, explainingVariables } = words;
  const say = explainingVariables.volumeTable;
  const delivery = Math.max(...products.map((one) => one.deliveryKgPerTurn));
  const density = Math.max(...products.map((one) => one.densityKgPerM3));
  return {
    kind: "table",
    id: `${id}-volume-table`,
    caption: say.caption,
    columns: [
      { heading: say.product },
      { heading: say.fills, align: "end" },
      { heading: say.density(format.unit("density", density)), align: "end" },
      { heading: say.delivery(format.unit("delivery", delivery)), align: "end" },
      { heading: say.volume, align: "end" },
      { heading: say.interval, align: "end" },
    ],
    rows: products.map(
      (one): Row => ({
        cells: [
          one.product,
          format.count(one.fills),
          format.number(one.densityKgPerM3, "density", density),
          format.number(one.deliveryKgPerTurn, "delivery", delivery),
          explainingVariables.volume(one.volume.value),
          explainingVariables.volumeRange(one.volume) ?? explainingVariables.unknown,
        ],
      }),
    ),
  };
}

function effectTable(result: ExplainingVariables, words: Words, id: string): readonly Block[] {
  const { format, explainingVariables } = words;
  const say = explainingVariables.effectTable;
  const regressions = [
    ...result.betweenProducts,
    ...(result.withinProducts === null ? [] : [result.withinProducts]),
  ];
  if (regressions.length === 0) return [];
  const row = (effect: Effect, others: readonly string[], between: string): Row => ({
    cells: [
      `${explainingVariables.variable(effect.variable)} (${say.effectUnit(effect.variable, result.variables)})`,
      `${between}${say.withOthers(others)}`,
      say.value(effect.perUnit.value, effect.variable, result.variables),
      say.range(effect.perUnit, effect.variable, result.variables) ?? explainingVariables.unknown,
      format.plain(effect.elasticity, 2),
      effect.pValue === null ? explainingVariables.unknown : format.pNumber(effect.pValue),
    ],
  });
  return [
    {
      kind: "table",
      id: `${id}-effect-table`,
      caption: say.caption,
      columns: [
        { heading: say.variable },
        { heading: say.between },
        { heading: say.perUnit, align: "end" },
        { heading: say.interval, align: "end" },
        { heading: say.elasticity, align: "end" },
        { heading: say.pValue, align: "end" },
      ],
      rows: regressions.flatMap(({ units, effects }) =>
        effects.map((effect) => {
          const others = effects.filter((one) => one !== effect).map(({ variable }) => variable);
          return row(effect, others, say.units[units]);
        }),
      ),
    },
  ];
}
