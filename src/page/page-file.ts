import { embeddedJson, escapeHtml } from "../report/html/escape.ts";
import { checkedScript, contentSecurityPolicy } from "../report/html/policy.ts";
import { type Given, givenId } from "./given.ts";
import { styleSheet } from "./styles/style-sheet.ts";

export interface PageFile {
  /** BCP 47 tag of the words in the script. */
  readonly language: string;
  readonly title: string;
  /** Said where scripts are off. */
  readonly noScript: string;
  /** Text of the bundled page. */
  readonly script: string;
  readonly given: Given;
}

/**
 * The page at the drill as one HTML file that needs nothing else. Its own content security policy lets it load nothing,
 * send nothing, and run no script and no style but the very ones it was written with.
 *
 * @throws OptionError `bad-option` for a script that cannot stand in a page
 */
export function pageFile({ language, title, noScript, script, given }: PageFile): string {
  const code = checkedScript(`\n${script}`);
  return `<!doctype html>
<html lang="${escapeHtml(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${escapeHtml(contentSecurityPolicy(styleSheet, code))}">
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
<meta name="referrer" content="no-referrer">
<title>${escapeHtml(title)}</title>
<style>${styleSheet}</style>
</head>
<body>
<noscript><p>${escapeHtml(noScript)}</p></noscript>
<div id="page"></div>
<script type="application/json" id="${givenId}">${embeddedJson(given)}</script>
<script>${code}</script>
</body>
</html>
`;
}
