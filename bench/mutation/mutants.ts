import { parseSync, Visitor } from "oxc-parser";

/** One small change of a source file. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  /** Place in the text, and what stands there instead. */
  readonly start: number;
  readonly end: number;
  readonly put: string;
  /** What was done, such as "< to <=". */
  readonly change: string;
}

interface Span {
  readonly start: number;
  readonly end: number;
}

const operators: ReadonlyMap<string, string> = new Map(
  Object.entries({
    "<": "<=",
    "<=": "<",
    ">": ">=",
    ">=": ">",
    "+": "-",
    "-": "+",
    "*": "/",
    "/": "*",
    "%": "*",
    "**": "*",
    "===": "!==",
    "!==": "===",
    "&&": "||",
    "||": "&&",
    "+=": "-=",
    "-=": "+=",
    "*=": "/=",
    "/=": "*=",
  }),
);

const methods: ReadonlyMap<string, string> = new Map(
  Object.entries({
    max: "min",
    min: "max",
    some: "every",
    every: "some",
    floor: "ceil",
    ceil: "floor",
    find: "findLast",
    findLast: "find",
  }),
);

/** Functions of which only what they are given is left. */
const dropped: ReadonlySet<string> = new Set(["sqrt", "abs", "round", "log", "exp"]);

/** Steps of a chain that are passed over. */
const passedOver: ReadonlySet<string> = new Set(["filter", "slice", "toReversed", "toSorted"]);

/** Every change that is tried of a file: arithmetic, bounds, conditions, numbers, and calls that are left out. */
export function mutantsOf(file: string, text: string): readonly Mutant[] {
  const found: Mutant[] = [];
  const lineAt = lineFinder(text);
  const add = ({ start, end }: Span, put: string, change: string) =>
    found.push({ file, line: lineAt(start), start, end, put, change });
  const swap = (operator: string, left: Span, right: Span) => {
    const put = operators.get(operator);
    const between = text.slice(left.end, right.start);
    const at = between.indexOf(operator);
    if (put === undefined || at < 0) return;
    const start = left.end + at;
    add({ start, end: start + operator.length }, put, `${operator} to ${put}`);
  };
  const negate = (span: Span, what: string) =>
    add(span, `!(${text.slice(span.start, span.end)})`, `${what} turned round`);
  const ofTypes: Span[] = [];

  new Visitor({
    TSLiteralType: (node) => {
      ofTypes.push(node);
    },
    TSEnumMember: (node) => {
      ofTypes.push(node);
    },
    BinaryExpression: ({ operator, left, right }) => {
      if (operator === "+" && [left, right].some((one) => isText(text, one))) return;
      swap(operator, left, right);
    },
    LogicalExpression: ({ operator, left, right }) => swap(operator, left, right),
    AssignmentExpression: ({ operator, left, right }) => {
      if (!(operator === "+=" && isText(text, right))) swap(operator, left, right);
    },
    UnaryExpression: (node) => {
      if (node.operator === "-" || node.operator === "!")
        add({ start: node.start, end: node.argument.start }, "", `${node.operator} left out`);
    },
    Literal: (node) => {
      if (typeof node.value === "number")
        add(node, next(node.value), `${node.raw} to ${next(node.value)}`);
      if (typeof node.value === "boolean")
        add(node, `${!node.value}`, `${node.raw} to ${!node.value}`);
    },
    ConditionalExpression: ({ test }) => negate(test, "choice"),
    IfStatement: ({ test }) => add(test, "false", "if never taken"),
    CallExpression: (node) => {
      const { callee, arguments: given } = node;
      if (callee.type !== "MemberExpression" || callee.property.type !== "Identifier") return;
      const { name } = callee.property;
      const { object, property } = callee;
      const ofMath = object.type === "Identifier" && object.name === "Math";
      const other = methods.get(name);
      if (other !== undefined && (ofMath || !["max", "min"].includes(name)))
        add(property, other, `${name} to ${other}`);
      const [only] = given;
      if (ofMath && dropped.has(name) && only !== undefined)
        add(node, `(${text.slice(only.start, only.end)})`, `Math.${name} left out`);
      if (!ofMath && passedOver.has(name))
        add(node, text.slice(object.start, object.end), `${name} left out`);
    },
    ExpressionStatement: (node) => {
      if (node.expression.type === "CallExpression") add(node, ";", "call left out");
    },
  }).visit(parseSync(file, text).program);

  return found
    .filter(({ start, end }) => !ofTypes.some((type) => type.start <= start && end <= type.end))
    .toSorted((a, b) => a.start - b.start || a.end - b.end);
}

/** The text of a file after a change. */
export function mutated(text: string, { start, end, put }: Mutant): string {
  return text.slice(0, start) + put + text.slice(end);
}

/** By one where that is much, else by half: in a table of figures the last digit is nobody's business. */
function next(value: number): string {
  return value === 0
    ? "1"
    : String(Number.isInteger(value) && value < 10 ? value + 1 : value * 1.5);
}

function isText(text: string, { start }: Span): boolean {
  return /["'`]/.test(text.charAt(start));
}

function lineFinder(text: string): (place: number) => number {
  const ends = [...text.matchAll(/\n/g)].map(({ index }) => index);
  return (place) => ends.filter((end) => end < place).length + 1;
}
