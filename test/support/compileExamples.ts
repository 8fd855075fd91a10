import { join } from 'node:path'
import ts from 'typescript'
import type { Example } from './docExamples.js'
import { sourceOf } from './runExample.js'

const ROOT = new URL('../../', import.meta.url).pathname

/** Compiles all examples in one program with the options of `tsconfig.json`; returns the errors of each. */
export function compileExamples(examples: readonly Example[]): ReadonlyMap<string, readonly string[]> {
  const { config } = ts.readConfigFile(join(ROOT, 'tsconfig.json'), ts.sys.readFile)
  const { options } = ts.parseJsonConfigFileContent({ ...config, files: [], include: [] }, ts.sys, ROOT)
  const files = new Map(
    examples.map(({ code }, place) => [join(ROOT, 'test/docs', `example-${place}.ts`), code]),
  )
  const host = ts.createCompilerHost(options)
  const { getSourceFile, fileExists, readFile } = host
  host.fileExists = (path) => files.has(path) || fileExists.call(host, path)
  host.readFile = (path) => files.get(path) ?? readFile.call(host, path)
  host.getSourceFile = (path, languageOptions, ...rest) => {
    const text = files.get(path)
    return text === undefined
      ? getSourceFile.call(host, path, languageOptions, ...rest)
      : ts.createSourceFile(path, text, languageOptions)
  }
  const cache = ts.createModuleResolutionCache(ROOT, (name) => name, options)
  host.resolveModuleNameLiterals = (names, from, redirectedReference, used, sourceFile) =>
    names.map((name) => {
      const resolvedFileName = sourceOf(name.text)
      if (resolvedFileName !== undefined)
        return { resolvedModule: { resolvedFileName, extension: ts.Extension.Ts } }
      const mode = ts.getModeForUsageLocation(sourceFile, name, used)
      return ts.resolveModuleName(name.text, from, used, host, cache, redirectedReference, mode)
    })
  const program = ts.createProgram([...files.keys()], options, host)
  return new Map(
    [...files.keys()].map((path, place) => {
      const file = program.getSourceFile(path)
      const mistakes = [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)]
      return [
        examples[place]?.name ?? '',
        mistakes.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n')),
      ]
    }),
  )
}
