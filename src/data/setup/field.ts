import type * as z from "zod";
import { messageOf, type SetupNeed } from "./needs.ts";
import { type Measured, strict } from "./values.ts";

/**
 * One value of a setup. The file may spell it with keys of its own, each with its schema and with what a person is told
 * of it; `read` makes the value of what was found there.
 */
export interface Field<T> {
  readonly keys: Readonly<Record<string, z.ZodType>>;
  readonly read: (found: Found) => T;
  readonly rules?: readonly Rule<Found>[];
}

/** An entry of the file by key, each value as its schema leaves it; undefined: not given. */
type Found = Readonly<Record<string, unknown>>;

/** What must hold between the values of an entry that are right by themselves. */
export interface Rule<T> {
  readonly holds: (entry: T) => boolean;
  /** Key of the file that is to blame. */
  readonly at: string;
  readonly need: SetupNeed;
}

/** A key of the file, its schema, and what a person is told of it, with an example as JSON holds it. */
type Key<S extends z.ZodType> = readonly [
  key: string,
  schema: S,
  description: string,
  example: unknown,
];

/** A value the file may leave out: then null. */
export function optional<S extends z.ZodType>(
  ...[key, schema, description, example]: Key<S>
): Field<z.output<S> | null> {
  return optionalEntry(key, schema.meta({ description, example }));
}

/** A value the file may leave out: then it is left out of the setup too. */
export function optionalKey<S extends z.ZodType>(
  ...[key, schema, description, example]: Key<S>
): Field<z.output<S> | undefined> {
  return {
    keys: { [key]: schema.optional().meta({ description, example }) },
    read: (found) => valueAt<S>(found, key),
  };
}

/** A value without which its entry means nothing. */
export function needed<S extends z.ZodType>(
  ...[key, schema, description, example]: Key<S>
): Field<z.output<S>> {
  return {
    keys: { [key]: schema.meta({ description, example }) },
    read: (found) => valueAt<S>(found, key),
  };
}

/** An entry with fields of its own that the file may leave out: then null. */
export function optionalEntry<S extends z.ZodType>(
  key: string,
  entry: S,
): Field<z.output<S> | null> {
  return {
    keys: { [key]: entry.optional() },
    read: (found) => valueAt<S>(found, key) ?? null,
  };
}

/** An entry, or a list of them, without which the file means nothing. */
export function neededEntry<S extends z.ZodType>(key: string, entry: S): Field<z.output<S>> {
  return { keys: { [key]: entry }, read: (found) => valueAt<S>(found, key) };
}

/** An entry, or a list of them, that is as good as empty where the file leaves it out. */
export function entryOrEmpty<S extends z.ZodType>(
  key: string,
  entry: S,
  empty: z.input<S>,
): Field<z.output<S>> {
  return { keys: { [key]: entry.prefault(empty) }, read: (found) => valueAt<S>(found, key) };
}

/** A figure and, under a key of its own, its standard uncertainty, which would be lost in silence without the figure. */
export function withUncertainty(
  figure: Key<z.ZodType<number>>,
  uncertainty: Key<z.ZodType<number>>,
): Field<Measured | null> {
  const [[key], [ofUncertainty]] = [figure, uncertainty];
  const value = optional(...figure);
  const standardUncertainty = optional(...uncertainty);
  return {
    keys: { ...value.keys, ...standardUncertainty.keys },
    read: (found) => {
      const measured = value.read(found);
      return measured === null
        ? null
        : { value: measured, standardUncertainty: standardUncertainty.read(found) };
    },
    rules: [
      {
        holds: (found) => found[ofUncertainty] === undefined || found[key] !== undefined,
        at: ofUncertainty,
        need: { problem: "setup-figure-missing", facts: { key } },
      },
    ],
  };
}

/**
 * The schema of an entry of the file, which makes a T of it: the compiler holds the fields to those of T, name by name.
 *
 * @param rules   what must hold between the fields
 * @param unread  fields that are allowed and mean nothing to us
 */
export function entryOf<T>(
  fields: { readonly [K in keyof T]-?: Field<T[K]> },
  {
    rules = [],
    unread = [],
  }: {
    readonly rules?: readonly Rule<T>[];
    readonly unread?: readonly Field<unknown>[];
  } = {},
) {
  const byName: Readonly<Record<string, Field<unknown>>> = fields;
  // A field for each name of T, and nothing else.
  const read = (found: Found) =>
    Object.fromEntries(
      Object.entries(byName).flatMap(([name, field]) => {
        const value = field.read(found);
        return value === undefined ? [] : [[name, value]];
      }),
    ) as T;
  const allowed = [...Object.values(byName), ...unread];
  const keys = Object.fromEntries(allowed.flatMap((field) => Object.entries(field.keys)));
  const rulesOfFields = allowed.flatMap((field) => field.rules ?? []);
  return strict(keys)
    .superRefine((found, context) => {
      const broken = [
        ...rulesOfFields.filter(({ holds }) => !holds(found)),
        ...rules.filter(({ holds }) => !holds(read(found))),
      ];
      for (const { at, need } of broken)
        context.addIssue({ code: "custom", message: messageOf(need), path: [at] });
    })
    .transform(read);
}

/** What a schema left under its key. */
function valueAt<S extends z.ZodType>(found: Found, key: string): z.output<S> {
  return found[key] as z.output<S>;
}
