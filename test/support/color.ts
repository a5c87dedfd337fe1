/*
 * What is needed to judge a palette. Sources: relative luminance and contrast ratio, W3C, Web Content Accessibility
 * Guidelines 2.2, definitions; simulation of dichromacy at full severity, Machado, Oliveira and Fernandes 2009, IEEE
 * Transactions on Visualization and Computer Graphics 15(6), tables of matrices, applied to linear RGB; OKLab,
 * B. Ottosson 2020, whose lightness runs from 0 to 1.
 */
type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

export const visions: Readonly<Record<string, Matrix>> = {
  trichromacy: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

const times = (matrix: Matrix, [a, b, c]: Triple): Triple => {
  const row = ([x, y, z]: Triple): number => x * a + y * b + z * c;
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])];
};

function linear(hex: string): Triple {
  const channel = (from: number): number => {
    const value = Number.parseInt(hex.slice(from, from + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

function luminance(hex: string): number {
  const [red, green, blue] = linear(hex);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** From 1 (none) to 21 (black on white). */
export function contrast(one: string, other: string): number {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
}

function oklab(rgb: Triple): Triple {
  const [long, medium, short] = times(
    [
      [0.4122214708, 0.5363325363, 0.0514459929],
      [0.2119034982, 0.6806995451, 0.1073969566],
      [0.0883024619, 0.2817188376, 0.6299787005],
    ],
    rgb,
  );
  return times(
    [
      [0.2104542553, 0.793617785, -0.0040720468],
      [1.9779984951, -2.428592205, 0.4505937099],
      [0.0259040371, 0.7827717662, -0.808675766],
    ],
    [Math.cbrt(long), Math.cbrt(medium), Math.cbrt(short)],
  );
}

/** Distance of two colours as one kind of vision sees them; about 0.02 can just be told apart side by side. */
export function difference(one: string, other: string, vision: Matrix): number {
  const clamp = (value: number): number => Math.min(1, Math.max(0, value));
  const seen = (hex: string): Triple => {
    const [red, green, blue] = times(vision, linear(hex));
    return oklab([clamp(red), clamp(green), clamp(blue)]);
  };
  const [a, b] = [seen(one), seen(other)];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
