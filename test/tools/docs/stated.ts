import { type Comment, parseSync, type Statement } from "oxc-parser";

/** A value that an example states: `expression // -> value`. */
export interface StatedValue {
  /** The statement whose value it is. */
  readonly start: number;
  readonly end: number;
  readonly expected: string;
}

/** What an example says that its code will show. */
export interface Stated {
  readonly values: readonly StatedValue[];
  /** Lines printed, in order; null where the example prints nothing. A last line `…` says that more may follow. */
  readonly printed: readonly string[] | null;
}

/**
 * Reads what a piece of code promises: `// -> value` behind an expression is its value, and the comment lines that
 * follow a statement with console.log are what was printed.
 *
 * @throws Error when `// ->` follows no expression, since such a promise would be kept by nobody
 */
export function stated(code: string): Stated {
  const { program, comments, errors } = parseSync("example.ts", code);
  if (errors[0] !== undefined) throw new Error(`${errors[0].message} in\n${code}`);
  const lines = comments.filter(({ type }) => type === "Line");
  const prints = program.body.filter((statement) => /console\.log\(/.test(textOf(code, statement)));
  return {
    values: lines
      .filter(({ value }) => value.startsWith(" -> "))
      .map((comment) => valueBefore(code, program.body, comment)),
    printed:
      prints.length === 0
        ? null
        : prints.flatMap((statement) => linesAfter(code, lines, statement)),
  };
}

function textOf(code: string, { start, end }: { readonly start: number; readonly end: number }) {
  return code.slice(start, end);
}

function valueBefore(code: string, body: readonly Statement[], comment: Comment): StatedValue {
  const statement = body.findLast(({ end }) => end <= comment.start);
  if (
    statement?.type !== "ExpressionStatement" ||
    !/^\s*$/.test(code.slice(statement.end, comment.start))
  )
    throw new Error(`"//${comment.value}" follows no expression in\n${code}`);
  const { start, end } = statement.expression;
  return { start, end, expected: comment.value.slice(" -> ".length).trim() };
}

/** Comments with nothing but spaces between them and the statement. */
function linesAfter(code: string, comments: readonly Comment[], { end }: Statement): string[] {
  const found: string[] = [];
  let last = end;
  for (const { start, end: after, value } of comments) {
    if (start < last) continue;
    if (code.slice(last, start).trim() !== "" || /\n\s*\n/.test(code.slice(last, start))) break;
    found.push(value.replace(/^ /, "").trimEnd());
    last = after;
  }
  return found;
}
