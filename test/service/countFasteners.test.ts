import { expect, it } from 'vitest'
import { en as words } from '../../src/cli/message/en/index.js'
import { prefillRecord } from '../../src/cli/prefillRecord.js'
import { groupKits } from '../../src/service/groupKits.js'
import { renderText } from '../../src/v1/card.js'
import { kitContents } from '../../src/v1/service.js'
import { add, patched, replace } from '../support/patched.js'
import { cardOf, planExample } from '../support/planExample.js'

const planWithoutCount = planExample('tind-4', {
  sheet: patched(replace('/shields/skid-plate/fasteners/count', 'not stated')),
})

it('fasteners of unstated number are to be counted: in plan, card, kit and record', () => {
  expect(kitContents(planWithoutCount).toCount).toEqual(['front skid plate'])
  expect(kitContents(planExample('tind-4'))).not.toHaveProperty('toCount')
  expect(renderText(cardOf(planWithoutCount)).replace(/\s+/g, ' ')).toContain(
    'number of fasteners not stated. Count them.',
  )
  expect(prefillRecord(planWithoutCount, words)).toContain(
    '# Count the fasteners (front skid plate): the manual',
  )
  expect(prefillRecord(planExample('tind-4'), words)).not.toContain('#')
})

it('further supplies of a sheet are in the kit, and kits with different supplies are separate', () => {
  const plan = planExample('tind-4', {
    sheet: patched(add('/services/gear-oil-change/supplies', ['brake cleaner', 'rags'])),
  })
  const [clipKit, usualKit] = [kitContents(plan), kitContents(planExample('tind-4'))]
  expect(clipKit.supplies).toEqual(['brake cleaner'])
  expect(usualKit).not.toHaveProperty('supplies')
  expect(groupKits([clipKit, usualKit, kitContents(planWithoutCount)])).toHaveLength(3)
})
