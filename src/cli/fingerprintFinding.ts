import type { Finding } from '../base/index.js'

/**
 * The same text for the same finding in every run: code, document, place and figures, but no line and no
 * wording. A document is known by its kind and id, so that a renamed file keeps its findings.
 */
export function fingerprintFinding({ code, document, path, params }: Finding): string {
  const name = document.id ?? document.name?.replaceAll('\\', '/') ?? ''
  const facts = JSON.stringify([code, document.kind, name, path, params])
  // Loaded only when needed: most runs print no fingerprint.
  const { createHash } = process.getBuiltinModule('node:crypto')
  return createHash('sha256').update(facts).digest('hex').slice(0, 32)
}
