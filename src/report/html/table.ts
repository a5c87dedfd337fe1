import type { Column, Row, Table, Text } from "../document.ts";
import { escapeHtml } from "./escape.ts";
import { toneIcon } from "./icons.ts";
import { htmlText, plainText } from "./text.ts";

/** A table longer than this may break over pages; a shorter one is kept whole. */
const longTable = 16;

/**
 * A table in a region of its own that scrolls sideways and takes the keyboard focus, so that a wide table can be
 * read on a phone without moving the page.
 */
export function table(block: Table): string {
  const captionId = `${block.id}_caption`;
  const length = block.rows.length > longTable ? "long" : "short";
  const head = block.columns.map(
    (column) =>
      `<th scope="col"${classes(column, column.heading, 14, 24)}>${escapeHtml(column.heading)}</th>`,
  );
  const rows = block.rows.map((row) => tableRow(row, block));
  const note = block.note === undefined ? "" : `<p class="small">${htmlText(block.note)}</p>`;
  return `<div class="table ${length}" id="${block.id}">
<div class="scroll" role="region" tabindex="0" aria-labelledby="${captionId}">
<table><caption id="${captionId}"><span>${escapeHtml(block.caption)}</span></caption>
<thead><tr>${head.join("")}</tr></thead>
<tbody>${rows.join("\n")}</tbody></table>
</div>${note}</div>`;
}

function tableRow(row: Row, block: Table): string {
  const cells = block.columns.map((column, i) => {
    const cell = row.cells[i] ?? "";
    const icon = i === 0 && row.tone !== undefined ? toneIcon(row.tone) : "";
    const content = icon + htmlText(cell);
    return i === 0 && block.rowHeaders !== false
      ? `<th scope="row"${classes(column, cell)}>${content}</th>`
      : `<td${classes(column, cell)}>${content}</td>`;
  });
  return `<tr${row.tone === undefined ? "" : ` class="${row.tone}"`}>${cells.join("")}</tr>`;
}

/** Numbers, dates and names stay on one line; sentences get room to be read on a phone. */
function classes(column: Column, cell: Text, oneLine = 18, manyWords = 40): string {
  const { length } = plainText(cell);
  const names = [
    column.align === undefined || column.align === "start" ? "" : column.align,
    length <= oneLine ? "brief" : "",
    length > manyWords ? "wordy" : "",
  ].filter((name) => name !== "");
  return names.length === 0 ? "" : ` class="${names.join(" ")}"`;
}
