import { describe, expect, it } from 'vitest'
import { cardModel, cueList, paperModel, renderHtml, renderMarkdown, renderText } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { buildProcedure, validateProcedure } from '../../src/v1/procedure.js'
import { checkDocuments } from '../../src/v1/rules.js'
import { checkRecord, kitContents, orderList } from '../../src/v1/service.js'
import { parseDocument } from '../../src/v1/spec.js'
import { type GoodMachine, planOf, TODAY } from './goodMachines/goodMachine.js'
import { GOOD_MACHINES } from './goodMachines/index.js'
import { recordOf } from './goodMachines/recordOf.js'

const setOf = ({ sheet, log, toolbox, stock }: GoodMachine) => ({
  sheets: [{ document: sheet }],
  logs: [{ document: log }],
  toolboxes: [{ document: toolbox }],
  stocks: [{ document: stock }],
  procedures: [],
  records: [],
})

const table: string[] = []

describe.each(Object.entries(GOOD_MACHINES))('%s', (name, machine) => {
  const planned = planOf(machine)
  const plan = planned.value

  it('has documents that parse and that no rule objects to', () => {
    for (const document of Object.values(machine))
      expect(parseDocument('any', document)).toMatchObject({ ok: true, findings: [] })
    const findings = checkDocuments(setOf(machine), { today: TODAY })
    expect(findings).toEqual([])
    const { minutes } = plan.time
    table.push([name, findings.length, plan.steps.length, minutes, plan.missing.length].join(' | '))
  })

  it('plans completely: all oil, seals, tools and settings, and nothing open but what the manual leaves out', () => {
    expect(planned.findings.filter(({ severity }) => severity !== 'info')).toEqual([])
    expect(plan.work.length).toBeGreaterThan(0)
    expect(plan.oil.map(({ buy }) => buy)).toEqual(plan.oil.map(() => undefined))
    expect(plan.seals.map(({ buy }) => buy)).toEqual(plan.seals.map(() => 0))
    expect(plan.tools.filter(({ verdict }) => verdict === 'missing' || verdict === 'does not fit')).toEqual(
      [],
    )
    expect(plan.missing.filter(({ kind }) => kind !== 'not stated')).toEqual([])
  })

  it('finds every part that its steps name', () => {
    const places = plan.steps.flatMap(({ part }) => part ?? [])
    expect(places.filter(({ path }) => path.startsWith('/') === false)).toEqual([])
    for (const { figures, oil, tightening, wait } of plan.steps)
      for (const pointer of [...Object.values(figures), oil, tightening, wait])
        if (pointer !== undefined) {
          const [, list, place] = pointer.split('/')
          expect(
            (plan as unknown as Record<string, readonly unknown[]>)[list ?? '']?.[Number(place)],
          ).toBeDefined()
        }
  })

  it('prints as a card in HTML, Markdown and text, as cues and as lists', () => {
    const card = cardModel(planned, en)
    for (const text of [
      renderHtml(card),
      renderMarkdown(card),
      renderText(card),
      renderText(paperModel({ kind: 'cues', plan, cues: cueList(plan, en) }, en)),
    ]) {
      expect(text).toContain(machine.sheet.machine.model)
      expect(text).not.toMatch(/undefined|NaN|\[object/)
    }
    const kit = kitContents(plan)
    expect(kit.oil).toHaveLength(new Set(plan.oil.map(({ choice }) => choice)).size)
    // A stock has no filters: they are bought for each visit.
    const filters = plan.filters && { filters: kit.filters }
    expect(orderList([kit])).toEqual({ oil: [], seals: [], ...filters })
  })

  it('has an order of work that is valid', () => {
    const { sheet, log } = machine
    const services = plan.work.map(({ service }) => service)
    const built = buildProcedure({ sheet, identity: log.identity, services: [...new Set(services)] })
    expect(built.ok && built.value.steps.length).toBe(plan.steps.length)
    const findings = built.ok ? validateProcedure(built.value, sheet) : []
    expect(findings.filter(({ severity }) => severity !== 'info')).toEqual([])
  })

  it('takes a record of all that was planned', () => {
    const record = recordOf(machine, plan)
    expect(parseDocument('service-record', record)).toMatchObject({ ok: true, findings: [] })
    expect(checkRecord({ document: record }, setOf(machine), { today: TODAY })).toEqual([])
  })
})

it('prints one line a machine', () => {
  expect(table).toHaveLength(Object.keys(GOOD_MACHINES).length)
  console.info(['machine | findings | steps | minutes | missing', ...table].join('\n'))
})
