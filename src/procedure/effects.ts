import { type OpeningLayout, stateKey } from './layout.js'
import { coverAt, findSharers, gearcaseAt, openingAt, ownerOf, type Site, unitOf } from './site.js'
import type { CoverState, GearcaseState } from './state.js'

type Effect = (site: Site) => void

/** What an action changes. Each writes the new state whatever the old one was; needs decide whether it was allowed. */
export const EFFECTS = {
  'manual read': ({ state }: Site) => {
    state.manualRead = true
  },
  'protection worn': ({ state }: Site) => {
    state.protectionWorn = true
  },
  'engine runs and the machine may move': ({ state }: Site) => {
    state.engine = 'running'
    state.ground = 'not known'
    state.chocked = []
    state.settled = false
    for (const gearcase of Object.values(state.gearcases)) {
      gearcase.wheelMark = 'not known'
      gearcase.panPlaced = false
    }
  },
  'oil warm': ({ state }: Site) => {
    state.oilWarm = true
  },
  'oil runs through': ({ state }: Site) => {
    for (const gearcase of Object.values(state.gearcases)) {
      gearcase.ranSinceFill = true
      gearcase.levelCheckedSinceRun = false
    }
    for (const part of [...Object.values(state.openings), ...Object.values(state.covers)])
      part.areaClean = false
  },
  'on level ground': ({ state }: Site) => {
    state.ground = 'level'
  },
  'engine stopped': ({ state }: Site) => {
    state.engine = 'stopped'
  },
  'wheels chocked': ({ state, layout, part }: Site) => {
    const axles = part?.kind === 'axle' ? [part.id] : layout.axles.length > 0 ? layout.axles : ['wheels']
    state.chocked = [...new Set([...state.chocked, ...axles])]
  },
  'raised on the jack': ({ state, layout, part }: Site) => {
    const supports = part?.kind === 'support' ? [part.id] : [...layout.axleOfSupport.keys()]
    state.lifted = [...new Set([...state.lifted, ...supports])]
  },
  'resting on stands': ({ state, part }: Site) => {
    const supports = part?.kind === 'support' ? [part.id] : state.lifted
    state.lifted = [...new Set([...state.lifted, ...supports])]
    state.onStands = [...new Set([...state.onStands, ...supports])]
  },
  'on its wheels': ({ state }: Site) => {
    state.lifted = []
    state.onStands = []
  },
  'shield off': (site: Site) => setShield(site, 'off'),
  'shield on': (site: Site) => {
    setShield(site, 'on')
    site.state.recorded = false
  },
  'wheel at its mark': (site: Site) => onUnit(site, { wheelMark: site.step.at?.wheelMark ?? 'not known' }),
  'area clean': (site: Site) => writeOnPart(site, { areaClean: true }),
  'plug loose in its seat': (site: Site) => {
    onOpening(site, (opening) => {
      const here = openingAt(site.state, opening, site.instance)
      here.position = 'cracked'
      here.everCracked = true
      here.faceWiped = false
      for (const seal of opening.seals) site.state.seals[stateKey(seal.path, site.instance)] = 'used'
    })
    disturb(site)
  },
  'plug in by hand': (site: Site) => {
    onOpening(site, (opening) => {
      openingAt(site.state, opening, site.instance).position = 'nipped'
    })
  },
  'plug out': (site: Site) => {
    onOpening(site, (opening) => {
      const here = openingAt(site.state, opening, site.instance)
      here.position = 'out'
      here.everCracked = true
      const mark = wheelMarkOf(site)
      if (mark !== 'not known' && !here.outAt.includes(mark)) here.outAt.push(mark)
    })
  },
  'pan in place': (site: Site) => onUnit(site, { panPlaced: true }),
  'old oil out': (site: Site) => {
    onUnit(site, { oil: 'out' })
    site.state.usedOil = 'in the pan'
  },
  'cover off': (site: Site) => {
    onCover(site, { position: 'off', everOff: true, faceWiped: false, cured: false })
    disturb(site)
  },
  'old oil judged': (site: Site) => onUnit(site, { oilSeen: true }),
  'magnet judged': (site: Site) => writeOnPart(site, { magnetSeen: true }),
  'magnet clean': (site: Site) => writeOnPart(site, { magnetClean: true }),
  'breather clear': (site: Site) => onUnit(site, { breatherClear: true }),
  'old seal off': (site: Site) => setSeal(site, 'off'),
  'face wiped': (site: Site) => writeOnPart(site, { faceWiped: true }),
  'new seal on': (site: Site) => setSeal(site, 'new'),
  'seal judged': (site: Site) => setSeal(site, 'inspected'),
  'plug in with its seal': (site: Site) => {
    onOpening(site, (opening) => {
      openingAt(site.state, opening, site.instance).position = 'in'
    })
  },
  'plug tight': (site: Site) => {
    onOpening(site, (opening) => {
      openingAt(site.state, opening, site.instance).position = 'tight'
    })
    disturb(site)
  },
  'cover on': (site: Site) => onCover(site, { position: 'in' }),
  'cover tight': (site: Site) => {
    onCover(site, { position: 'tight' })
    disturb(site)
  },
  'sealant cured': (site: Site) => onCover(site, { cured: true }),
  'refill measured': (site: Site) => onOwner(site, { measured: true }),
  'additive in': (site: Site) => onOwner(site, { additiveIn: true }),
  'new oil in': (site: Site) => {
    const owner = ownerOf(site)
    for (const unit of owner === undefined ? [] : findSharers(site.layout, owner))
      gearcaseAt(site.state, unit).oil = 'new'
    onOwner(site, {
      measured: false,
      hoseEmpty: false,
      levelChecked: false,
      toppedUp: false,
      ranSinceFill: false,
      levelCheckedSinceRun: false,
    })
    disturb(site)
  },
  'hose empty': (site: Site) => onOwner(site, { hoseEmpty: true }),
  'level judged': (site: Site) => {
    const owner = ownerOf(site)
    const levelCheckedSinceRun = owner !== undefined && gearcaseAt(site.state, owner).ranSinceFill
    onOwner(site, { levelChecked: true, levelCheckedSinceRun, toppedUp: false })
  },
  'level made up': (site: Site) => onOwner(site, { toppedUp: true }),
  'oil settled': ({ state }: Site) => {
    state.settled = true
  },
  'leaks looked for': (site: Site) => onUnits(site, { leaksChecked: true }),
  'wiped down': (site: Site) => onUnits(site, { wipedDown: true }),
  'used oil away': ({ state }: Site) => {
    state.usedOil = 'taken away'
  },
  'work recorded': ({ state }: Site) => {
    state.recorded = true
  },
} satisfies Readonly<Record<string, Effect>>

export type EffectName = keyof typeof EFFECTS

function onOpening(site: Site, write: (opening: OpeningLayout) => void): void {
  if (site.opening !== undefined) write(site.opening)
}

function onCover(site: Site, marks: Partial<CoverState>): void {
  if (site.cover === undefined) return
  Object.assign(coverAt(site.state, site.cover, site.instance), marks)
  if (marks.position === 'off') site.state.seals[stateKey(site.cover.seal.path, site.instance)] = 'used'
}

function onUnit(site: Site, marks: Partial<GearcaseState>): void {
  const unit = unitOf(site)
  if (unit !== undefined) Object.assign(gearcaseAt(site.state, unit), marks)
}

function onOwner(site: Site, marks: Partial<GearcaseState>): void {
  const owner = ownerOf(site)
  if (owner !== undefined) Object.assign(gearcaseAt(site.state, owner), marks)
}

function wheelMarkOf(site: Site): GearcaseState['wheelMark'] {
  const unit = unitOf(site)
  return unit === undefined ? 'not known' : gearcaseAt(site.state, unit).wheelMark
}

function writeOnPart(
  site: Site,
  marks: { areaClean?: true; faceWiped?: true; magnetSeen?: true; magnetClean?: true },
): void {
  if (site.opening !== undefined) Object.assign(openingAt(site.state, site.opening, site.instance), marks)
  onCover(site, marks)
}

function setSeal(site: Site, to: 'off' | 'new' | 'inspected'): void {
  if (site.seal !== undefined) site.state.seals[stateKey(site.seal.path, site.instance)] = to
}

function setShield({ state, shield }: Site, to: 'on' | 'off'): void {
  if (shield !== undefined) state.shields[shield.path] = to
}

/** A step without a gearcase is done at all of them. */
function onUnits(site: Site, marks: Partial<GearcaseState>): void {
  const unit = unitOf(site)
  const here = unit === undefined ? Object.values(site.state.gearcases) : [gearcaseAt(site.state, unit)]
  for (const one of here) Object.assign(one, marks)
}

/** Work on a gearcase makes an earlier leak check and an earlier record worthless. */
function disturb(site: Site): void {
  onUnit(site, { leaksChecked: false, wipedDown: false })
  site.state.recorded = false
}
