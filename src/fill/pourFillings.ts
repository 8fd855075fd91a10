import type { HoseFlow } from './hoseFlow.js'
import {
  emptyingTime,
  funnelVolume,
  hoseArea,
  hoseEmptyingTime,
  hoseFillingTime,
  levelOf,
  speedUnder,
} from './hoseFlow.js'

/** Seconds of the three parts of a pour, and the fastest flow in it (m/s), also once the hose is full. */
export interface PouredFillings {
  readonly fills: number
  readonly empties: number
  readonly drains: number
  readonly fastest: number
  readonly fastestFull: number
  readonly full: boolean
}

/** Filling after filling: the front first runs down the hose, then the funnel empties through the full hose. */
export function pourFillings(flow: HoseFlow, volume: number): PouredFillings {
  const area = hoseArea(flow)
  const capacity = funnelVolume(flow)
  let rest = volume
  let front = 0
  let fills = 0
  let empties = 0
  let brimTime: number | undefined
  let fastest = 0
  let fastestFull = 0
  while (rest > volume * 1e-12) {
    const filling = Math.min(capacity, rest)
    rest -= filling
    const start = front
    front = Math.min(flow.length, start + filling / area)
    if (front > start) {
      fills += hoseFillingTime(flow, start, front, filling)
      for (let eighth = 0; eighth <= 8; eighth += 1) {
        const at = start + ((front - start) * eighth) / 8
        const head = levelOf(flow, filling - area * (at - start)) + (flow.drop * at) / flow.length
        if (at > 0 || flow.kinetic > 0) fastest = Math.max(fastest, speedUnder(flow, head, at))
      }
    }
    const left = filling - area * (front - start)
    if (front === flow.length && left > 0) {
      const speed = speedUnder(flow, flow.drop + levelOf(flow, left), flow.length)
      fastest = Math.max(fastest, speed)
      fastestFull = Math.max(fastestFull, speed)
      // every brimful after the first finds the hose full and takes the same time
      const brimful = left === capacity
      const time = brimful && brimTime !== undefined ? brimTime : emptyingTime(flow, left)
      if (brimful) brimTime = time
      empties += time
    }
  }
  const full = front === flow.length
  return { fills, empties, drains: hoseEmptyingTime(flow), fastest, fastestFull, full }
}
