import { type CliIo, requireReadable, UsageError } from './cliIo.js'
import { fingerprintFinding } from './fingerprintFinding.js'
import type { LocatedFinding } from './makeLocator.js'

/** Accepted findings, for people to read and for the next run to compare. */
interface Baseline {
  readonly kind: 'baseline'
  readonly version: '1.0'
  readonly findings: readonly {
    readonly fingerprint: string
    readonly code: string
    readonly document: string
    readonly path: string
  }[]
}

/** The findings as a baseline, in a fixed order, so that versions of the file can be compared. */
export function writeBaseline(findings: readonly LocatedFinding[]): string {
  const entries = findings
    .filter(({ waived }) => waived === undefined)
    .map((finding) => ({
      fingerprint: fingerprintFinding(finding),
      code: finding.code,
      document: finding.document.id ?? finding.document.name ?? finding.document.kind,
      path: finding.path,
    }))
    .sort((first, second) => (JSON.stringify(first) < JSON.stringify(second) ? -1 : 1))
  const baseline: Baseline = { kind: 'baseline', version: '1.0', findings: entries }
  return `${JSON.stringify(baseline, null, 2)}\n`
}

/** How often each fingerprint is accepted. */
export async function readBaseline(path: string, io: CliIo): Promise<Map<string, number>> {
  const counts = new Map<string, number>()
  for (const { fingerprint } of parseBaseline(path, await requireReadable(path, io.readText(path))).findings)
    counts.set(fingerprint, (counts.get(fingerprint) ?? 0) + 1)
  return counts
}

/** Throws if the text is not a baseline. */
export function parseBaseline(path: string, text: string): Baseline {
  let data: Partial<Baseline> | null = null
  try {
    data = JSON.parse(text)
  } catch {
    // The error below names the file.
  }
  const isBaseline =
    data?.kind === 'baseline' &&
    data.version === '1.0' &&
    Array.isArray(data.findings) &&
    data.findings.every((entry: unknown) => typeof Object(entry).fingerprint === 'string')
  if (!isBaseline) throw new UsageError('notABaseline', { path })
  return data as Baseline
}

/**
 * Marks the findings of a baseline as accepted, each entry once. `unused`: the number of entries that no
 * longer occur.
 */
export function markKnown(
  findings: readonly LocatedFinding[],
  baseline: ReadonlyMap<string, number>,
): { readonly marked: readonly LocatedFinding[]; readonly unused: number } {
  const remaining = new Map(baseline)
  const marked = findings.map((finding): LocatedFinding => {
    const fingerprint = fingerprintFinding(finding)
    const count = remaining.get(fingerprint) ?? 0
    if (count === 0) return finding
    remaining.set(fingerprint, count - 1)
    return { ...finding, accepted: true }
  })
  return { marked, unused: [...remaining.values()].reduce((sum, count) => sum + count, 0) }
}
