import { type Layout, stateKey } from './layout.js'
import type { MutableState } from './state.js'

/** The machine as it comes in: nothing is known to be safe, every plug is tight, the oil is old. */
export function startState(layout: Layout): MutableState {
  const state: MutableState = {
    manualRead: false,
    protectionWorn: false,
    ground: 'not known',
    engine: 'running',
    chocked: [],
    lifted: [],
    onStands: [],
    oilWarm: false,
    settled: false,
    usedOil: 'none',
    recorded: false,
    shields: {},
    gearcases: {},
    openings: {},
    covers: {},
    seals: {},
  }
  for (const shield of layout.shields.values()) state.shields[shield.path] = 'on'
  for (const gearcase of layout.gearcases.values()) {
    for (const instance of gearcase.instances) {
      state.gearcases[stateKey(gearcase.path, instance)] = {
        oil: 'old',
        panPlaced: false,
        oilSeen: false,
        breatherClear: false,
        wheelMark: 'not known',
        measured: false,
        additiveIn: false,
        hoseEmpty: true,
        levelChecked: false,
        toppedUp: false,
        ranSinceFill: false,
        levelCheckedSinceRun: false,
        wipedDown: false,
        leaksChecked: false,
      }
      const fresh = { areaClean: false, faceWiped: false, magnetSeen: false, magnetClean: false }
      for (const opening of gearcase.openings) {
        const key = stateKey(opening.path, instance)
        state.openings[key] = { position: 'tight', everCracked: false, ...fresh, outAt: [] }
        for (const seal of opening.seals) state.seals[stateKey(seal.path, instance)] = 'undisturbed'
      }
      for (const cover of gearcase.covers) {
        const key = stateKey(cover.path, instance)
        state.covers[key] = { position: 'tight', everOff: false, ...fresh, cured: false }
        state.seals[stateKey(cover.seal.path, instance)] = 'undisturbed'
      }
    }
  }
  return state
}
