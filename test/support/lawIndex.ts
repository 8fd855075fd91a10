import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import ts from 'typescript'

/** One law: a call of `law`, `lawAsync` or `modelLaw`, with the functions that its predicate or its commands run. */
export interface Law {
  readonly file: string
  /** The titles of the suites and the test around it. */
  readonly title: string
  /** Cases as stated: `npm test` draws half of them. */
  readonly cases: string
  readonly functions: readonly string[]
  /** Commands in any order against a model. */
  readonly isModel: boolean
}

/** A parsed file: what it imports from `src/`, from other test files, and its own functions by name. */
interface Source {
  readonly file: string
  readonly tree: ts.SourceFile
  readonly imports: ReadonlyMap<string, { readonly file: string; readonly name: string }>
  readonly functions: ReadonlyMap<string, ts.Node>
}

/**
 * All laws of the tests, read from their source. A law is about the functions of `src/` that its predicate calls, itself
 * or through functions of test files; of a model, those of its commands. What makes the drawn values, or a value that
 * was made before, does not count. A law that a helper calls has the title of the helper.
 */
export function readLaws(): readonly Law[] {
  const files = readdirSync('test', { recursive: true, encoding: 'utf8' })
    .map((file) => `test/${file.replaceAll('\\', '/')}`)
    .filter((file) => file.endsWith('.ts'))
    .sort()
  const sources = new Map(files.map((file) => [file, readSource(file)]))
  return [...sources.values()].flatMap((source) =>
    findLawCalls(source.tree).map((call) => ({
      file: source.file,
      title: titleOf(call),
      cases: call.arguments[0]?.getText(source.tree) ?? '',
      functions: [
        ...collectFunctions(isModel(call) ? call : (call.arguments.at(-1) ?? call), source, sources),
      ].sort(),
      isModel: isModel(call),
    })),
  )
}

function readSource(file: string): Source {
  const tree = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true)
  const imports = new Map<string, { file: string; name: string }>()
  const functions = new Map<string, ts.Node>()
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      const from = normalize(join(dirname(file), node.moduleSpecifier.text)).replace(/\.js$/, '.ts')
      const bindings = node.importClause?.namedBindings
      if (bindings && ts.isNamedImports(bindings))
        for (const { name, propertyName } of bindings.elements)
          imports.set(name.text, { file: from, name: (propertyName ?? name).text })
      if (bindings && ts.isNamespaceImport(bindings))
        imports.set(bindings.name.text, { file: from, name: '*' })
    }
    if (ts.isFunctionDeclaration(node) && node.name) functions.set(node.name.text, node)
    if (
      ts.isVariableDeclaration(node) &&
      ts.isIdentifier(node.name) &&
      node.initializer &&
      (isFunction(node.initializer) || isCommand(node.initializer))
    )
      functions.set(node.name.text, node.initializer)
    node.forEachChild(visit)
  }
  visit(tree)
  return { file, tree, imports, functions }
}

/** A command of a model that is made once, not by a function. */
function isCommand(node: ts.Expression): boolean {
  return ts.isCallExpression(node) && node.expression.getText() === 'command'
}

function isModel(call: ts.CallExpression): boolean {
  return call.expression.getText() === 'modelLaw'
}

function isFunction(node: ts.Node): boolean {
  return ts.isArrowFunction(node) || ts.isFunctionExpression(node)
}

function findLawCalls(tree: ts.SourceFile): readonly ts.CallExpression[] {
  const calls: ts.CallExpression[] = []
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && /^(law|lawAsync|modelLaw)$/.test(node.expression.getText(tree)))
      calls.push(node)
    node.forEachChild(visit)
  }
  visit(tree)
  return calls
}

function titleOf(call: ts.Node): string {
  const titles: string[] = []
  for (let node: ts.Node = call; node.parent; node = node.parent) {
    if (ts.isFunctionDeclaration(node) && node.name && titles.length === 0) titles.unshift(node.name.text)
    if (!ts.isCallExpression(node)) continue
    const [first] = node.arguments
    if (first && /^(it|test|describe)\b/.test(node.expression.getText()) && /^['"`]/.test(first.getText()))
      titles.unshift(first.getText().slice(1, -1))
  }
  return titles.join(': ')
}

/** The functions of `src/` that a piece of a test runs. */
function collectFunctions(
  start: ts.Node,
  own: Source,
  sources: ReadonlyMap<string, Source>,
): ReadonlySet<string> {
  const found = new Set<string>()
  const seen = new Set<ts.Node>()
  const follow = (node: ts.Node, source: Source): void => {
    if (seen.has(node)) return
    seen.add(node)
    const visit = (child: ts.Node): void => {
      if (ts.isIdentifier(child)) use(child, source)
      child.forEachChild(visit)
    }
    node.forEachChild(visit)
  }
  const use = (name: ts.Identifier, source: Source): void => {
    if (ts.isPropertyAccessExpression(name.parent) && name.parent.name === name) return
    const local = source.functions.get(name.text)
    if (local) {
      follow(local, source)
      return
    }
    const imported = source.imports.get(name.text)
    if (imported === undefined) return
    if (imported.file.startsWith('src/')) {
      const called =
        imported.name === '*' && ts.isPropertyAccessExpression(name.parent)
          ? name.parent.name.text
          : imported.name
      found.add(called)
      return
    }
    const other = sources.get(imported.file)
    const theirs = other?.functions.get(imported.name)
    if (other && theirs) follow(theirs, other)
  }
  if (ts.isIdentifier(start)) use(start, own)
  else follow(start, own)
  return found
}
