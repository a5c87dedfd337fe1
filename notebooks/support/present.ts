/** An answer that was computed. Where one was not, it is null, and a finding beside it says why. */
export function present<T>(answer: T | null | undefined): T {
  if (answer === null || answer === undefined) {
    throw new RangeError("Nothing was computed here; the findings beside it say why.");
  }
  return answer;
}
