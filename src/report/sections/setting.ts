import { settingChart } from "../../charts/setting.ts";
import type { RateAtSetting, Setting } from "../../questions/setting.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Row } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/** What to set the drive to: the sentence, what each step puts out, and settings up and down. */
export function settingSection(result: Setting, words: Words, id: string): readonly Block[] {
  const say = words.setting;
  const chart = settingChart(result, words);
  const items = [
    say.target(result),
    say.turnsNeeded(result),
    say.now(result),
    say.reach(result),
    say.meterSpeed(result),
  ].flatMap((text) => text ?? []);
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...(chart === null ? [] : [chartBlock(`${id}-setting`, chart)]),
    ...(items.length === 0 ? [] : [{ kind: "list", items } as const]),
    ...details(result, words, id),
  ];
}

function details(result: Setting, words: Words, id: string): readonly Block[] {
  const say = words.setting;
  const method = say.method(result);
  const blocks: readonly Block[] = [
    ...stepTable(result, words, id),
    ...aroundTable(result, words, id),
    ...(method === null ? [] : [{ kind: "paragraph", role: "small", text: method } as const]),
  ];
  return blocks.length === 0
    ? []
    : [{ kind: "details", id: `${id}-setting-detail`, summary: say.detail, blocks }];
}

function stepTable({ steps, nearest }: Setting, words: Words, id: string): readonly Block[] {
  const say = words.setting.table;
  if (steps.length === 0) return [];
  return [
    {
      kind: "table",
      id: `${id}-steps`,
      caption: say.stepsCaption,
      columns: [
        { heading: say.step },
        { heading: say.rate(words.format.unit("rate", 1)), align: "end" },
        { heading: say.interval, align: "end" },
        { heading: say.error, align: "end" },
      ],
      rows: steps.map((step, place): Row => {
        const name = words.setting.stepName(step);
        const isNearest = place === nearest?.nearest;
        return { cells: [isNearest ? say.nearest(name) : name, ...rateCells(step, words)] };
      }),
    },
  ];
}

function aroundTable({ around }: Setting, words: Words, id: string): readonly Block[] {
  const say = words.setting.table;
  if (around === null) return [];
  const shown = (setting: number) =>
    around.of === "ratio" ? words.format.plain(setting, 4) : words.setting.turns(setting);
  return [
    {
      kind: "table",
      id: `${id}-settings`,
      caption: say.aroundCaption,
      columns: [
        { heading: around.of === "ratio" ? say.ratio : say.turns, align: "end" },
        { heading: say.rate(words.format.unit("rate", 1)), align: "end" },
        { heading: say.interval, align: "end" },
        { heading: say.error, align: "end" },
      ],
      rows: around.rows.map(
        (row): Row => ({ cells: [shown(row.setting), ...rateCells(row, words)] }),
      ),
    },
  ];
}

function rateCells({ rate, rateError }: RateAtSetting, words: Words): readonly string[] {
  const { format } = words;
  const { unknown } = words.setting.table;
  return [
    format.number(rate.value, "rate", rate.value, rate.standardError),
    format.estimateInterval(rate, "rate") ?? unknown,
    rateError === null ? unknown : format.signedPercent(rateError.value, 1),
  ];
}
