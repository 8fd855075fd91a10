import type { Finding } from '../finding.js'
import type { Toolbox } from '../spec/index.js'
import { serviceFinding } from './serviceFinding.js'

/**
 * The toolbox without wrenches whose scale ends below where it begins: no setting can be read off such a scale, and
 * one slip of the pen should not keep the other wrenches from work. A rule tells it too; a plan may be asked without.
 */
export function leaveOutWrenches(toolbox: Toolbox): {
  readonly toolbox: Toolbox
  readonly findings: readonly Finding[]
} {
  const document = { kind: 'toolbox', id: toolbox.id } as const
  const findings = Object.entries(toolbox.wrenches).flatMap(([id, { name, scales }]) =>
    scales.flatMap(({ lowest, highest, unit }, place) =>
      highest >= lowest
        ? []
        : [
            serviceFinding('service/scale-reversed', 'error', document, `/wrenches/${id}/scales/${place}`, {
              wrench: name,
              lowest: { value: lowest, unit },
              highest: { value: highest, unit },
            }),
          ],
    ),
  )
  if (findings.length === 0) return { toolbox, findings }
  const wrenches = Object.fromEntries(
    Object.entries(toolbox.wrenches).filter(([, { scales }]) =>
      scales.every(({ lowest, highest }) => highest >= lowest),
    ),
  )
  return { toolbox: { ...toolbox, wrenches }, findings }
}
