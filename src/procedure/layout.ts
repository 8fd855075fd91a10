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

/** `renew`: always fit a new one; `inspect`: use again or renew; `apply`: sealant; `none`: no seal. */
export type SealTreatment = 'renew' | 'inspect' | 'apply' | 'none'

export interface SealLayout {
  readonly path: JsonPointer
  readonly treatment: SealTreatment
  /** Whether it is a liquid gasket that must cure before it meets oil. */
  readonly mustCure: boolean
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
  /** The plug or cover that is removed to reach it; absent for a filter that is screwed on. */
  readonly behind?: OpeningLayout | CoverLayout
}

/** A way to empty a gearcase of this machine. */
export type EmptyingLayout =
  /** `also`: drain plugs that are opened as well. */
  | {
      readonly kind: 'drain plug' | 'suction'
      readonly opening: OpeningLayout
      readonly also: readonly OpeningLayout[]
    }
  | { readonly kind: 'cover'; readonly cover: CoverLayout }

export function getPartToOpen(way: EmptyingLayout): OpeningLayout | CoverLayout {
  return way.kind === 'cover' ? way.cover : way.opening
}

export interface GearcaseLayout extends PartLayout {
  readonly gearcase: Gearcase
  /** `[undefined]` for a gearcase without instances. */
  readonly instances: readonly (Id | undefined)[]
  /** The gearcase that owns the oil. */
  readonly owner: Id
  /** Only if the gearcase owns its oil. */
  readonly fill?: Fill
  readonly openings: readonly OpeningLayout[]
  readonly covers: readonly CoverLayout[]
  readonly filters: readonly FilterLayout[]
  readonly fillOpenings: readonly OpeningLayout[]
  readonly fillOpening?: OpeningLayout
  /** The fill opening and, if it is uncertain, the fill openings of other variants. */
  readonly possibleFillOpenings: readonly OpeningLayout[]
  readonly levelOpening?: OpeningLayout
  /** The first of `emptyingWays`. */
  readonly emptying?: EmptyingLayout
  /** Several ways if it is unknown which one this machine has. */
  readonly emptyingWays: readonly EmptyingLayout[]
  readonly additive: 'always' | 'for some oils' | 'never'
  /** Whether the manual adds the additive after the oil. */
  readonly oilFirst: boolean
  /** Whether the manual requires a wait between stopping and the level check. */
  readonly hasSettlingTime: boolean
  readonly supports: readonly Id[]
  /** Whether its supports lift only other axles, so that none of them may be used. */
  readonly areSupportsOnOtherAxle: boolean
  /** The shields that must be removed. */
  readonly shields: readonly Id[]
}

export interface ShieldLayout extends PartLayout {
  readonly shield: Shield
}

interface PartOfGearcase<Kind extends string> {
  readonly kind: Kind
  readonly gearcase: GearcaseLayout
}

interface SecuredItemPart {
  readonly kind: 'secured item'
  readonly item: SecuredItem
  readonly path: JsonPointer
}

/** The part that a pointer names. */
export type Part =
  | { readonly kind: 'support' | 'axle'; readonly id: Id }
  | SecuredItemPart
  | { readonly kind: 'shield'; readonly shield: ShieldLayout }
  | PartOfGearcase<'gearcase'>
  | (PartOfGearcase<'opening'> & { readonly opening: OpeningLayout })
  | (PartOfGearcase<'cover'> & { readonly cover: CoverLayout })
  | (PartOfGearcase<'filter'> & { readonly filter: FilterLayout })
  | (PartOfGearcase<'seal'> & { readonly opening: OpeningLayout; readonly seal: SealLayout })
  | (PartOfGearcase<'cover seal'> & { readonly cover: CoverLayout; readonly seal: SealLayout })
  | (PartOfGearcase<'filter seal'> & { readonly filter: FilterLayout; readonly seal: SealLayout })

/** The parts of one machine on its sheet, by the pointers that steps use. */
export interface IndexedSheet {
  readonly axles: readonly Id[]
  /** Whether the manual permits ramps under the wheels of an axle; absent: not stated. */
  readonly areRampsAllowed: ReadonlyMap<Id, boolean>
  readonly axleOfSupport: ReadonlyMap<Id, Id | undefined>
  readonly gearcases: ReadonlyMap<Id, GearcaseLayout>
  readonly shields: ReadonlyMap<Id, ShieldLayout>
  /** Every instance of every gearcase. */
  readonly instances: readonly GearcaseInstance[]
  /** The instances whose oil another gearcase owns. */
  readonly oilSharers: readonly GearcaseInstance[]
  readonly securedItems: readonly SecuredItemPart[]
  readonly parts: ReadonlyMap<JsonPointer, Part>
  /** Parts that this machine may or may not have, because a fact is missing. */
  readonly findings: readonly Finding<ProcedureCodes>[]
}

/** The mark of the wheel for this role of the opening, if it turns with a wheel. */
export function findWheelMark(opening: OpeningLayout, role: OpeningRole): WheelMark | undefined {
  return opening.opening.uses.find((use) => use.role === role)?.wheelMark
}

export function hasRole(opening: OpeningLayout, role: OpeningRole): boolean {
  return opening.opening.uses.some((use) => use.role === role)
}

/** The key of a part in the state: its pointer, and its instance if there is one. */
export function makeStateKey(path: JsonPointer, instance: Id | undefined): string {
  return instance === undefined ? path : `${path}@${instance}`
}

/** An instance of a gearcase. */
export interface GearcaseInstance {
  readonly gearcase: GearcaseLayout
  readonly instance: Id | undefined
}

export function makeInstanceKey({ gearcase, instance }: GearcaseInstance): string {
  return makeStateKey(gearcase.path, instance)
}

/** The instance that owns the oil of a gearcase. */
export function findOwner(
  indexedSheet: IndexedSheet,
  gearcase: GearcaseLayout,
  instance: Id | undefined,
): GearcaseInstance {
  const owner = indexedSheet.gearcases.get(gearcase.owner) ?? gearcase
  return { gearcase: owner, instance: owner.instances.includes(instance) ? instance : owner.instances[0] }
}

/** All gearcases that share this oil, the owner first. */
export function listOilSharers(
  indexedSheet: IndexedSheet,
  owner: GearcaseInstance,
): readonly GearcaseInstance[] {
  const others = indexedSheet.oilSharers.filter(
    ({ gearcase, instance }) =>
      gearcase.owner === owner.gearcase.id &&
      findOwner(indexedSheet, gearcase, instance).instance === owner.instance,
  )
  return [owner, ...others]
}

/** The names of a part on the sheet. */
export function readPartNames(part: Part | undefined): Pick<AtPart, 'part' | 'gearcase'> {
  if (part?.kind === 'shield') return { part: part.shield.shield.name }
  if (part?.kind === 'secured item') return { part: part.item.item }
  if (part === undefined || !('gearcase' in part)) return {}
  const gearcase = part.gearcase.gearcase.name
  if ('opening' in part) return { part: part.opening.opening.name, gearcase }
  if ('cover' in part) return { part: part.cover.cover.name, gearcase }
  if ('filter' in part) return { part: part.filter.filter.name, gearcase }
  return { gearcase }
}

/** The name of an instance on the sheet. */
export function readInstanceName(
  { gearcase }: GearcaseLayout,
  instance: Id | undefined,
): Pick<AtPart, 'instance'> {
  return instance === undefined ? {} : { instance: gearcase.instances?.[instance]?.name ?? instance }
}
