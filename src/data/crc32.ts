const polynomial = 0xedb88320;

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ polynomial : rest >>> 1;
  return rest;
});

/**
 * The checksum CRC-32 that a zip archive keeps of each file. Written here since no browser has one, and packages for it are
 * as long.
 *
 * Source: ITU-T V.42, reflected polynomial EDB88320; the check value of "123456789" is CBF43926.
 */
export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) rest = (rest >>> 8) ^ (table[(rest ^ byte) & 0xff] ?? 0);
  return (rest ^ 0xffffffff) >>> 0;
}
