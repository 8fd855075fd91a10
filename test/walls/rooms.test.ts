import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { drawRooms, listRoomImports } from './support/drawRooms.js'

it('docs/rooms.svg shows the modules and imports of the code', () => {
  expect(drawRooms() === readFileSync('docs/rooms.svg', 'utf8'), 'run npm run generate').toBe(true)
})

it('an import is drawn if no other way leads there', () => {
  const lines = listRoomImports().map(([from, to]) => `${from} ${to}`)
  expect(lines).toContain('card message')
  expect(lines).toContain('quantity base')
  // It imports quantity/ too, but through other modules it reaches it anyway.
  expect(lines).not.toContain('card quantity')
  expect(new Set(lines).size).toBe(lines.length)
})
