import { mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'

/** A letter with this mark is no English letter; Unicode normalization form D shows it on every letter. */
export const MARK = '\u0301'

/** Escapes, and words to type into a document, which are in double quotes in every language. */
const KEPT = /\\u[0-9a-f]{4}|\\.|"[^"]*"|[A-Za-z]+/gi
/** The codes of reasons are no texts. */
const CODE = /^[a-z]+\/[a-z-]+$/

/** Marks each letter, and makes each word 35 % longer, as a long language is. */
const markWord = (word: string): string =>
  `${word}${'o'.repeat(Math.round(word.length * 0.35))}`.replaceAll(/./g, `$&${MARK}`)
const markText = (raw: string): string =>
  raw.replaceAll(KEPT, (found) => (/^[A-Za-z]/.test(found) ? markWord(found) : found))

/**
 * Copies the English folder to another language as a translator does: the values change, and keys, compared values and
 * codes do not. The compiler's types say which is which: where a closed list of values is expected, a text is a value.
 */
export function makeLanguage(messages: string, name: string): void {
  const folder = join(messages, 'en')
  const files = readdirSync(folder)
  const program = ts.createProgram({
    rootNames: files.map((file) => join(folder, file)),
    options: {
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.NodeNext,
      moduleResolution: ts.ModuleResolutionKind.NodeNext,
      strict: true,
      exactOptionalPropertyTypes: true,
      noUncheckedIndexedAccess: true,
    },
  })
  mkdirSync(join(messages, name))
  for (const file of files) {
    const source = program.getSourceFile(join(folder, file))
    if (source === undefined) throw new Error(`no ${file}`)
    const translated = translate(source, program.getTypeChecker())
    writeFileSync(
      join(messages, name, file),
      file === 'index.ts' ? renameCatalogue(translated, name) : translated,
    )
  }
}

interface Edit {
  readonly from: number
  readonly to: number
  readonly text: string
}

function translate(source: ts.SourceFile, checker: ts.TypeChecker): string {
  const edits: Edit[] = []
  const add = (from: number, to: number) =>
    edits.push({ from, to, text: markText(source.text.slice(from, to)) })
  const walk = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return
    if (ts.isTemplateExpression(node) && CODE.test(`${node.head.text}x`)) return
    // Values that are their own English words need words of their own in each other language.
    if (ts.isVariableStatement(node) && /^const makeWords\b/.test(node.getText(source))) {
      edits.push({ from: node.getStart(source), to: node.end, text: '' })
      return
    }
    if (ts.isCallExpression(node) && node.expression.getText(source) === 'makeWords') {
      const words = node.arguments.map((word) => `${word.getText(source)}: ${markText(word.getText(source))}`)
      edits.push({ from: node.getStart(source), to: node.end, text: `{ ${words.join(', ')} }` })
      return
    }
    if (ts.isStringLiteralLike(node)) {
      if (isPrinted(node, checker)) add(node.getStart(source) + 1, node.end - 1)
    } else if (ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node))
      add(node.getStart(source) + 1, node.end - 1)
    ts.forEachChild(node, walk)
  }
  walk(source)
  let text = source.text
  for (const { from, to, text: next } of edits.toSorted((first, second) => second.from - first.from))
    text = text.slice(0, from) + next + text.slice(to)
  return text
}

function isPrinted(node: ts.StringLiteralLike, checker: ts.TypeChecker): boolean {
  const { parent } = node
  if (CODE.test(node.text) || ts.isElementAccessExpression(parent) || ts.isCaseClause(parent)) return false
  if (ts.isPropertyAssignment(parent) && (parent.name === node || parent.name.getText() === 'unit'))
    return false
  if (ts.isBinaryExpression(parent) && /^([!=]==|in)$/.test(parent.operatorToken.getText())) return false
  const expected = checker.getContextualType(node)
  const kinds = expected?.isUnion() ? expected.types : expected === undefined ? [] : [expected]
  return (
    !kinds.some((kind) => kind.isStringLiteral()) || kinds.some(({ flags }) => flags === ts.TypeFlags.String)
  )
}

/** Renames both exports of the index and sets its review to `not reviewed`: step 1 of `docs/languages.md`. */
const renameCatalogue = (text: string, name: string): string =>
  text
    .replaceAll(/\ben(Calculations)?\b(?= ?[:.,]| })/g, `${name}$1`)
    .replace(/language: '.*'/, `language: '${name}'`)
    .replace(/review: .*,/, `review: { kind: 'not reviewed', note: '${markText('not reviewed')}' },`)
