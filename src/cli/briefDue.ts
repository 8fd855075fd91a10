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
    // Hot path: no spread.
    const row: MutableRow = { machine, service, gearcase }
    if (part.instance !== undefined) row.instance = part.instance.id
    row.verdict = verdict
    if (dueBy !== undefined) row.dueBy = dueBy
    const left = lines.find(({ by }) => by === dueBy)?.left
    if (left !== undefined) row.left = left
    if (dueOn !== undefined) row.dueOn = dueOn
    if (faults > 0) row.faults = faults
    return row as BriefDue
  })
}

/** A row that is not yet complete. */
type MutableRow = { -readonly [Key in keyof BriefDue]?: BriefDue[Key] }

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

/** The rows as JSON Lines. Hot path: no field has a character that JSON escapes, since ids are parsed. */
export function writeBriefLines(rows: readonly BriefDue[]): string {
  let text = ''
  for (const { machine, service, gearcase, instance, verdict, dueBy, left, dueOn, faults } of rows) {
    text += `{"machine":"${machine}","service":"${service}","gearcase":"${gearcase}"`
    if (instance !== undefined) text += `,"instance":"${instance}"`
    text += `,"verdict":"${verdict}"`
    if (dueBy !== undefined) text += `,"dueBy":"${dueBy}"`
    if (left !== undefined) text += `,"left":{"value":${left.value},"unit":"${left.unit}"}`
    if (dueOn !== undefined) text += `,"dueOn":"${dueOn}"`
    if (faults !== undefined) text += `,"faults":${faults}`
    text += '}\n'
  }
  return text
}

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
