/** 10ᵏ for a whole k, rounded correctly: 10 ** -4 is off by one in the last place in Node 20 and 22. */
export function powerOfTen(k: number): number {
  return Number(`1e${k}`);
}
