import { requireShape, requireTree, type Shape } from '../base/index.js'
import type { VisitPlan } from '../service/index.js'

const QUANTITY = { value: 'number', unit: 'string' } as const
const NAMED = { name: 'string' } as const
const POINT = { 'meter?': QUANTITY } as const
const LIMIT = {
  'limit?': {},
  'used?': QUANTITY,
  'left?': QUANTITY,
  'from?': POINT,
  'duePoint?': POINT,
  'overdueAfter?': POINT,
} as const

/** The objects and lists of a plan that a card walks into; texts are checked where they are set. */
const PLAN: Shape = {
  machine: { sheet: {}, identity: {}, variant: { reasons: [{}] } },
  'ambient?': QUANTITY,
  readings: { 'hours?': QUANTITY, 'distance?': QUANTITY },
  due: [{ part: {}, lines: [LIMIT], reasons: [{ params: {} }] }],
  work: [{ part: {} }],
  figures: [{ path: 'string', part: { path: 'string' }, resolved: { kind: 'string' }, 'computed?': [{}] }],
  steps: [{ do: 'string', figures: {}, cautions: [{ params: {} }] }],
  oil: [
    {
      part: {},
      'needed?': QUANTITY,
      take: [{ volume: QUANTITY }],
      'buy?': { volume: QUANTITY, 'containers?': [{ size: QUANTITY }] },
      'measure?': QUANTITY,
      'stopAt?': QUANTITY,
      'additive?': { 'perInstance?': QUANTITY, 'needed?': QUANTITY },
      reasons: [{}],
    },
  ],
  seals: [{ part: {}, seal: {}, 'stock?': {} }],
  'filters?': [{ part: {} }],
  tightenings: [
    {
      part: {},
      'wrench?': NAMED,
      'setting?': QUANTITY,
      'trueBand?': { min: 'number', max: 'number' },
      reasons: [{}],
    },
  ],
  tools: [{ for: [{ path: 'string' }], 'drive?': {}, 'have?': {}, reasons: [{}] }],
  wrenches: { use: [], reasons: [{}] },
  'pan?': { 'volume?': QUANTITY, 'have?': { size: QUANTITY }, reasons: [{}] },
  waits: [{ part: {}, 'seconds?': 'number', 'parts?': [NAMED], reasons: [{}] }],
  consumables: [{}],
  cautions: [{ params: {} }],
  time: { minutes: 'number' },
  usedOil: { 'volume?': QUANTITY, reasons: [{}] },
  missing: [{ reason: {} }],
  sources: { '*': {} },
}

/** Throws TypeError, naming the place, for anything that is not a plan of a visit. */
export function requirePlan(name: string, plan: VisitPlan): void {
  const cure = 'pass the result of planVisit'
  if (plan?.kind !== 'visit-plan')
    throw new TypeError(`${name} must be a visit plan, with kind 'visit-plan'; ${cure}`)
  requireTree(name, plan)
  requireShape(name, plan, PLAN, cure)
  const { variant } = plan.machine
  if (variant.verdict !== 'one')
    requireShape(`${name}.machine.variant`, variant, { missing: [], candidates: [{}] }, cure)
}
