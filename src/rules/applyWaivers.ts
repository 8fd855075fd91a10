import { type Finding, RETIRED_CODES } from '../base/index.js'
import type { SpecSheet } from '../spec/index.js'

/** A sheet's findings after its waivers, and the places of the waivers that waived nothing. */
export interface WaivedFindings {
  readonly findings: readonly Finding[]
  readonly unusedWaivers: readonly number[]
}

/** A waived finding keeps its place, says which waiver and why, and counts as information from then on. */
export function applyWaivers(sheet: SpecSheet, findings: readonly Finding[]): WaivedFindings {
  const waivers = sheet.waivers ?? []
  const used = new Set<number>()
  const waived = findings.map((finding): Finding => {
    const place = waivers.findIndex(
      ({ code, path }) =>
        path === finding.path && (code === finding.code || RETIRED_CODES[code] === finding.code),
    )
    const waiver = waivers[place]
    if (waiver === undefined) return finding
    used.add(place)
    return { ...finding, severity: 'info', waived: { path: `/waivers/${place}`, reason: waiver.reason } }
  })
  return { findings: waived, unusedWaivers: [...waivers.keys()].filter((place) => !used.has(place)) }
}
