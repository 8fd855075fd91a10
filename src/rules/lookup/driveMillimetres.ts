/** The width across flats that a drive's size names, in mm: `22 mm`, `3/8 in`, `1 1/8 in`; undefined for others. */
export function driveMillimetres(size: string | undefined): number | undefined {
  const [, millimetres] = /^([0-9]+(?:\.[0-9]+)?) ?mm$/.exec(size ?? '') ?? []
  if (millimetres !== undefined) return Number(millimetres)
  const [, whole = '0', above, below] = /^(?:([0-9]+) )?([0-9]+)\/([0-9]+) ?in$/.exec(size ?? '') ?? []
  if (above === undefined || below === undefined) return undefined
  return 25.4 * (Number(whole) + Number(above) / Number(below))
}
