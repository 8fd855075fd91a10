import type { Finding } from '../base/index.js'
import { renderMessage } from '../message/index.js'
import type { PlannedMissing } from '../service/index.js'
import { type CardContext, reasonLine } from './cardContext.js'
import type { CardList, CardSection, Line } from './cardParts.js'
import { capitalised, joined, ownWords, quoted } from './spans.js'

function missingLine(context: CardContext, missing: PlannedMissing, index: number): Line {
  const from = `/missing/${index}`
  const kind = quoted(context.words.missingKinds[missing.kind], `${from}/kind`, 'gap')
  return joined([capitalised(kind), reasonLine(context, missing.reason, `${from}/reason`)], ': ')
}

/** What the documents lack, and what is wrong in them. */
export function missingSection(context: CardContext, findings: readonly Finding[]): CardSection {
  const { plan, words } = context
  const gaps = plan.missing.map((missing, index) => ({
    line: missingLine(context, missing, index),
    notes: [],
  }))
  const faults = findings.flatMap((finding, index) =>
    finding.severity === 'info'
      ? []
      : [
          {
            line: [{ text: renderMessage(finding, context.catalogue), from: `/findings/${index}` }],
            notes: [],
          },
        ],
  )
  const nothing = [{ line: ownWords(words.labels.nothingMissing), notes: [] }]
  const parts: CardList[] = [{ kind: 'list', box: false, items: gaps.length === 0 ? nothing : gaps }]
  if (faults.length > 0)
    parts.push({ kind: 'list', heading: words.labels.findings, box: false, items: faults })
  return { id: 'missing', heading: words.sections.missing, parts }
}
