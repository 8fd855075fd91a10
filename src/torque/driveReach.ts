import type { Adaptor, Id } from '../spec/index.js'

/**
 * Whether a square drive reaches another through at most one drive adaptor, and which; designations are matched
 * exactly. A concentric adaptor changes no torque.
 */
export function driveReach(
  wrenchDrive: string,
  needed: string | undefined,
  adaptors: Readonly<Record<Id, Adaptor>>,
): { readonly reaches: boolean; readonly through?: Id } {
  if (needed === undefined || needed === wrenchDrive) return { reaches: true }
  for (const [id, adaptor] of Object.entries(adaptors))
    if (adaptor.kind === 'drive adaptor' && adaptor.from === wrenchDrive && adaptor.to === needed)
      return { reaches: true, through: id }
  return { reaches: false }
}
