import type { JsonPointer } from '../../base/index.js'
import type { Condition, SpecSheet } from '../../spec/index.js'

/** A condition of a sheet and its place. */
export interface ConditionAt {
  readonly path: JsonPointer
  readonly condition: Condition
}

/** Every condition of a sheet, in document order: of variants, parts, services and overrides. */
export function sheetConditions(sheet: SpecSheet): readonly ConditionAt[] {
  return [
    ...conditionsOf('/machine/variants', sheet.machine.variants, 'when'),
    ...Object.entries(sheet.gearcases).flatMap(([id, gearcase]) => [
      ...conditionsOf('/gearcases', { [id]: gearcase }, 'appliesTo'),
      ...conditionsOf(`/gearcases/${id}/openings`, gearcase.openings, 'appliesTo'),
      ...conditionsOf(`/gearcases/${id}/covers`, gearcase.covers, 'appliesTo'),
    ]),
    ...conditionsOf('/shields', sheet.shields, 'appliesTo'),
    ...conditionsOf('/services', sheet.services, 'appliesTo'),
    ...(sheet.overrides ?? []).map(({ when }, place) => ({
      path: `/overrides/${place}/when`,
      condition: when,
    })),
  ]
}

function conditionsOf<Key extends 'when' | 'appliesTo'>(
  path: JsonPointer,
  record: Readonly<Record<string, { readonly [K in Key]?: Condition }>> | undefined,
  key: Key,
): readonly ConditionAt[] {
  return Object.entries(record ?? {}).flatMap(([id, part]) => {
    const condition = part[key]
    return condition === undefined ? [] : [{ path: `${path}/${id}/${key}`, condition }]
  })
}
