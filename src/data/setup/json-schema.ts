import { guideTo, type SetupField } from "./guide.ts";
import { setupSchema } from "./schema.ts";

export type { SetupField };

/** What the schema says of setups. @internal */
export const setupGuide = guideTo(setupSchema);

/**
 * What a setup file may hold, as JSON Schema (draft 2020-12), for editors and for programs that write setups. It does not
 * know what must hold between fields, nor every way to write a unit; checkSetup does.
 */
export function setupJsonSchema(): Readonly<Record<string, unknown>> {
  return setupGuide.json();
}

/** Every field of a setup file, in the order of a full one. */
export function setupFields(): readonly SetupField[] {
  return setupGuide.fields();
}
