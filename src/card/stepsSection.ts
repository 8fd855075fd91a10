import type { PlannedStep } from '../service/index.js'
import { type CardContext, cautionLines } from './cardContext.js'
import type { CardSection, CardStep, Line } from './cardParts.js'
import { capitalise, ownWords, quoteText } from './spans.js'
import { writeStep } from './writeStep.js'

/** The steps in order, with a heading before each group of steps on one gearcase. */
export function stepsSection(context: CardContext): CardSection {
  const { plan, words } = context
  const groups: { heading: Line; steps: CardStep[] }[] = []
  for (const [index, step] of plan.steps.entries()) {
    const before = plan.steps[index - 1]?.part?.gearcase ?? ''
    if (index === 0 || before !== (step.part?.gearcase ?? ''))
      groups.push({ heading: headingOf(context, step, index), steps: [] })
    groups.at(-1)?.steps.push(cardStep(context, step, index))
  }
  const parts = groups.length === 0 ? [] : [{ kind: 'steps' as const, groups }]
  return { id: 'steps', heading: words.sections.steps, parts }
}

function headingOf({ words }: CardContext, { part }: PlannedStep, index: number): Line {
  if (part?.gearcase !== undefined)
    return capitalise(quoteText(part.gearcase, `/steps/${index}/part/gearcase`))
  return ownWords(index === 0 ? words.labels.before : words.labels.machine)
}

function cardStep(context: CardContext, step: PlannedStep, index: number): CardStep {
  const { write } = writeStep(context, step, index, false)
  return {
    number: index + 1,
    cautions: cautionLines(context, step.cautions, `/steps/${index}/cautions`),
    full: write('full'),
    short: write('short'),
    ...(step.note !== undefined && { note: quoteText(step.note, `/steps/${index}/note`) }),
  }
}
