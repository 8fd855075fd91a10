import fc from 'fast-check'
import { expect, test } from 'vitest'
import { countTroubles } from '../../src/procedure/countTroubles.js'
import { readContext } from '../../src/procedure/readContext.js'
import { traceSteps } from '../../src/procedure/runStep.js'
import { law } from '../support/law.js'
import { brokenArbitrary } from './brokenProcedures.js'

test('a change counts as many troubles as the whole list, and as much effort as all its steps', () => {
  law(60, brokenArbitrary, fc.nat(), fc.nat(), ({ sheet, bad }, at, to) => {
    const { context } = readContext(bad, sheet)
    const counter = { sheet, context, stepChecks: new Map(), budget: { left: 0 } }
    const trace = traceSteps(counter, bad.steps)
    const { length } = bad.steps
    const step = bad.steps[at % length]
    const otherStep = bad.steps[to % length]
    if (step === undefined || otherStep === undefined) return
    const shorterSteps = bad.steps.toSpliced(at % length, 1)
    const changes = [
      bad.steps,
      shorterSteps,
      shorterSteps.toSpliced(to % length, 0, step),
      bad.steps.toSpliced(to % length, 0, step),
      bad.steps.toSpliced(to % length, 0, { ...step, id: 'new' }),
      bad.steps.with(at % length, { ...otherStep, id: 'new' }),
    ]
    for (const steps of changes) {
      const { total } = traceSteps(counter, steps)
      counter.budget.left = 0
      expect(countTroubles(counter, trace, steps)).toBe(total)
      expect(counter.budget.left).toBe(-steps.length)
      const limit = trace.total - 1
      const limitedCount = countTroubles(counter, trace, steps, limit)
      expect(limitedCount <= limit ? limitedCount : undefined).toBe(total <= limit ? total : undefined)
    }
  })
})
