import { type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'
import type { Id, Seal, SpecSheet, WheelMark } from '../spec/index.js'
import type { PartName } from './visitPlan.js'

/**
 * Names a place of a sheet for a reader, by the names that the sheet gives its gearcases and parts. Anything deeper than
 * a part, such as its tightening, is named by its part.
 */
export function namePart(
  sheet: SpecSheet,
  path: JsonPointer,
  at: { readonly instance?: Id; readonly wheelMark?: WheelMark } = {},
): PartName {
  const tokens = splitPointer(path) ?? []
  const [room, id, list, partId] = tokens
  const named = (depth: number): string | undefined => {
    const name = readPointer(sheet, `${joinPointer(tokens.slice(0, depth))}/name`)
    return typeof name === 'string' ? name : undefined
  }
  const wheelMark = at.wheelMark === undefined ? {} : { wheelMark: at.wheelMark }
  if (room === 'gearcases' && id !== undefined) {
    const gearcase = named(2) ?? id
    const part = list === 'openings' || list === 'covers' ? (named(4) ?? partId) : undefined
    const instances = sheet.gearcases[id]?.instances
    const instanceName =
      at.instance !== undefined && instances !== undefined && Object.hasOwn(instances, at.instance)
        ? instances[at.instance]?.name
        : undefined
    return {
      path,
      gearcase,
      ...(part === undefined ? {} : { part }),
      ...(at.instance === undefined
        ? {}
        : { instance: { id: at.instance, name: instanceName ?? at.instance } }),
      ...wheelMark,
    }
  }
  if (room === 'shields' && id !== undefined) return { path, part: named(2) ?? id, ...wheelMark }
  if (room === 'machine') {
    const support = readPointer(sheet, `${path}/at`)
    const part = typeof support === 'string' ? support : named(3)
    return { path, ...(part === undefined ? {} : { part }), ...wheelMark }
  }
  return { path, ...wheelMark }
}

/** A seal as a parts list names it: its part number first, what it is, its product or size. */
export function nameSeal(seal: Seal): string {
  if (seal.kind === 'none' || seal.kind === 'not stated') return seal.kind
  const number = seal.partNumber === undefined ? [] : [seal.partNumber]
  const what: readonly string[] =
    seal.kind === 'thread sealant' || seal.kind === 'liquid gasket'
      ? [seal.product]
      : 'size' in seal && seal.size !== undefined
        ? [Object.values(seal.size).slice(0, -1).join(' × '), seal.size.unit]
        : []
  return [...number, seal.kind, ...what].join(' ')
}
