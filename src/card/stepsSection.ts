import type { VisitPlan } from '../service/index.js'
import { type CardContext, cautionLines } from './cardContext.js'
import type { CardSection, CardStep, Line } from './cardParts.js'
import { capitalise, joinLines, ownWords, quoteOptional, quoteText } from './spans.js'
import { type WrittenLine, writeLine } from './writeLine.js'

/** The lines in order, with a heading before each group of lines on one gearcase. */
export function stepsSection(context: CardContext): CardSection {
  const { plan, words } = context
  const groups: { readonly gearcase: string; readonly heading: Line; readonly steps: CardStep[] }[] = []
  for (const [index, line] of plan.lines.entries()) {
    const written = writeLine(context, line, false)
    const gearcase = gearcaseOf(written)
    if (groups.at(-1)?.gearcase !== gearcase)
      groups.push({ gearcase, heading: headingOf(context, written, gearcase, index), steps: [] })
    groups.at(-1)?.steps.push(cardStep(context, line, written, index))
  }
  const parts = groups.length === 0 ? [] : [{ kind: 'steps' as const, groups }]
  return { id: 'steps', heading: words.sections.steps, parts }
}

/** The gearcase of all steps; empty if they are on the machine, or on several gearcases. */
function gearcaseOf({ steps }: WrittenLine): string {
  const [gearcase = '', ...others] = new Set(steps.map(({ step }) => step.part?.gearcase ?? ''))
  return others.length > 0 ? '' : gearcase
}

function headingOf({ words }: CardContext, { steps }: WrittenLine, gearcase: string, index: number): Line {
  if (gearcase !== '') return capitalise(quoteText(gearcase, `/steps/${steps[0]?.index}/part/gearcase`))
  return ownWords(index === 0 ? words.labels.before : words.labels.machine)
}

function cardStep(
  context: CardContext,
  { steps: ids }: VisitPlan['lines'][number],
  { steps, write }: WrittenLine,
  index: number,
): CardStep {
  const note = joinLines(
    steps.map(({ step, index: place }) => quoteOptional(step.note, `/steps/${place}/note`)),
    ' ',
  )
  return {
    number: index + 1,
    steps: ids,
    cautions: steps.flatMap(({ step, index: place }) =>
      cautionLines(context, step.cautions, `/steps/${place}/cautions`),
    ),
    full: write('full'),
    short: write('short'),
    ...(note.length > 0 && { note }),
  }
}
