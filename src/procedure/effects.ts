import { listOilSharers, makeStateKey } from './layout.js'
import type { CoverState, FilterState, GearcaseState, MutableState, OpeningState } from './state.js'
import type { StepContext } from './stepContext.js'
import { getCoverState, getFilterState, getGearcaseState, getOpeningState } from './stepContext.js'

type Effect = (context: StepContext) => void

/** The effects of actions on the state, applied after their needs are checked. */
export const EFFECTS = {
  'variant found': ({ state }) => set(state, { variantFound: true }),
  'manual read': ({ state }) => set(state, { manualRead: true }),
  'protection worn': ({ state }) => set(state, { protectionWorn: true }),
  'engine runs and the machine may move': ({ state }) => {
    set(state, { engine: 'running', ground: 'not known', chocked: [], secured: [], settled: false })
    for (const gearcase of Object.values(state.gearcases))
      set(gearcase, { wheelMark: 'not known', panPlaced: false })
  },
  'oil warm': ({ state }) => set(state, { oilWarm: true }),
  'oil runs through': ({ state }) => {
    for (const gearcase of Object.values(state.gearcases))
      set(gearcase, { ranSinceFill: true, levelCheckedSinceRun: false, leaksCheckedSinceRun: false })
    for (const parts of [state.openings, state.covers, state.filters])
      for (const part of Object.values(parts)) part.areaClean = false
  },
  'on level ground': ({ state }) => set(state, { ground: 'level' }),
  'engine stopped': ({ state }) => set(state, { engine: 'stopped' }),
  'wheels chocked': (context) => {
    const { state } = context
    state.chocked = [...new Set([...state.chocked, ...listAxles(context)])]
  },
  'item secured': ({ state, part }) => {
    if (part?.kind === 'secured item') state.secured = [...new Set([...state.secured, part.path])]
  },
  'chocks and pan away': ({ state }) => {
    state.chocked = []
    for (const gearcase of Object.values(state.gearcases)) gearcase.panPlaced = false
  },
  'raised on the jack': ({ state, indexedSheet, part }) => {
    const supports = part?.kind === 'support' ? [part.id] : [...indexedSheet.axleOfSupport.keys()]
    state.lifted = [...new Set([...state.lifted, ...supports])]
  },
  'resting on stands': ({ state, part }) => {
    const supports = part?.kind === 'support' ? [part.id] : state.lifted
    state.lifted = [...new Set([...state.lifted, ...supports])]
    state.onStands = [...new Set([...state.onStands, ...supports])]
  },
  'on its wheels': ({ state }) => set(state, { lifted: [], onStands: [] }),
  // Ramps are on level ground, and the machine moves only a short way.
  'on ramps': (context) => set(context.state, { ground: 'level', onRamps: listAxles(context) }),
  'off the ramps': ({ state }) => set(state, { ground: 'level', onRamps: [] }),
  'shield off': (context) => setShield(context, 'off'),
  'shield on': (context) => {
    setShield(context, 'on')
    context.state.recorded = false
  },
  'wheel at its mark': (context) =>
    setGearcase(context, { wheelMark: context.step.at?.wheelMark ?? 'not known' }),
  'rolled to the mark': (context) => {
    const { state } = context
    set(state, { chocked: [], settled: false })
    for (const gearcase of Object.values(state.gearcases))
      set(gearcase, { wheelMark: 'not known', panPlaced: false })
    setGearcase(context, { wheelMark: context.step.at?.wheelMark ?? 'not known' })
  },
  'area clean': (context) => setPart(context, { areaClean: true }),
  'plug loose in its seat': (context) => {
    setOpening(context, { position: 'cracked', everCracked: true, faceWiped: false })
    for (const seal of context.opening?.seals ?? [])
      context.state.seals[makeStateKey(seal.path, context.instance)] = 'used'
    resetChecks(context)
  },
  'plug in by hand': (context) => setOpening(context, { position: 'nipped' }),
  'plug out': (context) => {
    setOpening(context, { position: 'out' })
    const { state, target, opening, instance } = context
    if (target === undefined || opening === undefined) return
    const mark = getGearcaseState(state, target).wheelMark
    const { outAt } = getOpeningState(state, opening, instance)
    if (mark !== 'not known' && !outAt.includes(mark)) outAt.push(mark)
  },
  'pan in place': (context) => setGearcase(context, { panPlaced: true }),
  'oil sampled': (context) => setGearcase(context, { sampled: true }),
  'old oil out': (context) => {
    setGearcase(context, { oil: 'out' })
    context.state.usedOil = 'in the pan'
  },
  'cover off': (context) => {
    setCover(context, { position: 'off', wasRemoved: true, faceWiped: false, cured: false })
    const { state, cover, instance } = context
    if (cover !== undefined) state.seals[makeStateKey(cover.seal.path, instance)] = 'used'
    resetChecks(context)
  },
  'filter off': (context) => {
    const removedState = { wasRemoved: true, inspected: false, cleaned: false, faceWiped: false }
    setFilter(context, { position: 'off', ...removedState })
    for (const seal of context.filter?.seals ?? [])
      context.state.seals[makeStateKey(seal.path, context.instance)] = 'used'
    resetChecks(context)
  },
  'filter inspected': (context) => setFilter(context, { inspected: true }),
  'filter clean': (context) => setFilter(context, { cleaned: true }),
  'filter on': (context) => {
    setFilter(context, { position: context.filter?.filter.held.kind === 'screwed' ? 'in' : 'tight' })
    resetChecks(context)
  },
  'filter tight': (context) => {
    setFilter(context, { position: 'tight' })
    resetChecks(context)
  },
  'old oil inspected': (context) => setGearcase(context, { oilSeen: true }),
  'magnet inspected': (context) => setPart(context, { magnetSeen: true }),
  'magnet clean': (context) => setPart(context, { magnetClean: true }),
  'breather clear': (context) => setGearcase(context, { breatherClear: true }),
  'old seal off': (context) => setSeal(context, 'off'),
  'face wiped': (context) => setPart(context, { faceWiped: true }),
  'new seal on': (context) => setSeal(context, 'new'),
  'seal inspected': (context) => setSeal(context, 'inspected'),
  'plug in with its seal': (context) => setOpening(context, { position: 'in' }),
  'plug tight': (context) => {
    setOpening(context, { position: 'tight' })
    resetChecks(context)
  },
  'cover on': (context) => setCover(context, { position: 'in' }),
  'cover tight': (context) => {
    setCover(context, { position: 'tight' })
    resetChecks(context)
  },
  'sealant cured': (context) => setCover(context, { cured: true }),
  'refill measured': (context) => setOwner(context, { measured: true }),
  'additive in': (context) => setOwner(context, { additiveIn: true }),
  'new oil in': (context) => {
    const { state, indexedSheet, owner } = context
    for (const candidate of owner === undefined ? [] : listOilSharers(indexedSheet, owner))
      getGearcaseState(state, candidate).oil = 'new'
    setOwner(context, {
      measured: false,
      hoseEmpty: false,
      levelChecked: false,
      toppedUp: false,
      ranSinceFill: false,
      levelCheckedSinceRun: false,
    })
  },
  'hose empty': (context) => setOwner(context, { hoseEmpty: true }),
  'level checked': (context) => {
    const { state, owner } = context
    const levelCheckedSinceRun = owner !== undefined && getGearcaseState(state, owner).ranSinceFill
    setOwner(context, { levelChecked: true, levelCheckedSinceRun, toppedUp: false })
  },
  'level topped up': (context) => setOwner(context, { toppedUp: true }),
  'oil settled': ({ state }) => set(state, { settled: true }),
  'leaks checked': (context) => {
    // A record written before the leak check is not valid.
    const isFirstCheck = listGearcases(context).some(
      (gearcase) => !gearcase.leaksChecked || (gearcase.ranSinceFill && !gearcase.leaksCheckedSinceRun),
    )
    if (isFirstCheck) context.state.recorded = false
    setGearcases(context, { leaksChecked: true, leaksCheckedSinceRun: true })
  },
  'waited for leaks': (context) => setGearcases(context, { waitedForLeaks: true }),
  'wiped down': (context) => setGearcases(context, { wipedDown: true }),
  'used oil taken away': ({ state }) => {
    set(state, { usedOil: 'taken away' })
    // The pans are taken away with the oil.
    for (const gearcase of Object.values(state.gearcases)) gearcase.panPlaced = false
  },
  'work recorded': ({ state }) => set(state, { recorded: true }),
} satisfies Readonly<Record<string, Effect>>

export type EffectName = keyof typeof EFFECTS

function set<T extends object>(state: T, changes: Partial<T>): void {
  Object.assign(state, changes)
}

/** The axle of the step, or all axles. */
function listAxles({ indexedSheet, part }: StepContext): string[] {
  if (part?.kind === 'axle') return [part.id]
  return indexedSheet.axles.length > 0 ? [...indexedSheet.axles] : ['wheels']
}

function setOpening({ state, opening, instance }: StepContext, changes: Partial<OpeningState>): void {
  if (opening !== undefined) Object.assign(getOpeningState(state, opening, instance), changes)
}

function setCover({ state, cover, instance }: StepContext, changes: Partial<CoverState>): void {
  if (cover !== undefined) Object.assign(getCoverState(state, cover, instance), changes)
}

function setFilter({ state, filter, instance }: StepContext, changes: Partial<FilterState>): void {
  if (filter !== undefined) Object.assign(getFilterState(state, filter, instance), changes)
}

/** Changes the opening, cover or filter of the step. */
function setPart(context: StepContext, changes: Partial<Omit<FilterState, 'position'>>): void {
  setOpening(context, changes)
  setCover(context, changes)
  setFilter(context, changes)
}

function setGearcase({ state, target }: StepContext, changes: Partial<GearcaseState>): void {
  if (target !== undefined) Object.assign(getGearcaseState(state, target), changes)
}

function setOwner({ state, owner }: StepContext, changes: Partial<GearcaseState>): void {
  if (owner !== undefined) Object.assign(getGearcaseState(state, owner), changes)
}

/** Changes the gearcase of the step, or all if it has none. */
function setGearcases(context: StepContext, changes: Partial<GearcaseState>): void {
  for (const gearcase of listGearcases(context)) Object.assign(gearcase, changes)
}

function listGearcases({ state, target }: StepContext): readonly MutableState['gearcases'][string][] {
  return target === undefined ? Object.values(state.gearcases) : [getGearcaseState(state, target)]
}

function setSeal({ state, seal, instance }: StepContext, to: MutableState['seals'][string]): void {
  if (seal !== undefined) state.seals[makeStateKey(seal.path, instance)] = to
}

function setShield({ state, shield }: StepContext, to: 'on' | 'off'): void {
  if (shield !== undefined) state.shields[shield.path] = to
}

/** Work on a gearcase makes an earlier leak check and record invalid. */
function resetChecks(context: StepContext): void {
  setGearcase(context, { leaksChecked: false, wipedDown: false })
  context.state.recorded = false
}
