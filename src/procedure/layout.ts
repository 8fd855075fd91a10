import type { Finding, JsonPointer } from '../base/index.js'
import type {
  Cover,
  Fill,
  Filter,
  Gearcase,
  Id,
  Opening,
  OpeningRole,
  SecuredItem,
  Shield,
  WheelMark,
} from '../spec/index.js'
import type { AtPart, ProcedureCodes } from './codes.js'

export type Applicability = 'yes' | 'cannot tell' | 'no'

/** `renew`: a new one at every opening; `inspect`: look, then use again or renew; `apply`: sealant; `none`: bare. */
export type SealTreatment = 'renew' | 'inspect' | 'apply' | 'none'

export interface SealLayout {
  readonly path: JsonPointer
  readonly treatment: SealTreatment
  /** A liquid gasket that must cure before oil may touch it. */
  readonly cures: boolean
}

interface PartLayout {
  readonly id: Id
  readonly path: JsonPointer
  readonly applies: Applicability
}

export interface OpeningLayout extends PartLayout {
  readonly opening: Opening
  readonly seals: readonly SealLayout[]
}

export interface CoverLayout extends PartLayout {
  readonly cover: Cover
  readonly seal: SealLayout
}

export interface FilterLayout extends PartLayout {
  readonly filter: Filter
  readonly seals: readonly SealLayout[]
  /** What comes off before it can be reached; absent: it is screwed on by itself. */
  readonly behind?: OpeningLayout | CoverLayout
}

/** The way that old oil leaves one gearcase of this machine. */
export type EmptyingLayout =
  /** `also`: drains that are opened with it. */
  | {
      readonly kind: 'drain plug' | 'suction'
      readonly opening: OpeningLayout
      readonly also: readonly OpeningLayout[]
    }
  | { readonly kind: 'cover'; readonly cover: CoverLayout }

/** What is opened to empty the gearcase. */
export function partOf(way: EmptyingLayout): OpeningLayout | CoverLayout {
  return way.kind === 'cover' ? way.cover : way.opening
}

export interface GearcaseLayout extends PartLayout {
  readonly gearcase: Gearcase
  /** `[undefined]` where the gearcase is there once. */
  readonly instances: readonly (Id | undefined)[]
  /** The gearcase that owns the oil: itself, or the one it shares with. */
  readonly owner: Id
  /** The owner's fill, of an own oil space only. */
  readonly fill?: Fill
  readonly openings: readonly OpeningLayout[]
  readonly covers: readonly CoverLayout[]
  readonly filters: readonly FilterLayout[]
  readonly fillOpenings: readonly OpeningLayout[]
  readonly fillOpening?: OpeningLayout
  /** It, and others of which the machine has one instead: where it is unknown which, all are worked. */
  readonly fillsToWork: readonly OpeningLayout[]
  readonly levelOpening?: OpeningLayout
  /** The first of `ways`. */
  readonly emptying?: EmptyingLayout
  /** One way, or several where it is unknown which of them this machine has. */
  readonly ways: readonly EmptyingLayout[]
  readonly additive: 'always' | 'for some oils' | 'never'
  /** The manual pours the additive after the oil. */
  readonly oilFirst: boolean
  /** The manual asks for a wait between stopping and the level check. */
  readonly settles: boolean
  readonly supports: readonly Id[]
  /** All its supports lift other axles than its own: there are none that may be used. */
  readonly isLiftedElsewhere: boolean
  readonly shields: readonly Id[]
}

export interface ShieldLayout extends PartLayout {
  readonly shield: Shield
}

interface OfGearcase<Kind extends string> {
  readonly kind: Kind
  readonly gearcase: GearcaseLayout
}

/** The part that a pointer names. */
export type Part =
  | { readonly kind: 'support' | 'axle'; readonly id: Id }
  | { readonly kind: 'secured item'; readonly item: SecuredItem; readonly path: JsonPointer }
  | { readonly kind: 'shield'; readonly shield: ShieldLayout }
  | OfGearcase<'gearcase'>
  | (OfGearcase<'opening'> & { readonly opening: OpeningLayout })
  | (OfGearcase<'cover'> & { readonly cover: CoverLayout })
  | (OfGearcase<'filter'> & { readonly filter: FilterLayout })
  | (OfGearcase<'seal'> & { readonly opening: OpeningLayout; readonly seal: SealLayout })
  | (OfGearcase<'cover seal'> & { readonly cover: CoverLayout; readonly seal: SealLayout })
  | (OfGearcase<'filter seal'> & { readonly filter: FilterLayout; readonly seal: SealLayout })

/** The sheet as this one machine has it, by the names that steps use. */
export interface IndexedSheet {
  readonly axles: readonly Id[]
  readonly axleOfSupport: ReadonlyMap<Id, Id | undefined>
  readonly gearcases: ReadonlyMap<Id, GearcaseLayout>
  readonly shields: ReadonlyMap<Id, ShieldLayout>
  readonly parts: ReadonlyMap<JsonPointer, Part>
  /** What cannot be determined because a fact is missing. */
  readonly findings: readonly Finding<ProcedureCodes>[]
}

/** The wheel's mark for this role of the opening; undefined: it does not turn with a wheel. */
export function wheelMarkFor(opening: OpeningLayout, role: OpeningRole): WheelMark | undefined {
  return opening.opening.uses.find((use) => use.role === role)?.wheelMark
}

export function servesAs(opening: OpeningLayout, role: OpeningRole): boolean {
  return opening.opening.uses.some((use) => use.role === role)
}

/** The key of a part's state: its pointer, and the instance where there are several. */
export function stateKey(path: JsonPointer, instance: Id | undefined): string {
  return instance === undefined ? path : `${path}@${instance}`
}

/** A gearcase and which of its instances. */
export interface GearcaseInstance {
  readonly gearcase: GearcaseLayout
  readonly instance: Id | undefined
}

export function keyOf({ gearcase, instance }: GearcaseInstance): string {
  return stateKey(gearcase.path, instance)
}

export function listGearcaseInstances(layout: IndexedSheet): readonly GearcaseInstance[] {
  return [...layout.gearcases.values()].flatMap((gearcase) =>
    gearcase.instances.map((instance) => ({ gearcase, instance })),
  )
}

/** The gearcase that owns the oil of another, and the instance of it that this one opens to. */
export function findOwner(
  layout: IndexedSheet,
  gearcase: GearcaseLayout,
  instance: Id | undefined,
): GearcaseInstance {
  const owner = layout.gearcases.get(gearcase.owner) ?? gearcase
  return { gearcase: owner, instance: owner.instances.includes(instance) ? instance : owner.instances[0] }
}

/** Every gearcase whose oil is that of this owner, the owner first. */
export function findSharers(layout: IndexedSheet, owner: GearcaseInstance): readonly GearcaseInstance[] {
  const others = listGearcaseInstances(layout).filter(
    ({ gearcase, instance }) =>
      gearcase.owner === owner.gearcase.id &&
      gearcase.id !== owner.gearcase.id &&
      findOwner(layout, gearcase, instance).instance === owner.instance,
  )
  return [owner, ...others]
}

/** The part in the sheet's own names. */
export function namePart(part: Part | undefined): Pick<AtPart, 'part' | 'gearcase'> {
  if (part?.kind === 'shield') return { part: part.shield.shield.name }
  if (part?.kind === 'secured item') return { part: part.item.item }
  if (part === undefined || !('gearcase' in part)) return {}
  const gearcase = part.gearcase.gearcase.name
  if ('opening' in part) return { part: part.opening.opening.name, gearcase }
  if ('cover' in part) return { part: part.cover.cover.name, gearcase }
  if ('filter' in part) return { part: part.filter.filter.name, gearcase }
  return { gearcase }
}

/** The instance in the sheet's own name. */
export function nameInstance(
  { gearcase }: GearcaseLayout,
  instance: Id | undefined,
): Pick<AtPart, 'instance'> {
  return instance === undefined ? {} : { instance: gearcase.instances?.[instance]?.name ?? instance }
}
