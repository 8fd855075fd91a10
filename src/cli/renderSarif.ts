import { createRequire } from 'node:module'
import type { Location, Log, ReportingDescriptor, Result } from 'sarif'
import type { Place, Severity } from '../base/index.js'
import { fingerprintFinding } from './fingerprintFinding.js'
import type { LocatedFinding } from './makeLocator.js'
import { VERSION } from './version.js'

/** A rule in the published list. */
interface PublishedRule {
  readonly code: string
  readonly severity: Severity
  readonly catches: string
  readonly judges: string
  readonly harm: string
  readonly basis: string
}

/** The address of the documentation in a web copy of the package. */
const DOCS = 'https://unpkg.com/drivetrain-service/docs'

/** Findings as SARIF 2.1.0 (OASIS, 2020), for code-review and CI tools. */
export function renderSarif(findings: readonly LocatedFinding[]): Log {
  const { rules } = createRequire(import.meta.url)('drivetrain-service/schemas/v1/rules.json') as {
    readonly rules: readonly PublishedRule[]
  }
  const published = new Map(rules.map((rule) => [rule.code, rule]))
  const codes = [...new Set(findings.map(({ code }) => code))].sort()
  const ruleIndexes = new Map(codes.map((code, index) => [code, index]))
  return {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        columnKind: 'utf16CodeUnits',
        tool: {
          driver: {
            name: 'drivetrain-service',
            version: VERSION,
            semanticVersion: VERSION,
            informationUri: 'https://www.npmjs.com/package/drivetrain-service',
            rules: codes.map((code) => describeRule(code, published.get(code))),
          },
        },
        results: findings.map((finding) => describeResult(finding, ruleIndexes.get(finding.code) ?? -1)),
      },
    ],
  }
}

const levelOf = (severity: Severity): 'error' | 'warning' | 'note' =>
  severity === 'info' ? 'note' : severity

/** A code that is not in the published list is its own text: `spec/unknown-key` is an unknown key. */
function describeRule(code: string, rule: PublishedRule | undefined): ReportingDescriptor {
  const words = code.slice(code.indexOf('/') + 1).replaceAll('-', ' ')
  const title = `${words.charAt(0).toUpperCase()}${words.slice(1)}.`
  if (rule === undefined)
    return {
      id: code,
      shortDescription: { text: title },
      help: { text: 'The message of the finding says what is wrong and what is expected.' },
      helpUri: `${DOCS}/documents.md`,
    }
  const { catches, judges, basis, harm, severity } = rule
  return {
    id: code,
    shortDescription: { text: title },
    fullDescription: { text: catches },
    help: {
      text: `${catches}\n\n${judges}\n\n${basis}`,
      markdown: `${catches}\n\n**Checked:** ${judges}\n\n${basis}`,
    },
    helpUri: `${DOCS}/rules.md`,
    defaultConfiguration: { level: levelOf(severity) },
    properties: { tags: [harm] },
  }
}

function describeResult(finding: LocatedFinding, ruleIndex: number): Result {
  const { code, severity, message, waived, accepted, position, end, related } = finding
  const suppressions: Result['suppressions'] = [
    ...(waived ? [{ kind: 'inSource' as const, justification: waived.reason }] : []),
    ...(accepted ? [{ kind: 'external' as const, justification: 'In the baseline.' }] : []),
  ]
  const region = position && {
    startLine: position.line,
    startColumn: position.column,
    endLine: end?.line ?? position.line,
    endColumn: end?.column ?? position.column + 1,
  }
  return {
    ruleId: code,
    ruleIndex,
    level: levelOf(severity),
    message: { text: message },
    locations: [describeLocation(finding, region)],
    ...(related && { relatedLocations: related.map((place) => describeLocation(place)) }),
    partialFingerprints: { 'finding/v1': fingerprintFinding(finding) },
    ...(suppressions.length > 0 && { suppressions }),
  }
}

function describeLocation({ document, path }: Place, region?: object): Location {
  return {
    physicalLocation: {
      artifactLocation: { uri: toUri(document.name ?? document.kind) },
      ...(region && { region }),
    },
    logicalLocations: [{ fullyQualifiedName: path, kind: 'member' }],
  }
}

/** A path as a URI reference, with `/` instead of `\\`. */
function toUri(path: string): string {
  const parts = path
    .replace(/\p{Cs}/gu, '\uFFFD')
    .replaceAll('\\', '/')
    .split('/')
  return parts.map(encodeURIComponent).join('/')
}
