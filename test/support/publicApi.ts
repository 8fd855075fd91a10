import { createHash } from 'node:crypto'
import ts from 'typescript'
import { ENTRIES } from '../../tsup.config.js'

// Not import.meta.url: run.mjs bundles this into node_modules, which a worktree may share.
const ROOT = `${process.cwd()}/`

/** One name of an entry; `text` is its declaration without comments and bodies. */
export interface ApiName {
  readonly name: string
  readonly kind: 'function' | 'data' | 'type'
  readonly summary: string
  readonly text: string
}

export interface ApiEntry {
  /** `v1/torque`. */
  readonly entry: string
  readonly names: readonly ApiName[]
}

export interface PublicApi {
  readonly entries: readonly ApiEntry[]
  /** Types that are named in public declarations, but not exported. */
  readonly reached: readonly ApiName[]
}

/** All exports of the entries of version 1, read from the source by the compiler. */
export function readPublicApi(): PublicApi {
  const modules = ENTRIES.filter((entry) => entry.startsWith('v1/') && entry !== 'v1/index')
  const config = ts.getParsedCommandLineOfConfigFile(
    `${ROOT}tsconfig.json`,
    {},
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: ({ messageText }) => {
        throw new Error(ts.flattenDiagnosticMessageText(messageText, '\n'))
      },
    },
  )
  const files = modules.map((entry) => `${ROOT}src/${entry}.ts`)
  const program = ts.createProgram(files, config?.options ?? {})
  const checker = program.getTypeChecker()
  const declared = new Map<ts.Symbol, ApiName>()
  const waiting: ts.Symbol[] = []
  const entries = modules.map((entry, at): ApiEntry => {
    const source = program.getSourceFile(files[at] ?? '')
    const module = source && checker.getSymbolAtLocation(source)
    if (module === undefined) throw new Error(`src/${entry}.ts exports nothing`)
    const names = checker.getExportsOfModule(module).map((symbol) => {
      const origin = resolveAlias(symbol, checker)
      const name = describe(origin, symbol.name, checker)
      declared.set(origin, name)
      waiting.push(origin)
      return name
    })
    return { entry, names: names.sort(byName) }
  })
  const reached: ApiName[] = []
  for (let symbol = waiting.pop(); symbol !== undefined; symbol = waiting.pop())
    for (const named of namedTypes(symbol, checker)) {
      if (declared.has(named)) continue
      const name = describe(named, named.name, checker)
      declared.set(named, name)
      reached.push(name)
      waiting.push(named)
    }
  return { entries, reached: reached.sort(byName) }
}

/** The committed report: every public declaration in full, so that every change is visible. */
export function renderApiReport({ entries, reached }: PublicApi): string {
  const seen = new Set<string>()
  const part = (title: string, names: readonly ApiName[]): string =>
    `# ${title}\n\n${names
      .map(({ name, text }) => {
        if (seen.has(text)) return `(${name}: as above)\n`
        seen.add(text)
        return `${text}\n`
      })
      .join('\n')}`
  const parts = [...entries.map(({ entry, names }) => part(entry, names)), part('named by them', reached)]
  // The compiler writes whole paths; the report is the same in every clone.
  return parts.join('\n').replaceAll(ROOT, '')
}

/** Eight hexadecimal digits for one state of the report; the changelog has them with the changes. */
export function apiFingerprint(report: string): string {
  return createHash('sha256').update(report).digest('hex').slice(0, 8)
}

/** `docs/api.md`: one line per function, by module. */
export function renderApiPage({ entries }: PublicApi): string {
  const rows = entries.flatMap(({ entry, names }) => {
    const values = names.filter(({ kind }) => kind !== 'type')
    if (values.length === 0) return []
    const lines = values.map(
      ({ name, kind, summary }) => `| \`${name}\`${kind === 'data' ? ' (data)' : ''} | ${summary} |`,
    )
    return [
      `## \`drivetrain-service/${entry}\`\n\n| name | what it does |\n| --- | --- |\n${lines.join('\n')}\n`,
    ]
  })
  return `# The functions of version 1

${countFunctions(entries)} functions. \`drivetrain-service\` and \`drivetrain-service/v1\` export all but cards, languages and unit codes. Each function's
own comment gives units, valid range, errors, formula and source, with an example; \`npm run docs\` builds them as pages.
Generated from the comments by \`npm run generate\`.

\`\`\`ts
import { convert } from 'drivetrain-service/v1/quantity'

convert({ value: 1, unit: 'lbf.ft' }, 'N.m').value // => 1.3558179483314003
\`\`\`

${rows.join('\n')}`
}

export function countFunctions(entries: readonly ApiEntry[]): number {
  return new Set(
    entries.flatMap(({ names }) => names.flatMap(({ name, kind }) => (kind === 'function' ? [name] : []))),
  ).size
}

const byName = (first: ApiName, second: ApiName): number => (first.name < second.name ? -1 : 1)

function resolveAlias(symbol: ts.Symbol, checker: ts.TypeChecker): ts.Symbol {
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol
}

function describe(symbol: ts.Symbol, name: string, checker: ts.TypeChecker): ApiName {
  const node = symbol.declarations?.[0]
  if (node === undefined) throw new Error(`${name} is declared nowhere`)
  const kind = ts.isFunctionDeclaration(node) ? 'function' : ts.isVariableDeclaration(node) ? 'data' : 'type'
  const comment = ts.displayPartsToString(symbol.getDocumentationComment(checker))
  return { name, kind, summary: firstSentence(comment), text: declarationText(node, checker) }
}

function firstSentence(comment: string): string {
  const line = comment
    .replace(/\{@link (\w+) ?\}/g, '`$1`')
    .replace(/\s+/g, ' ')
    .trim()
  const sentence = /^.*?[.:;](?= |$)/.exec(line)?.[0] ?? line
  return sentence.replace(/[:;]$/, '.').replaceAll('|', '\\|')
}

function declarationText(node: ts.Declaration, checker: ts.TypeChecker): string {
  const printer = ts.createPrinter({ removeComments: true })
  const print = (shown: ts.Node): string =>
    printer.printNode(ts.EmitHint.Unspecified, shown, node.getSourceFile()).replace(/^export /, '')
  if (ts.isFunctionDeclaration(node)) {
    const { name, typeParameters, parameters, type } = node
    return print(
      ts.factory.createFunctionDeclaration(
        undefined,
        undefined,
        name,
        typeParameters,
        parameters,
        type,
        undefined,
      ),
    )
  }
  if (ts.isVariableDeclaration(node)) {
    const flags = ts.NodeBuilderFlags.NoTruncation
    return `const ${node.name.getText()}: ${checker.typeToString(checker.getTypeAtLocation(node), node, flags as unknown as ts.TypeFormatFlags)}`
  }
  return print(node)
}

/** The types of the library that a declaration names. */
function namedTypes(symbol: ts.Symbol, checker: ts.TypeChecker): readonly ts.Symbol[] {
  const found = new Set<ts.Symbol>()
  const visit = (node: ts.Node): void => {
    if (ts.isBlock(node) || ts.isArrowFunction(node)) return
    if (ts.isTypeReferenceNode(node) || ts.isExpressionWithTypeArguments(node) || ts.isTypeQueryNode(node)) {
      const name = ts.isTypeReferenceNode(node)
        ? node.typeName
        : ts.isTypeQueryNode(node)
          ? node.exprName
          : node.expression
      const at = checker.getSymbolAtLocation(name)
      const origin = at && resolveAlias(at, checker)
      const declaration = origin?.declarations?.[0]
      if (
        origin !== undefined &&
        declaration !== undefined &&
        !ts.isTypeParameterDeclaration(declaration) &&
        declaration.getSourceFile().fileName.startsWith(`${ROOT}src/`)
      )
        found.add(origin)
    }
    node.forEachChild(visit)
  }
  for (const declaration of symbol.declarations ?? []) {
    if (ts.isVariableDeclaration(declaration)) declaration.type?.forEachChild(visit)
    else declaration.forEachChild(visit)
  }
  return [...found]
}
