import type { HoseFlow } from './hoseFlow.js'
import {
  calculateFunnelEmptyingTime,
  calculateFunnelVolume,
  calculateHoseArea,
  calculateHoseEmptyingTime,
  calculateHoseFillingTime,
  calculateLevel,
  calculateSpeed,
} from './hoseFlow.js'

/** Times of the three parts of a pour in s, and maximum speeds in m/s, overall and with the hose full. */
export interface FillingTimes {
  readonly fillSeconds: number
  readonly emptySeconds: number
  readonly drainSeconds: number
  readonly maxSpeed: number
  readonly maxFullSpeed: number
  readonly isFull: boolean
}

/** Adds up all fillings: the oil first runs down the hose, then the funnel empties through the full hose. */
export function addUpFillingTimes(flow: HoseFlow, volume: number): FillingTimes {
  const area = calculateHoseArea(flow)
  const capacity = calculateFunnelVolume(flow)
  let remaining = volume
  let frontLength = 0
  let fillSeconds = 0
  let emptySeconds = 0
  let fullFunnelTime: number | undefined
  let maxSpeed = 0
  let maxFullSpeed = 0
  while (remaining > volume * 1e-12) {
    const filling = Math.min(capacity, remaining)
    remaining -= filling
    const start = frontLength
    frontLength = Math.min(flow.length, start + filling / area)
    if (frontLength > start) {
      fillSeconds += calculateHoseFillingTime(flow, start, frontLength, filling)
      for (let eighth = 0; eighth <= 8; eighth += 1) {
        const length = start + ((frontLength - start) * eighth) / 8
        const head =
          calculateLevel(flow, filling - area * (length - start)) + (flow.drop * length) / flow.length
        if (length > 0 || flow.kineticFactor > 0)
          maxSpeed = Math.max(maxSpeed, calculateSpeed(flow, head, length))
      }
    }
    const left = filling - area * (frontLength - start)
    if (frontLength === flow.length && left > 0) {
      const speed = calculateSpeed(flow, flow.drop + calculateLevel(flow, left), flow.length)
      maxSpeed = Math.max(maxSpeed, speed)
      maxFullSpeed = Math.max(maxFullSpeed, speed)
      // every full funnel after the first takes the same time, since the hose is full
      const isFullFunnel = left === capacity
      const time =
        isFullFunnel && fullFunnelTime !== undefined
          ? fullFunnelTime
          : calculateFunnelEmptyingTime(flow, left)
      if (isFullFunnel) fullFunnelTime = time
      emptySeconds += time
    }
  }
  const isFull = frontLength === flow.length
  return {
    fillSeconds,
    emptySeconds,
    drainSeconds: calculateHoseEmptyingTime(flow),
    maxSpeed,
    maxFullSpeed,
    isFull,
  }
}
