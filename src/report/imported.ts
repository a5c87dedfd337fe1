import type { Imported } from "../data/import/result.ts";
import type { Words } from "../wording/words.ts";

type Placed = Imported["assumed"][number] | Imported["setAside"][number];

/** What was assumed, asked and set aside, as a page to read before the catches are used. */
export function importedMarkdown(result: Imported, { imported: say, problems }: Words): string {
  const { headings, nothing } = say;
  return [
    `# ${say.title}`,
    ...part(headings.assumed, placed(result.assumed, say.assumed, say.place), nothing.assumed),
    ...part(headings.asked, problems.grouped(result.asked).map(asItem), nothing.asked),
    ...part(headings.setAside, placed(result.setAside, say.setAside, say.place), nothing.setAside),
    "",
  ].join("\n");
}

/** The same for programs, each with its sentence. */
export function importedJson(result: Imported, { imported: say, problems }: Words): string {
  const { catches, assumed, asked, setAside } = result;
  const told = {
    kind: "imported",
    catches: catches.length,
    assumed: assumed.map((one) => ({ ...one, text: say.assumed(one) })),
    asked: asked.map((one) => ({ ...one, text: problems.text(one) })),
    setAside: setAside.map((one) => ({ ...one, says: say.setAside(one) })),
  };
  return `${JSON.stringify(told, null, 2)}\n`;
}

function part(heading: string, items: readonly string[], nothing: string): readonly string[] {
  return ["", `## ${heading}`, "", ...(items.length === 0 ? [nothing] : items)];
}

/** Items below the name of the sheet they are about, which stands where it changes. */
function placed<P extends Placed>(
  items: readonly P[],
  sayItem: (item: P) => string,
  sayPlace: Words["imported"]["place"],
): readonly string[] {
  return items.flatMap((item, i) => {
    const place = sayPlace(item);
    const before = items[i - 1];
    const changes = before === undefined || sayPlace(before) !== place;
    return [
      ...(changes ? [...(i === 0 ? [] : [""]), `${inLine(place)}:`, ""] : []),
      asItem(sayItem(item)),
    ];
  });
}

function asItem(text: string): string {
  return `- ${inLine(text)}`;
}

/** Text of a file must not become a heading, a link or a tag. */
function inLine(text: string): string {
  return text.replace(/\s+/g, " ").replace(/[\\`*_[\]<>#|]/g, "\\$&");
}
