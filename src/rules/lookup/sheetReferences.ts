import { type JsonPointer, joinPointer } from '../../base/index.js'
import type { Gearcase, SpecSheet } from '../../spec/index.js'
import { filledAt } from './filledAt.js'

export type ReferredPart =
  | 'source'
  | 'axle'
  | 'support'
  | 'gearcase'
  | 'opening'
  | 'cover'
  | 'shield'
  | 'service'

/** A place of a sheet that names another part of it by id. */
export interface ReferenceAt {
  readonly path: JsonPointer
  readonly to: ReferredPart
  readonly id: string
  readonly known: readonly string[]
}

/** Every place of a sheet that names a source, axle, support, gearcase, opening, cover, shield or service by id. */
export function sheetReferences(sheet: SpecSheet): readonly ReferenceAt[] {
  const gearcases = Object.keys(sheet.gearcases)
  const axles = Object.keys(sheet.machine.axles)
  const services = Object.keys(sheet.services)
  return [
    ...Object.entries(sheet.machine.supports).flatMap(([id, { axle }]) =>
      makeReference(`/machine/supports/${id}/axle`, 'axle', axle, axles),
    ),
    ...Object.entries(sheet.gearcases).flatMap(([id, gearcase]) =>
      gearcaseReferences(`/gearcases/${id}`, gearcase, sheet),
    ),
    ...Object.entries(sheet.services).flatMap(([id, service]) => [
      ...makeReferences(`/services/${id}/satisfies`, 'service', service.satisfies, services),
      ...makeReferences(`/services/${id}/gearcases`, 'gearcase', service.gearcases, gearcases),
    ]),
    ...sourceReferences(sheet, Object.keys(sheet.sources)),
  ]
}

function gearcaseReferences(path: JsonPointer, gearcase: Gearcase, sheet: SpecSheet): readonly ReferenceAt[] {
  const { access, oilSpace, emptying, shields, filters = {} } = gearcase
  const gearcases = Object.keys(sheet.gearcases)
  const openings = Object.keys(gearcase.openings)
  const covers = Object.keys(gearcase.covers ?? {})
  const supports = access.kind === 'raised' ? access.supports : []
  return [
    ...makeReference(`${path}/axle`, 'axle', gearcase.axle, Object.keys(sheet.machine.axles)),
    ...makeReferences(`${path}/access/supports`, 'support', supports, Object.keys(sheet.machine.supports)),
    ...(oilSpace.kind === 'shared'
      ? makeReference(`${path}/oilSpace/with`, 'gearcase', oilSpace.with, gearcases)
      : [
          ...makeReference(
            `${path}/oilSpace/fill/method/opening`,
            'opening',
            filledAt(oilSpace.fill),
            openings,
          ),
          ...makeReferences(`${path}/oilSpace/passageTo`, 'gearcase', oilSpace.passageTo, gearcases),
        ]),
    ...emptying.flatMap((way, place) =>
      way.kind === 'cover'
        ? makeReference(`${path}/emptying/${place}/cover`, 'cover', way.cover, covers)
        : [
            ...makeReference(`${path}/emptying/${place}/opening`, 'opening', way.opening, openings),
            ...(way.kind === 'drain plug'
              ? makeReferences(`${path}/emptying/${place}/also`, 'opening', way.also, openings)
              : []),
          ],
    ),
    ...Object.entries(filters).flatMap(([id, { held }]) => {
      const at = `${path}/filters/${id}/held`
      if (held.kind === 'behind opening')
        return makeReference(`${at}/opening`, 'opening', held.opening, openings)
      return held.kind === 'behind cover' ? makeReference(`${at}/cover`, 'cover', held.cover, covers) : []
    }),
    ...makeReferences(`${path}/shields`, 'shield', shields, Object.keys(sheet.shields ?? {})),
  ]
}

function makeReference(
  path: JsonPointer,
  to: ReferredPart,
  id: string | undefined,
  known: readonly string[],
): readonly ReferenceAt[] {
  return id === undefined ? [] : [{ path, to, id, known }]
}

function makeReferences(
  path: JsonPointer,
  to: ReferredPart,
  ids: readonly string[] | undefined,
  known: readonly string[],
): readonly ReferenceAt[] {
  return (ids ?? []).flatMap((id, place) => makeReference(`${path}/${place}`, to, id, known))
}

/** Searches the whole document, since a `source` may be anywhere. */
function sourceReferences(
  here: object,
  known: readonly string[],
  path: JsonPointer = '',
  found: ReferenceAt[] = [],
): readonly ReferenceAt[] {
  for (const [key, value] of Object.entries(here) as [string, unknown][]) {
    if (typeof value !== 'object' || value === null) continue
    const at = path + (/[~/]/.test(key) ? joinPointer([key]) : `/${key}`)
    if (key === 'source' && 'ref' in value && typeof value.ref === 'string')
      found.push({ path: `${at}/ref`, to: 'source', id: value.ref, known })
    sourceReferences(value, known, at, found)
  }
  return found
}
