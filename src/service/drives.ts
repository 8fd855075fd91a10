import { type JsonPointer, readPointer } from '../base/index.js'
import type { Drive, Id, Socket, SpecSheet, Toolbox } from '../spec/index.js'

/** What turns a part: its own drive, or that of its bolts or fasteners. */
export function findDrive(sheet: SpecSheet, part: JsonPointer): Drive | undefined {
  for (const tail of ['/drive', '/bolts/drive', '/fasteners/drive', '/held/drive']) {
    const drive = readPointer(sheet, `${part}${tail}`)
    if (drive !== undefined) return drive as Drive
  }
  return undefined
}

/** Whether clips or push rivets hold a part, or the part that a pointer to its tightening begins with. */
export function isClip(sheet: SpecSheet, path: JsonPointer): boolean {
  const part = path.replace(/(?:\/bolts|\/fasteners|\/held)?\/tightening$/, '')
  return findDrive(sheet, part)?.kind === 'clip'
}

/**
 * Finds the socket or key for a part in a toolbox. Sizes are designations and match exactly: 5 mm is not 3/16 in. One
 * with a square drive comes before a plain key, since only that takes a torque wrench.
 */
export function findSocket(
  sheet: SpecSheet,
  part: JsonPointer,
  toolbox: Toolbox,
): { readonly id: Id; readonly socket: Socket } | undefined {
  const drive = findDrive(sheet, part)
  if (drive === undefined) return undefined
  const fitting = Object.entries(toolbox.sockets).filter(
    ([, socket]) => socket.fits === drive.kind && socket.size === drive.size,
  )
  const found = fitting.find(([, socket]) => socket.drive !== undefined) ?? fitting[0]
  return found === undefined ? undefined : { id: found[0], socket: found[1] }
}
