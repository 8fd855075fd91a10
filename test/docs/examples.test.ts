import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { compileExamples } from '../support/compileExamples.js'
import { docExamples, type Example } from '../support/docExamples.js'
import { publicFunctions } from '../support/publicFunctions.js'
import { instrument, runExample } from '../support/runExample.js'

const ROOT = new URL('../../', import.meta.url).pathname

/** The samples of the README and the docs. */
function pageSamples(): readonly Example[] {
  const pages = [
    'README.md',
    'DEVELOPERS.md',
    ...readdirSync(join(ROOT, 'docs'))
      .filter((file) => file.endsWith('.md'))
      .map((file) => `docs/${file}`),
  ]
  return pages.flatMap((page) =>
    [...readFileSync(join(ROOT, page), 'utf8').matchAll(/```ts\n([\s\S]*?)```/g)].map(
      ([, code = ''], place) => ({
        name: `${page} ${place + 1}`,
        code,
      }),
    ),
  )
}

/** Examples of the public functions; internal functions have none. */
const names = await publicFunctions()
const examples = docExamples().filter(({ of }) => of !== undefined && names.has(of))
const samples = pageSamples()

describe('examples of doc comments', () => {
  it('are many, and each claims something', () => {
    expect(examples.length).toBeGreaterThan(45)
    expect(examples.filter(({ code }) => instrument(code).claims === 0).map(({ name }) => name)).toEqual([])
  })

  it.each(examples)('$name', async ({ code }) => {
    for (const { shown, said, holds } of await runExample(code))
      expect(holds, `shows ${shown}, says ${said}`).toBe(true)
  })
})

describe('samples of the README and the docs', () => {
  it('are there', () => {
    expect(samples.length).toBeGreaterThan(5)
  })

  it.each(samples)('$name runs and shows what it says', async ({ code }) => {
    for (const { shown, said, holds } of await runExample(code))
      expect(holds, `shows ${shown}, says ${said}`).toBe(true)
  })
})

describe('under the options of tsconfig.json', () => {
  it('all compile', () => {
    const mistakes = compileExamples([...examples, ...samples])
    const mistakeList = [...mistakes]
      .filter(([, texts]) => texts.length > 0)
      .map(([name, texts]) => `${name}: ${texts.join('\n  ')}`)
    expect(mistakeList).toEqual([])
  })
})
