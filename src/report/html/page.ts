import { escapeHtml } from "./escape.ts";
import { contentSecurityPolicy } from "./policy.ts";

/** A page around what its body shows. */
export interface HtmlPage {
  readonly language: string;
  readonly title: string;
  readonly colorScheme: "light" | "light dark";
  readonly styleSheet: string;
  /** Null: the page has no script, and its policy forbids any. */
  readonly script: string | null;
  /** Markup. */
  readonly body: string;
}

/** One HTML file that needs nothing else and may ask for nothing else. */
export function htmlPage({
  language,
  title,
  colorScheme,
  styleSheet,
  script,
  body,
}: HtmlPage): string {
  return `<!doctype html>
<html lang="${escapeHtml(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicy(styleSheet, script)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="${colorScheme}">
<title>${escapeHtml(title)}</title>
<style>${styleSheet}</style>
</head>
<body>
${body}
${script === null ? "" : `<script>${script}</script>\n`}</body>
</html>
`;
}
