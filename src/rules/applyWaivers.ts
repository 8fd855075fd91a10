import type { Finding } from '../base/index.js'
import type { SpecSheet } from '../spec/index.js'

/** A sheet's findings with its waivers laid over them, and the places of the waivers that met no finding. */
export interface WaivedFindings {
  readonly findings: readonly Finding[]
  readonly unusedWaivers: readonly number[]
}

/**
 * Lays a sheet's waivers over its findings: a waived finding stays where it is, says which waiver and why,
 * and counts as information from then on. House rule: what was waived is still reported.
 */
export function applyWaivers(sheet: SpecSheet, findings: readonly Finding[]): WaivedFindings {
  const waivers = sheet.waivers ?? []
  const used = new Set<number>()
  const waived = findings.map((finding): Finding => {
    const place = waivers.findIndex(({ code, path }) => code === finding.code && path === finding.path)
    const waiver = waivers[place]
    if (waiver === undefined) return finding
    used.add(place)
    return { ...finding, severity: 'info', waived: { path: `/waivers/${place}`, reason: waiver.reason } }
  })
  return { findings: waived, unusedWaivers: [...waivers.keys()].filter((place) => !used.has(place)) }
}
