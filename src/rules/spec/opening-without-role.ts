import type { Gearcase, OpeningRole } from '../../spec/index.js'
import { lookUp } from '../lookup/lookUp.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * An opening named for a use that it does not list: a drain plug without the use `drain`, a level hole or
 * dipstick without `level`, or an opening to pour into without `fill`. Either the reference or the list is wrong.
 * Judges: Every gearcase: the opening of the fill method needs the use `level` for `to level hole` and
 * `dipstick`, else `fill` (with a sight glass, the opening for filling); the opening of each `drain plug` in
 * `emptying`, and each under its `also`, needs `drain`. Finds an existing opening without that use.
 * Place: `/gearcases/<id>/oilSpace/fill/method/opening`, `/gearcases/<id>/emptying/<place>/opening` or
 * `…/also/<place>`
 * Params: opening: its name; role: the missing use; use: the fill method, or `drain plug`
 * Harm: job
 * House rule.
 */
export const rule = gearcaseRule('spec/opening-without-role', 'error', ([id, gearcase]) =>
  listRequiredRoles(gearcase).flatMap(({ path, opening, role, use }) => {
    const namedOpening = lookUp(gearcase.openings, opening)
    if (namedOpening === undefined || namedOpening.uses.some((statedUse) => statedUse.role === role))
      return []
    return [{ path: `/gearcases/${id}${path}`, params: { opening: namedOpening.name, role, use } }]
  }),
)

interface RequiredRole {
  readonly path: string
  readonly opening: string
  readonly role: OpeningRole
  readonly use: string
}

function listRequiredRoles(gearcase: Gearcase): readonly RequiredRole[] {
  const { oilSpace, emptying } = gearcase
  const drains = emptying.flatMap((way, place): RequiredRole[] => {
    if (way.kind !== 'drain plug') return []
    const path = `/emptying/${place}`
    const drainRole = { role: 'drain', use: way.kind } as const
    return [
      { path: `${path}/opening`, opening: way.opening, ...drainRole },
      ...(way.also ?? []).map((opening, at) => ({ path: `${path}/also/${at}`, opening, ...drainRole })),
    ]
  })
  if (oilSpace.kind === 'shared') return drains
  const { method } = oilSpace.fill
  if (method.kind === 'not stated') return drains
  const { kind, opening } = method
  const role = kind === 'to level hole' || kind === 'dipstick' ? 'level' : 'fill'
  return [{ path: '/oilSpace/fill/method/opening', opening, role, use: kind }, ...drains]
}
