import type { Action } from '../../spec/index.js'

/** A slot of a line: one of these actions. */
export interface LineSlot {
  readonly of: readonly Action[]
  /** Whether several of the actions can follow, in any order. */
  readonly many?: true
  /** Whether it may be on another part, or at another gearcase, than the rest of the line. */
  readonly anywhere?: true
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

const once = (...actions: readonly Action[]): readonly LineSlot[] =>
  actions.map((action) => ({ of: [action] }))
const many = (...of: readonly Action[]): LineSlot => ({ of, many: true })
const anywhere = (...of: readonly Action[]): LineSlot => ({ of, anywhere: true })

const OPENING_SLOTS = once('place the pan', 'clean around', 'crack loose', 'take out')
const LEVEL_SLOTS: readonly LineSlot[] = [...once('let settle', 'check the level'), anywhere('top up')]
const CLOSING_SLOTS: readonly LineSlot[] = [
  ...once('inspect the magnet', 'clean the magnet'),
  many('take off old seal'),
  ...once('wipe the seal face'),
  many('fit new seal', 'inspect the seal', 'apply sealant'),
  ...once('fit', 'fit cover', 'fit filter', 'tighten', 'tighten cover', 'tighten filter'),
  anywhere('nip by hand'),
]

/**
 * The lines for people: actions that are done together, in order; each can be left out. A line ends where
 * something must be judged before the work goes on: a stuck plug, the old oil, a leak.
 *
 * Source: common practice, no source.
 */
export const LINE_TABLE: readonly { readonly kind: LineKind; readonly slots: readonly LineSlot[] }[] = [
  { kind: 'variant', slots: once('find the variant') },
  { kind: 'prepare', slots: once('read the manual', 'wear protection') },
  {
    kind: 'run',
    slots: [
      many('secure the machine'),
      ...once(
        'warm the oil',
        'short run',
        'park on level ground',
        'carry to level ground',
        'stop the engine',
      ),
      ...once('chock the wheels'),
      many('secure the machine'),
      ...once('let settle'),
    ],
  },
  { kind: 'raise', slots: once('raise the machine', 'set on stands') },
  {
    kind: 'raise',
    slots: [...once('drive onto ramps', 'stop the engine', 'chock the wheels'), many('secure the machine')],
  },
  {
    kind: 'lower',
    slots: [...once('drive off ramps', 'stop the engine', 'chock the wheels'), many('secure the machine')],
  },
  {
    kind: 'lower',
    slots: [...once('lower the machine'), many('secure the machine'), ...once('clear away')],
  },
  { kind: 'shield', slots: once('remove shield') },
  { kind: 'shield', slots: once('refit shield') },
  {
    kind: 'turn',
    slots: [
      many('nip by hand'),
      ...once('turn the wheel', 'clear away', 'roll the machine', 'chock the wheels'),
    ],
  },
  { kind: 'loosen', slots: once('clear the breather', 'clean around', 'crack loose', 'nip by hand') },
  {
    kind: 'drain',
    slots: [
      ...OPENING_SLOTS,
      ...once('take off cover'),
      anywhere('take out'),
      ...once('take an oil sample', 'let drain', 'suck out the oil'),
    ],
  },
  { kind: 'inspect', slots: once('inspect the oil', 'inspect the magnet', 'clean the magnet') },
  {
    kind: 'filter',
    slots: once('place the pan', 'clean around', 'take off filter', 'inspect the filter', 'clean the filter'),
  },
  { kind: 'close', slots: CLOSING_SLOTS },
  { kind: 'cure', slots: once('wait for the cure') },
  {
    kind: 'fill',
    slots: [
      ...once('place the pan', 'clean around', 'crack loose'),
      anywhere('take out'),
      ...once('measure the oil', 'add the additive', 'pour the oil', 'wait for the hose', 'add the additive'),
    ],
  },
  { kind: 'level', slots: [...OPENING_SLOTS, ...LEVEL_SLOTS] },
  { kind: 'level', slots: [...LEVEL_SLOTS, ...CLOSING_SLOTS] },
  {
    kind: 'leaks',
    slots: [{ ...many('wipe down', 'let a leak show', 'check for leaks'), anywhere: true }],
  },
  { kind: 'finish', slots: once('take used oil away', 'clear away', 'record') },
]
