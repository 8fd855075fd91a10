import { findSharers, stateKey } from './layout.js'
import type { CoverState, FilterState, GearcaseState, MutableState, OpeningState } from './state.js'
import { coverAt, filterAt, gearcaseAt, openingAt, type StepContext } from './stepContext.js'

type Effect = (context: StepContext) => void

/** What an action changes. Each writes the new state whatever the old one was; needs decide whether it was allowed. */
export const EFFECTS = {
  'variant found': ({ state }) => write(state, { variantFound: true }),
  'manual read': ({ state }) => write(state, { manualRead: true }),
  'protection worn': ({ state }) => write(state, { protectionWorn: true }),
  'engine runs and the machine may move': ({ state }) => {
    write(state, { engine: 'running', ground: 'not known', chocked: [], secured: [], settled: false })
    for (const gearcase of Object.values(state.gearcases))
      write(gearcase, { wheelMark: 'not known', panPlaced: false })
  },
  'oil warm': ({ state }) => write(state, { oilWarm: true }),
  'oil runs through': ({ state }) => {
    for (const gearcase of Object.values(state.gearcases))
      write(gearcase, { ranSinceFill: true, levelCheckedSinceRun: false, leaksCheckedSinceRun: false })
    for (const parts of [state.openings, state.covers, state.filters])
      for (const part of Object.values(parts)) part.areaClean = false
  },
  'on level ground': ({ state }) => write(state, { ground: 'level' }),
  'engine stopped': ({ state }) => write(state, { engine: 'stopped' }),
  'wheels chocked': ({ state, layout, part }) => {
    const axles = part?.kind === 'axle' ? [part.id] : layout.axles.length > 0 ? layout.axles : ['wheels']
    state.chocked = [...new Set([...state.chocked, ...axles])]
  },
  'item secured': ({ state, part }) => {
    if (part?.kind === 'secured item') state.secured = [...new Set([...state.secured, part.path])]
  },
  'chocks and pan away': ({ state }) => {
    state.chocked = []
    for (const gearcase of Object.values(state.gearcases)) gearcase.panPlaced = false
  },
  'raised on the jack': ({ state, layout, part }) => {
    const supports = part?.kind === 'support' ? [part.id] : [...layout.axleOfSupport.keys()]
    state.lifted = [...new Set([...state.lifted, ...supports])]
  },
  'resting on stands': ({ state, part }) => {
    const supports = part?.kind === 'support' ? [part.id] : state.lifted
    state.lifted = [...new Set([...state.lifted, ...supports])]
    state.onStands = [...new Set([...state.onStands, ...supports])]
  },
  'on its wheels': ({ state }) => write(state, { lifted: [], onStands: [] }),
  'shield off': (context) => setShield(context, 'off'),
  'shield on': (context) => {
    setShield(context, 'on')
    context.state.recorded = false
  },
  'wheel at its mark': (context) => onSelf(context, { wheelMark: context.step.at?.wheelMark ?? 'not known' }),
  'rolled to the mark': (context) => {
    const { state } = context
    write(state, { chocked: [], settled: false })
    for (const gearcase of Object.values(state.gearcases))
      write(gearcase, { wheelMark: 'not known', panPlaced: false })
    onSelf(context, { wheelMark: context.step.at?.wheelMark ?? 'not known' })
  },
  'area clean': (context) => onPart(context, { areaClean: true }),
  'plug loose in its seat': (context) => {
    onOpening(context, { position: 'cracked', everCracked: true, faceWiped: false })
    for (const seal of context.opening?.seals ?? [])
      context.state.seals[stateKey(seal.path, context.instance)] = 'used'
    changeState(context)
  },
  'plug in by hand': (context) => onOpening(context, { position: 'nipped' }),
  'plug out': (context) => {
    onOpening(context, { position: 'out', everCracked: true })
    const { state, self, opening, instance } = context
    if (self === undefined || opening === undefined) return
    const mark = gearcaseAt(state, self).wheelMark
    const { outAt } = openingAt(state, opening, instance)
    if (mark !== 'not known' && !outAt.includes(mark)) outAt.push(mark)
  },
  'pan in place': (context) => onSelf(context, { panPlaced: true }),
  'old oil out': (context) => {
    onSelf(context, { oil: 'out' })
    context.state.usedOil = 'in the pan'
  },
  'cover off': (context) => {
    onCover(context, { position: 'off', everOff: true, faceWiped: false, cured: false })
    const { state, cover, instance } = context
    if (cover !== undefined) state.seals[stateKey(cover.seal.path, instance)] = 'used'
    changeState(context)
  },
  'filter off': (context) => {
    const fresh = { everOff: true, inspected: false, cleaned: false, faceWiped: false }
    onFilter(context, { position: 'off', ...fresh })
    for (const seal of context.filter?.seals ?? [])
      context.state.seals[stateKey(seal.path, context.instance)] = 'used'
    changeState(context)
  },
  'filter inspected': (context) => onFilter(context, { inspected: true }),
  'filter clean': (context) => onFilter(context, { cleaned: true }),
  'filter on': (context) => {
    onFilter(context, { position: context.filter?.filter.held.kind === 'screwed' ? 'in' : 'tight' })
    changeState(context)
  },
  'filter tight': (context) => {
    onFilter(context, { position: 'tight' })
    changeState(context)
  },
  'old oil inspected': (context) => onSelf(context, { oilSeen: true }),
  'magnet inspected': (context) => onPart(context, { magnetSeen: true }),
  'magnet clean': (context) => onPart(context, { magnetClean: true }),
  'breather clear': (context) => onSelf(context, { breatherClear: true }),
  'old seal off': (context) => setSeal(context, 'off'),
  'face wiped': (context) => onPart(context, { faceWiped: true }),
  'new seal on': (context) => setSeal(context, 'new'),
  'seal inspected': (context) => setSeal(context, 'inspected'),
  'plug in with its seal': (context) => onOpening(context, { position: 'in' }),
  'plug tight': (context) => {
    onOpening(context, { position: 'tight' })
    changeState(context)
  },
  'cover on': (context) => onCover(context, { position: 'in' }),
  'cover tight': (context) => {
    onCover(context, { position: 'tight' })
    changeState(context)
  },
  'sealant cured': (context) => onCover(context, { cured: true }),
  'refill measured': (context) => onOwner(context, { measured: true }),
  'additive in': (context) => onOwner(context, { additiveIn: true }),
  'new oil in': (context) => {
    const { state, layout, owner } = context
    for (const one of owner === undefined ? [] : findSharers(layout, owner))
      gearcaseAt(state, one).oil = 'new'
    onOwner(context, {
      measured: false,
      hoseEmpty: false,
      levelChecked: false,
      toppedUp: false,
      ranSinceFill: false,
      levelCheckedSinceRun: false,
    })
    changeState(context)
  },
  'hose empty': (context) => onOwner(context, { hoseEmpty: true }),
  'level checked': (context) => {
    const { state, owner } = context
    const levelCheckedSinceRun = owner !== undefined && gearcaseAt(state, owner).ranSinceFill
    onOwner(context, { levelChecked: true, levelCheckedSinceRun, toppedUp: false })
  },
  'level topped up': (context) => onOwner(context, { toppedUp: true }),
  'oil settled': ({ state }) => write(state, { settled: true }),
  'leaks checked': (context) => onSelfOrAll(context, { leaksChecked: true, leaksCheckedSinceRun: true }),
  'waited for leaks': (context) => onSelfOrAll(context, { waitedForLeaks: true }),
  'wiped down': (context) => onSelfOrAll(context, { wipedDown: true }),
  'used oil taken away': ({ state }) => {
    write(state, { usedOil: 'taken away' })
    // The oil leaves in its pans.
    for (const gearcase of Object.values(state.gearcases)) gearcase.panPlaced = false
  },
  'work recorded': ({ state }) => write(state, { recorded: true }),
} satisfies Readonly<Record<string, Effect>>

export type EffectName = keyof typeof EFFECTS

function write<T extends object>(state: T, changes: Partial<T>): void {
  Object.assign(state, changes)
}

function onOpening({ state, opening, instance }: StepContext, changes: Partial<OpeningState>): void {
  if (opening !== undefined) Object.assign(openingAt(state, opening, instance), changes)
}

function onCover({ state, cover, instance }: StepContext, changes: Partial<CoverState>): void {
  if (cover !== undefined) Object.assign(coverAt(state, cover, instance), changes)
}

function onFilter({ state, filter, instance }: StepContext, changes: Partial<FilterState>): void {
  if (filter !== undefined) Object.assign(filterAt(state, filter, instance), changes)
}

/** The step's opening, cover or filter. */
function onPart(context: StepContext, changes: Partial<Omit<FilterState, 'position'>>): void {
  onOpening(context, changes)
  onCover(context, changes)
  onFilter(context, changes)
}

function onSelf({ state, self }: StepContext, changes: Partial<GearcaseState>): void {
  if (self !== undefined) Object.assign(gearcaseAt(state, self), changes)
}

function onOwner({ state, owner }: StepContext, changes: Partial<GearcaseState>): void {
  if (owner !== undefined) Object.assign(gearcaseAt(state, owner), changes)
}

/** A step without a gearcase is done at all of them. */
function onSelfOrAll({ state, self }: StepContext, changes: Partial<GearcaseState>): void {
  const here = self === undefined ? Object.values(state.gearcases) : [gearcaseAt(state, self)]
  for (const one of here) Object.assign(one, changes)
}

function setSeal({ state, seal, instance }: StepContext, to: MutableState['seals'][string]): void {
  if (seal !== undefined) state.seals[stateKey(seal.path, instance)] = to
}

function setShield({ state, shield }: StepContext, to: 'on' | 'off'): void {
  if (shield !== undefined) state.shields[shield.path] = to
}

/** Work on a gearcase makes an earlier leak check and an earlier record worthless. */
function changeState(context: StepContext): void {
  onSelf(context, { leaksChecked: false, wipedDown: false })
  context.state.recorded = false
}
