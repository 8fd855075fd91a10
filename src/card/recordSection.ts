import { cleanText } from '../message/index.js'
import type { PartName } from '../service/index.js'
import { type CardContext, partLine } from './cardContext.js'
import type { CardBlanks, CardSection } from './cardParts.js'
import { capitalise } from './spans.js'

type Field = CardBlanks['fields'][number]

/** Blank lines and choices for every field of a service record that this visit can fill. */
export function recordSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { blanks } = words
  const { hours, distance } = plan.readings
  const isChange = plan.work.some(({ task }) => task === 'change')
  const meters = [
    ...(hours === undefined ? [] : [{ label: blanks.hours }]),
    ...(distance === undefined ? [] : [{ label: blanks.distance }]),
  ]
  const keys = plan.work.map(({ part }) => `${part.path} ${part.instance?.id ?? ''}`)
  const changed = new Set(keys.filter((_key, index) => plan.work[index]?.task === 'change'))
  const gearcases = plan.work.flatMap(({ part }, index): CardBlanks[] => {
    const key = keys[index] ?? ''
    if (keys.indexOf(key) < index) return []
    const heading = capitalise(partLine(part, `/work/${index}/part`))
    return [{ kind: 'blanks', heading, fields: gearcaseFields(context, part, changed.has(key)) }]
  })
  const shields = plan.tightenings
    .filter(({ part }) => part.path.startsWith('/shields/'))
    .map(({ part }) => ({ label: `${capitaliseText(nameOf(part))}, ${blanks.tightened}` }))
  const visitBlanks: CardBlanks = {
    kind: 'blanks',
    fields: [
      { label: blanks.date },
      { label: blanks.initials },
      ...meters,
      ...shields,
      { label: blanks.workingTime },
      ...(isChange ? [{ label: blanks.usedOil }] : []),
    ],
  }
  const notes: CardBlanks = { kind: 'blanks', fields: [{ label: blanks.notes }] }
  return { id: 'record', heading: words.sections.record, parts: [visitBlanks, ...gearcases, notes] }
}

/** The fields of one entry, in the order of the work. */
function gearcaseFields({ plan, words }: CardContext, gearcase: PartName, isChange: boolean): Field[] {
  const { blanks, choices } = words
  const isHere = ({ part }: { readonly part?: PartName }) => isOnPart(part, gearcase)
  const stepsOf = (action: string) => plan.steps.filter((step) => step.do === action && isHere(step))
  const magnet = stepsOf('inspect the magnet').length > 0
  const change: readonly Field[] = [
    { label: blanks.drained },
    { label: blanks.oilLooks, choices: choices.oil },
    ...(magnet ? [{ label: blanks.magnet, choices: choices.magnet }] : []),
    ...stepsOf('inspect the filter').map(({ part }) => ({
      label: `${blanks.filter}: ${part === undefined ? '' : nameOf(part)}`,
      choices: choices.filter,
    })),
    ...(stepsOf('take an oil sample').length > 0 ? [{ label: blanks.sample }] : []),
    { label: blanks.oil },
    { label: blanks.refilled },
  ]
  const names = (list: readonly { readonly part: PartName }[]) => [
    ...new Set(list.filter(isHere).map(({ part }) => nameOf(part))),
  ]
  return [
    ...(isChange ? change : []),
    ...names(plan.tightenings).map((name) => ({ label: `${capitaliseText(name)}, ${blanks.tightened}` })),
    ...names(plan.seals).map((name) => ({
      label: `${capitaliseText(name)}, ${blanks.seals}`,
      choices: choices.seals,
    })),
    { label: blanks.level, choices: choices.level },
    { label: blanks.leaks, choices: choices.leaks },
    { label: blanks.notDone },
  ]
}

const nameOf = ({ part, path }: PartName) => cleanText(part ?? path)

const capitaliseText = (name: string) => name.charAt(0).toUpperCase() + name.slice(1)

const isOnPart = (part: PartName | undefined, gearcase: PartName) =>
  part?.path.startsWith(`${gearcase.path}/`) === true &&
  (part.instance === undefined || part.instance.id === gearcase.instance?.id)
