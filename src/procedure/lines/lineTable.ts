import type { Action } from '../../spec/index.js'

/** A slot of a line: one of these actions. */
export interface LineSlot {
  readonly of: readonly Action[]
  /** Whether several of the actions can follow, in any order. */
  readonly isRepeatable?: true
  /** Whether it may be on another part, or at another gearcase, than the rest of the line. */
  readonly isOnAnyPart?: true
}

/** The purpose of a line. */
export type LineKind =
  | 'variant'
  | 'prepare'
  | 'run'
  | 'raise'
  | 'lower'
  | 'shield'
  | 'turn'
  | 'loosen'
  | 'drain'
  | 'inspect'
  | 'filter'
  | 'close'
  | 'cure'
  | 'fill'
  | 'level'
  | 'leaks'
  | 'finish'

const inOrder = (...actions: readonly Action[]): readonly LineSlot[] =>
  actions.map((action) => ({ of: [action] }))
const inAnyOrder = (...of: readonly Action[]): LineSlot => ({ of, isRepeatable: true })
const onAnyPart = (...of: readonly Action[]): LineSlot => ({ of, isOnAnyPart: true })

const OPENING_SLOTS = inOrder('place the pan', 'clean around', 'crack loose', 'take out')
const LEVEL_SLOTS: readonly LineSlot[] = [...inOrder('let settle', 'check the level'), onAnyPart('top up')]
const CLOSING_SLOTS: readonly LineSlot[] = [
  ...inOrder('inspect the magnet', 'clean the magnet'),
  inAnyOrder('take off old seal'),
  ...inOrder('wipe the seal face'),
  inAnyOrder('fit new seal', 'inspect the seal', 'apply sealant'),
  ...inOrder('fit', 'fit cover', 'fit filter', 'tighten', 'tighten cover', 'tighten filter'),
  onAnyPart('nip by hand'),
]

/**
 * The lines for people: actions that are done together, in order; each can be left out. A line ends where
 * something must be judged before the work goes on: a stuck plug, the old oil, a leak.
 *
 * Source: common practice, no source.
 */
export const LINE_TABLE: readonly { readonly kind: LineKind; readonly slots: readonly LineSlot[] }[] = [
  { kind: 'variant', slots: inOrder('find the variant') },
  { kind: 'prepare', slots: inOrder('read the manual', 'wear protection') },
  {
    kind: 'run',
    slots: [
      inAnyOrder('secure the machine'),
      ...inOrder(
        'warm the oil',
        'short run',
        'park on level ground',
        'carry to level ground',
        'stop the engine',
      ),
      ...inOrder('chock the wheels'),
      inAnyOrder('secure the machine'),
      ...inOrder('let settle'),
    ],
  },
  { kind: 'raise', slots: inOrder('raise the machine', 'set on stands') },
  {
    kind: 'raise',
    slots: [
      ...inOrder('drive onto ramps', 'stop the engine', 'chock the wheels'),
      inAnyOrder('secure the machine'),
    ],
  },
  {
    kind: 'lower',
    slots: [
      ...inOrder('drive off ramps', 'stop the engine', 'chock the wheels'),
      inAnyOrder('secure the machine'),
    ],
  },
  {
    kind: 'lower',
    slots: [...inOrder('lower the machine'), inAnyOrder('secure the machine'), ...inOrder('clear away')],
  },
  { kind: 'shield', slots: inOrder('remove shield') },
  { kind: 'shield', slots: inOrder('refit shield') },
  {
    kind: 'turn',
    slots: [
      inAnyOrder('nip by hand'),
      ...inOrder('turn the wheel', 'clear away', 'roll the machine', 'chock the wheels'),
    ],
  },
  { kind: 'loosen', slots: inOrder('clear the breather', 'clean around', 'crack loose', 'nip by hand') },
  {
    kind: 'drain',
    slots: [
      ...OPENING_SLOTS,
      ...inOrder('take off cover'),
      onAnyPart('take out'),
      ...inOrder('take an oil sample', 'let drain', 'suck out the oil'),
    ],
  },
  { kind: 'inspect', slots: inOrder('inspect the oil', 'inspect the magnet', 'clean the magnet') },
  {
    kind: 'filter',
    slots: inOrder(
      'place the pan',
      'clean around',
      'take off filter',
      'inspect the filter',
      'clean the filter',
    ),
  },
  { kind: 'close', slots: CLOSING_SLOTS },
  { kind: 'cure', slots: inOrder('wait for the cure') },
  {
    kind: 'fill',
    slots: [
      ...inOrder('place the pan', 'clean around', 'crack loose'),
      onAnyPart('take out'),
      ...inOrder(
        'measure the oil',
        'add the additive',
        'pour the oil',
        'wait for the hose',
        'add the additive',
      ),
    ],
  },
  { kind: 'level', slots: [...OPENING_SLOTS, ...LEVEL_SLOTS] },
  { kind: 'level', slots: [...LEVEL_SLOTS, ...CLOSING_SLOTS] },
  {
    kind: 'leaks',
    slots: [{ ...inAnyOrder('wipe down', 'let a leak show', 'check for leaks'), isOnAnyPart: true }],
  },
  { kind: 'finish', slots: inOrder('take used oil away', 'clear away', 'record') },
]
