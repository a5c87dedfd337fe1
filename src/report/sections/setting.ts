import { settingChart } from "../../charts/setting.ts";
import type { RateAtSetting, Setting } from "../../questions/setting.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, type ColumnOf, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/** What to set the drive to: the sentence, what each step puts out, and settings up and down. */
export function settingSection(result: Setting, words: Words, id: string): readonly Block[] {
  const say = words.setting;
  return blocks(
    paragraph(say.sentence(result), "lead"),
    chart(id, settingChart(result, words)),
    list([
      say.target(result),
      say.turnsNeeded(result),
      say.now(result),
      words.lawful.doNotSkip(result),
      say.reach(result),
      say.meterSpeed(result),
      say.assumedSteps(result),
    ]),
    details(
      `${id}-detail`,
      say.detail,
      stepTable(result, words, id),
      aroundTable(result, words, id),
      paragraph(say.method(result), "small"),
    ),
  );
}

function stepTable({ steps, nearest }: Setting, words: Words, id: string) {
  const say = words.setting.table;
  return table({
    id: `${id}-steps`,
    caption: say.stepsCaption,
    rows: steps,
    columns: [
      {
        heading: say.step,
        cell: (step, place) => {
          const plain = words.setting.stepName(step);
          const name = step.assumed ? say.assumed(plain) : plain;
          return place === nearest?.nearest ? say.nearest(name) : name;
        },
      },
      ...rateColumns(words),
    ],
  });
}

function aroundTable({ around, ratio, turnsPerHectare }: Setting, words: Words, id: string) {
  const say = words.setting.table;
  if (around === null) return null;
  return table({
    id: `${id}-around`,
    caption: say.aroundCaption,
    rows: around.rows,
    columns: [
      around.of === "ratio"
        ? {
            heading: say.ratio,
            align: "end",
            cell: ({ setting }) => words.setting.ratio(setting, ratio?.value),
          }
        : {
            heading: say.turns,
            align: "end",
            cell: ({ setting }) => words.setting.turns(setting, turnsPerHectare?.value),
          },
      ...rateColumns(words),
    ],
  });
}

function rateColumns({ format, setting }: Words): readonly ColumnOf<RateAtSetting>[] {
  const say = setting.table;
  return [
    {
      heading: say.rate(format.unit("rate", 1)),
      align: "end",
      cell: ({ rate }) => format.number(rate.value, "rate", rate.value, rate.standardError),
    },
    {
      heading: say.interval,
      align: "end",
      cell: ({ rate }) => format.estimateInterval(rate, "rate") ?? say.unknown,
    },
    {
      heading: say.error,
      align: "end",
      cell: ({ rateError }) =>
        rateError === null ? say.unknown : format.signedPercent(rateError.value, 1),
    },
  ];
}
