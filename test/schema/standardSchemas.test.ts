import type { StandardSchemaV1 } from '@standard-schema/spec'
import { FormApi } from '@tanstack/form-core'
import { describe, expect, expectTypeOf, test } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { joinPointer } from '../../src/base/pointers.js'
import type { DocumentName } from '../../src/spec/documents.js'
import type { SpecSheet, SpecSheetInput, StockInput } from '../../src/v1/spec.js'
import {
  machineLogSchema,
  parseDocument,
  procedureSchema,
  serviceRecordSchema,
  specSheetSchema,
  stockSchema,
  toolboxSchema,
} from '../../src/v1/spec.js'
import { readFixture, readGoodDocuments } from '../support/fixtures.js'
import { SHAPE_MISTAKES } from './shapeMistakes.js'

// The first test is the assignment to the types of the specification.
const schemas: Readonly<Record<DocumentName, StandardSchemaV1<unknown, unknown>>> = {
  'spec-sheet': specSheetSchema,
  'machine-log': machineLogSchema,
  toolbox: toolboxSchema,
  stock: stockSchema,
  procedure: procedureSchema,
  'service-record': serviceRecordSchema,
}
const kindOf = (document: Readonly<Record<string, unknown>>) => document['kind'] as DocumentName

describe('Standard Schema 1.1', () => {
  test('the types are those of the documents', () => {
    expectTypeOf<StandardSchemaV1.InferOutput<typeof specSheetSchema>>().toEqualTypeOf<SpecSheet>()
    expectTypeOf<StandardSchemaV1.InferInput<typeof specSheetSchema>>().toEqualTypeOf<SpecSheetInput>()
    expectTypeOf<StandardSchemaV1.InferInput<typeof stockSchema>>().toEqualTypeOf<StockInput>()
    for (const schema of Object.values(schemas))
      expect(schema['~standard']).toMatchObject({ version: 1, vendor: 'drivetrain-service' })
  })

  test('a good document is its value, as the parse function gives it', async () => {
    for (const { value } of readGoodDocuments()) {
      const result = await schemas[kindOf(value)]['~standard'].validate(value)
      expect(result).toEqual({ value })
    }
  })

  test('a mistake is an issue with the code and the path of its finding', async () => {
    let lists = 0
    for (const { of, patch } of SHAPE_MISTAKES) {
      const document = applyPatch(readFixture(of), patch)
      const kind = kindOf(readFixture(of))
      const { issues = [] } = await schemas[kind]['~standard'].validate(document)
      const { findings } = parseDocument(kind, document)
      expect(
        issues.map(({ message, path = [] }) => [message.split(':')[0], joinPointer(path as string[])]),
      ).toEqual(findings.map(({ code, path }) => [code, path]))
      lists += issues.flatMap(({ path = [] }) => path).filter((key) => typeof key === 'number').length
    }
    expect(lists).toBeGreaterThan(10)
  })

  test('the message has code and params, and the finding is there for other texts', async () => {
    const { issues } = await stockSchema['~standard'].validate({
      kind: 'stock',
      version: '1.0',
      id: 'shelf',
      name: 7,
    })
    expect(issues?.[0]?.message).toBe('spec/wrong-type: expected "text", found "number", value "7"')
    expect(issues?.[0]).toMatchObject({ path: ['name'], finding: { code: 'spec/wrong-type', path: '/name' } })
  })

  test('no getter of foreign data is called', async () => {
    const stock = { kind: 'stock', version: '1.0', id: 'shelf', name: 'Shelf', containers: {} }
    const throwingStock = Object.defineProperty({ ...stock }, 'seals', {
      enumerable: true,
      get: () => {
        throw new Error('called')
      },
    })
    const { issues } = await stockSchema['~standard'].validate(throwingStock)
    expect(issues?.map(({ path }) => path)).toEqual([['seals']])
  })
})

test('a form library validates a stock with it, field by field', async () => {
  const stock = readFixture('full.stock.json') as unknown as StockInput
  const form = new FormApi({ defaultValues: stock, validators: { onChange: stockSchema } })
  form.mount()
  form.setFieldValue('name', 'Station shelf')
  expect([form.state.isValid, form.state.errors]).toEqual([true, []])
  form.setFieldValue('name', '')
  expect(form.state.isValid).toBe(false)
  const [byField] = form.state.errors
  expect(Object.keys(byField ?? {})).toEqual(['name'])
  expect(byField).toMatchObject({ name: [{ finding: { code: 'spec/empty-text' } }] })
})
