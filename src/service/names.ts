import { dropUndefined, type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'
import type { Id, NumberedPart, Seal, SpecSheet, WheelMark } from '../spec/index.js'

/** A part of the machine with its names on the sheet; a type, since an interface is not assignable to `Params`. */
export type PartName = {
  readonly path: JsonPointer
  /** Name of the gearcase, if the part belongs to one. */
  readonly gearcase?: string
  readonly part?: string
  readonly instance?: { readonly id: Id; readonly name: string }
  readonly wheelMark?: WheelMark
}

/**
 * Names a place of a sheet by the names of its gearcase and part. A place below a part, such as its tightening, has the
 * names of the part.
 */
export function namePart(
  sheet: SpecSheet,
  path: JsonPointer,
  at: { readonly instance?: Id; readonly wheelMark?: WheelMark } = {},
): PartName {
  const tokens = splitPointer(path) ?? []
  const [room, id, list, partId] = tokens
  const read = (pointer: JsonPointer): string | undefined => {
    const name = readPointer(sheet, pointer)
    return typeof name === 'string' ? name : undefined
  }
  const named = (depth: number) => read(`${joinPointer(tokens.slice(0, depth))}/name`)
  const { instance, wheelMark } = at
  if (room === 'gearcases' && id !== undefined) {
    const instances = sheet.gearcases[id]?.instances ?? {}
    const known =
      instance !== undefined && Object.hasOwn(instances, instance) ? instances[instance] : undefined
    return dropUndefined({
      path,
      gearcase: named(2) ?? id,
      part: list === 'openings' || list === 'covers' || list === 'filters' ? (named(4) ?? partId) : undefined,
      instance: instance === undefined ? undefined : { id: instance, name: known?.name ?? instance },
      wheelMark,
    })
  }
  const part =
    room === 'shields' && id !== undefined
      ? (named(2) ?? id)
      : room === 'machine'
        ? (read(`${path}/at`) ?? read(`${path}/item`) ?? named(3))
        : undefined
  return dropUndefined({ path, part, wheelMark })
}

/** The number to buy, and the one that it supersedes: `HB-2025 (was HB-2024)`. */
export function nameNumber({ partNumber, supersededBy }: NumberedPart): string | undefined {
  if (supersededBy === undefined) return partNumber
  return `${supersededBy.partNumber}${partNumber === undefined ? '' : ` (was ${partNumber})`}`
}

/** A seal as in a parts list: part number, kind, and product or size. */
export function nameSeal(seal: Seal): string {
  if (seal.kind === 'none' || seal.kind === 'not stated') return seal.kind
  const product = 'product' in seal ? seal.product : undefined
  const size =
    'size' in seal && seal.size !== undefined
      ? `${Object.values(seal.size).slice(0, -1).join(' × ')} ${seal.size.unit}`
      : undefined
  return [nameNumber(seal), seal.kind, product ?? size].filter((word) => word !== undefined).join(' ')
}
