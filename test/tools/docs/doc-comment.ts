/** One part of a doc comment beyond what it says at first: a parameter, what is returned, the source of a method … */
export interface Slot {
  /** As written, without the @ of a tag. */
  readonly name: string;
  readonly text: string;
}

export interface DocComment {
  /** Paragraphs, lines as they are broken in the source. */
  readonly description: string;
  readonly slots: readonly Slot[];
}

/** Parts begin at the left edge; the lines that go on with one are indented. */
const opening = /^(?:@(\w+)|(Null when|Assumes|Source)\b)\s*(.*)$/;

/** @param text  as `PublicName.doc` has it */
export function docComment(text: string): DocComment {
  const description: string[] = [];
  const slots: { readonly name: string; readonly lines: string[] }[] = [];
  for (const line of text.split("\n")) {
    const [, tag, word, rest = ""] = opening.exec(line) ?? [];
    const name = tag ?? word;
    if (name !== undefined) slots.push({ name, lines: [rest] });
    else (slots.at(-1)?.lines ?? description).push(line);
  }
  return {
    description: description.join("\n").trim(),
    slots: slots.map(({ name, lines }) => ({
      name,
      text:
        name === "example"
          ? codeOf(lines)
          : lines
              .map((line) => line.trim())
              .join("\n")
              .trim(),
    })),
  };
}

/** The code of every @example. */
export function examplesIn(text: string): readonly string[] {
  return docComment(text).slots.flatMap(({ name, text: code }) => (name === "example" ? code : []));
}

/** Lines keep their indentation against one another; a code fence around them is not part of the code. */
function codeOf(lines: readonly string[]): string {
  const [first = "", ...more] = lines;
  const kept = more.filter((line) => line.trim() !== "");
  const indent = Math.min(...kept.map((line) => line.length - line.trimStart().length));
  return [first, ...kept.map((line) => line.slice(indent))]
    .filter((line) => line !== "" && !line.startsWith("```"))
    .join("\n");
}
