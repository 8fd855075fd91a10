import type { LineText, StepParams } from '../message/index.js'
import type { PlannedStep, VisitPlan } from '../service/index.js'
import { type CardContext, writeReason } from './cardContext.js'
import type { Line } from './cardParts.js'
import { collectStepWords, type StepWords } from './collectStepWords.js'
import { insertSpans } from './insertSpans.js'
import { capitalise, joinLines, writeWords } from './spans.js'

type TextStep = StepParams & { readonly do: PlannedStep['do'] }

/** The steps of one line of the plan, and the function that writes its texts. */
export interface WrittenLine {
  readonly steps: readonly { readonly step: PlannedStep; readonly index: number }[]
  /** The pieces of the plan in each step. */
  readonly pieces: readonly StepWords['pieces'][]
  readonly writeText: (form: 'full' | 'short') => Line
  /** The camera shot of each step, in order. */
  readonly writeShots: () => readonly Line[]
}

/** The texts of a line. Steps with a joint text in the catalogue share it; each other step has its own. */
function writeTexts({ catalogue }: CardContext, steps: readonly TextStep[], form: 'full' | 'short') {
  const texts: string[] = []
  for (let stepIndex = 0; stepIndex < steps.length; ) {
    const jointText = findJointText(catalogue.lines, steps.slice(stepIndex), form)
    const step = steps[stepIndex]
    if (step !== undefined) texts.push(jointText?.text ?? catalogue.steps[step.do][form](step))
    stepIndex += jointText?.count ?? 1
  }
  return [...new Set(texts)]
}

/** The text that joins the most steps, starting with the first. */
function findJointText(lines: readonly LineText[], steps: readonly TextStep[], form: 'full' | 'short') {
  let longest: { readonly text: string; readonly count: number } | undefined
  for (const { actions, anyOrder, [form]: write } of lines) {
    const firstOther = steps.findIndex((step) => !actions.includes(step.do))
    const matches = actions.every((action, stepIndex) => action === steps[stepIndex]?.do)
    const count = anyOrder ? (firstOther === -1 ? steps.length : firstOther) : matches ? actions.length : 0
    if (count < 2 || count <= (longest?.count ?? 0)) continue
    const text = write(...steps.slice(0, count))
    if (text !== undefined) longest = { text, count }
  }
  return longest
}

/** Writes a line of the plan; `withGearcase` if no heading names the gearcase. */
export function writeLine(
  context: CardContext,
  line: VisitPlan['lines'][number],
  withGearcase: boolean,
): WrittenLine {
  const { plan, catalogue } = context
  const steps = line.steps.map((id) => {
    const index = plan.steps.findIndex((planStep) => planStep.id === id)
    const step = plan.steps[index]
    if (step === undefined) throw new RangeError(`plan.lines must contain ids of plan.steps, got ${id}`)
    if (!Object.hasOwn(catalogue.steps, step.do))
      throw new RangeError(`plan.steps[${index}].do must be an action with a text`)
    return { step, index }
  })
  const isOnSeveralGearcases = new Set(steps.map(({ step }) => step.part?.gearcase)).size > 1
  const words = steps.map(({ step, index }) =>
    collectStepWords(context, step, index, withGearcase || isOnSeveralGearcases),
  )
  const piecesByStep = Object.fromEntries(
    words.flatMap(({ pieces }, stepIndex) =>
      Object.entries(pieces).map(([name, piece]) => [`${stepIndex}.${name}`, piece] as const),
    ),
  )
  const buildStepParams = (placeholderOf: Readonly<Partial<Record<string, string>>>) =>
    steps.map(({ step }, stepIndex): TextStep => {
      const { pieces = {}, choices = {} } = words[stepIndex] ?? {}
      const placeholders = Object.keys(pieces).flatMap((name) => {
        const placeholder = placeholderOf[`${stepIndex}.${name}`]
        return placeholder === undefined ? [] : [[name, placeholder] as const]
      })
      const isOther = step.part?.part !== undefined && !`${step.part.path}/`.startsWith(`${line.on}/`)
      return { do: step.do, ...Object.fromEntries(placeholders), ...choices, ...(isOther && { isOther }) }
    })
  const [first] = steps
  const conditionLine =
    first?.step.onlyIf === undefined
      ? []
      : [...writeReason(context, first.step.onlyIf, `/steps/${first.index}/onlyIf`), ...writeWords(': ')]
  return {
    steps,
    pieces: words.map(({ pieces }) => pieces),
    writeText: (form) => [
      ...conditionLine,
      ...joinLines(
        insertSpans(piecesByStep, (placeholderOf) =>
          writeTexts(context, buildStepParams(placeholderOf), form),
        ).map(capitalise),
        form === 'short' ? ' · ' : ' ',
      ),
    ],
    writeShots: () =>
      insertSpans(piecesByStep, (placeholderOf) =>
        buildStepParams(placeholderOf).map((step) => catalogue.steps[step.do].show(step)),
      ),
  }
}
