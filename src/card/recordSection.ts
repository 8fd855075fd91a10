import type { PartName } from '../service/index.js'
import { type CardContext, partLine } from './cardContext.js'
import type { CardBlanks, CardSection } from './cardParts.js'
import { capitalise } from './spans.js'

/** Blank lines for the date, initials, meters, and the oil that was drained from and filled into each gearcase. */
export function recordSection({ plan, words }: CardContext): CardSection {
  const { blanks, choices } = words
  const { hours, distance } = plan.readings
  const meters = [
    ...(hours === undefined ? [] : [{ label: blanks.hours }]),
    ...(distance === undefined ? [] : [{ label: blanks.distance }]),
  ]
  const keys = plan.work.map(({ part }) => `${part.path} ${part.instance?.id ?? ''}`)
  const changed = new Set(keys.filter((_key, index) => plan.work[index]?.task === 'change'))
  const leaks = { label: blanks.leaks, choices: choices.leaks }
  const change = [
    { label: blanks.drained },
    { label: blanks.oilLooks, choices: choices.oil },
    { label: blanks.magnet, choices: choices.magnet },
  ]
  const check = [{ label: blanks.level, choices: choices.level }, leaks]
  const gearcases = plan.work.flatMap(({ part }, index): CardBlanks[] => {
    const key = keys[index] ?? ''
    if (keys.indexOf(key) < index) return []
    const heading = capitalise(partLine(part, `/work/${index}/part`))
    if (!changed.has(key)) return [{ kind: 'blanks', heading, fields: check }]
    const filters = plan.steps
      .filter((step) => step.do === 'inspect the filter' && isOnPart(step.part, part))
      .map((step) => ({ label: `${blanks.filter}: ${step.part?.part}`, choices: choices.filter }))
    return [{ kind: 'blanks', heading, fields: [...change, ...filters, { label: blanks.refilled }, leaks] }]
  })
  const visitBlanks: CardBlanks = {
    kind: 'blanks',
    fields: [{ label: blanks.date }, { label: blanks.initials }, ...meters],
  }
  const notes: CardBlanks = { kind: 'blanks', fields: [{ label: blanks.notes }] }
  return { id: 'record', heading: words.sections.record, parts: [visitBlanks, ...gearcases, notes] }
}

const isOnPart = (filter: PartName | undefined, gearcase: PartName) =>
  filter?.path.startsWith(`${gearcase.path}/`) === true && filter.instance?.id === gearcase.instance?.id
