import type { Finding } from '../base/index.js'
import type { Toolbox, WrenchScale } from '../spec/index.js'
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
    scales.flatMap((scale, place) => {
      if (!isReversed(scale)) return []
      const { lowest, highest, unit } = scale
      return [
        serviceFinding('service/scale-reversed', 'error', document, `/wrenches/${id}/scales/${place}`, {
          wrench: name,
          lowest: { value: lowest, unit },
          highest: { value: highest, unit },
        }),
      ]
    }),
  )
  const wrenches = Object.entries(toolbox.wrenches).filter(([, { scales }]) => !scales.some(isReversed))
  return { toolbox: { ...toolbox, wrenches: Object.fromEntries(wrenches) }, findings }
}

function isReversed({ lowest, highest }: WrenchScale): boolean {
  return highest < lowest
}
