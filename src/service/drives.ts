import { type JsonPointer, readPointer } from '../base/index.js'
import type { Drive, DriveOnPart, Id, Identity, Socket, SpecSheet, Toolbox } from '../spec/index.js'
import { resolveLeaf } from '../spec/index.js'

/**
 * The drives of a part of this machine, or of its bolts or fasteners: one, or several if a fact is unknown.
 * Empty if it is not stated, undefined if nothing turns the part.
 */
export function listDrives(
  sheet: SpecSheet,
  identity: Identity,
  part: JsonPointer,
): readonly Drive[] | undefined {
  const path = ['/drive', '/bolts/drive', '/fasteners/drive', '/held/drive']
    .map((tail) => `${part}${tail}`)
    .find((candidate) => readPointer(sheet, candidate) !== undefined)
  if (path === undefined) return undefined
  const resolved = resolveLeaf(sheet, identity, 'drive', path)
  if (resolved.kind === 'not stated') return []
  const drives: readonly DriveOnPart[] =
    resolved.kind === 'stated' ? [resolved.value] : resolved.candidates.map(({ value }) => value)
  return drives.filter((drive) => drive.kind !== 'not stated')
}

/** Whether a part is held by clips or push rivets; `path` is the part or its tightening. */
export function isHeldByClips(sheet: SpecSheet, identity: Identity, path: JsonPointer): boolean {
  const part = path.replace(/(?:\/bolts|\/fasteners|\/held)?\/tightening$/, '')
  const drives = listDrives(sheet, identity, part) ?? []
  return drives.length > 0 && drives.every(({ kind }) => kind === 'clip')
}

/**
 * Finds the socket or key for a drive. Sizes are designations and must be equal: 5 mm is not 3/16 in. A tool
 * with a square drive is preferred to a plain key, since it fits a torque wrench.
 */
export function findSocket(
  { kind, size }: Drive,
  toolbox: Toolbox,
): { readonly id: Id; readonly socket: Socket } | undefined {
  const matchingSockets = Object.entries(toolbox.sockets).filter(
    ([, socket]) => socket.fits === kind && socket.size === size,
  )
  const found = matchingSockets.find(([, socket]) => socket.drive !== undefined) ?? matchingSockets[0]
  return found === undefined ? undefined : { id: found[0], socket: found[1] }
}
