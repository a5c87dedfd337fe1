import { InvalidArgumentError, Option, type OptionValues } from "commander";
import type { Words } from "../wording/words.ts";
import type { Needed } from "./arguments.ts";

type HelpKey = keyof Words["help"];
/** With the name of its value, which each language has a word for. */
type ValueName = keyof Words["usage"]["values"];
type Form = `--${string} <${ValueName}>`;
type OptionalForm = `--${string} [${ValueName}]`;

/** The words a flag is shown and refused with. */
export type FlagWords = Pick<Words, "help" | "usage">;

/** A flag of a command. */
export interface Flag<T> {
  readonly option: (words: FlagWords) => Option;
  /** What it has among the values that commander read; undefined: not given. */
  readonly valueIn: (values: OptionValues) => T | undefined;
}

/**
 * One with a value.
 *
 * @param form      as `--help` shows it
 * @param key       what that says of it
 * @param read      refuses by InvalidArgumentError
 * @param fallback  default: none
 */
export function flag<T>(
  form: Form,
  key: HelpKey,
  read: (text: string, say: Needed, earlier: T) => T,
  fallback?: T,
): Flag<T> {
  return flagWith(form, key, (option, { usage }) =>
    option.argParser<T>((text, earlier) => read(text, usage.needed, earlier)).default(fallback),
  );
}

export function asWritten(text: string): string {
  return text;
}

/** One whose value may be left out; then `alone` stands for it. */
export function optionalFlag<T>(
  form: OptionalForm,
  key: HelpKey,
  alone: string,
  read: (text: string, say: Needed) => T,
): Flag<T> {
  return flagWith(form, key, (option, { usage }) =>
    option.preset(alone).argParser<T>((text) => read(text, usage.needed)),
  );
}

/** One that is there or not. */
export function toggle(form: string, key: HelpKey): Flag<boolean> {
  return flagWith(form, key, (option) => option);
}

/** One with a value out of few. */
export function choice<const T extends string>(
  form: Form,
  key: HelpKey | null,
  choices: readonly T[],
  fallback?: T,
): Flag<T> {
  return flagWith(form, key, (option, { usage }) =>
    option
      .choices(choices)
      .argParser((text) => {
        if (choices.some((one) => one === text)) return text;
        throw new InvalidArgumentError(usage.needed.choice(choices.join(", ")));
      })
      .default(fallback),
  );
}

/** Kept for who knows it. */
export function hidden(form: string): Flag<boolean> {
  return flagWith(form, null, (option) => option.hideHelp());
}

function flagWith<T>(
  form: string,
  key: HelpKey | null,
  made: (option: Option, words: FlagWords) => Option,
): Flag<T> {
  const name = new Option(form).attributeName();
  return {
    option: (words) => {
      const description = key === null ? undefined : words.help[key];
      return made(new Option(formIn(form, words), description), words);
    },
    valueIn: (values) => values[name],
  };
}

function formIn(form: string, { usage }: FlagWords): string {
  const values: Readonly<Record<string, string>> = usage.values;
  return form.replace(
    /([<[])(.*)([>\]])/,
    (_, open: string, name: string, close: string) => `${open}${values[name] ?? name}${close}`,
  );
}

/** A flag that sets options of the library, or one that stands among such and sets none by itself. */
export interface SettingFlag<O> {
  readonly option: (words: FlagWords) => Option;
  readonly given?: (values: OptionValues) => Partial<O>;
}

/** @param as  the options that the flag's value stands for; flags that only count with it are beside it */
export function sets<T, O>(
  { option, valueIn }: Flag<T>,
  as: (value: T, beside: OptionValues) => NoInfer<Partial<O>>,
): SettingFlag<O> {
  const given = (values: OptionValues) => {
    const value = valueIn(values);
    return value === undefined ? {} : as(value, values);
  };
  return { option, given };
}

/** The options that a command was given; the others stay with setup and default. */
export function given<O>(flags: readonly SettingFlag<O>[], values: OptionValues): Partial<O> {
  return Object.assign({}, ...flags.map((one) => one.given?.(values)));
}
