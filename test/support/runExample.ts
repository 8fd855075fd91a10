import { isDeepStrictEqual } from 'node:util'
import ts from 'typescript'

/** One claim of an example: the actual value, and the value in the text. */
export interface Claim {
  readonly said: string
  readonly shown: string
  readonly holds: boolean
}

const AsyncFunction = (async () => undefined).constructor as new (
  ...parts: string[]
) => (...values: readonly unknown[]) => Promise<void>

const SRC = new URL('../../src/', import.meta.url).pathname

/** The source file of an entry of the package. */
export function sourceOf(specifier: string): string | undefined {
  if (specifier === 'drivetrain-service' || specifier === 'drivetrain-service/v1') return `${SRC}v1/index.ts`
  const entry = /^drivetrain-service\/v1\/(.+)$/.exec(specifier)?.[1]
  return entry === undefined ? undefined : `${SRC}v1/${entry}.ts`
}

/** Turns each `expression // => value` into a claim that is recorded when the example runs. */
export function instrument(code: string): { readonly code: string; readonly claims: number } {
  const file = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022, true)
  const edits: { readonly from: number; readonly to: number; readonly text: string }[] = []
  const visit = (node: ts.Node): void => {
    node.forEachChild(visit)
    if (!ts.isExpressionStatement(node)) return
    const after = code.slice(node.end)
    const claimText = /^;?[ \t]*(?:\r?\n[ \t]*)?\/\/ => (.*(?:\r?\n[ \t]*\/\/ {3,}.*)*)/.exec(after)?.[1]
    if (claimText === undefined) return
    const { expression } = node
    const logged =
      ts.isCallExpression(expression) && expression.expression.getText(file) === 'console.log'
        ? expression.arguments.map((argument) => argument.getText(file))
        : [expression.getText(file)]
    const text = `__claim([${logged.join(', ')}], ${JSON.stringify(claimText.replace(/\r?\n[ \t]*\/\/ +/g, ' ').trim())})`
    edits.push({ from: node.getStart(file), to: node.end, text })
  }
  file.forEachChild(visit)
  const changed = edits
    .sort((first, second) => second.from - first.from)
    .reduce((text, { from, to, text: by }) => `${text.slice(0, from)}${by}${text.slice(to)}`, code)
  return { code: changed, claims: edits.length }
}

/** Runs one example with the source and returns its claims. */
export async function runExample(code: string): Promise<readonly Claim[]> {
  const claims: Claim[] = []
  await runCode(instrument(code).code, {
    __claim: (shown: readonly unknown[], claimText: string) => claims.push(judge(shown, claimText)),
  })
  return claims
}

/** Runs TypeScript in this process: `given` has the names that it may use; `enter` may change an import. */
export async function runCode(
  code: string,
  given: Readonly<Record<string, unknown>>,
  enter: (entry: object) => object = (entry) => entry,
): Promise<void> {
  const { outputText } = ts.transpileModule(code, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 },
  })
  const modules = new Map<string, object>()
  for (const [, specifier = ''] of outputText.matchAll(/\brequire\("([^"]+)"\)/g)) {
    const source = sourceOf(specifier)
    modules.set(specifier, source === undefined ? await import(specifier) : enter(await import(source)))
  }
  const all = { require: (specifier: string) => modules.get(specifier), exports: {}, ...given }
  await new AsyncFunction(...Object.keys(all), outputText)(...Object.values(all))
}

function judge(shown: readonly unknown[], claimText: string): Claim {
  const words = shown.map((value) => (typeof value === 'string' ? value : JSON.stringify(value))).join(' ')
  const claimedValue = evaluate(claimText)
  const holds =
    words === claimText ||
    (claimedValue.ok &&
      shown.length === 1 &&
      isDeepStrictEqual(toPlainValue(shown[0]), toPlainValue(claimedValue.value))) ||
    (claimedValue.ok && typeof claimedValue.value === 'string' && words === claimedValue.value)
  return { said: claimText, shown: words, holds }
}

function toPlainValue(value: unknown): unknown {
  return value === undefined || typeof value === 'bigint' ? value : JSON.parse(JSON.stringify(value))
}

function evaluate(text: string): { readonly ok: true; readonly value: unknown } | { readonly ok: false } {
  try {
    return { ok: true, value: new Function(`return (${text})`)() }
  } catch {
    return { ok: false }
  }
}
