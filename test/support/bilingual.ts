/** Numbers in a text, in ascending order, whatever the language writes between their digits. Dates are passed over. */
export function numbersIn(text: string, language: "en" | "de"): readonly number[] {
  const { date, number, group, decimal } = marks[language];
  const found = text.replaceAll(date, " ").match(number) ?? [];
  return found
    .map((digits) => Number(digits.replaceAll(group, "").replace(decimal, ".")))
    .sort((a, b) => a - b);
}

const marks = {
  en: {
    date: /(Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec) \d{1,2}, \d{4}(, \d{2}:\d{2})?/g,
    number: /\d+(,\d{3})*(\.\d+)?/g,
    group: ",",
    decimal: ".",
  },
  de: {
    date: /\d{2}\.\d{2}\.\d{4}(, \d{2}:\d{2})?/g,
    number: /\d+(\.\d{3})*(,\d+)?/g,
    group: ".",
    decimal: ",",
  },
} as const;

/** Names that the file, the setup and the code keep in every language. */
const names =
  /`[^`]*`|\b\w+_\w+\b|\(scale, division\)|\(blocks: bin\)|report\.json|catches\.csv|Monte-Carlo|--[a-z-]+/g;

/** Words that no German sentence holds. */
const english =
  /\b(the|and|of|with|are|is|this|that|not|nor|no|from|only|than|for|by|each|none|cannot|known|unknown|catch(es)?|fills?|turns?|bins?|outlets?|delivery|drive|scatter|spread|interval|confidence|about|at|to|or|yes|per)\b/gi;

/** English words left in a German text. */
export function englishIn(text: string): readonly string[] {
  return text.replaceAll(names, " ").match(english) ?? [];
}
