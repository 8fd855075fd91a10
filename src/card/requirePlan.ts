import { requireShape, requireTree, type Shape } from '../base/index.js'
import type { VisitPlan } from '../service/index.js'

const QUANTITY_SHAPE = { value: 'number', unit: 'string' } as const
const NAMED_SHAPE = { name: 'string' } as const
const POINT_SHAPE = { 'meter?': QUANTITY_SHAPE } as const
const LIMIT_SHAPE: Shape = {
  'limit?': {},
  'used?': QUANTITY_SHAPE,
  'left?': QUANTITY_SHAPE,
  'fraction?': 'number',
  'from?': POINT_SHAPE,
  'duePoint?': POINT_SHAPE,
  'overdueAfter?': POINT_SHAPE,
}

/** A service with its limits, of a plan or a slip. */
export const DUE_SHAPE: Shape = { part: {}, lines: [LIMIT_SHAPE], reasons: [{ params: {} }] }

/** The objects and lists of a plan that a card reads. Strings are checked later. */
const PLAN_SHAPE: Shape = {
  machine: { sheet: {}, identity: {}, variant: { reasons: [{}] } },
  'ambient?': QUANTITY_SHAPE,
  'procedure?': NAMED_SHAPE,
  readings: { 'hours?': QUANTITY_SHAPE, 'distance?': QUANTITY_SHAPE },
  due: [{ ...DUE_SHAPE, missing: [{}] }],
  work: [{ part: {}, due: 'string' }],
  figures: [{ path: 'string', part: { path: 'string' }, resolved: { kind: 'string' }, 'computed?': [{}] }],
  steps: [{ do: 'string', figures: {}, cautions: [{ params: {} }] }],
  lines: [{ steps: ['string'], 'on?': 'string' }],
  oil: [
    {
      part: {},
      'needed?': QUANTITY_SHAPE,
      take: [{ volume: QUANTITY_SHAPE }],
      'buy?': { volume: QUANTITY_SHAPE, 'containers?': [{ size: QUANTITY_SHAPE }] },
      'measure?': QUANTITY_SHAPE,
      'stopAt?': QUANTITY_SHAPE,
      'additive?': { 'perInstance?': QUANTITY_SHAPE, 'needed?': QUANTITY_SHAPE },
      reasons: [{}],
    },
  ],
  seals: [{ part: {}, seal: {}, 'stock?': {} }],
  'filters?': [{ part: {} }],
  tightenings: [
    {
      part: {},
      'wrench?': NAMED_SHAPE,
      'setting?': QUANTITY_SHAPE,
      'trueBand?': { min: 'number', max: 'number' },
      reasons: [{}],
    },
  ],
  tools: [{ for: [{ path: 'string' }], 'drive?': {}, 'have?': {}, reasons: [{}] }],
  'handTools?': { params: { 'tools?': ['string'] } },
  wrenches: { use: [], reasons: [{}] },
  'pan?': { 'volume?': QUANTITY_SHAPE, 'have?': { size: QUANTITY_SHAPE }, reasons: [{}] },
  waits: [{ part: {}, 'seconds?': 'number', 'parts?': [NAMED_SHAPE], reasons: [{}] }],
  consumables: [{ params: {} }],
  cautions: [{ params: {} }],
  time: { minutes: 'number', reasons: [{ params: {} }] },
  usedOil: { 'volume?': QUANTITY_SHAPE, reasons: [{}] },
  missing: [{ reason: {} }],
  sources: { '*': {} },
  'warranty?': { asks: ['string'] },
}

/** Throws a TypeError that names the wrong field if `plan` is not a visit plan. */
export function requirePlan(name: string, plan: VisitPlan): void {
  const advice = 'pass the result of planVisit'
  if (plan?.kind !== 'visit-plan')
    throw new TypeError(`${name} must be a visit plan, with kind 'visit-plan'; ${advice}`)
  requireTree(name, plan)
  requireShape(name, plan, PLAN_SHAPE, advice)
  const { variant } = plan.machine
  if (variant.verdict !== 'one')
    requireShape(`${name}.machine.variant`, variant, { missing: [], candidates: [{}] }, advice)
}
