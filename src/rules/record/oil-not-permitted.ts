import { oilMeets } from '../../oil/index.js'
import { resolveLeaf } from '../../spec/index.js'
import { lookUp } from '../lookup/lookUp.js'
import { defineRule } from '../rule.js'

/**
 * A gearcase filled from a container whose label meets none of the oils that the sheet permits there: drain
 * it again before the machine works. An oil whose label leaves a question is let pass here and asked for in
 * the plan. Needs the stock in the set. Source: the judgement of `oilMeets`.
 */
export const oilNotPermitted = defineRule({
  code: 'record/oil-not-permitted',
  severity: 'error',
  about: 'service-record',
  check: ({ record, set }) =>
    record.entries.flatMap(({ path, entry, sheet, gearcase, identity }) => {
      const container = set.stocks
        .map(({ document }) => lookUp(document.containers, entry.oil?.container ?? ''))
        .find((found) => found !== undefined)
      if (container === undefined || gearcase.oilSpace.kind === 'shared') return []
      const oils = resolveLeaf(sheet.document, identity, 'oils', `/gearcases/${entry.gearcase}/oilSpace/oils`)
      if (oils.kind !== 'stated') return []
      const yellowMetal = gearcase.yellowMetal ?? 'not stated'
      const verdicts = oils.value.choices.map((choice) => oilMeets(choice, container.oil, { yellowMetal }))
      if (verdicts.some(({ answer }) => answer !== 'no')) return []
      const permitted = oils.value.choices.map((choice) =>
        choice.kind === 'grade' ? [choice.grade, choice.category].filter(Boolean).join(' ') : choice.name,
      )
      const params = { gearcase: gearcase.name, oil: container.oil.name, permitted }
      return [{ path: `${path}/oil/container`, params }]
    }),
})
