/** Hex keys across flats (ISO 2936 and the inch series), from memory. Import-free data. */
export const INTERNAL_HEX_SIZES: readonly string[] = /* @__PURE__ */ sizes(
  '1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 19, 22, 24, 27, 32, 36',
  '1/16, 5/64, 3/32, 7/64, 1/8, 9/64, 5/32, 3/16, 7/32, 1/4, 5/16, 3/8, 7/16, 1/2, 9/16, 5/8, 3/4, 7/8, 1',
)

/** Spanner and socket widths (ISO 272, older DIN widths, the inch series), from memory. Import-free data. */
export const EXTERNAL_HEX_SIZES: readonly string[] = /* @__PURE__ */ sizes(
  '5.5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 21, 22, 24, 27, 30, 32, 34, 36, 41, 46, 50, 55, 60, 65',
  '1/4, 5/16, 3/8, 7/16, 1/2, 9/16, 5/8, 11/16, 3/4, 13/16, 7/8, 15/16, 1, 1 1/16, 1 1/8, 1 1/4, 1 5/16, 1 3/8, 1 7/16, 1 1/2',
)

/** Square drives of wrenches and sockets (ISO 1174), from memory. Import-free data. */
export const SQUARE_DRIVES: readonly string[] = ['1/4 in', '3/8 in', '1/2 in', '3/4 in', '1 in', '1 1/2 in']

function sizes(millimetres: string, inches: string): string[] {
  return [
    ...millimetres.split(', ').map((size) => `${size} mm`),
    ...inches.split(', ').map((size) => `${size} in`),
  ]
}
