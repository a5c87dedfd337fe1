import { sha256 } from "@noble/hashes/sha2.js";
import { utf8ToBytes } from "@noble/hashes/utils.js";
import { OptionError } from "../../errors/errors.ts";

/**
 * The content security policy of a report: it may load nothing from anywhere, send nothing, and run no style
 * and no script except the very ones it was written with, known by their hash.
 *
 * @param styleSheet  text of the one style element
 * @param script      text of the one script element; null: the page has no script and may run none
 */
export function contentSecurityPolicy(styleSheet: string, script: string | null): string {
  return [
    "default-src 'none'",
    `style-src '${hashSource(styleSheet)}'`,
    `script-src ${script === null ? "'none'" : `'${hashSource(script)}'`}`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

function hashSource(text: string): string {
  return `sha256-${btoa(String.fromCharCode(...sha256(utf8ToBytes(text))))}`;
}

/**
 * A script text that a page can carry as it is. A browser hashes what its parser makes of the element, so text
 * that the parser would change or cut short can never match its hash.
 *
 * @throws OptionError `bad-option`
 */
export function checkedScript(text: string): string {
  if (/<\/script|<!--|\r|\0/i.test(text)) {
    throw new OptionError(
      "chartRuntime",
      `${text.slice(0, 20)}…`,
      'script text without "</script", "<!--", carriage returns and NUL',
    );
  }
  return text;
}
