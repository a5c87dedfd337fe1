import { usualTableFormats } from "../report/tables/table-formats.ts";

/**
 * Arguments with a flag whose value may be left out told apart from a file that follows it: `--tables catches.csv` names no
 * format, since a format is a word or words with commas between.
 */
export function withWholeValues(args: readonly string[]): readonly string[] {
  return args.flatMap((arg, at) => {
    const next = args[at + 1];
    const alone = next === undefined || !/^[a-z]+(,\s*[a-z]+)*$/i.test(next);
    return arg === "--tables" && alone ? [`--tables=${usualTableFormats.join(",")}`] : [arg];
  });
}
