/** Characters with a meaning of their own in LaTeX, and signs of our units that its standard fonts lack. */
const written: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "{": "\\{",
  "}": "\\}",
  $: "\\$",
  "&": "\\&",
  "#": "\\#",
  "%": "\\%",
  _: "\\_",
  "^": "\\textasciicircum{}",
  "~": "\\textasciitilde{}",
  "<": "\\textless{}",
  ">": "\\textgreater{}",
  "−": "$-$",
  "±": "$\\pm$",
  "×": "$\\times$",
  "√": "$\\surd$",
  "²": "$^2$",
  "³": "$^3$",
  "\u00a0": "~",
  "\u202f": "\\,",
};

const special = /[\\{}$&#%_^~<>−±×√²³\u00a0\u202f]/g;
/** The minus of a number: a hyphen in front of a digit at the beginning of the text. */
const minus = /^-(?=\d)/;

/**
 * Words as LaTeX shows them letter by letter: nothing in them can act as a command. Line breaks become spaces, since
 * an empty line would end a paragraph.
 */
export function latexText(text: string): string {
  return text
    .replace(/\s*[\r\n]+\s*/g, " ")
    .replace(minus, "−")
    .replace(special, (character) => written[character] ?? "");
}
