import { dropUndefined, type Finding, type JsonPointer, joinPointer } from '../base/index.js'
import type { Gearcase, Id, Identity, Resolved, Seal, SpecSheet } from '../spec/index.js'
import { judgePart, resolveLeaf } from '../spec/index.js'
import { type ProcedureCodes, procedureFinding } from './codes.js'
import type {
  Applicability,
  CoverLayout,
  EmptyingLayout,
  FilterLayout,
  GearcaseLayout,
  IndexedSheet,
  OpeningLayout,
  Part,
  SealLayout,
  SealTreatment,
  ShieldLayout,
} from './layout.js'
import { getPartToOpen, hasRole } from './layout.js'

/** Looks up the parts of one machine on its sheet, to build and check procedures. */
export function indexSheet(sheet: SpecSheet, identity: Identity): IndexedSheet {
  const findings: Finding<ProcedureCodes>[] = []
  const judgeApplicability = (path: JsonPointer, name: string): Applicability => {
    const judged = judgePart(sheet, identity, path)
    if (judged.verdict === 'cannot tell') {
      const params = { part: name, missing: [...judged.missing] }
      const document = { kind: 'spec-sheet', id: sheet.id } as const
      findings.push(procedureFinding('procedure/part-not-known', 'warning', document, path, params))
    }
    return judged.verdict
  }
  const shields = new Map<Id, ShieldLayout>()
  for (const [id, shield] of Object.entries(sheet.shields ?? {})) {
    const path = joinPointer(['shields', id])
    shields.set(id, { id, path, shield, applies: judgeApplicability(path, shield.name) })
  }
  const gearcases = new Map(
    Object.entries(sheet.gearcases).map(([id, gearcase]) => {
      return [id, indexGearcase(sheet, identity, id, gearcase, judgeApplicability)]
    }),
  )
  const supports = Object.entries(sheet.machine.supports)
  const parts = indexParts(sheet, gearcases, shields)
  const instances = [...gearcases.values()].flatMap((gearcase) =>
    gearcase.instances.map((instance) => ({ gearcase, instance })),
  )
  return {
    axles: Object.keys(sheet.machine.axles),
    areRampsAllowed: new Map(
      Object.entries(sheet.machine.axles).flatMap(([id, { ramps }]) =>
        ramps === undefined ? [] : [[id, ramps]],
      ),
    ),
    axleOfSupport: new Map(supports.map(([id, support]) => [id, support.axle])),
    gearcases,
    shields,
    instances,
    oilSharers: instances.filter(({ gearcase }) => gearcase.owner !== gearcase.id),
    securedItems: [...parts.values()].filter((part) => part.kind === 'secured item'),
    parts,
    findings,
  }
}

function indexGearcase(
  sheet: SpecSheet,
  identity: Identity,
  id: Id,
  gearcase: Gearcase,
  judgeApplicability: (path: JsonPointer, name: string) => Applicability,
): GearcaseLayout {
  const path = joinPointer(['gearcases', id])
  const applies = judgeApplicability(path, gearcase.name)
  const openings = Object.entries(gearcase.openings).map(([openingId, opening]): OpeningLayout => {
    const at = `${path}${joinPointer(['openings', openingId])}`
    const seals = opening.seals.map((_seal, place) => indexSeal(sheet, identity, `${at}/seals/${place}`))
    return { id: openingId, path: at, opening, applies: judgeApplicability(at, opening.name), seals }
  })
  const covers = Object.entries(gearcase.covers ?? {}).map(([coverId, cover]): CoverLayout => {
    const at = `${path}${joinPointer(['covers', coverId])}`
    const seal = indexSeal(sheet, identity, `${at}/seal`)
    return { id: coverId, path: at, cover, applies: judgeApplicability(at, cover.name), seal }
  })
  const filters = Object.entries(gearcase.filters ?? {}).map(([filterId, filter]): FilterLayout => {
    const at = `${path}${joinPointer(['filters', filterId])}`
    const { held } = filter
    return dropUndefined({
      id: filterId,
      path: at,
      filter,
      applies: judgeApplicability(at, filter.name),
      seals: filter.seals.map((_seal, place) => indexSeal(sheet, identity, `${at}/seals/${place}`)),
      behind:
        held.kind === 'behind opening'
          ? openings.find((opening) => opening.id === held.opening)
          : held.kind === 'behind cover'
            ? covers.find((cover) => cover.id === held.cover)
            : undefined,
    })
  })
  const { oilSpace: space, access } = gearcase
  const fill = space.kind === 'own' ? space.fill : undefined
  const namedSupports = access.kind === 'raised' ? access.supports : []
  const supports = namedSupports.filter((support) => Object.hasOwn(sheet.machine.supports, support))
  const areSupportsOnOtherAxle = liftsOnlyOtherAxles(sheet, gearcase, supports)
  const { method } = fill ?? {}
  const namedOpening = method && 'opening' in method ? method.opening : undefined
  const emptyingWays = chooseEmptyingWays(gearcase.emptying, openings, covers)
  const possibleOpenings = openings.filter((opening) => opening.applies !== 'no')
  const fillOpenings = possibleOpenings.filter((possibleOpening) => hasRole(possibleOpening, 'fill'))
  const fillOpening = fillOpenings.find((opening) => opening.id === namedOpening) ?? fillOpenings[0]
  const levelOpeningId = method?.kind === 'by quantity' ? undefined : namedOpening
  return dropUndefined({
    id,
    path,
    gearcase,
    applies,
    instances: gearcase.instances === undefined ? [undefined] : Object.keys(gearcase.instances),
    owner: space.kind === 'shared' && Object.hasOwn(sheet.gearcases, space.with) ? space.with : id,
    fill,
    openings,
    covers,
    filters,
    fillOpenings,
    fillOpening,
    possibleFillOpenings: chooseFillOpenings(fillOpening, fillOpenings),
    levelOpening: possibleOpenings.find((possibleOpening) =>
      levelOpeningId === undefined
        ? hasRole(possibleOpening, 'level')
        : possibleOpening.id === levelOpeningId,
    ),
    emptying: emptyingWays[0],
    emptyingWays,
    ...(fill === undefined ? NO_ADDITIVE : readAdditive(sheet, identity, path)),
    hasSettlingTime: (fill?.level?.minutesAfterStop?.kind ?? 'not stated') !== 'not stated',
    supports: areSupportsOnOtherAxle ? [] : supports,
    areSupportsOnOtherAxle,
    shields: (gearcase.shields ?? []).filter((shield) => sheet.shields?.[shield]?.reachedThrough !== true),
  })
}

/**
 * Whether these supports lift only other axles, so that the wheels of this gearcase would stay on the ground.
 * Reported as `spec/support-on-another-axle` in a sheet, and as `procedure/supports-on-another-axle` in a
 * procedure.
 */
function liftsOnlyOtherAxles({ machine }: SpecSheet, { axle }: Gearcase, supports: readonly Id[]): boolean {
  const isKnown = (candidate: Id | undefined) =>
    candidate !== undefined && Object.hasOwn(machine.axles, candidate)
  const liftedAxles = supports.map((support) => machine.supports[support]?.axle)
  return (
    isKnown(axle) &&
    liftedAxles.length > 0 &&
    liftedAxles.every((liftedAxle) => isKnown(liftedAxle) && liftedAxle !== axle)
  )
}

/** The fill opening and, if it is uncertain, the fill openings of other variants. */
function chooseFillOpenings(
  fill: OpeningLayout | undefined,
  fillOpenings: readonly OpeningLayout[],
): readonly OpeningLayout[] {
  const chosen = fill === undefined ? [] : [fill]
  if (fill?.applies !== 'cannot tell') return chosen
  const getVariants = ({ opening }: OpeningLayout) => opening.appliesTo?.variants
  const coveredVariants = new Set(getVariants(fill))
  for (const fillOpening of fillOpenings) {
    const variants = getVariants(fillOpening) ?? []
    const turnsWithWheel = fillOpening.opening.uses.some(({ wheelMark }) => wheelMark !== undefined)
    if (
      turnsWithWheel ||
      coveredVariants.size === 0 ||
      variants.length === 0 ||
      variants.some((id) => coveredVariants.has(id))
    )
      continue
    chosen.push(fillOpening)
    for (const id of variants) coveredVariants.add(id)
  }
  return chosen
}

/**
 * The ways to empty the gearcase, in the order of the manual, up to the first whose part this machine
 * certainly has; the technician finds out which applies. If the way is a drain plug, all other drain plugs are
 * opened as well: each lets out oil that the others do not. Common practice, no source.
 */
function chooseEmptyingWays(
  emptying: Gearcase['emptying'],
  openings: readonly OpeningLayout[],
  covers: readonly CoverLayout[],
): readonly EmptyingLayout[] {
  const emptyingWays: EmptyingLayout[] = []
  const findPart = <P extends OpeningLayout | CoverLayout>(parts: readonly P[], id: Id): P | undefined =>
    parts.find((part) => part.id === id && part.applies !== 'no')
  for (const [place, way] of emptying.entries()) {
    if (way.kind === 'cover') {
      const cover = findPart(covers, way.cover)
      if (cover !== undefined) emptyingWays.push({ kind: 'cover', cover })
    } else {
      const opening = findPart(openings, way.opening)
      const also = way.kind === 'drain plug' ? (way.also ?? []) : []
      if (opening !== undefined)
        emptyingWays.push({
          kind: way.kind,
          opening,
          also: also.flatMap((id) => findPart(openings, id) ?? []),
        })
    }
    const lastEmptying = emptyingWays.at(-1)
    if (lastEmptying === undefined || getPartToOpen(lastEmptying).applies !== 'yes') continue
    if (lastEmptying.kind !== 'drain plug') return emptyingWays
    const furtherDrains = emptying
      .slice(place + 1)
      .flatMap((item) => (item.kind === 'drain plug' ? item.opening : []))
    const also = openings.filter(
      (opening) =>
        furtherDrains.includes(opening.id) && opening.applies === 'yes' && !hasRole(opening, 'fill'),
    )
    const furtherOpenings = new Set([...lastEmptying.also, ...also])
    furtherOpenings.delete(lastEmptying.opening)
    return [...emptyingWays.slice(0, -1), { ...lastEmptying, also: [...furtherOpenings] }]
  }
  return emptyingWays
}

function indexSeal(sheet: SpecSheet, identity: Identity, path: JsonPointer): SealLayout {
  const candidates = listCandidates(resolveLeaf(sheet, identity, 'seal', path))
  if (candidates === undefined) return { path, treatment: 'inspect', mustCure: false }
  const [treatment, ...others] = new Set(candidates.map(chooseTreatment))
  return {
    path,
    // If the seal of this machine is not known, renew it.
    treatment: treatment === undefined || others.length > 0 ? 'renew' : treatment,
    mustCure: candidates.some((seal) => seal.kind === 'liquid gasket'),
  }
}

/** The stated leaf, or all candidates; undefined if it is not stated. */
function listCandidates<T>(resolved: Resolved<T>): readonly T[] | undefined {
  if (resolved.kind === 'not stated') return undefined
  return resolved.kind === 'stated' ? [resolved.value] : resolved.candidates.map(({ value }) => value)
}

function chooseTreatment(seal: Seal): SealTreatment {
  switch (seal.kind) {
    case 'none':
      return 'none'
    case 'not stated':
      return 'inspect'
    case 'thread sealant':
    case 'liquid gasket':
      return 'apply'
    default:
      return seal.replace === 'on condition' ? 'inspect' : 'renew'
  }
}

const NO_ADDITIVE = { additive: 'never', oilFirst: false } as const

/** The additive goes in first unless the manual says otherwise: at a level hole, the last fluid runs out. */
function readAdditive(
  sheet: SpecSheet,
  identity: Identity,
  path: JsonPointer,
): Pick<GearcaseLayout, 'additive' | 'oilFirst'> {
  const lists = listCandidates(resolveLeaf(sheet, identity, 'oils', `${path}/oilSpace/oils`)) ?? []
  const choices = lists.flatMap((list) => (list.kind === 'oils' ? list.choices : []))
  const additives = choices.flatMap(({ additive }) => additive ?? [])
  if (additives.length === 0) return NO_ADDITIVE
  return {
    additive: additives.length === choices.length ? 'always' : 'for some oils',
    oilFirst: additives.every(({ order }) => order === 'oil first'),
  }
}

function indexParts(
  sheet: SpecSheet,
  gearcases: ReadonlyMap<Id, GearcaseLayout>,
  shields: ReadonlyMap<Id, ShieldLayout>,
): ReadonlyMap<JsonPointer, Part> {
  const parts = new Map<JsonPointer, Part>()
  for (const id of Object.keys(sheet.machine.supports))
    parts.set(joinPointer(['machine', 'supports', id]), { kind: 'support', id })
  for (const id of Object.keys(sheet.machine.axles))
    parts.set(joinPointer(['machine', 'axles', id]), { kind: 'axle', id })
  for (const [place, item] of (sheet.machine.secure ?? []).entries()) {
    const path = joinPointer(['machine', 'secure', place])
    parts.set(path, { kind: 'secured item', item, path })
  }
  for (const shield of shields.values()) parts.set(shield.path, { kind: 'shield', shield })
  for (const gearcase of gearcases.values()) {
    parts.set(gearcase.path, { kind: 'gearcase', gearcase })
    for (const opening of gearcase.openings) {
      parts.set(opening.path, { kind: 'opening', gearcase, opening })
      for (const seal of opening.seals) parts.set(seal.path, { kind: 'seal', gearcase, opening, seal })
    }
    for (const cover of gearcase.covers) {
      parts.set(cover.path, { kind: 'cover', gearcase, cover })
      parts.set(cover.seal.path, { kind: 'cover seal', gearcase, cover, seal: cover.seal })
    }
    for (const filter of gearcase.filters) {
      parts.set(filter.path, { kind: 'filter', gearcase, filter })
      for (const seal of filter.seals) parts.set(seal.path, { kind: 'filter seal', gearcase, filter, seal })
    }
  }
  return parts
}
