import { type JsonPointer, readPointer } from '../../base/index.js'
import { convertAmount, type LengthUnit } from '../../quantity/index.js'
import type { Drive, FastenerSet, Seal } from '../../spec/index.js'
import { listDrives } from '../drives.js'
import { describePart, type PartName } from '../names.js'
import { planSeals } from '../planSeals.js'
import type { VisitContext } from '../visitContext.js'
import type { WallSize } from './wallFactsTypes.js'

/**
 * The rings and hexagons of the job in millimetres; a part laid on the paper can be compared with them. Equal sizes are
 * merged, and their counts added.
 */
export function listTrueSizes(visit: VisitContext, turned: readonly JsonPointer[]): readonly WallSize[] {
  const sizes = new Map<string, WallSize>()
  const add = (key: string, size: WallSize) => {
    const known = sizes.get(key)
    sizes.set(
      key,
      known === undefined
        ? size
        : { ...known, parts: [...known.parts, ...size.parts], count: known.count + size.count },
    )
  }
  for (const { seal, part, count, figure } of planSeals(visit)) {
    const ring = measureRing(seal)
    if (ring !== undefined)
      add(JSON.stringify([ring, 'partNumber' in seal && seal.partNumber]), {
        kind: 'ring',
        parts: [part],
        count,
        seal: figure,
        ...ring,
      })
  }
  for (const on of turned) {
    const [drive, ...others] = listDrives(visit.sheet, visit.identity, on) ?? []
    const acrossFlats = drive && others.length === 0 ? measureHexagon(drive) : undefined
    if (drive === undefined || acrossFlats === undefined) continue
    const parts: PartName[] = [describePart(visit.sheet, on)]
    add(`${drive.kind} ${drive.size}`, {
      kind: 'hexagon',
      parts,
      count: countOf(visit, on),
      drive,
      acrossFlats,
    })
  }
  return [...sizes.values()]
}

const toMillimetres = (value: string | number, unit: LengthUnit): number =>
  Number(convertAmount({ value: Number(value), unit }, 'mm').value.toFixed(2))

function measureRing(seal: Seal): { inside: number; outside: number; thickness?: number } | undefined {
  if (!('size' in seal) || seal.size === undefined) return undefined
  const { size } = seal
  const { unit } = size
  const inside = toMillimetres(size.inside, unit)
  return 'section' in size
    ? { inside, outside: toMillimetres(Number(size.inside) + 2 * Number(size.section), unit) }
    : {
        inside,
        outside: toMillimetres(size.outside, unit),
        thickness: toMillimetres(size.thickness, unit),
      }
}

/** The distance across the flats of a hexagon such as `22 mm` or `7/8 in`; undefined for other drives. */
function measureHexagon({ kind, size = '' }: Drive): number | undefined {
  if (kind !== 'external hex' && kind !== 'internal hex') return undefined
  const [, whole = '0', over = '', under = '1', unit] =
    /^(?:([0-9]+(?:\.[0-9]+)?)[ -]?)??(?:([0-9]+)\/([1-9][0-9]*))? ?(mm|in)$/.exec(size) ?? []
  if (unit !== 'mm' && unit !== 'in') return undefined
  const length = toMillimetres(Number(whole) + Number(over) / Number(under), unit)
  return length > 0 && length < 100 ? length : undefined
}

function countOf({ sheet }: VisitContext, on: JsonPointer): number {
  const set = ['/bolts', '/fasteners']
    .map((tail) => readPointer(sheet, `${on}${tail}`) as FastenerSet | undefined)
    .find((candidate) => candidate !== undefined)
  return typeof set?.count === 'number' ? set.count : 1
}
