import { htmlEscape } from "escape-goat";
import { at } from "../../errors/at.ts";

/** How a drawing names itself. */
export interface SvgNaming {
  /** Prefix of every id inside; unique in the page. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

/**
 * Turns the SVG text that vega writes into one that can live inside a page under a strict policy, next to
 * others: no style attribute (the policy blocks them), ids that begin with the chart's own, no fixed size, one
 * name and description in place of the many labels inside, and nothing that is never seen.
 *
 * Works on vega's own serialisation, which escapes < and > in attributes and text, so a tag ends at the
 * first ">". It is not a general SVG cleaner.
 */
export function cleanSvg(source: string, naming: SvgNaming): string {
  const ids = new Map<string, string>();
  const localId = (id: string): string => {
    const known = ids.get(id) ?? `${naming.id}_${ids.size + 1}`;
    ids.set(id, known);
    return known;
  };
  const tokens = source.match(/<[^>]*>|[^<]+/g) ?? [];
  const body = keepVisible(tokens).map((token) => cleanToken(token, localId));
  return rootTag(at(tokens, 0), naming) + description(naming) + body.slice(1).join("");
}

/** Drops elements that are hidden or empty, with everything inside them. */
function keepVisible(tokens: readonly string[]): readonly string[] {
  const kept: string[] = [];
  let hiddenDepth = 0;
  for (const token of tokens) {
    const change = token.startsWith("</") ? -1 : isOpening(token) ? 1 : 0;
    if (hiddenDepth > 0) hiddenDepth += change;
    else if (!isHidden(token)) kept.push(token);
    else hiddenDepth = change;
  }
  return kept;
}

const isOpening = (token: string): boolean => token.startsWith("<") && !token.endsWith("/>");

const hidden = [
  /^<text\b[^>]*\sopacity="0"/,
  /^<path\b[^>]*\sdisplay="none"/,
  /\sd="(M0,0h0v0h0Z)?"/,
];

const isHidden = (token: string): boolean => hidden.some((pattern) => pattern.test(token));

function cleanToken(token: string, localId: (id: string) => string): string {
  if (!token.startsWith("<") || token.startsWith("</")) return token;
  const hint = hoverHint(token);
  const cleaned = token.replace(/\s([\w:-]+)="([^"]*)"/g, (_, name: string, value: string) =>
    cleanAttribute(name, value, localId),
  );
  return hint === null ? cleaned : cleaned.replace(/\/>$/, `>${hint}</path>`);
}

const unwanted = /^(aria-.*|role|style|class|version|xmlns:.*)$/;
const geometry = /^(transform|d|x|y|x1|x2|y1|y2|cx|cy|r|width|height)$/;

function cleanAttribute(name: string, value: string, localId: (id: string) => string): string {
  if (unwanted.test(name)) return "";
  if (name === "id") return ` id="${localId(value)}"`;
  if (geometry.test(name)) return ` ${name}="${shortNumbers(value)}"`;
  const linked = value.replace(/url\(#([^)]+)\)/g, (_, id: string) => `url(#${localId(id)})`);
  return ` ${name}="${linked}"`;
}

/** A hundredth of a pixel is finer than any screen or press. */
function shortNumbers(value: string): string {
  return value.replace(/-?\d*\.?\d+(?:e[-+]?\d+)?/gi, (digits) =>
    String(Math.round(Number(digits) * 100) / 100),
  );
}

/** Points and bars keep their label as a `title`: browsers show it on hovering, without any script. */
function hoverHint(token: string): string | null {
  if (!/\saria-roledescription="(point|circle|square|symbol mark|bar)"/.test(token)) return null;
  const label = /\saria-label="([^"]*)"/.exec(token)?.[1];
  return label === undefined || !token.endsWith("/>") ? null : `<title>${label}</title>`;
}

/*
 * The name goes into aria-label and not into a root <title>, which browsers would show as a hint over the
 * whole chart and so hide the hints of its points.
 */
function rootTag(tag: string, naming: SvgNaming): string {
  const viewBox = /\sviewBox="([^"]*)"/.exec(tag)?.[1] ?? "0 0 0 0";
  return htmlEscape`<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}" width="100%" role="img" aria-label="${naming.title}" aria-describedby="${naming.id}_description">`;
}

function description(naming: SvgNaming): string {
  return htmlEscape`<desc id="${naming.id}_description">${naming.description}</desc>`;
}
