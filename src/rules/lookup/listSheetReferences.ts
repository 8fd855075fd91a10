import { appendKey, type JsonPointer } from '../../base/index.js'
import type { Gearcase, SpecSheet } from '../../spec/index.js'
import { findFillOpening } from './findFillOpening.js'

export type ReferenceTarget =
  | 'source'
  | 'axle'
  | 'support'
  | 'gearcase'
  | 'opening'
  | 'cover'
  | 'shield'
  | 'service'

/** A reference by id from one part of a sheet to another. */
export interface IdReference {
  readonly path: JsonPointer
  readonly to: ReferenceTarget
  readonly id: string
  readonly known: readonly string[]
}

/** Every reference by id to a source, axle, support, gearcase, opening, cover, shield or service. */
export function listSheetReferences(sheet: SpecSheet): readonly IdReference[] {
  const gearcases = Object.keys(sheet.gearcases)
  const axles = Object.keys(sheet.machine.axles)
  const services = Object.keys(sheet.services)
  return [
    ...Object.entries(sheet.machine.supports).flatMap(([id, { axle }]) =>
      makeReference(`/machine/supports/${id}/axle`, 'axle', axle, axles),
    ),
    ...Object.entries(sheet.gearcases).flatMap(([id, gearcase]) =>
      listGearcaseReferences(`/gearcases/${id}`, gearcase, sheet),
    ),
    ...Object.entries(sheet.services).flatMap(([id, service]) => [
      ...makeReferences(`/services/${id}/satisfies`, 'service', service.satisfies, services),
      ...makeReferences(`/services/${id}/gearcases`, 'gearcase', service.gearcases, gearcases),
    ]),
    ...listSourceReferences(sheet, Object.keys(sheet.sources)),
  ]
}

function listGearcaseReferences(
  path: JsonPointer,
  gearcase: Gearcase,
  sheet: SpecSheet,
): readonly IdReference[] {
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
            findFillOpening(oilSpace.fill),
            openings,
          ),
          ...makeReferences(`${path}/oilSpace/passageTo`, 'gearcase', oilSpace.passageTo, gearcases),
        ]),
    ...emptying.flatMap((method, place) =>
      method.kind === 'cover'
        ? makeReference(`${path}/emptying/${place}/cover`, 'cover', method.cover, covers)
        : [
            ...makeReference(`${path}/emptying/${place}/opening`, 'opening', method.opening, openings),
            ...(method.kind === 'drain plug'
              ? makeReferences(`${path}/emptying/${place}/also`, 'opening', method.also, openings)
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
  to: ReferenceTarget,
  id: string | undefined,
  known: readonly string[],
): readonly IdReference[] {
  return id === undefined ? [] : [{ path, to, id, known }]
}

function makeReferences(
  path: JsonPointer,
  to: ReferenceTarget,
  ids: readonly string[] | undefined,
  known: readonly string[],
): readonly IdReference[] {
  return (ids ?? []).flatMap((id, place) => makeReference(`${path}/${place}`, to, id, known))
}

/** Searches the whole document, since a `source` may be anywhere. */
function listSourceReferences(
  holder: object,
  known: readonly string[],
  path: JsonPointer = '',
  found: IdReference[] = [],
): readonly IdReference[] {
  for (const key of Object.keys(holder)) {
    const value = (holder as Readonly<Record<string, unknown>>)[key]
    if (typeof value !== 'object' || value === null) continue
    const at = appendKey(path, key)
    if (key === 'source' && 'ref' in value && typeof value.ref === 'string')
      found.push({ path: `${at}/ref`, to: 'source', id: value.ref, known })
    listSourceReferences(value, known, at, found)
  }
  return found
}
