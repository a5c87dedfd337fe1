/**
 * Text without control characters, which a file may hold but no page can show; line breaks and tabs stay. Each
 * is replaced by a visible mark, so that nobody takes the text for the original.
 */
export function printable(text: string): string {
  return text.replace(/[^\P{Cc}\t\n\r]/gu, "\ufffd");
}
