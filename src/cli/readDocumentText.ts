import { parseDocument, parseDocumentText } from '../schema/index.js'
import { findHiddenMistakes, type ParsedDocument } from './findHiddenMistakes.js'
import { readYaml } from './readYaml.js'

/** Tabs in an indent are a mistake of YAML; with spaces the text has the same lines. */
export function replaceTabs(text: string): string {
  return text.replaceAll(/^[ \t]+/gm, (indent) => indent.replaceAll('\t', '  '))
}

/** Codes for texts that are not data. */
const SYNTAX_CODES: readonly string[] = [
  'spec/table-instead-of-document',
  'spec/not-json',
  'spec/too-long',
  'spec/too-deep',
  'spec/too-large',
]

/** Reads one JSON text as a document, with the mistakes that others hide. */
export function readJsonDocument(text: string, name: string): ParsedDocument {
  const parsed = parseDocumentText('any', text, { name })
  const isJson = parsed.ok || !parsed.findings.some(({ code }) => SYNTAX_CODES.includes(code))
  return isJson && !parsed.ok
    ? findHiddenMistakes(JSON.parse(text.replace(/^\uFEFF/, '')), parsed, name)
    : parsed
}

/** Reads one YAML text as a document, with the mistakes that others hide. */
export function readYamlDocument(text: string, name: string): ParsedDocument {
  const parsedYaml = readYaml(text, name)
  if (!parsedYaml.ok) {
    // Tabs are one mistake: to find others, the text is read with spaces instead.
    const spacedText = replaceTabs(text)
    return spacedText === text
      ? parsedYaml
      : { ok: false, findings: [...parsedYaml.findings, ...readYamlDocument(spacedText, name).findings] }
  }
  const parsed = findHiddenMistakes(parsedYaml.value, parseDocument('any', parsedYaml.value, { name }), name)
  const findings = [...parsedYaml.findings, ...parsed.findings]
  const hasErrors = findings.some(({ severity }) => severity === 'error')
  return parsed.ok && !hasErrors ? { ...parsed, findings } : { ok: false, findings }
}
