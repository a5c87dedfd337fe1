import { type Expression, parseSync } from "oxc-parser";

/** Beyond this many digits two machines may differ, since not all compute exp and log to the same last bit. */
const mostDigits = 12;

/**
 * Whether a value is the one an example states. Numbers hold to the digits that are written, at most twelve; lists and
 * objects must have the same parts.
 *
 * @param expected  a JavaScript value as text
 */
export function holds(value: unknown, expected: string): boolean {
  const [statement] = parseSync("expected.ts", `(${expected})`).program.body;
  if (statement?.type !== "ExpressionStatement") throw new Error(`${expected} is no value`);
  return same(value, statement.expression);
}

function same(value: unknown, expected: Expression): boolean {
  switch (expected.type) {
    case "ParenthesizedExpression":
      return same(value, expected.expression);
    case "Literal":
      return typeof expected.value === "number"
        ? sameNumber(value, expected.raw ?? "", expected.value)
        : value === expected.value;
    case "UnaryExpression":
      return (
        expected.operator === "-" && typeof value === "number" && same(-value, expected.argument)
      );
    case "ArrayExpression":
      return (
        Array.isArray(value) &&
        value.length === expected.elements.length &&
        expected.elements.every((element, at) => same(value[at], element as Expression))
      );
    case "ObjectExpression":
      return sameObject(value, expected);
    default:
      throw new Error(`A stated value holds a ${expected.type}.`);
  }
}

function sameNumber(value: unknown, written: string, expected: number): boolean {
  if (typeof value !== "number") return false;
  const digits = written
    .replace(/e.*$/i, "")
    .replace(/^0*\.?0*/, "")
    .replace(/[._]/g, "").length;
  const whole = /^[\d_]+$/.test(written);
  return whole
    ? value === expected
    : Number(value.toPrecision(Math.max(1, Math.min(digits, mostDigits)))) ===
        Number(expected.toPrecision(mostDigits));
}

function sameObject(
  value: unknown,
  { properties }: Extract<Expression, { type: "ObjectExpression" }>,
): boolean {
  if (typeof value !== "object" || value === null) return false;
  const actual = new Map(Object.entries(value));
  return (
    actual.size === properties.length &&
    properties.every((property) => {
      if (property.type !== "Property") return false;
      const { key } = property;
      const name = key.type === "Identifier" ? key.name : key.type === "Literal" ? key.value : null;
      return typeof name === "string" && same(actual.get(name), property.value as Expression);
    })
  );
}
