import { describe, expect, it } from 'vitest'
import { applyPatch, type PatchOperation } from '../../src/base/applyPatch.js'
import type { Finding } from '../../src/base/finding.js'
import { checkDocuments } from '../../src/v1/rules.js'
import { type ReadDocument, setOf } from './support/goodSets.js'
import { baseFiles } from './support/vectors.js'

const FRONT = '/sheet.json/gearcases/front'
const REAR = '/sheet.json/gearcases/rear'

const SHEET = ['sheet.json']
const RECORD = ['log.json', 'record.json', 'sheet.json', 'toolbox.json', 'stock.json']

function check(patch: readonly PatchOperation[], files = SHEET): readonly Finding[] {
  const patched = applyPatch(baseFiles({ base: 'bases/tind-4', files }), patch)
  const documents = Object.entries(patched as Record<string, ReadDocument['document']>)
  return checkDocuments(setOf(documents.map(([name, document]) => ({ name, document }))))
}

const codes = (patch: readonly PatchOperation[], files = SHEET) => check(patch, files).map(({ code }) => code)
const set = (path: string, value: unknown): PatchOperation => ({ op: 'replace', path, value })
const add = (path: string, value: unknown): PatchOperation => ({ op: 'add', path, value })
const newtonMetres = (value: string) => ({ kind: 'nominal', value, unit: 'N.m' })

describe('limits belong to their band', () => {
  it.each([
    // Stated in examples/tind-4: 20 to 25 N·m, and 30 N·m without a tolerance, so a tenth below and above: 27 to 33.
    ['19.5 below 20', '/entries/1/tightened/0/torque/value', 19.5, ['warning']],
    ['20 itself', '/entries/1/tightened/0/torque/value', 20, []],
    ['25 itself', '/entries/1/tightened/0/torque/value', 25, []],
    ['33 a tenth above 30', '/entries/1/tightened/1/torque/value', 33, []],
    ['34 above it', '/entries/1/tightened/1/torque/value', 34, ['error']],
    ['27 a tenth below 30', '/entries/1/tightened/1/torque/value', 27, []],
    ['26 below it', '/entries/1/tightened/1/torque/value', 26, ['warning']],
    // 450 ± 20 mL.
    ['429 mL below 430', '/entries/1/refilled/value', 429, ['warning']],
    ['430 mL itself', '/entries/1/refilled/value', 430, []],
    ['470 mL itself', '/entries/1/refilled/value', 470, []],
    ['471 mL above', '/entries/1/refilled/value', 471, ['warning']],
    // A level decides at the rear; 950 mL are stated for the long bed, a tenth is 95.
    ['855 mL a tenth below 950', '/entries/0/refilled/value', 855, []],
    ['854 mL below it', '/entries/0/refilled/value', 854, ['error']],
    ['1045 mL a tenth above', '/entries/0/refilled/value', 1045, []],
    ['1046 mL above it', '/entries/0/refilled/value', 1046, ['error']],
  ])('%s', (_name, path, value, severities) => {
    expect(check([set(`/record.json${path}`, value)], RECORD).map(({ severity }) => severity)).toEqual(
      severities,
    )
  })

  it.each([
    // The severity follows the harm: 20 to 25 N·m are stated, half of 20 is 10, a tenth above 25 is 27.5.
    [9.99, 'error'],
    [10, 'warning'],
    [27.5, 'warning'],
    [27.51, 'error'],
  ])('%s N·m where 20 to 25 are stated: %s', (value, severity) => {
    const found = check([set('/record.json/entries/1/tightened/0/torque/value', value)], RECORD)
    const ofTorque = found.filter(({ code }) => code === 'record/torque-outside-band')
    expect(ofTorque.map((item) => item.severity)).toEqual([severity])
  })

  it.each([
    // The small wrench reads 5 to 25 N·m in steps of 0.5; the shield gets 12 N·m without a tolerance, far from either
    // end.
    ['its highest mark', 25, 'small-click', []],
    [
      'above its highest mark',
      25.5,
      'small-click',
      ['record/torque-outside-band', 'record/wrench-cannot-reach'],
    ],
    ['between two marks', 22.3, 'small-click', ['record/wrench-cannot-reach']],
    ['the lowest mark of the large wrench', 20, 'half-inch-click', []],
    ['below it', 19, 'half-inch-click', ['record/torque-outside-band', 'record/wrench-cannot-reach']],
  ])('a wrench at %s', (_name, value, tool, expected) => {
    const doneEntry = {
      on: '/gearcases/front/openings/drain',
      kind: 'torque set',
      torque: { value, unit: 'N.m' },
      tool,
    }
    expect(codes([set('/record.json/entries/1/tightened/0', doneEntry)], RECORD).sort()).toEqual(expected)
  })

  it.each([
    ['equal to the dry fill', '700', []],
    ['below it', '701', []],
    ['above it', '699', ['fill/refill-larger-than-dry-fill']],
  ])('a refill of 700 mL %s', (_name, dryFill, expected) => {
    const value = { kind: 'nominal', value: dryFill, unit: 'mL' }
    const patch = [
      add(`${REAR}/oilSpace/fill/dryFill`, value),
      { op: 'remove', path: '/sheet.json/overrides' } as const,
    ]
    expect(codes(patch)).toEqual(expected)
  })

  it('a refill of 1001 mL is no more than a dry fill of 1.001 L, in whichever unit each is printed', () => {
    const nominal = (value: string, unit: string) => ({ kind: 'nominal', value, unit })
    const found = (refill: object, dryFill: object) =>
      codes([
        set(`${REAR}/oilSpace/fill/drainAndRefill`, refill),
        add(`${REAR}/oilSpace/fill/dryFill`, dryFill),
        { op: 'remove', path: '/sheet.json/overrides' },
      ]).filter((code) => code === 'fill/refill-larger-than-dry-fill')
    expect(found(nominal('1001', 'mL'), nominal('1.001', 'L'))).toEqual([])
    expect(found(nominal('1.001', 'L'), nominal('1001', 'cm3'))).toEqual([])
    expect(found(nominal('1001.1', 'mL'), nominal('1.001', 'L'))).toHaveLength(1)
  })

  it.each([
    ['one below', '449', []],
    ['equal', '450', ['spec/tolerance-too-large']],
    ['above', '451', ['spec/tolerance-too-large']],
  ])('a tolerance %s to the value of 450 mL', (_name, minus, expected) => {
    const value = { kind: 'nominal with tolerance', value: '450', minus, plus: '20', unit: 'mL' }
    expect(codes([set(`${FRONT}/oilSpace/fill/drainAndRefill`, value)])).toEqual(expected)
  })

  it.each([
    ['touch', '0', []],
    ['leave a tenth of a degree', '0.1', ['oil/ambient-gap']],
    ['overlap', '-0.1', []],
  ])('ambient bands that %s', (_name, min, expected) => {
    expect(codes([set(`${FRONT}/oilSpace/oils/choices/0/ambient/min`, min)])).toEqual(expected)
  })

  it('ambient bands in different units that touch', () => {
    const fahrenheit = { kind: 'limits', min: '32', max: '113', unit: 'degF' }
    expect(codes([set(`${FRONT}/oilSpace/oils/choices/0/ambient`, fahrenheit)])).toEqual([])
  })

  it.each([
    ['a tenth apart', '2200', '2000', []],
    ['more than a tenth apart', '2201', '2000', ['quantity/interval-distances-differ']],
  ])('kilometres %s', (_name, second, first, expected) => {
    const distance = { value: first, unit: 'km', printed: [{ value: second, unit: 'km' }] }
    expect(codes([set('/sheet.json/services/gear-oil-change/intervals/repeat/distance', distance)])).toEqual(
      expected,
    )
  })

  it.each([
    ['12 h', '12', ['spec/period-as-hours']],
    ['13 h', '13', []],
    ['730 h, a month', '730', ['spec/period-as-hours']],
    ['731 h', '731', []],
    ['8760 h, a year', '8760', ['spec/period-as-hours']],
    ['8784 h, a leap year', '8784', ['spec/period-as-hours']],
    ['500 h', '500', []],
  ])('a change every %s', (_name, hours, expected) => {
    const repeat = { kind: 'interval', hours }
    const patch = [set('/sheet.json/services/gear-oil-change/intervals', { repeat, countFrom: 'completion' })]
    expect(codes(patch).filter((code) => code.startsWith('spec/'))).toEqual(expected)
  })

  it('leaves a daily level check and an interval with its period in peace', () => {
    const check10 = { kind: 'interval', hours: '10' }
    const twoLimits = { kind: 'interval', hours: '4380', period: 'P6M' }
    const services = '/sheet.json/services'
    expect(
      codes([set(`${services}/gear-oil-check/intervals/repeat`, check10)]).filter((code) =>
        code.startsWith('spec/'),
      ),
    ).toEqual([])
    expect(
      codes([set(`${services}/gear-oil-check/intervals/repeat`, twoLimits)]).filter((code) =>
        code.startsWith('spec/'),
      ),
    ).toEqual([])
  })
})

describe('stages', () => {
  const at = '/sheet.json/shields/skid-plate/fasteners/tightening'
  it.each([
    ['rise', ['6', '10'], []],
    ['stand still', ['6', '6'], ['torque/stages-not-rising']],
    ['end at the final torque', ['6', '12'], ['torque/stages-not-rising']],
    ['end above it', ['6', '13'], ['torque/stages-not-rising']],
  ])('that %s', (_name, stages, expected) => {
    expect(codes([add(`${at}/stages`, stages.map(newtonMetres))])).toEqual(expected)
  })

  it('may end at the final torque where an angle follows', () => {
    const angle = { kind: 'nominal', value: '90', unit: 'deg' }
    const patch = [add(`${at}/stages`, ['6', '12'].map(newtonMetres)), add(`${at}/thenAngle`, angle)]
    expect(codes(patch)).toEqual([])
  })
})

describe('partners', () => {
  it('a washer on a taper thread does not fit, and a taper thread without an entry is a warning', () => {
    const thread = set(`${FRONT}/openings/drain/thread`, '1/4-18 NPT')
    expect(check([thread]).map(({ code, severity }) => [code, severity])).toEqual([
      ['seal/washer-does-not-fit', 'error'],
    ])
    const none = { op: 'remove', path: `${FRONT}/openings/drain/seals/0` } as const
    expect(check([thread, none]).map(({ code, severity }) => [code, severity])).toEqual([
      ['seal/none-at-opening', 'warning'],
    ])
  })

  it('a plug on a parallel thread that says nothing of its seal is let pass where it says so', () => {
    expect(codes([set(`${FRONT}/openings/drain/seals/0`, { kind: 'not stated' })])).toEqual([])
  })

  it('a ring of EPDM is left to the maker of a fluid without a grade', () => {
    const fluid = {
      kind: 'oils',
      choices: [{ kind: 'maker fluid', name: 'brake fluid', limitedSlip: 'either' }],
    }
    const ring = set(`${FRONT}/openings/fill/seals/0/material`, 'EPDM')
    expect(codes([ring, set(`${FRONT}/oilSpace/oils`, fluid)])).toEqual([])
    expect(codes([ring])).toEqual(['seal/material-not-for-oil'])
  })

  it('an override is judged like the sheet', () => {
    const entry = (kind: string, path: string, to: unknown) =>
      add('/sheet.json/overrides/0/set/-', { kind, path, to })
    const tightening = { kind: 'torque', torque: newtonMetres('2.2'), threadCondition: 'dry' }
    const washer = {
      kind: 'crush washer',
      form: 'flat',
      material: 'copper',
      size: { inside: '12', outside: '16', thickness: '1.5', unit: 'mm' },
      replace: 'every opening',
    }
    const oils = {
      kind: 'oils',
      choices: [{ kind: 'grade', grade: '20W-50', system: 'SAE J306', limitedSlip: 'either' }],
    }
    const place = '/gearcases/front'
    expect(codes([entry('tightening', `${place}/openings/drain/tightening`, tightening)])).toEqual([
      'spec/override-far-from-base',
      'torque/slip-at-plug',
    ])
    expect(codes([entry('seal', `${place}/openings/drain/seals/0`, washer)])).toEqual([
      'seal/washer-does-not-fit',
    ])
    expect(codes([entry('oils', `${place}/oilSpace/oils`, oils)])).toEqual(['oil/unknown-grade'])
  })

  it('the torque of an override decides what a record should have set', () => {
    const tightening = { kind: 'torque', torque: newtonMetres('40'), threadCondition: 'dry' }
    const path = '/gearcases/front/openings/fill/tightening'
    const entry = add('/sheet.json/overrides/0/set/-', { kind: 'tightening', path, to: tightening })
    expect(codes([entry], RECORD)).toEqual(['record/torque-outside-band'])
  })

  it('a procedure is judged by the procedure module, once its sheet is in the set', () => {
    const procedure = {
      kind: 'procedure',
      version: '1.0',
      id: 'too-short',
      name: 'Too short',
      sheet: { id: 'hallbrekka-tind-4', revision: '2023-03' },
      identity: { variant: 'long' },
      services: ['gear-oil-change'],
      steps: [],
    }
    const found = check([add('/procedure.json', procedure)], ['sheet.json'])
    expect(found.length).toBeGreaterThan(0)
    expect(
      found.every(
        ({ code, document }) => code.startsWith('procedure/') && document.name === 'procedure.json',
      ),
    ).toBe(true)
    const otherProcedure = { ...procedure, sheet: { id: 'hallbrekka-tind-4', revision: '2022-01' } }
    expect(codes([add('/procedure.json', otherProcedure)])).toEqual(['spec/sheet-of-other-revision'])
    const procedureElsewhere = { ...procedure, sheet: { id: 'nowhere', revision: '1' } }
    expect(codes([add('/procedure.json', procedureElsewhere)])).toEqual(['spec/sheet-not-found'])
    const contradicted = { ...procedure, identity: { variant: 'long', serial: 'TS00001' } }
    expect(codes([add('/procedure.json', contradicted)])).toContain('log/variant-contradicted')
    const unknown = { ...procedure, identity: { variant: 'medium' } }
    expect(codes([add('/procedure.json', unknown)])).toContain('spec/unknown-variant')
  })
})
