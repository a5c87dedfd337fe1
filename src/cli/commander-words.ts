import type { Argument, HelpConfiguration, Option } from "commander";
import type { Words } from "../wording/words.ts";

type Usage = Words["usage"];

/** What stands around our own words in the help that commander writes. */
export function helpWords(say: Usage): HelpConfiguration {
  const titles: Readonly<Record<string, string>> = say.titles;
  const inUsage = (text: string) =>
    text.replace("[options]", say.options).replace("[command]", say.command);
  const description = (of: Option | Argument) => describedWith(of, say);
  return {
    styleTitle: (title) => titles[title] ?? title,
    styleUsage: inUsage,
    styleSubcommandTerm: inUsage,
    optionDescription: description,
    argumentDescription: description,
  };
}

function describedWith({ description, argChoices, defaultValue }: Option | Argument, say: Usage) {
  const written = (value: unknown) => JSON.stringify(value);
  const more = [
    ...(argChoices === undefined ? [] : [say.choices(argChoices.map(written).join(", "))]),
    ...(defaultValue === undefined ? [] : [say.fallback(written(defaultValue))]),
  ];
  return [description, more.length === 0 ? "" : `(${more.join(", ")})`]
    .filter((text) => text !== "")
    .join(" ");
}

type Refused = Usage["refused"];
type Facts = readonly (string | undefined)[];

const near = String.raw`(?:\n\(Did you mean (?:one of )?(.+)\?\))?`;
const listed = (names: string | undefined) => names?.split(", ") ?? [];

/** Commander gives away what it refuses in English sentences only; here are those that ours can raise, and the facts in them. */
const refusals: readonly (readonly [sentence: RegExp, (say: Refused, facts: Facts) => string])[] = [
  [
    new RegExp(`^error: unknown command '(.*)'${near}$`, "s"),
    (say, [name = "", names]) => say.unknownCommand({ name, near: listed(names) }),
  ],
  [
    new RegExp(`^error: unknown option '(.*)'${near}$`, "s"),
    (say, [name = "", names]) => say.unknownOption({ name, near: listed(names) }),
  ],
  [/^error: missing required argument '(.*)'$/, (say, [name = ""]) => say.missingArgument(name)],
  [/^error: option '(.*)' argument missing$/, (say, [option = ""]) => say.missingValue(option)],
  [
    /^error: option '([^']*)' argument '(.*)' is invalid\. (.*)$/s,
    (say, [option = "", value = "", why = ""]) => say.badValue({ option, value, why }),
  ],
  [
    /^error: too many arguments for '(.*)'\. Expected (\d+) arguments? but got (\d+)\.$/,
    (say, [command = "", most, given]) =>
      say.tooManyArguments({ command, most: Number(most), given: Number(given) }),
  ],
];

/** What commander says of arguments it refuses, in our words; a sentence that is not known stays as it is. */
export function refusalWords(sentence: string, { refused }: Usage): string {
  for (const [pattern, said] of refusals) {
    const facts = pattern.exec(sentence);
    if (facts !== null) return said(refused, facts.slice(1));
  }
  return sentence;
}
