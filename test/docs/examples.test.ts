import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { docExamples, type Example } from '../support/docExamples.js'
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

const examples = docExamples()
const samples = pageSamples()

describe('examples of doc comments', () => {
  it('are many, and each claims something', () => {
    expect(examples.length).toBeGreaterThan(90)
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

  it('compile', () => {
    const files = new Map(
      samples.map(({ name, code }) => [
        join(ROOT, 'test/docs', `${name.replace(/\W+/g, '-')}.ts`),
        `${code}\nexport {}\n`,
      ]),
    )
    const options: ts.CompilerOptions = {
      strict: true,
      exactOptionalPropertyTypes: true,
      noUncheckedIndexedAccess: true,
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'],
      types: ['node'],
      skipLibCheck: true,
      noEmit: true,
      paths: {
        'drivetrain-service': ['./src/v1.ts'],
        'drivetrain-service/v1': ['./src/v1.ts'],
        'drivetrain-service/v1/quantity/codes': ['./src/quantity/unitCodes/index.ts'],
        'drivetrain-service/v1/*': ['./src/*/index.ts'],
      },
      baseUrl: ROOT,
    }
    const host = ts.createCompilerHost(options)
    const { getSourceFile, fileExists, readFile } = host
    host.fileExists = (path) => files.has(path) || fileExists.call(host, path)
    host.readFile = (path) => files.get(path) ?? readFile.call(host, path)
    host.getSourceFile = (path, ...rest) => {
      const text = files.get(path)
      return text === undefined
        ? getSourceFile.call(host, path, ...rest)
        : ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true)
    }
    const program = ts.createProgram([...files.keys()], options, host)
    const said = [...files.keys()].flatMap((path) => {
      const file = program.getSourceFile(path)
      return [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)].map(
        ({ messageText }) =>
          `${path.split('/').at(-1)}: ${ts.flattenDiagnosticMessageText(messageText, '\n')}`,
      )
    })
    expect(said).toEqual([])
  })
})
