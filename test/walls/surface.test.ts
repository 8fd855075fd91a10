import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { packageExports } from '../support/packageExports.js'
import {
  apiFingerprint,
  countFunctions,
  readPublicApi,
  renderApiPage,
  renderApiReport,
  renderFormulaPage,
} from '../support/publicApi.js'

const ROOT = new URL('../../', import.meta.url).pathname
const read = (file: string): string => readFileSync(join(ROOT, file), 'utf8')
const api = readPublicApi()

describe('the surface of version 1', () => {
  it('is at most 80 functions, each with a summary', () => {
    console.log(`${countFunctions(api.entries)} functions in ${api.entries.length} entries`)
    expect(countFunctions(api.entries)).toBeGreaterThan(40)
    expect(countFunctions(api.entries)).toBeLessThanOrEqual(80)
    const values = api.entries.flatMap(({ names }) => names.filter(({ kind }) => kind !== 'type'))
    expect(values.filter(({ summary }) => summary === '').map(({ name }) => name)).toEqual([])
  })

  it('is what docs/api.md, docs/formulas.md and the committed report show', () => {
    expect(renderFormulaPage(api) === read('docs/formulas.md'), 'run npm run generate').toBe(true)
    expect(renderApiPage(api) === read('docs/api.md'), 'run npm run generate').toBe(true)
    expect(renderApiReport(api) === read('docs/api-report.txt'), 'run npm run generate').toBe(true)
  })

  it('has a line of the changelog for its last change', () => {
    const fingerprint = apiFingerprint(renderApiReport(api))
    const [unreleased = ''] = read('CHANGELOG.md').split(/^## /m).slice(1)
    expect(
      unreleased,
      `say under the first heading of CHANGELOG.md what changed, with "api ${fingerprint}"`,
    ).toContain(`api ${fingerprint}`)
  })

  it('is exported by package.json as in the list of entries', () => {
    expect(JSON.parse(read('package.json')).exports).toEqual(packageExports())
  })

  it('leaves package.json at most 160 lines beside its exports', () => {
    const { exports: _exports, ...rest } = JSON.parse(read('package.json'))
    expect(JSON.stringify(rest, null, 2).split('\n').length).toBeLessThanOrEqual(160)
  })
})
