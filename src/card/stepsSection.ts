import type { PlannedStep } from '../service/index.js'
import { type CardContext, cautionLines } from './cardContext.js'
import type { CardSection, CardStep, CardSteps, Line } from './cardParts.js'
import { capitalised, ownWords, quoted } from './spans.js'
import { stepPieces } from './stepPieces.js'
import { weaveText } from './weaveText.js'

/** The steps in their order, under a heading for each stretch of work on one gearcase. */
export function stepsSection(context: CardContext): CardSection {
  const { plan, words } = context
  const groups: { key: string; heading: Line; steps: CardStep[] }[] = []
  for (const [index, step] of plan.steps.entries()) {
    const key = step.part?.gearcase ?? ''
    let group = groups.at(-1)
    if (group === undefined || group.key !== key) {
      group = { key, heading: headingOf(context, step, index, groups.length === 0), steps: [] }
      groups.push(group)
    }
    group.steps.push(cardStep(context, step, index))
  }
  const part: CardSteps = { kind: 'steps', groups: groups.map(({ heading, steps }) => ({ heading, steps })) }
  const parts = groups.length === 0 ? [] : [part]
  return { id: 'steps', heading: words.sections.steps, parts }
}

function headingOf({ words }: CardContext, step: PlannedStep, index: number, first: boolean): Line {
  if (step.part?.gearcase !== undefined)
    return capitalised(quoted(step.part.gearcase, `/steps/${index}/part/gearcase`))
  return ownWords(first ? words.labels.before : words.labels.machine)
}

function cardStep(context: CardContext, step: PlannedStep, index: number): CardStep {
  const text = context.catalogue.steps[step.do]
  const { pieces, choices } = stepPieces(context, step, index, 'under its heading')
  return {
    number: index + 1,
    cautions: cautionLines(context, step.cautions, `/steps/${index}/cautions`),
    full: capitalised(weaveText(pieces, (signs) => text.full({ ...signs, ...choices }))),
    short: capitalised(weaveText(pieces, (signs) => text.short({ ...signs, ...choices }))),
    ...(step.note !== undefined && { note: quoted(step.note, `/steps/${index}/note`) }),
  }
}
