import { Option, type OptionValues } from "commander";
import { type HelpKey, help } from "./help.ts";

/** A flag of a command. */
export interface Flag<T> {
  readonly option: () => Option;
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
  form: string,
  key: HelpKey,
  read: (text: string, earlier: T) => T,
  fallback?: T,
): Flag<T> {
  return flagWith(form, key, (option) => option.argParser(read).default(fallback));
}

export function asWritten(text: string): string {
  return text;
}

/** One that is there or not. */
export function toggle(form: string, key: HelpKey): Flag<boolean> {
  return flagWith(form, key, (option) => option);
}

/** One with a value out of few. */
export function choice<const T extends string>(
  form: string,
  key: HelpKey | null,
  choices: readonly T[],
  fallback?: T,
): Flag<T> {
  return flagWith(form, key, (option) => option.choices(choices).default(fallback));
}

/** Kept for who knows it. */
export function hidden(form: string): Flag<boolean> {
  return flagWith(form, null, (option) => option.hideHelp());
}

function flagWith<T>(form: string, key: HelpKey | null, made: (option: Option) => Option): Flag<T> {
  const option = () => made(new Option(form, key === null ? undefined : help[key]));
  const name = option().attributeName();
  return { option, valueIn: (values) => values[name] };
}

/** A flag that sets options of the library, or one that stands among such and sets none by itself. */
export interface SettingFlag<O> {
  readonly option: () => Option;
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
