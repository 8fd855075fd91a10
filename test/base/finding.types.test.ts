import { expect, expectTypeOf, it } from 'vitest'
import { type FindingMaker, makeFinding } from '../../src/base/index.js'
import {
  checkDocuments,
  checkRecord,
  type DocumentSet,
  defineRule,
  type Finding,
  parseQuantity,
  parseToolbox,
  planVisit,
  type Result,
  renderMessage,
  type Toolbox,
  type TorqueCodes,
} from '../../src/index.js'
import { en } from '../../src/message/en/index.js'
import { serviceFinding } from '../../src/service/codes.js'
import { readExample } from '../support/readExample.js'

const emptySet: DocumentSet = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
const toolbox: Toolbox = {
  kind: 'toolbox',
  version: '1.0',
  id: 'van',
  name: 'Van',
  wrenches: {
    small: {
      name: 'small wrench',
      type: 'click',
      drive: '1/4 in',
      scales: [{ unit: 'N.m', lowest: 20, highest: 5, graduation: 1 }],
      accuracy: { kind: 'ISO 6789' },
    },
  },
  sockets: {},
  vessels: {},
  pans: {},
  fillers: {},
  stands: {},
}
const set: DocumentSet = { ...emptySet, toolboxes: [{ document: toolbox }] }

it('a code of checkDocuments narrows its params, and a misspelt code does not compile', () => {
  const lowest = checkDocuments(set).flatMap((finding) => {
    // @ts-expect-error no rule has this code
    if (finding.code === 'toolbox/scale-worng') return []
    switch (finding.code) {
      case 'toolbox/scale-wrong':
        // @ts-expect-error a scale has no colour
        void finding.params.colour
        expectTypeOf(finding.params.lowest).toEqualTypeOf<number>()
        return [finding.params.lowest]
      case 'procedure/engine-running':
        return [finding.params.step?.length ?? 0]
      default:
        return []
    }
  })
  expect(lowest).toEqual([20])
})

it('codes of house rules join those of ours', () => {
  const rule = defineRule({
    code: 'house/always',
    severity: 'info',
    about: 'toolbox',
    check: () => [{ path: '', params: { why: 'the house says so' } }],
  })
  const codes = checkDocuments(set, {}, [rule]).map((finding) => {
    // @ts-expect-error not a code of ours or of a house rule
    if (finding.code === 'house/never') return ''
    return finding.code === 'house/always' ? 'house' : finding.code
  })
  expect(codes).toEqual(['house', 'toolbox/scale-wrong'])
})

it('a code of planVisit narrows its params, in a plan and where there is none', () => {
  const sheet = readExample('tind-4', 'sheet')
  const log = readExample('tind-4', 'log')
  const otherLog = { ...log, sheet: { id: 'other', revision: '1' } }
  const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
  const planned = planVisit(
    { sheet, log: otherLog, today: '2023-10-06' },
    { services: 'due', due, iso6789: '2017' },
  )
  const given = planned.findings.map((finding) => {
    // @ts-expect-error a visit has no such finding
    if (finding.code === 'service/sheet-not-the-log') return ''
    // @ts-expect-error the code of a rule is not a code of a plan
    if (finding.code === 'toolbox/scale-wrong') return ''
    return finding.code === 'service/wrong-sheet' ? finding.params.given : finding.code
  })
  expect(given).toEqual([sheet.id])
})

it('each module has its own codes: parsers and records', () => {
  const parsed = parseToolbox({ kind: 'toolbox' })
  const keys = parsed.findings.flatMap((finding) =>
    finding.code === 'spec/missing-key' ? [finding.params.key] : [],
  )
  // Omitted maps, such as the wrenches, are empty.
  expect(keys).toEqual(['version', 'id', 'name'])
  const read = parseQuantity('12 bananas')
  expect(
    read.findings.map((finding) => finding.code === 'quantity/unit-is-unknown' && finding.params.text),
  ).toEqual(['bananas'])
  const record = readExample('tind-4', 'record')
  const unknown = checkRecord({ document: record }, emptySet).flatMap((item) => {
    // @ts-expect-error a record is not judged like a visit
    if (item.code === 'service/no-pan') return []
    return item.code === 'record/machine-not-found' ? [item.params.id] : []
  })
  expect(unknown).toEqual([])
})

it("a module's own maker takes only its codes, with their params", () => {
  const document = { kind: 'toolbox', id: 'van' } as const
  // @ts-expect-error misspelt
  serviceFinding('service/no-pann', 'warning', document, '/pans', { volume: { value: 1, unit: 'L' } })
  // @ts-expect-error a volume, not a mass
  serviceFinding('service/no-pan', 'warning', document, '/pans', { mass: { value: 1, unit: 'kg' } })
  const torqueFinding = makeFinding as FindingMaker<TorqueCodes>
  // @ts-expect-error a code of another module
  torqueFinding('service/no-pan', 'warning', document, '/pans', { volume: { value: 1, unit: 'L' } })
  const finding = serviceFinding('service/no-pan', 'warning', document, '/pans', {
    volume: { value: '1', unit: 'L' },
  })
  expectTypeOf(finding.code).toEqualTypeOf<'service/no-pan'>()
  expect(finding).toEqual({
    code: 'service/no-pan',
    severity: 'warning',
    document,
    path: '/pans',
    params: { volume: { value: '1', unit: 'L' } },
  })
})

it('Finding and Result of the entry close over the codes of all modules, and every result fits them', () => {
  const all: Finding[] = [...checkDocuments(set), ...parseToolbox({}).findings, ...parseQuantity('').findings]
  const result: Result<Toolbox> = parseToolbox(toolbox)
  const texts = all.map((finding) => renderMessage(finding, en))
  expect(result.ok).toBe(true)
  expect(new Set(texts).size).toBe(
    // Each code has params of its own: a list of both would have a type for each pair.
    new Set(all.map(({ code, params }) => `${code} ${JSON.stringify(params)}`)).size,
  )
  // @ts-expect-error no module has this code
  const unknownCode: Finding['code'] = 'toolbox/no-such-thing'
  expect(all.map(({ code }) => code)).not.toContain(unknownCode)
})
