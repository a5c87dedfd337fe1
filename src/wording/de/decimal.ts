/** A number of ours as German writes it, with every digit it has; what a file says is quoted as the file has it. */
export function decimal(number: number | string | null): string {
  return String(number).replace(".", ",");
}
