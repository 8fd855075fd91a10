import type { CardContext } from './cardContext.js'
import { partLine } from './cardContext.js'
import type { CardBlanks, CardSection } from './cardParts.js'
import { capitalised } from './spans.js'

/** Blank lines for the date, the initials, the meters, and what came out of and went into each gearcase. */
export function recordSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { blanks, choices } = words
  const seen = new Set<string>()
  const parts: CardBlanks[] = [
    {
      kind: 'blanks',
      fields: [
        { label: blanks.date },
        { label: blanks.initials },
        ...(plan.readings.hours === undefined ? [] : [{ label: blanks.hours }]),
        ...(plan.readings.distance === undefined ? [] : [{ label: blanks.distance }]),
      ],
    },
  ]
  for (const [index, work] of plan.work.entries()) {
    const key = `${work.part.path} ${work.part.instance?.id ?? ''}`
    if (seen.has(key)) continue
    seen.add(key)
    const change = plan.work.some(
      ({ part, task }) => task === 'change' && `${part.path} ${part.instance?.id ?? ''}` === key,
    )
    const level = { label: blanks.level, choices: choices.level }
    const fields = change
      ? [
          { label: blanks.drained },
          { label: blanks.oilLooks, choices: choices.oil },
          { label: blanks.magnet, choices: choices.magnet },
          { label: blanks.refilled },
          { label: blanks.leaks, choices: choices.leaks },
        ]
      : [level, { label: blanks.leaks, choices: choices.leaks }]
    parts.push({
      kind: 'blanks',
      heading: capitalised(partLine(work.part, `/work/${index}/part`, 'with gearcase')),
      fields,
    })
  }
  parts.push({ kind: 'blanks', fields: [{ label: blanks.notes }] })
  return { id: 'record', heading: words.sections.record, parts }
}
