import { dropUndefined, type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'
import type { Id, NumberedPart, Seal, SpecSheet, WheelMark } from '../spec/index.js'

/** A part with its names on the sheet; a type because an interface is not assignable to `Params`. */
export type PartName = {
  readonly path: JsonPointer
  /** Name of the gearcase, if the part belongs to one. */
  readonly gearcase?: string
  readonly part?: string
  readonly instance?: { readonly id: Id; readonly name: string }
  readonly wheelMark?: WheelMark
}

/**
 * Describes a pointer into a sheet by the names of its gearcase and part. A pointer below a part, such as to
 * its tightening, has the names of the part.
 */
export function describePart(
  sheet: SpecSheet,
  path: JsonPointer,
  at: { readonly instance?: Id; readonly wheelMark?: WheelMark } = {},
): PartName {
  const tokens = splitPointer(path) ?? []
  const [section, id, list, partId] = tokens
  const readName = (pointer: JsonPointer): string | undefined => {
    const name = readPointer(sheet, pointer)
    return typeof name === 'string' ? name : undefined
  }
  const readNameAt = (depth: number) => readName(`${joinPointer(tokens.slice(0, depth))}/name`)
  const { instance, wheelMark } = at
  if (section === 'gearcases' && id !== undefined) {
    const instances = sheet.gearcases[id]?.instances ?? {}
    const knownInstance =
      instance !== undefined && Object.hasOwn(instances, instance) ? instances[instance] : undefined
    return dropUndefined({
      path,
      gearcase: readNameAt(2) ?? id,
      part:
        list === 'openings' || list === 'covers' || list === 'filters'
          ? (readNameAt(4) ?? partId)
          : undefined,
      instance: instance === undefined ? undefined : { id: instance, name: knownInstance?.name ?? instance },
      wheelMark,
    })
  }
  const part =
    section === 'shields' && id !== undefined
      ? (readNameAt(2) ?? id)
      : section === 'machine'
        ? (readName(`${path}/at`) ?? readName(`${path}/item`) ?? readNameAt(3))
        : undefined
  return dropUndefined({ path, part, wheelMark })
}

/** The part number to buy, and the one that it supersedes: `HB-2025 (was HB-2024)`. */
export function formatPartNumber({ partNumber, supersededBy }: NumberedPart): string | undefined {
  if (supersededBy === undefined) return partNumber
  return `${supersededBy.partNumber}${partNumber === undefined ? '' : ` (was ${partNumber})`}`
}

/** A seal as in a parts list: part number, kind, and product or size. */
export function describeSeal(seal: Seal): string {
  if (seal.kind === 'none' || seal.kind === 'not stated') return seal.kind
  const product = 'product' in seal ? seal.product : undefined
  const size =
    'size' in seal && seal.size !== undefined
      ? `${Object.values(seal.size).slice(0, -1).join(' × ')} ${seal.size.unit}`
      : undefined
  return [formatPartNumber(seal), seal.kind, product ?? size].filter((word) => word !== undefined).join(' ')
}
