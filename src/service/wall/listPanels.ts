import { dropUndefined, type JsonPointer, joinPointer, readPointer } from '../../base/index.js'
import type { Cover, FastenerSet, Gearcase, Id, Opening, Seal, Step } from '../../spec/index.js'
import { listDrives } from '../drives.js'
import { findOilOwner } from '../gearcases.js'
import { describePart } from '../names.js'
import { findGearcaseId } from '../planWaits.js'
import type { VisitContext } from '../visitContext.js'
import type { PlannedOil, PlannedTightening } from '../visitPlan.js'
import type { WallPanel, WallPart } from './wallFactsTypes.js'

const LOOSENING: ReadonlySet<Step['do']> = new Set([
  'crack loose',
  'take out',
  'take off cover',
  'take off filter',
  'remove shield',
])
const TIGHTENING: ReadonlySet<Step['do']> = new Set([
  'tighten',
  'tighten cover',
  'tighten filter',
  'refit shield',
])

/** A panel for each gearcase of the job, in the order of work. */
export function listPanels(
  visit: VisitContext,
  gearcases: readonly Id[],
  oil: readonly PlannedOil[],
  tightenings: readonly PlannedTightening[],
): readonly WallPanel[] {
  const worked = visit.procedure.steps
    .filter(({ do: action }) => LOOSENING.has(action))
    .flatMap((step) => findGearcaseId(step) ?? [])
  return [...new Set([...worked, ...gearcases])].flatMap((id) => {
    const gearcase = visit.sheet.gearcases[id]
    return gearcase === undefined ? [] : makePanel(visit, id, gearcase, oil, tightenings)
  })
}

function makePanel(
  visit: VisitContext,
  id: Id,
  { access, instances, shields = [] }: Gearcase,
  oil: readonly PlannedOil[],
  tightenings: readonly PlannedTightening[],
): WallPanel {
  const { sheet, procedure, figures } = visit
  const path = joinPointer(['gearcases', id])
  const owner = findOilOwner(sheet, id)
  const ownerPath = joinPointer(['gearcases', owner])
  const ownSteps = procedure.steps.filter(
    ({ on = '' }) =>
      findGearcaseId({ on } as Step) === id || shields.some((shield) => on === `/shields/${shield}`),
  )
  const inOrder = (actions: ReadonlySet<Step['do']>, steps = ownSteps) => [
    ...new Set(steps.flatMap(({ do: action, on }) => (on && actions.has(action) ? on : []))),
  ]
  // Without a procedure, the order of the sheet.
  const withoutSteps = visit.partsWithoutSteps.filter((part) => part.startsWith(`${path}/`))
  const loosened = [...inOrder(LOOSENING), ...withoutSteps]
  const parts = loosened.map((on) => makePart(visit, on, tightenings))
  const oilSteps = procedure.steps.filter((step) => {
    const gearcase = findGearcaseId(step)
    return ownSteps.includes(step) || (gearcase !== undefined && findOilOwner(sheet, gearcase) === id)
  })
  const space = sheet.gearcases[owner]?.oilSpace
  const fill = owner === id && space?.kind === 'own' ? space.fill : undefined
  const plannedOil = oil.findIndex(({ part }) => part.path === path)
  const openingPath =
    fill && 'opening' in fill.method ? joinPointer(['gearcases', id, 'openings', fill.method.opening]) : ''
  const at = loosened.indexOf(openingPath)
  const levelPath = `${ownerPath}/oilSpace/fill`
  return dropUndefined({
    part: describePart(sheet, path),
    instances: instances && Object.values(instances).map(({ name }) => name),
    oilOf: owner === id ? undefined : describePart(sheet, ownerPath),
    access: access.kind,
    supports:
      access.kind === 'raised'
        ? access.supports.map((support) => sheet.machine.supports[support]?.at ?? support)
        : [],
    refill: owner === id ? figures.pointerTo(`${levelPath}/drainAndRefill`) : undefined,
    oils: owner === id ? figures.pointerTo(`${path}/oilSpace/oils`) : undefined,
    oil: plannedOil < 0 ? undefined : `/oil/${plannedOil}`,
    fill:
      fill &&
      dropUndefined({
        method: fill.method.kind,
        at: at < 0 ? undefined : at,
        reading: fill.method.kind === 'dipstick' ? fill.method.reading : undefined,
        attitude: fill.level?.attitude ?? ('not stated' as const),
        engine: fill.level?.engine ?? ('not stated' as const),
        recheckAfterRun: fill.level?.recheckAfterRun ?? false,
        level: ['/method/below', '/level/temperature', '/level/minutesAfterStop'].flatMap(
          (tail) => figures.pointerTo(`${levelPath}${tail}`) ?? [],
        ),
      }),
    drainTemperature: figures.pointerTo(`${path}/drainTemperature`),
    breather: figures.pointerTo(`${path}/breather/place`),
    breatherPosition: figures.pointerTo(`${path}/breather/position`),
    parts,
    loosen: owner === id ? inOrder(LOOSENING, oilSteps) : [],
    tighten: owner === id ? inOrder(TIGHTENING, oilSteps) : [],
  })
}

function makePart(
  { sheet, identity, figures }: VisitContext,
  on: JsonPointer,
  tightenings: readonly PlannedTightening[],
): WallPart {
  const part = readPointer(sheet, on) as Partial<Opening> & {
    readonly bolts?: FastenerSet & Pick<Cover['bolts'], 'pattern'>
    readonly fasteners?: FastenerSet
    readonly seal?: Seal
  }
  const count = (part.bolts ?? part.fasteners)?.count
  const place = tightenings.findIndex((tightening) => tightening.part.path === on)
  const sealPaths = part.seal
    ? [`${on}/seal`]
    : (part.seals ?? []).map((_seal, index) => `${on}/seals/${index}`)
  return dropUndefined({
    role: findRole(on, part.uses ?? []),
    part: describePart(sheet, on),
    uses: part.uses,
    count: typeof count === 'number' ? count : undefined,
    pattern: part.bolts?.pattern === 'not stated' ? undefined : part.bolts?.pattern,
    drives: listDrives(sheet, identity, on),
    tightening: place < 0 ? undefined : `/tightenings/${place}`,
    seals: sealPaths.flatMap((sealPath) => figures.pointerTo(sealPath) ?? []),
    place: figures.pointerTo(`${on}/place`),
    position: figures.pointerTo(`${on}/position`),
    magnet: part.magnet === true ? true : undefined,
  })
}

function findRole(on: JsonPointer, uses: Opening['uses']): WallPart['role'] {
  if (on.startsWith('/shields/')) return 'shield'
  const [, , , list] = on.split('/')
  if (list === 'covers') return 'cover'
  if (list === 'filters') return 'filter'
  const roles = new Set(uses.map(({ role }) => role))
  if (roles.has('drain') && roles.size > 1) return 'plug'
  return roles.has('drain') ? 'drain' : roles.has('fill') ? 'fill' : 'level'
}
