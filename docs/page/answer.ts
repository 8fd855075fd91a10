import { summariseVisit } from '../../src/card/summariseVisit.js'
import { type CardModel, wallModel } from '../../src/v1/card.js'
import type { DueOptions } from '../../src/v1/interval.js'
import { type Catalogue, explain } from '../../src/v1/message.js'
import { formatQuantity, type PrintedBand, secondUnit, type Unit } from '../../src/v1/quantity.js'
import { listDue, openFaults, type PlannedFigure, planVisit, wallFacts } from '../../src/v1/service.js'
import type { MachineLog, SpecSheet, Toolbox } from '../../src/v1/spec.js'

/** What the page answers from. */
export interface Question {
  readonly sheet: SpecSheet
  readonly log?: MachineLog
  readonly toolbox?: Toolbox
  /** `YYYY-MM-DD` */
  readonly today: string
  /** In °C. */
  readonly ambient?: number
}

/** The units in which a person reads figures; the manual's own come first in every case. */
export type UnitChoice = 'printed' | 'metric' | 'US'

export interface DueAnswer {
  readonly state: string
  readonly verdict: 'overdue' | 'due' | 'due soon' | 'not due' | 'cannot tell'
  readonly service: string
  readonly reasons: readonly string[]
}

export interface FigureAnswer {
  readonly part: string
  readonly printed: string
  /** The same figure in the chosen unit, and whether the manual prints it or the page converts it. */
  readonly other?: { readonly text: string; readonly isConverted: boolean }
}

/** The defaults of the command line. */
const DUE: DueOptions = {
  soon: { hours: 10, distance: { value: 100, unit: 'km' }, days: 14 },
  staleAfter: { days: 30 },
  severity: 'normal',
}
const ISO6789 = '2017'

/** Whether the log is about this revision of this sheet. */
export const isLogOfSheet = ({ sheet, log }: Question): boolean =>
  log !== undefined && log.sheet.id === sheet.id && log.sheet.revision === sheet.revision

/** Every service of the machine, the most urgent first. */
export function answerDue({ sheet, log, today }: Question, catalogue: Catalogue): readonly DueAnswer[] {
  if (log === undefined) return []
  const ranks: readonly DueAnswer['verdict'][] = ['overdue', 'due', 'due soon', 'cannot tell', 'not due']
  return listDue({ sheet, log, today }, { ...DUE, severity: log.use ?? DUE.severity })
    .map(({ verdict, serviceName, part, reasons }) => ({
      state: catalogue.card.dueStates[verdict],
      verdict,
      service: [serviceName, part.gearcase, part.instance?.name].filter(Boolean).join(', '),
      reasons: explain({ reasons }, catalogue),
    }))
    .sort((first, second) => ranks.indexOf(first.verdict) - ranks.indexOf(second.verdict))
}

/** The lines of the command `plan`; empty if no visit can be planned. */
export function answerVisit(question: Question, catalogue: Catalogue): readonly string[] {
  const { sheet, log, toolbox, today, ambient } = question
  if (log === undefined) return []
  const set = { sheets: [{ document: sheet }], logs: [{ document: log }] }
  const faults = openFaults(
    { document: log },
    { ...set, toolboxes: [], stocks: [], procedures: [], records: [] },
    { today },
  )
  const planned = planVisit(
    {
      sheet,
      log,
      today,
      faults,
      ...(toolbox && { toolbox }),
      ...(ambient !== undefined && { ambient: { value: ambient, unit: 'degC' } }),
    },
    { services: 'due', due: { ...DUE, severity: log.use ?? DUE.severity }, iso6789: ISO6789 },
  )
  return planned.ok ? summariseVisit(planned, catalogue) : []
}

/** The wall card of the machine of the log, else of the only variant; with the figures that it shows. */
export function answerWall(
  { sheet, log, toolbox }: Question,
  catalogue: Catalogue,
): { readonly card: CardModel; readonly figures: readonly PlannedFigure[] } | undefined {
  const [variant, ...others] = Object.keys(sheet.machine.variants)
  const identity = log?.identity ?? (variant !== undefined && others.length === 0 ? { variant } : {})
  const facts = wallFacts({ sheet, identity, ...(toolbox && { toolbox }) }, { iso6789: ISO6789 })
  return facts.ok ? { card: wallModel(facts.value, catalogue), figures: facts.value.figures } : undefined
}

/** The units of each choice by measure; the first is the one to convert to. */
const UNITS: readonly { readonly [Choice in Exclude<UnitChoice, 'printed'>]: readonly [Unit, ...Unit[]] }[] =
  [
    { metric: ['N.m'], US: ['lbf.ft', 'lbf.in'] },
    { metric: ['L', 'mL', 'cm3'], US: ['qt_us', 'pt_us', 'fl_oz_us', 'gal_us'] },
    { metric: ['degC'], US: ['degF'] },
  ]
const SHOWN_ROLES: readonly PlannedFigure['role'][] = ['refill', 'tightening', 'drain temperature']

type Printed = PrintedBand & { readonly printed?: readonly PrintedBand[] }

/** Refills, torques and drain temperatures as the manual prints them, and in the chosen units. */
export function answerFigures(
  figures: readonly PlannedFigure[],
  units: UnitChoice,
  catalogue: Catalogue,
): readonly FigureAnswer[] {
  return figures.flatMap(({ role, part, resolved }) => {
    if (!SHOWN_ROLES.includes(role) || resolved.kind !== 'stated') return []
    const value = resolved.value as { readonly torque?: Printed } | Printed
    const band = 'torque' in value && value.torque !== undefined ? value.torque : (value as Printed)
    if (!('unit' in band)) return []
    const write = (one: PrintedBand): string => formatQuantity(one, catalogue.marks)
    const names = [part.gearcase, part.instance?.name, part.part].filter((name) => name !== undefined)
    const other = units === 'printed' ? undefined : chooseOther(band, units)
    return [
      {
        part: [...new Set(names), catalogue.card.roles[role]].join(', '),
        printed: [band, ...(band.printed ?? [])].map(write).join(' · '),
        ...(other && { other: { text: write(other.band), isConverted: other.isConverted } }),
      },
    ]
  })
}

/** The manual's own figure in the chosen units, or else the converted one, which is inside the manual's band. */
function chooseOther(
  band: Printed,
  units: Exclude<UnitChoice, 'printed'>,
): { readonly band: PrintedBand; readonly isConverted: boolean } | undefined {
  const row = UNITS.find(({ metric, US }) => [...metric, ...US].includes(band.unit))
  if (row === undefined) return undefined
  const printed = [band, ...(band.printed ?? [])].find(({ unit }) => row[units].includes(unit))
  if (printed !== undefined) return { band: printed, isConverted: false }
  const converted = secondUnit(band, row[units][0])
  return converted === null ? undefined : { band: converted, isConverted: true }
}
