import { findSharers } from './gearcaseInstance.js'
import { type OpeningLayout, stateKey } from './layout.js'
import type { CoverState, GearcaseState } from './state.js'
import {
  coverAt,
  gearcaseAt,
  gearcaseInstanceOf,
  openingAt,
  ownerOf,
  type StepContext,
} from './stepContext.js'

type Effect = (context: StepContext) => void

/** What an action changes. Each writes the new state whatever the old one was; needs decide whether it was allowed. */
export const EFFECTS = {
  'manual read': ({ state }: StepContext) => {
    state.manualRead = true
  },
  'protection worn': ({ state }: StepContext) => {
    state.protectionWorn = true
  },
  'engine runs and the machine may move': ({ state }: StepContext) => {
    state.engine = 'running'
    state.ground = 'not known'
    state.chocked = []
    state.settled = false
    for (const gearcase of Object.values(state.gearcases)) {
      gearcase.wheelMark = 'not known'
      gearcase.panPlaced = false
    }
  },
  'oil warm': ({ state }: StepContext) => {
    state.oilWarm = true
  },
  'oil runs through': ({ state }: StepContext) => {
    for (const gearcase of Object.values(state.gearcases)) {
      gearcase.ranSinceFill = true
      gearcase.levelCheckedSinceRun = false
    }
    for (const part of [...Object.values(state.openings), ...Object.values(state.covers)])
      part.areaClean = false
  },
  'on level ground': ({ state }: StepContext) => {
    state.ground = 'level'
  },
  'engine stopped': ({ state }: StepContext) => {
    state.engine = 'stopped'
  },
  'wheels chocked': ({ state, layout, part }: StepContext) => {
    const axles = part?.kind === 'axle' ? [part.id] : layout.axles.length > 0 ? layout.axles : ['wheels']
    state.chocked = [...new Set([...state.chocked, ...axles])]
  },
  'raised on the jack': ({ state, layout, part }: StepContext) => {
    const supports = part?.kind === 'support' ? [part.id] : [...layout.axleOfSupport.keys()]
    state.lifted = [...new Set([...state.lifted, ...supports])]
  },
  'resting on stands': ({ state, part }: StepContext) => {
    const supports = part?.kind === 'support' ? [part.id] : state.lifted
    state.lifted = [...new Set([...state.lifted, ...supports])]
    state.onStands = [...new Set([...state.onStands, ...supports])]
  },
  'on its wheels': ({ state }: StepContext) => {
    state.lifted = []
    state.onStands = []
  },
  'shield off': (context: StepContext) => setShield(context, 'off'),
  'shield on': (context: StepContext) => {
    setShield(context, 'on')
    context.state.recorded = false
  },
  'wheel at its mark': (context: StepContext) =>
    onUnit(context, { wheelMark: context.step.at?.wheelMark ?? 'not known' }),
  'area clean': (context: StepContext) => writeOnPart(context, { areaClean: true }),
  'plug loose in its seat': (context: StepContext) => {
    onOpening(context, (opening) => {
      const here = openingAt(context.state, opening, context.instance)
      here.position = 'cracked'
      here.everCracked = true
      here.faceWiped = false
      for (const seal of opening.seals) context.state.seals[stateKey(seal.path, context.instance)] = 'used'
    })
    disturb(context)
  },
  'plug in by hand': (context: StepContext) => {
    onOpening(context, (opening) => {
      openingAt(context.state, opening, context.instance).position = 'nipped'
    })
  },
  'plug out': (context: StepContext) => {
    onOpening(context, (opening) => {
      const here = openingAt(context.state, opening, context.instance)
      here.position = 'out'
      here.everCracked = true
      const mark = wheelMarkOf(context)
      if (mark !== 'not known' && !here.outAt.includes(mark)) here.outAt.push(mark)
    })
  },
  'pan in place': (context: StepContext) => onUnit(context, { panPlaced: true }),
  'old oil out': (context: StepContext) => {
    onUnit(context, { oil: 'out' })
    context.state.usedOil = 'in the pan'
  },
  'cover off': (context: StepContext) => {
    onCover(context, { position: 'off', everOff: true, faceWiped: false, cured: false })
    disturb(context)
  },
  'old oil judged': (context: StepContext) => onUnit(context, { oilSeen: true }),
  'magnet judged': (context: StepContext) => writeOnPart(context, { magnetSeen: true }),
  'magnet clean': (context: StepContext) => writeOnPart(context, { magnetClean: true }),
  'breather clear': (context: StepContext) => onUnit(context, { breatherClear: true }),
  'old seal off': (context: StepContext) => setSeal(context, 'off'),
  'face wiped': (context: StepContext) => writeOnPart(context, { faceWiped: true }),
  'new seal on': (context: StepContext) => setSeal(context, 'new'),
  'seal judged': (context: StepContext) => setSeal(context, 'inspected'),
  'plug in with its seal': (context: StepContext) => {
    onOpening(context, (opening) => {
      openingAt(context.state, opening, context.instance).position = 'in'
    })
  },
  'plug tight': (context: StepContext) => {
    onOpening(context, (opening) => {
      openingAt(context.state, opening, context.instance).position = 'tight'
    })
    disturb(context)
  },
  'cover on': (context: StepContext) => onCover(context, { position: 'in' }),
  'cover tight': (context: StepContext) => {
    onCover(context, { position: 'tight' })
    disturb(context)
  },
  'sealant cured': (context: StepContext) => onCover(context, { cured: true }),
  'refill measured': (context: StepContext) => onOwner(context, { measured: true }),
  'additive in': (context: StepContext) => onOwner(context, { additiveIn: true }),
  'new oil in': (context: StepContext) => {
    const owner = ownerOf(context)
    for (const unit of owner === undefined ? [] : findSharers(context.layout, owner))
      gearcaseAt(context.state, unit).oil = 'new'
    onOwner(context, {
      measured: false,
      hoseEmpty: false,
      levelChecked: false,
      toppedUp: false,
      ranSinceFill: false,
      levelCheckedSinceRun: false,
    })
    disturb(context)
  },
  'hose empty': (context: StepContext) => onOwner(context, { hoseEmpty: true }),
  'level judged': (context: StepContext) => {
    const owner = ownerOf(context)
    const levelCheckedSinceRun = owner !== undefined && gearcaseAt(context.state, owner).ranSinceFill
    onOwner(context, { levelChecked: true, levelCheckedSinceRun, toppedUp: false })
  },
  'level made up': (context: StepContext) => onOwner(context, { toppedUp: true }),
  'oil settled': ({ state }: StepContext) => {
    state.settled = true
  },
  'leaks looked for': (context: StepContext) => onUnits(context, { leaksChecked: true }),
  'wiped down': (context: StepContext) => onUnits(context, { wipedDown: true }),
  'used oil away': ({ state }: StepContext) => {
    state.usedOil = 'taken away'
  },
  'work recorded': ({ state }: StepContext) => {
    state.recorded = true
  },
} satisfies Readonly<Record<string, Effect>>

export type EffectName = keyof typeof EFFECTS

function onOpening(context: StepContext, write: (opening: OpeningLayout) => void): void {
  if (context.opening !== undefined) write(context.opening)
}

function onCover(context: StepContext, marks: Partial<CoverState>): void {
  if (context.cover === undefined) return
  Object.assign(coverAt(context.state, context.cover, context.instance), marks)
  if (marks.position === 'off')
    context.state.seals[stateKey(context.cover.seal.path, context.instance)] = 'used'
}

function onUnit(context: StepContext, marks: Partial<GearcaseState>): void {
  const unit = gearcaseInstanceOf(context)
  if (unit !== undefined) Object.assign(gearcaseAt(context.state, unit), marks)
}

function onOwner(context: StepContext, marks: Partial<GearcaseState>): void {
  const owner = ownerOf(context)
  if (owner !== undefined) Object.assign(gearcaseAt(context.state, owner), marks)
}

function wheelMarkOf(context: StepContext): GearcaseState['wheelMark'] {
  const unit = gearcaseInstanceOf(context)
  return unit === undefined ? 'not known' : gearcaseAt(context.state, unit).wheelMark
}

function writeOnPart(
  context: StepContext,
  marks: { areaClean?: true; faceWiped?: true; magnetSeen?: true; magnetClean?: true },
): void {
  if (context.opening !== undefined)
    Object.assign(openingAt(context.state, context.opening, context.instance), marks)
  onCover(context, marks)
}

function setSeal(context: StepContext, to: 'off' | 'new' | 'inspected'): void {
  if (context.seal !== undefined) context.state.seals[stateKey(context.seal.path, context.instance)] = to
}

function setShield({ state, shield }: StepContext, to: 'on' | 'off'): void {
  if (shield !== undefined) state.shields[shield.path] = to
}

/** A step without a gearcase is done at all of them. */
function onUnits(context: StepContext, marks: Partial<GearcaseState>): void {
  const unit = gearcaseInstanceOf(context)
  const here = unit === undefined ? Object.values(context.state.gearcases) : [gearcaseAt(context.state, unit)]
  for (const one of here) Object.assign(one, marks)
}

/** Work on a gearcase makes an earlier leak check and an earlier record worthless. */
function disturb(context: StepContext): void {
  onUnit(context, { leaksChecked: false, wipedDown: false })
  context.state.recorded = false
}
