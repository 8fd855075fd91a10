import { existsSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'

const ROOT = new URL('../../', import.meta.url)
const page = readFileSync(new URL('DEVELOPERS.md', ROOT), 'utf8')

it('the path of one torque passes files that exist, at most thirty', () => {
  const [walk = ''] = /### The path of one torque\n[\s\S]*?(?=\n##)/.exec(page) ?? []
  // A table cell names the first file of a folder in full and the next ones as `…/name`.
  let folder = ''
  const files = [...walk.matchAll(/`((?:…|[a-z]+)(?:\/[A-Za-z]+)+)`/g)].map(([, path = '']) => {
    if (!path.startsWith('…')) folder = path.slice(0, path.lastIndexOf('/'))
    return path.replace('…', folder)
  })
  expect(files.length).toBeGreaterThan(20)
  expect(new Set(files).size).toBeLessThanOrEqual(30)
  expect(files.filter((file) => !existsSync(new URL(`src/${file}.ts`, ROOT)))).toEqual([])
})
