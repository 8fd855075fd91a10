import { type CardContext, quantityLine, reasonLine } from './cardContext.js'
import type { CardSection, Line } from './cardParts.js'
import { ownWords } from './spans.js'

/** The leak check and the used oil. */
export function afterSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { usedOil } = plan
  if (plan.steps.length === 0) return { id: 'after', heading: words.sections.after, parts: [] }
  const volume: Line[] =
    usedOil.volume === undefined
      ? []
      : [
          [
            ...ownWords(`${words.labels.usedOil}: `),
            ...quantityLine(context, usedOil.volume, '/usedOil/volume', 'computed'),
          ],
        ]
  const lines = [
    ...words.leakAdvice.map(ownWords),
    ...volume,
    ...usedOil.reasons.flatMap((reason, index) =>
      reason.code === 'service/used-oil' ? [] : [reasonLine(context, reason, `/usedOil/reasons/${index}`)],
    ),
  ]
  const items = lines.map((line) => ({ line, notes: [] }))
  return { id: 'after', heading: words.sections.after, parts: [{ kind: 'list', box: true, items }] }
}
