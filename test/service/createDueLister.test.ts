import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { resolveLog } from '../../src/record/index.js'
import { createDueLister } from '../../src/service/index.js'
import { listDue } from '../../src/v1/service.js'
import type { Identity } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { readExample } from '../support/readExample.js'
import { usedMachines } from './support/usedMachines.js'

const OPTIONS = {
  soon: { hours: 20, distance: { value: 300, unit: 'km' }, days: 30 },
  staleAfter: { days: 60 },
  severity: 'normal',
} as const

const identities: fc.Arbitrary<Identity> = fc.record(
  {
    variant: fc.constantFrom('short', 'long', 'work', 'none'),
    modelYear: fc.integer({ min: 2015, max: 2024 }),
    serial: fc.constantFrom('TL00418', 'TL00600', 'UA26-00731', 'BR55-0093', 'x'),
    market: fc.constantFrom('alpine', 'Alpine', 'north'),
  },
  { requiredKeys: [] },
)

describe('the due services of many machines of one sheet', () => {
  it('are those of listDue for each, in any order and as often as asked', () => {
    law(
      200,
      usedMachines,
      fc.array(identities, { minLength: 1, maxLength: 5 }),
      fc.boolean(),
      ({ sheet, log, today }, asked, isSevere) => {
        const options = { ...OPTIONS, severity: isSevere ? ('severe' as const) : ('normal' as const) }
        const list = createDueLister(sheet)
        for (const identity of [log.identity, ...asked, ...asked.toReversed()]) {
          const other = { ...log, identity }
          expect(list(resolveLog(other, sheet), today, options)).toEqual(
            listDue({ sheet, log: other, today }, options),
          )
        }
      },
    )
  })

  it('a sheet with conditions on serial numbers tells machines apart that differ in nothing else', () => {
    const sheet = readExample('tind-4', 'sheet')
    const log = readExample('tind-4', 'log')
    const [service] = Object.entries(sheet.services)
    if (service === undefined) throw new Error('no service')
    const [id, fields] = service
    const bySerial = {
      ...sheet,
      services: {
        ...sheet.services,
        [id]: { ...fields, appliesTo: { serials: { prefix: 'TL', from: '00400', to: '00500' } } },
      },
    }
    const list = createDueLister(bySerial)
    const count = (serial: string) =>
      list(
        resolveLog({ ...log, identity: { ...log.identity, serial } }, bySerial),
        '2023-10-06',
        OPTIONS,
      ).filter((due) => due.service === id).length
    expect(count('TL00418')).toBeGreaterThan(0)
    expect(count('TL00501')).toBe(0)
    expect(count('TL00400')).toBeGreaterThan(0)
  })
})
