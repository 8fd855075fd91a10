import type { Figure, Measure, TorqueUnit, Unit, VolumeUnit } from '../quantity/unit.js'
import type { OpeningRole } from '../spec/index.js'
import type { ReferredPart } from './walk/sheetReferences.js'

/** A quantity as params carry it: plain data with open keys, which an interface is not. */
type Amount<U extends Unit> = { readonly value: number; readonly unit: U }

/** Every code of this room's rules with the type of its params; the texts stand in `message/<language>/rules`. */
export interface RuleCodes {
  // spec: sheets, and what refers to them
  'spec/condition-empty': { holds: 'always' | 'never' }
  'spec/dangling-reference': {
    to: ReferredPart
    id: string
    known: readonly string[]
    meant: string | undefined
  }
  'spec/id-used-twice': { kind: string; id: string }
  'spec/instances-without-per': { gearcase: string; count: number }
  'spec/interval-empty': Record<never, never>
  'spec/limits-empty': { unit: Unit }
  'spec/limits-reversed': { min: Figure; max: Figure; unit: Unit }
  'spec/model-years-reversed': { from: number; to: number }
  'spec/no-fill-opening': { gearcase: string }
  'spec/no-way-to-empty': { gearcase: string }
  'spec/oil-space-chain': { gearcase: string; with: string }
  'spec/opening-lacks-role': { opening: string; role: OpeningRole; use: string }
  'spec/overlapping-overrides': { target: string; with: readonly string[] }
  'spec/override-of-other-kind': { target: string; kind: string; there: string }
  'spec/override-target-missing': { target: string }
  'spec/period-as-hours': { hours: Figure; months: number }
  'spec/serial-range-wrong': {
    what: 'prefix repeated' | 'not a number' | 'different widths' | 'ends before it starts'
    prefix?: string
    from?: string
    to?: string
  }
  'spec/sheet-not-found': { id: string; known: readonly string[]; meant: string | undefined }
  'spec/sheet-of-other-revision': { id: string; revision: string; known: readonly string[] }
  'spec/tolerance-too-large': { value: Figure; minus: Figure; plus: Figure; unit: Unit }
  'spec/unit-of-other-measure': { unit: Unit; measure: Measure; wanted: Measure }
  'spec/unknown-variant': { id: string; known: readonly string[]; meant: string | undefined }
  'spec/variants-overlap': { variant: string; with: readonly string[] }
  'spec/waiver-without-finding': { code: string; waived: string }
  // log
  'log/date-in-the-future': { date: string; today: string }
  'log/pause-reversed': { from: string; to: string }
  'log/record-of-other-machine': { machine: string; log: string; record: string }
  'log/unknown-part': { id: string; known: readonly string[]; meant: string | undefined }
  'log/used-before-commissioned': { date: string; commissioned: string }
  'log/variant-contradicted': { variant: string | undefined; candidates: readonly string[] }
  // toolbox and stock
  'toolbox/scale-wrong': {
    wrench: string
    lowest: number
    highest: number
    graduation: number
    unit: TorqueUnit
  }
  'toolbox/scales-disagree': { wrench: string; first: Amount<TorqueUnit>; other: Amount<TorqueUnit> }
  'toolbox/vessel-graduation': {
    vessel: string
    size: Amount<VolumeUnit>
    mark: Amount<VolumeUnit> | undefined
  }
  'stock/opened-larger-than-size': {
    container: string
    opened: Amount<VolumeUnit>
    size: Amount<VolumeUnit>
  }
  'stock/viscosities-swapped': { container: string; kv40: Amount<'mm2/s'>; kv100: Amount<'mm2/s'> }
}
