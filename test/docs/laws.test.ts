import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readLaws } from '../support/lawIndex.js'
import { listWithoutLaw, readFunctionNames, renderLaws } from './support/lawsPage.js'

const laws = readLaws()

it('every public function has a law', () => {
  expect(readFunctionNames().length).toBeGreaterThan(40)
  expect(listWithoutLaw(laws)).toEqual([])
})

it('a law without its function is missed', () => {
  const [name = ''] = readFunctionNames()
  const others = laws.map((law) => ({ ...law, functions: law.functions.filter((one) => one !== name) }))
  expect(listWithoutLaw(others)).toEqual([name])
})

it('log, record, correction and procedure have models of commands in any order', () => {
  const models = laws
    .filter(({ isModel }) => isModel)
    .map(({ title, functions }) => `${title}: ${functions.join(' ')}`)
  for (const subject of [
    /log and corrections.*appendRecord/,
    /record: any mistakes.*checkRecord/,
    /steps.*validateProcedure/,
  ])
    expect(
      models.some((model) => subject.test(model)),
      String(subject),
    ).toBe(true)
})

it('docs/laws.md is what the tests have now', () => {
  expect(renderLaws(laws) === readFileSync('docs/laws.md', 'utf8'), 'run npm run generate').toBe(true)
})
