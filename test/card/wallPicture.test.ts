import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { drawWallPicture } from './support/drawWallPicture.js'

it('docs/wall-card.svg is the wall card of the example as it is now', () => {
  const picture = drawWallPicture()
  expect(picture === readFileSync('docs/wall-card.svg', 'utf8'), 'run npm run generate').toBe(true)
  for (const words of ['Tind 4', '28–34', 'The job', 'not for use on a real machine'])
    expect(picture).toContain(words)
  // A picture of a page must load nothing.
  expect(picture).not.toMatch(/<script|<image|url\(http|@import/)
})
