import type { JsonPointer } from '../../base/index.js'
import type { CasePosition, PlaceStated } from '../../spec/index.js'
import type { SheetIndex } from './indexSheet.js'

/** A stated position, with the words of the place that hold for the same machines. */
export interface PositionWithPlace {
  /** The pointer of the position; with the kind `place`, of an override that sets only the place. */
  readonly path: JsonPointer
  readonly kind: 'position' | 'place'
  readonly position: CasePosition
  readonly place?: PlaceStated
  /** The name of the part, or of the gearcase of a breather. */
  readonly part: string
}

/** The positions of a sheet with their places: of the base sheet, and with each override that sets one of them. */
export function listPositions({ document, leaves, parts }: SheetIndex): readonly PositionWithPlace[] {
  const found = leaves.filter((one) => one.kind === 'position' || one.kind === 'place')
  const readAt = (place: JsonPointer, override: string) =>
    found.find((one) => (one.replaces ?? one.path) === place && findOverride(one.path) === override)
  return found.flatMap(({ kind, path, replaces: target = path }) => {
    const override = findOverride(path)
    const holder = target.slice(0, target.lastIndexOf('/'))
    const own = readAt(`${holder}/position`, override)
    if (kind === 'place' && (override === '' || own !== undefined)) return []
    const position = (own ?? readAt(`${holder}/position`, ''))?.leaf
    const place = (readAt(`${holder}/place`, override) ?? readAt(`${holder}/place`, ''))?.leaf
    if (position?.kind !== 'position') return []
    const gearcase = document.gearcases[holder.split('/')[2] ?? '']
    const part = parts.find((one) => one.path === holder)?.name ?? gearcase?.name ?? ''
    return [{ path, kind, position, part, ...(place?.kind === 'place' && { place }) }]
  })
}

function findOverride(path: JsonPointer): string {
  return /^\/overrides\/[0-9]+/.exec(path)?.[0] ?? ''
}
