import { readFileSync } from 'node:fs'
import ts from 'typescript'

/** The texts in a file of a catalogue: what may be printed, without names, keys, types and compared values. */
export function listTexts(path: string): readonly string[] {
  const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true)
  const texts: string[] = []
  const isPrinted = (node: ts.Node): boolean => {
    const { parent } = node
    if (ts.isImportDeclaration(parent) || ts.isExportDeclaration(parent) || ts.isLiteralTypeNode(parent))
      return false
    if (ts.isPropertyAssignment(parent) && parent.name === node) return false
    if (ts.isElementAccessExpression(parent) || ts.isCaseClause(parent)) return false
    // A list of actions in a line's text names steps and prints nothing.
    if (ts.isArrayLiteralExpression(parent) && parent.parent.getText(source).startsWith('actions:'))
      return false
    return !(ts.isBinaryExpression(parent) && /^[!=]==$/.test(parent.operatorToken.getText(source)))
  }
  const walk = (node: ts.Node): void => {
    if (
      ts.isStringLiteralLike(node)
        ? isPrinted(node)
        : ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node)
    )
      texts.push((node as ts.LiteralLikeNode).text)
    ts.forEachChild(node, walk)
  }
  walk(source)
  return texts
}

/** Words of English sentences that no other language here has. */
export const ENGLISH_WORD = /\b(the|with|and|which|from|are|does|this|that|have|your|its|must)\b/i

/** The names of all texts, with the kind of each. */
export function listKeys(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [`${path}: ${typeof value}`]
  return Object.entries(value).flatMap(([key, item]) => listKeys(item, `${path}/${key}`))
}
