import { cleanText } from '../message/index.js'
import type { PartName } from '../service/index.js'
import { type CardContext, writePart } from './cardContext.js'
import type { CardBlanks, CardSection } from './cardParts.js'
import { capitalise } from './spans.js'

type BlankField = CardBlanks['fields'][number]

/** Blank lines and tick boxes for each field of the service record. */
export function buildRecordSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { blanks } = words
  const { hours, distance } = plan.readings
  const isChange = plan.work.some(({ task }) => task === 'change')
  const meterFields = [
    ...(hours === undefined ? [] : [{ label: blanks.hours }]),
    ...(distance === undefined ? [] : [{ label: blanks.distance }]),
  ]
  const gearcaseKeys = plan.work.map(({ part }) => `${part.path} ${part.instance?.id ?? ''}`)
  const changedKeys = new Set(gearcaseKeys.filter((_key, index) => plan.work[index]?.task === 'change'))
  const gearcaseBlanks = plan.work.flatMap(({ part }, index): CardBlanks[] => {
    const key = gearcaseKeys[index] ?? ''
    if (gearcaseKeys.indexOf(key) < index) return []
    const heading = capitalise(writePart(part, `/work/${index}/part`))
    return [{ kind: 'blanks', heading, fields: listGearcaseFields(context, part, changedKeys.has(key)) }]
  })
  const shieldFields = plan.tightenings
    .filter(({ part }) => part.path.startsWith('/shields/'))
    .map(({ part }) => ({ label: `${capitaliseFirst(writePartName(part))}, ${blanks.tightened}` }))
  const visitBlanks: CardBlanks = {
    kind: 'blanks',
    fields: [
      { label: blanks.date },
      { label: blanks.initials },
      ...meterFields,
      ...shieldFields,
      { label: blanks.workingTime },
      ...(isChange ? [{ label: blanks.usedOil }] : []),
    ],
  }
  const warrantyFacts = new Set(plan.warranty?.asks)
  const notes: CardBlanks = {
    kind: 'blanks',
    fields: [
      ...(warrantyFacts.has('photos') ? [{ label: blanks.photos }] : []),
      ...(warrantyFacts.has('wrench certificate') ? [{ label: blanks.certificate }] : []),
      ...(warrantyFacts.has('signature') ? [{ label: blanks.signature }] : []),
      { label: blanks.notes },
    ],
  }
  return { id: 'record', heading: words.sections.record, parts: [visitBlanks, ...gearcaseBlanks, notes] }
}

/** The fields for one gearcase, in the order of the work. */
function listGearcaseFields(
  { plan, words }: CardContext,
  gearcase: PartName,
  isChange: boolean,
): BlankField[] {
  const { blanks, choices } = words
  const warrantyFacts = new Set(plan.warranty?.asks)
  const isOnGearcase = ({ part }: { readonly part?: PartName }) => isOnPart(part, gearcase)
  const findSteps = (action: string) => plan.steps.filter((step) => step.do === action && isOnGearcase(step))
  const hasMagnet = findSteps('inspect the magnet').length > 0
  const foundFields: readonly BlankField[] = [
    { label: blanks.drained },
    { label: blanks.oilLooks, choices: choices.oil },
    ...(hasMagnet ? [{ label: blanks.magnet, choices: choices.magnet }] : []),
    ...findSteps('inspect the filter').map(({ part }) => ({
      label: `${blanks.filter}: ${part === undefined ? '' : writePartName(part)}`,
      choices: choices.filter,
    })),
    ...(findSteps('take an oil sample').length > 0 ? [{ label: blanks.sample }] : []),
  ]
  const oilFields: readonly BlankField[] = [
    { label: blanks.oil },
    ...(warrantyFacts.has('oil batch') ? [{ label: blanks.batch }] : []),
    { label: blanks.refilled },
  ]
  const listPartNames = (list: readonly { readonly part: PartName }[]) => [
    ...new Set(list.filter(isOnGearcase).map(({ part }) => writePartName(part))),
  ]
  return [
    ...(isChange ? foundFields : []),
    ...listPartNames(plan.seals).flatMap((name): readonly BlankField[] => [
      { label: `${capitaliseFirst(name)}, ${blanks.seals}`, choices: choices.seals },
      ...(warrantyFacts.has('part numbers')
        ? [{ label: `${capitaliseFirst(name)}, ${blanks.partNumber}` }]
        : []),
    ]),
    ...(isChange ? oilFields : []),
    ...listPartNames(plan.tightenings).map((name) => ({
      label: `${capitaliseFirst(name)}, ${blanks.tightened}`,
    })),
    { label: blanks.level, choices: choices.level },
    { label: blanks.leaks, choices: choices.leaks },
    { label: blanks.notDone },
  ]
}

const writePartName = ({ part, path }: PartName) => cleanText(part ?? path)

const capitaliseFirst = (name: string) => name.charAt(0).toUpperCase() + name.slice(1)

const isOnPart = (part: PartName | undefined, gearcase: PartName) =>
  part?.path.startsWith(`${gearcase.path}/`) === true &&
  (part.instance === undefined || part.instance.id === gearcase.instance?.id)
