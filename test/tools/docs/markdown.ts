/** A block of code between fences. */
export interface CodeBlock {
  readonly language: string;
  readonly code: string;
  /** Line of its first line of code in the document, from 1. */
  readonly line: number;
}

export function codeBlocks(markdown: string): readonly CodeBlock[] {
  return [...markdown.matchAll(/^```(\w*)[^\n]*\n(.*?)^```$/gms)].map((match) => ({
    language: match[1] ?? "",
    code: match[2] ?? "",
    line: markdown.slice(0, match.index).split("\n").length + 1,
  }));
}

/** What is left when code between fences and in backticks is taken out; lines stay where they are. */
export function prose(markdown: string): string {
  const blank = (text: string) => text.replace(/[^\n]/g, "");
  return markdown.replace(/^```.*?^```$/gms, blank).replace(/(`+)(?!`).*?\1/gs, blank);
}

/** Code in backticks within the text. */
export function codeSpans(markdown: string): readonly string[] {
  const text = markdown.replace(/^```.*?^```$/gms, "");
  return [...text.matchAll(/(?<!`)`([^`\n]+)`(?!`)/g)].map(([, code = ""]) => code);
}

/** Targets of links and pictures, written as Markdown or as HTML. */
export function links(markdown: string): readonly string[] {
  const text = prose(markdown);
  const patterns = [
    /\]\(\s*<?([^)\s>]+)>?(?:\s+"[^"]*")?\s*\)/g,
    /^\[[^\]]+\]:\s*<?([^\s>]+)/gm,
    /\b(?:src|href|srcset)="([^"\s]+)/g,
  ];
  return patterns.flatMap((pattern) =>
    [...text.matchAll(pattern)].map(([, target = ""]) => target),
  );
}

/** The addresses of headings within a page, as code-hosting sites make them. */
export function anchors(markdown: string): readonly string[] {
  const seen = new Map<string, number>();
  const text = markdown.replace(/^```.*?^```$/gms, "");
  return [...text.matchAll(/^#{1,6}\s+(.+?)\s*#*$/gm)].map(([, heading = ""]) => {
    const slug = heading
      .replace(/\[([^\]]*)\]\([^)]*\)/g, "$1")
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\p{M}_\- ]/gu, "")
      .replaceAll(" ", "-");
    const times = seen.get(slug) ?? 0;
    seen.set(slug, times + 1);
    return times === 0 ? slug : `${slug}-${times}`;
  });
}
