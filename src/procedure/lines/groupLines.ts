import type { JsonPointer } from '../../base/index.js'
import type { Action, Id } from '../../spec/index.js'
import { LINE_TABLE, type LineKind, type LineSlot } from './lineTable.js'

/** The facts of a step that decide its line. */
export interface LineStep {
  readonly id: Id
  readonly do: Action
  readonly on?: JsonPointer
  readonly instance?: Id
  /** The condition of the step as a string; absent: always done. */
  readonly condition?: string
}

/** Steps that are done together and read as one line. */
export interface ProcedureLine {
  readonly kind: LineKind
  /** Ids of its steps, in order. */
  readonly steps: readonly Id[]
  /** The part that is worked on; if absent, the gearcase or the machine. */
  readonly on?: JsonPointer
}

/** The opening, cover or filter of a step, or of the seal that it is on. */
const findPart = (on = ''): string | undefined =>
  /^\/(gearcases\/[^/]+\/(openings|covers|filters)|shields|machine\/supports)\/[^/]+/.exec(on)?.[0]

const findGearcase = ({ on, instance }: LineStep): string | undefined => {
  const gearcase = /^\/gearcases\/[^/]+/.exec(on ?? '')?.[0]
  return gearcase && `${gearcase} ${instance ?? ''}`
}

const matchesLine = (ownPart: string | undefined, linePart: string | undefined) =>
  ownPart === undefined || linePart === undefined || ownPart === linePart

/** The number of steps from `start` that fit into one line with these slots. */
function countJoined(steps: readonly LineStep[], start: number, slots: readonly LineSlot[]): number {
  let firstSlot = 0
  let part: string | undefined
  let gearcase: string | undefined
  for (let place = start; ; place += 1) {
    const step = steps[place]
    if (step === undefined || step.condition !== steps[start]?.condition) return place - start
    const [ownPart, ownGearcase] = [findPart(step.on), findGearcase(step)]
    const isSamePart = matchesLine(ownPart, part) && matchesLine(ownGearcase, gearcase)
    const slotIndex = slots.findIndex(
      ({ of, isOnAnyPart }, index) =>
        index >= firstSlot && of.includes(step.do) && (isSamePart || isOnAnyPart),
    )
    const slot = slots[slotIndex]
    if (slot === undefined) return place - start
    firstSlot = slot.isRepeatable ? slotIndex : slotIndex + 1
    if (slot.isOnAnyPart) continue
    part ??= ownPart
    gearcase ??= ownGearcase
  }
}

/**
 * Joins the steps of a procedure into lines for people, by {@link LINE_TABLE}: each line is the longest that
 * the table allows. The order of the steps is kept; steps in an unusual order give shorter lines.
 */
export function groupLines(steps: readonly LineStep[]): readonly ProcedureLine[] {
  const lines: ProcedureLine[] = []
  for (let start = 0; start < steps.length; ) {
    const counts = LINE_TABLE.map(({ slots }) => countJoined(steps, start, slots))
    const count = Math.max(1, ...counts)
    const kind = LINE_TABLE[counts.indexOf(count)]?.kind
    if (kind === undefined) throw new RangeError(`no line has the action ${steps[start]?.do}`)
    const joinedSteps = steps.slice(start, start + count)
    const on = joinedSteps.map((step) => findPart(step.on)).find((candidate) => candidate !== undefined)
    lines.push({ kind, steps: joinedSteps.map(({ id }) => id), ...(on !== undefined && { on }) })
    start += count
  }
  return lines
}
