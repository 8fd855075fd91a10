import { type JsonPointer, readPointer } from '../base/index.js'
import type { Drive, SpecSheet } from '../spec/index.js'

/** What turns a part: its own drive, or that of its bolts or fasteners. */
export function findDrive(sheet: SpecSheet, part: JsonPointer): Drive | undefined {
  for (const tail of ['/drive', '/bolts/drive', '/fasteners/drive']) {
    const drive = readPointer(sheet, `${part}${tail}`)
    if (drive !== undefined) return drive as Drive
  }
  return undefined
}
