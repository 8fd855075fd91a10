import type { LineText, StepParams } from '../message/index.js'
import type { PlannedStep, VisitPlan } from '../service/index.js'
import { type CardContext, reasonLine } from './cardContext.js'
import type { Line } from './cardParts.js'
import { collectStepWords, type StepWords } from './collectStepWords.js'
import { insertSpans } from './insertSpans.js'
import { capitalise, joinLines, ownWords } from './spans.js'

type StepOfText = StepParams & { readonly do: PlannedStep['do'] }

/** A line of the plan with its steps, and the function that writes its texts. */
export interface WrittenLine {
  readonly steps: readonly { readonly step: PlannedStep; readonly index: number }[]
  /** The pieces of the plan in each step. */
  readonly pieces: readonly StepWords['pieces'][]
  readonly write: (text: 'full' | 'short' | 'show') => Line
}

/** The texts of a line: of steps that the catalogue has one text for, that one; of the others, each its own. */
function writeTexts(
  { catalogue }: CardContext,
  steps: readonly StepOfText[],
  name: 'full' | 'short' | 'show',
) {
  const texts: string[] = []
  for (let place = 0; place < steps.length; ) {
    const joined = name === 'show' ? undefined : findText(catalogue.lines, steps.slice(place), name)
    const step = steps[place]
    if (step !== undefined) texts.push(joined?.text ?? catalogue.steps[step.do][name](step))
    place += joined?.count ?? 1
  }
  return [...new Set(texts)]
}

/** The text that joins most of these steps from the first. */
function findText(lines: readonly LineText[], steps: readonly StepOfText[], name: 'full' | 'short') {
  let best: { readonly text: string; readonly count: number } | undefined
  for (const { joins, many, [name]: write } of lines) {
    const other = steps.findIndex((step) => !joins.includes(step.do))
    const isMet = joins.every((action, place) => action === steps[place]?.do)
    const count = many ? (other === -1 ? steps.length : other) : isMet ? joins.length : 0
    if (count < 2 || count <= (best?.count ?? 0)) continue
    const text = write(...steps.slice(0, count))
    if (text !== undefined) best = { text, count }
  }
  return best
}

/** Writes a line of the plan; `withGearcase` if no heading names the gearcase. */
export function writeLine(
  context: CardContext,
  line: VisitPlan['lines'][number],
  withGearcase: boolean,
): WrittenLine {
  const { plan, catalogue } = context
  const steps = line.steps.map((id) => {
    const index = plan.steps.findIndex((one) => one.id === id)
    const step = plan.steps[index]
    if (step === undefined) throw new RangeError(`plan.lines must be of steps of the plan, got ${id}`)
    if (!Object.hasOwn(catalogue.steps, step.do))
      throw new RangeError(`plan.steps[${index}].do must be an action that has a text`)
    return { step, index }
  })
  const isRound = new Set(steps.map(({ step }) => step.part?.gearcase)).size > 1
  const words = steps.map(({ step, index }) =>
    collectStepWords(context, step, index, withGearcase || isRound),
  )
  const allPieces = Object.fromEntries(
    words.flatMap(({ pieces }, place) =>
      Object.entries(pieces).map(([name, piece]) => [`${place}.${name}`, piece] as const),
    ),
  )
  const paramsOf = (signs: Readonly<Partial<Record<string, string>>>) =>
    steps.map(({ step }, place): StepOfText => {
      const { pieces = {}, choices = {} } = words[place] ?? {}
      const own = Object.keys(pieces).flatMap((name) => {
        const sign = signs[`${place}.${name}`]
        return sign === undefined ? [] : [[name, sign] as const]
      })
      const isOther = step.part?.part !== undefined && !`${step.part.path}/`.startsWith(`${line.on}/`)
      return { do: step.do, ...Object.fromEntries(own), ...choices, ...(isOther && { isOther }) }
    })
  const [first] = steps
  const condition =
    first?.step.onlyIf === undefined
      ? []
      : [...reasonLine(context, first.step.onlyIf, `/steps/${first.index}/onlyIf`), ...ownWords(': ')]
  return {
    steps,
    pieces: words.map(({ pieces }) => pieces),
    write: (name) => [
      ...(name === 'show' ? [] : condition),
      ...joinLines(
        insertSpans(allPieces, (signs) => writeTexts(context, paramsOf(signs), name)).map(capitalise),
        name === 'short' ? ' · ' : ' ',
      ),
    ],
  }
}
