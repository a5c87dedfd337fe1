import { type Expression, type ObjectExpression, parseSync, Visitor } from "oxc-parser";
import { at } from "../../src/errors/at.ts";

/**
 * Files whose objects are looked up by name alone: never listed, never handed to what asks by names of its own. Codes of
 * problems of all but tables are among them, since each of these is raised under its whole name; others are put
 * together from pieces.
 */
const lookedUp =
  /^src\/(wording\/(en|de|sayings)\/|errors\/(en\/|problems\/(import|pool|file|setup|program|option)\.ts)|results\/caution-facts\/|data\/columns\.ts)/;

/** A property that may be left out. */
interface Answer {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** The property it stands in; null: none that may be left out. */
  readonly within: Answer | null;
  /** A function that properties share: what it asks for counts where one that stays calls it. The minifier leaves it out. */
  readonly isShared: boolean;
}

/** A name that the code asks for, or may hand on to be asked for. */
interface Ask {
  readonly name: string | RegExp;
  readonly within: Answer | null;
}

export interface Trimmed {
  readonly code: string;
  /** Names of what was cut out, in their order. */
  readonly left: readonly string[];
}

/**
 * A bundle without the words that nothing in it asks for. No bundler drops a property of an object, and most of what is
 * said of a report is never said at the drill. A property stays where its name is read anywhere, or stands anywhere as a
 * text that may be a name: too many stay rather than too few.
 *
 * @param code  an ECMAScript module as esbuild writes it, not minified: each file under a comment with its path
 */
export function withoutNeverAsked(code: string): Trimmed {
  const { answers, asks } = namesIn(code);
  const kept = keptOf(answers, asks);
  // What stands in another that is cut goes with it.
  const cuts = answers
    .filter(
      (one) => !one.isShared && !kept.has(one) && (one.within === null || kept.has(one.within)),
    )
    .sort((a, b) => a.from - b.from);
  const parts = cuts.map(({ from }, i) => code.slice(i === 0 ? 0 : at(cuts, i - 1).to, from));
  const rest = code.slice(cuts.at(-1)?.to ?? 0);
  return { code: [...parts, rest].join(""), left: cuts.map(({ name }) => name) };
}

/** Those asked for by what stays itself. */
function keptOf(answers: readonly Answer[], asks: readonly Ask[]): ReadonlySet<Answer> {
  const kept = new Set<Answer>();
  for (let before = -1; before < kept.size; ) {
    before = kept.size;
    const stays = ({ within }: Ask | Answer) => within === null || kept.has(within);
    const asked = asks.filter(stays).map(({ name }) => name);
    const names = new Set(asked);
    const pieced = asked.filter((name) => name instanceof RegExp);
    const isAsked = ({ name }: Answer) => names.has(name) || pieced.some((one) => one.test(name));
    for (const answer of answers) if (stays(answer) && isAsked(answer)) kept.add(answer);
  }
  return kept;
}

function namesIn(code: string): { readonly answers: readonly Answer[]; readonly asks: Ask[] } {
  const { program, comments } = parseSync("bundle.js", code);
  const files = comments.filter(({ value }) => /^ (\S+\.\w+|<stdin>)$/.test(value));
  const fileAt = (place: number) =>
    files.findLast(({ start }) => start < place)?.value.trim() ?? "";
  const asks: Ask[] = [];
  const own = new Map<unknown, Answer>();
  const keys = new Set<unknown>();
  const within: Answer[] = [];
  const ask = (name: string | RegExp) => asks.push({ name, within: within.at(-1) ?? null });
  new Visitor({
    ObjectExpression: (object) => {
      const mayLeave = lookedUp.test(fileAt(object.start));
      for (const { property, name, to } of namedIn(object)) {
        keys.add(property.key);
        if (mayLeave)
          own.set(property, {
            name,
            from: property.start,
            to,
            within: within.at(-1) ?? null,
            isShared: false,
          });
        else ask(name);
      }
    },
    Property: (property) => {
      const answer = own.get(property);
      if (answer !== undefined) within.push(answer);
    },
    "Property:exit": (property) => {
      if (own.has(property)) within.pop();
    },
    VariableDeclarator: (declared) => {
      const { id, init, start: from, end: to } = declared;
      if (id.type !== "Identifier" || init?.type !== "ArrowFunctionExpression") return;
      if (within.length > 0 || !lookedUp.test(fileAt(from))) return;
      const shared = { name: ofShared(id.name), from, to, within: null, isShared: true };
      own.set(declared, shared);
      within.push(shared);
    },
    "VariableDeclarator:exit": (declared) => {
      if (own.has(declared)) within.pop();
    },
    Identifier: ({ name }) => {
      ask(ofShared(name));
    },
    ObjectPattern: ({ properties }) => {
      for (const property of properties)
        if (property.type === "Property" && property.key.type === "Identifier")
          ask(property.key.name);
    },
    MemberExpression: (member) => {
      if (!member.computed && member.property.type === "Identifier") ask(member.property.name);
      if (member.computed) {
        const pieces = piecesOf(member.property);
        if (pieces !== null) ask(pieces);
      }
    },
    Literal: (literal) => {
      if (typeof literal.value === "string" && !keys.has(literal)) ask(literal.value);
    },
    TemplateLiteral: ({ quasis }) => {
      if (quasis.length === 1) ask(at(quasis, 0).value.cooked ?? "");
    },
  }).visit(program);
  return { answers: [...own.values()], asks };
}

/** Under a name that no property has. */
function ofShared(name: string): string {
  return `function ${name}`;
}

/** A name put together in the brackets that read it: what fits is asked for. */
function piecesOf(name: Expression): RegExp | null {
  if (name.type !== "TemplateLiteral" || name.expressions.length === 0) return null;
  const fixed = name.quasis.map(({ value }) => escaped(value.cooked ?? ""));
  return new RegExp(`^${fixed.join(".*")}$`);
}

function escaped(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|]/g, "\\$&");
}

/** Properties with a plain name, each with the end of what goes with it. */
function namedIn({ properties, end }: ObjectExpression) {
  return properties.flatMap((property, i) => {
    if (property.type !== "Property" || property.computed) return [];
    const { key } = property;
    const name =
      key.type === "Identifier" ? key.name : key.type === "Literal" ? String(key.value) : null;
    const to = properties[i + 1]?.start ?? end - 1;
    return name === null ? [] : [{ property, name, to }];
  });
}
