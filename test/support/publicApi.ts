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
  /** The equation or method, and the source, as the comment gives them. */
  readonly method?: string
  readonly source?: string
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

| entry | subject |
| --- | --- |
| \`drivetrain-service/v1/quantity\` | units, correctly rounded conversion, reading and printing of quantities |
| \`…/quantity/codes\` | UCUM, UN/ECE Rec 20 and QUDT codes of the units |
| \`…/calendar\` | dates and periods |
| \`…/thread\` | thread designations |
| \`…/spec\` | reading the six kinds of documents; figures of one machine |
| \`…/interval\` | due services, and the limit that comes first |
| \`…/interval/meters\` | meters with swaps and rollovers, forecasts, telematics |
| \`…/interval/fleet\` | columns for a million records; the same calculation as SQL |
| \`…/torque\` | wrenches for a torque, settings, actual torque, adaptors |
| \`…/oil\` | permitted oils; viscosity at a temperature |
| \`…/fill\` | pouring times, containers, vessels, pans |
| \`…/seal\` | seals to replace, and their fit |
| \`…/procedure\` | safe orders of work: build, check, repair and compare procedures |
| \`…/rules\` | named checks over documents |
| \`…/service\` | the plan of a visit, checks of records, kits and order lists |
| \`…/message\`, \`…/message/en\` and the other languages | texts of all codes, one entry for each language |
| \`…/card\` | cards as HTML, Markdown and text; cue lists |
| \`drivetrain-service/schemas/v1/*\` | JSON Schemas, the rule manifest and test vectors, for any language |

${rows.join('\n')}`
}

/** `docs/formulas.md`: the formula and source of each function whose comment has both. */
export function renderFormulaPage({ entries }: PublicApi): string {
  const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('*', '\\*')
  const shown = new Set<string>()
  const rows = entries.flatMap(({ entry, names }) =>
    names.flatMap(({ name, method, source }) => {
      if (method === undefined || source === undefined || shown.has(name)) return []
      shown.add(name)
      return [`| \`${name}\` (\`${entry.slice(3)}\`) | ${cell(method)} | ${cell(source)} |`]
    }),
  )
  return `# Formulas and sources

Each function that calculates with a formula, with the source of the formula. *Read* is said only of what was read; \`from memory\`
is said of the rest. The pages on [torque](torque.md), [oil](oil.md), [filling](fill.md) and [seals](seals.md) have the sources of
tables and limits, [rules](rules.md) those of each rule. Tests compare the results with published worked examples
(\`test/published/\`). Generated from the comments by \`npm run generate\`.

\`\`\`ts
import { viscosityAt } from 'drivetrain-service/v1/oil'

const label = { kv40: { value: 143, unit: 'mm2/s' }, kv100: { value: 15.1, unit: 'mm2/s' } } as const
const at = viscosityAt(label, { value: 5, unit: 'degC' })
at.verdict === 'viscosity' && Math.round(at.viscosity.value) // => 1621
\`\`\`

| function | formula | source |
| --- | --- | --- |
${rows.join('\n')}
`
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
  const about = kind === 'function' ? readMethod(node) : {}
  return { name, kind, summary: firstSentence(comment), ...about, text: declarationText(node, checker) }
}

/** The paragraphs of a comment that have an equation, above its tags, and the one that names the source. */
function readMethod(node: ts.Node): { readonly method?: string; readonly source?: string } {
  const file = node.getSourceFile()
  const range = ts.getLeadingCommentRanges(file.text, node.getFullStart())?.at(-1)
  if (range === undefined) return {}
  const paragraphs = file.text
    .slice(range.pos + 3, range.end - 2)
    .replace(/^[ \t]*\* ?/gm, '')
    .split(/@example/)[0]
    ?.split(/\n\s*\n|\n(?=@)/)
    .map(plainLine)
    .filter((paragraph) => paragraph !== '')
  if (paragraphs === undefined) return {}
  const firstTag = paragraphs.findIndex((paragraph) => paragraph.startsWith('@'))
  const method = paragraphs
    .slice(1, firstTag < 0 ? undefined : firstTag)
    .filter((paragraph) => / [=≤≥] |∫/.test(paragraph) && !paragraph.startsWith('Source:'))
    .join(' ')
  const source = paragraphs.find((paragraph) => paragraph.startsWith('Source:'))?.slice(8)
  return { ...(method === '' ? {} : { method }), ...(source === undefined ? {} : { source }) }
}

const plainLine = (text: string): string =>
  text
    .replace(/\{@link\s+(\w+) ?\}/g, '`$1`')
    .replace(/\s+/g, ' ')
    .trim()

function firstSentence(comment: string): string {
  const line = plainLine(comment)
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
