import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { judgeCards } from './judgeCards.js'

/**
 * `npm run test:browser`: renders the example cards in Chromium, writes their pictures, and fails if there is a
 * problem.
 */
const root = process.cwd()
const folder = join(root, 'out', 'pictures')
mkdirSync(folder, { recursive: true })
const { cards, complaints } = await judgeCards({
  write: (name, bytes) => writeFileSync(join(folder, name), bytes),
  page: (name, html) => {
    const file = join(folder, name)
    writeFileSync(file, html)
    return pathToFileURL(file).href
  },
})
for (const { name, a4, letter } of cards) {
  console.log(`${name}: ${a4} pages of A4, ${letter} of Letter, nothing clipped at 320 px`)
}
console.log(`pictures in ${folder}`)
if (complaints.length > 0) {
  for (const problem of complaints) console.error(problem)
  process.exitCode = 1
}
