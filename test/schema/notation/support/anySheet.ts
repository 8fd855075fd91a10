import fc from 'fast-check'
import { applyPatch, type PatchOperation } from '../../../../src/base/applyPatch.js'
import { joinPointer } from '../../../../src/base/pointers.js'
import { UNITS_BY_MEASURE, type Unit } from '../../../../src/quantity/unit.js'
import type { LeafKind } from '../../../../src/spec/leaf.js'
import { ACROSS_FACE, CASE_FACES, DRIVE_KINDS, FACE_HEIGHTS } from '../../../../src/spec/leaf.js'
import { findLeafRow, listLeafTypes } from '../../../../src/spec/leafTable.js'

// Full sheets: good ones with leaves, names, uses and methods changed at random, also to values that no text can
// express.

const oneOf = fc.constantFrom
const figure = fc.oneof(
  oneOf('0', '1', '10.0', '450', '0.48', '999999999.999999'),
  fc.nat({ max: 9999 }).map(String),
)
const limit = oneOf('0.5', '1', '50', '200.0', '999999')
const words = oneOf(
  'top of the box',
  'A-1',
  'left, below',
  'p [1]',
  'when',
  'none',
  'grey sealant',
  'a; b',
  'x'.repeat(301),
  '½ qt',
  'not stated',
)
const source = fc.option(
  fc.record(
    {
      ref: oneOf('manual', 'bulletin'),
      page: oneOf('1', '58', '60, 61', 'fig. 3'),
      confidence: oneOf('read', 'second hand', 'doubtful'),
    },
    { requiredKeys: ['ref', 'confidence'] },
  ),
  { nil: undefined },
)
const withSource = <Value extends object>(value: fc.Arbitrary<Value>): fc.Arbitrary<object> =>
  fc.tuple(value, source).map(([leaf, own]) => (own === undefined ? leaf : { ...leaf, source: own }))
const notStated = withSource(fc.constant({ kind: 'not stated' }))

const band = (units: readonly Unit[], signed = false): fc.Arbitrary<object> => {
  const any = signed ? fc.tuple(oneOf('', '-'), figure).map((parts) => parts.join('')) : figure
  const unit = oneOf(...units)
  return fc.oneof(
    fc.record({ kind: fc.constant('nominal'), value: any, unit }),
    fc.record({
      kind: fc.constant('nominal'),
      value: fc.constant('7.5'),
      unit,
      asPrinted: oneOf('7 1/2', '7½'),
    }),
    fc.record({ kind: fc.constant('nominal with tolerance'), value: any, minus: figure, plus: figure, unit }),
    fc.record({ kind: fc.constant('limits'), min: any, max: any, unit }),
    fc.oneof(
      fc.record({ kind: fc.constant('limits'), min: any, unit }),
      fc.record({ kind: fc.constant('limits'), max: any, unit }),
    ),
  )
}
const stated = (units: readonly Unit[], signed = false): fc.Arbitrary<object> =>
  fc
    .tuple(band(units, signed), fc.array(band(units, signed), { maxLength: 2 }), fc.boolean())
    .map(([value, printed, hasList]) => (printed.length > 0 || hasList ? { ...value, printed } : value))
const value = (units: readonly Unit[], signed = false): fc.Arbitrary<object> =>
  fc.oneof({ weight: 6, arbitrary: withSource(stated(units, signed)) }, notStated)

const threadCondition = oneOf('dry', 'oiled', 'sealant', 'as supplied', 'not stated')
const torque = stated(UNITS_BY_MEASURE.torque)
const tightening = withSource(
  fc.oneof(
    fc.record(
      {
        kind: fc.constant('torque'),
        torque,
        stages: fc.array(torque, { maxLength: 2 }),
        thenAngle: stated(['deg']),
        threadCondition,
      },
      { requiredKeys: ['kind', 'torque', 'threadCondition'] },
    ),
    fc.record(
      { kind: fc.constant('turns'), min: figure, max: figure, maxTorque: torque, threadCondition },
      { requiredKeys: ['kind', 'min', 'threadCondition'] },
    ),
    fc.record({ kind: fc.constant('not stated'), threadCondition }),
  ),
)
const anyOil = {
  limitedSlip: oneOf('required', 'not permitted', 'either', 'not stated'),
  ambient: stated(UNITS_BY_MEASURE.temperature, true),
  additive: fc.record({
    name: words,
    volume: value(UNITS_BY_MEASURE.volume),
    includedInRefill: fc.boolean(),
  }),
}
const oils = fc.oneof(
  {
    weight: 6,
    arbitrary: withSource(
      fc.record({
        kind: fc.constant('oils'),
        choices: fc.array(
          fc.oneof(
            fc.record(
              {
                kind: fc.constant('grade'),
                grade: oneOf('80W-90', '90', '10W-30', 'VG 220', '75W/90'),
                system: oneOf('SAE J306', 'SAE J300', 'ISO VG'),
                edition: oneOf('2019', 'latest'),
                category: oneOf('GL-5', 'MT-1', 'API GL-4', 'SJ'),
                ...anyOil,
              },
              { requiredKeys: ['kind', 'grade', 'system', 'limitedSlip'] },
            ),
            fc.record(
              { kind: fc.constant('maker fluid'), name: words, ...anyOil },
              { requiredKeys: ['kind', 'name', 'limitedSlip'] },
            ),
          ),
          { minLength: 1, maxLength: 3 },
        ),
      }),
    ),
  },
  notStated,
)
const purchasedSeal = { replace: oneOf('every opening', 'on condition', 'not stated'), partNumber: words }
const size = fc.record({
  inside: oneOf('14', '20.5'),
  outside: oneOf('18', '24'),
  thickness: oneOf('1.5', '2'),
  unit: oneOf('mm', 'in'),
})
const rubber = oneOf('NBR', 'FKM', 'not stated')
const closedRecord = (fields: Readonly<Record<string, fc.Arbitrary<unknown>>>, required: readonly string[]) =>
  withSource(
    fc.record({ ...fields, ...purchasedSeal }, { requiredKeys: ['kind', 'replace', ...required] as never }),
  )
const seal = fc.oneof(
  closedRecord(
    {
      kind: fc.constant('crush washer'),
      form: oneOf('flat', 'folded', 'captive', 'not stated'),
      material: oneOf('copper', 'soft steel', 'not stated'),
      size,
    },
    ['form', 'material'],
  ),
  closedRecord(
    { kind: fc.constant('bonded seal'), material: rubber, form: fc.constant('profile ring'), size },
    ['material'],
  ),
  closedRecord(
    {
      kind: fc.constant('o-ring'),
      material: rubber,
      designation: oneOf('-214', 'P22', 'AS568-214', '214'),
      size: fc.record({ inside: oneOf('15.6'), section: oneOf('1.78'), unit: oneOf('mm', 'in') }),
    },
    ['material'],
  ),
  closedRecord({ kind: fc.constant('thread sealant'), product: words }, ['product']),
  closedRecord({ kind: fc.constant('gasket'), material: words }, ['material']),
  closedRecord(
    {
      kind: fc.constant('liquid gasket'),
      product: words,
      bead: value(['mm']),
      cureBeforeOil: value(['h', 'min']),
    },
    ['product', 'bead', 'cureBeforeOil'],
  ),
  withSource(fc.constant({ kind: 'none' })),
  notStated,
)
const distanceOf = (number: fc.Arbitrary<string>) =>
  fc.record(
    {
      value: number,
      unit: oneOf('km', 'mi'),
      printed: fc.array(
        fc.record({ value: figure.filter((candidate) => candidate.length < 7), unit: oneOf('km', 'mi') }),
        { maxLength: 2 },
      ),
    },
    { requiredKeys: ['value', 'unit'] },
  )
const intervalOf = (number: fc.Arbitrary<string>) =>
  fc.oneof(
    {
      weight: 6,
      arbitrary: withSource(
        fc
          .record(
            {
              kind: fc.constant('interval'),
              hours: number,
              distance: distanceOf(number),
              period: oneOf('P12M', 'P1Y6M', 'P2W', 'P010D'),
            },
            { requiredKeys: ['kind'] },
          )
          .filter((candidate) => Object.keys(candidate).length > 1),
      ),
    },
    notStated,
  )
const place = fc.oneof(
  { weight: 6, arbitrary: withSource(fc.record({ kind: fc.constant('place'), text: words })) },
  notStated,
)
const position = fc.oneof(
  withSource(
    fc.record(
      {
        kind: fc.constant('position'),
        face: oneOf(...CASE_FACES),
        across: oneOf(...ACROSS_FACE),
        height: oneOf(...FACE_HEIGHTS),
        offset: fc.constant({ kind: 'nominal', value: '60', unit: 'mm' }),
      },
      { requiredKeys: ['kind', 'face'] },
    ),
  ),
  notStated,
)
const drive = fc.oneof(
  withSource(
    fc.record(
      { kind: oneOf(...DRIVE_KINDS), size: oneOf('10 mm', '3/8 in', 'T40', 'a, b') },
      { requiredKeys: ['kind'] },
    ),
  ),
  notStated,
)

const LEAVES: Readonly<Record<LeafKind, fc.Arbitrary<object>>> = {
  value: notStated,
  tightening,
  oils,
  seal,
  interval: intervalOf(limit),
  place,
  position,
  drive,
}

function anyLeaf(tokens: readonly string[]): fc.Arbitrary<object> | undefined {
  const type = findLeafRow(tokens)
  if (type === undefined) return undefined
  if (tokens.at(-1) === 'window') return intervalOf(oneOf('0', '20'))
  if (type.kind !== 'value') return LEAVES[type.kind]
  if (type.measure === 'duration') return value(['min'])
  return value(UNITS_BY_MEASURE[type.measure ?? 'volume'], type.measure === 'temperature')
}

/** A good sheet with up to ten leaves replaced, and optional leaves added. */
export function anySheet(good: readonly object[]): fc.Arbitrary<object> {
  return fc.constantFrom(...good).chain((sheet) => {
    const places = leafPlaces(sheet)
    const change = fc.constantFrom(...places).chain((tokens): fc.Arbitrary<PatchOperation> => {
      const path = joinPointer(tokens)
      const leaf = anyLeaf(tokens) ?? notStated
      return leaf.map((to) => ({ op: 'add', path, value: to }) as const)
    })
    const name = fc
      .constantFrom(...namePlaces(sheet))
      .chain((path) => words.map((to): PatchOperation => ({ op: 'replace', path, value: to })))
    return fc.array(fc.oneof({ weight: 9, arbitrary: change }, name), { minLength: 1, maxLength: 10 }).map(
      (patch) =>
        applyPatch(
          sheet,
          patch.map(
            (operation) =>
              ({ ...operation, op: isList(operation.path) ? 'replace' : operation.op }) as PatchOperation,
          ),
        ) as object,
    )
  })
}

const isList = (path: string): boolean => /\/seals\/\d+$/.test(path)

/** The places where a sheet has leaves, and where it could have more. */
function leafPlaces(sheet: object): readonly (readonly string[])[] {
  return listLeafTypes().flatMap(({ place }) => expandPlace(sheet, place, []))
}

function expandPlace(
  value: unknown,
  [key, ...rest]: readonly string[],
  above: readonly string[],
): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null || key === undefined) return []
  const holder = value as Readonly<Record<string, unknown>>
  if (rest.length === 0) return (key === '*' ? Object.keys(holder) : [key]).map((last) => [...above, last])
  const keys = key === '*' ? Object.keys(holder) : Object.hasOwn(holder, key) ? [key] : []
  return keys.flatMap((otherKey) => expandPlace(holder[otherKey], rest, [...above, otherKey]))
}

/** Names of parts; those of oils are inside a leaf. */
function namePlaces(value: unknown, tokens: readonly string[] = []): readonly string[] {
  if (tokens.at(-1) === 'oils') return []
  if (typeof value !== 'object' || value === null)
    return tokens.at(-1) === 'name' ? [joinPointer(tokens)] : []
  return Object.entries(value).flatMap(([key, child]) => namePlaces(child, [...tokens, key]))
}
