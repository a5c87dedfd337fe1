/** A figure as the page keeps it: a comma between digits is a decimal mark, as nobody writes thousands on a scale. */
export function plain(text: string): string {
  const trimmed = text.trim();
  return /^[^.,]*,[^.,]*$/.test(trimmed) ? trimmed.replace(",", ".") : trimmed;
}

/** A figure that is kept, with the decimal mark of the reader and the digits it was typed with. */
export function written(text: string, mark: string): string {
  return /^[^.,]*\.[^.,]*$/.test(text) ? text.replace(".", mark) : text;
}
