import { writeCsv } from '../exchange/index.js'
import type { DueLimit, DueLine, DueState } from '../interval/index.js'
import type { ServiceDue } from '../service/index.js'
import type { Id } from '../spec/index.js'

/** One service of one machine: what a list or a spreadsheet shows. */
export interface BriefDue {
  readonly machine: Id
  readonly service: Id
  readonly gearcase: Id
  readonly instance?: Id
  readonly verdict: DueState
  /** The limit that comes first, and what is left of it; negative if it is passed. */
  readonly dueBy?: DueLimit
  readonly left?: DueLine['left']
  readonly dueOn?: string
  /** The number of open faults: the machine must not be used. */
  readonly faults?: number
}

/** One short row for each service of a machine. */
export function listBriefDue(machine: Id, due: readonly ServiceDue[], faults = 0): readonly BriefDue[] {
  return due.map(({ service, gearcase, part, verdict, dueBy, dueOn, lines }) => {
    const left = lines.find(({ by }) => by === dueBy)?.left
    return {
      machine,
      service,
      gearcase,
      ...(part.instance && { instance: part.instance.id }),
      verdict,
      ...(dueBy && { dueBy }),
      ...(left && { left }),
      ...(dueOn && { dueOn }),
      ...(faults > 0 && { faults }),
    }
  })
}

const COLUMNS = [
  'machine',
  'service',
  'gearcase',
  'instance',
  'verdict',
  'due_by',
  'left',
  'left_unit',
  'due_on',
  'faults',
]

/** The rows as JSON Lines. */
export const writeBriefLines = (rows: readonly BriefDue[]): string =>
  rows.map((row) => `${JSON.stringify(row)}\n`).join('')

/** The head of the table of {@link writeBriefRows}. */
export const writeBriefHead = (): string => writeCsv([COLUMNS])

/** The rows as a table for a spreadsheet. */
export function writeBriefRows(rows: readonly BriefDue[]): string {
  return writeCsv(
    rows.map(({ machine, service, gearcase, instance, verdict, dueBy, left, dueOn, faults }) => [
      machine,
      service,
      gearcase,
      instance,
      verdict,
      dueBy,
      left?.value,
      left?.unit,
      dueOn,
      faults,
    ]),
  )
}
