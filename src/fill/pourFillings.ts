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

/** Seconds of the three parts of a pour, and the maximum speeds in m/s, overall and with the hose full. */
export interface FillingTimes {
  readonly fillSeconds: number
  readonly emptySeconds: number
  readonly drainSeconds: number
  readonly maxSpeed: number
  readonly maxFullSpeed: number
  readonly isFull: boolean
}

/** Adds up all fillings: first the front runs down the hose, then the funnel empties through the full hose. */
export function pourFillings(flow: HoseFlow, volume: number): FillingTimes {
  const area = hoseArea(flow)
  const capacity = funnelVolume(flow)
  let remaining = volume
  let front = 0
  let fillSeconds = 0
  let emptySeconds = 0
  let fullFunnelTime: number | undefined
  let maxSpeed = 0
  let maxFullSpeed = 0
  while (remaining > volume * 1e-12) {
    const filling = Math.min(capacity, remaining)
    remaining -= filling
    const start = front
    front = Math.min(flow.length, start + filling / area)
    if (front > start) {
      fillSeconds += hoseFillingTime(flow, start, front, filling)
      for (let eighth = 0; eighth <= 8; eighth += 1) {
        const at = start + ((front - start) * eighth) / 8
        const head = levelOf(flow, filling - area * (at - start)) + (flow.drop * at) / flow.length
        if (at > 0 || flow.kinetic > 0) maxSpeed = Math.max(maxSpeed, speedUnder(flow, head, at))
      }
    }
    const left = filling - area * (front - start)
    if (front === flow.length && left > 0) {
      const speed = speedUnder(flow, flow.drop + levelOf(flow, left), flow.length)
      maxSpeed = Math.max(maxSpeed, speed)
      maxFullSpeed = Math.max(maxFullSpeed, speed)
      // every full funnel after the first takes the same time, since the hose is full
      const isFullFunnel = left === capacity
      const time = isFullFunnel && fullFunnelTime !== undefined ? fullFunnelTime : emptyingTime(flow, left)
      if (isFullFunnel) fullFunnelTime = time
      emptySeconds += time
    }
  }
  const isFull = front === flow.length
  return { fillSeconds, emptySeconds, drainSeconds: hoseEmptyingTime(flow), maxSpeed, maxFullSpeed, isFull }
}
