/** One sentence after the other; what is null is not said. */
export function sentences(...said: readonly (string | null)[]): string {
  return said.filter((one) => one !== null).join(" ");
}
