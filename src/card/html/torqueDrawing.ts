import type { Element, Properties } from 'hast'
import type { TorqueDrawing } from '../../service/index.js'
import { element, tag } from './element.js'

const WIDTH = 180
const HEIGHT = 30
const MARGIN = 10

/**
 * Draws the permitted torque as an open bar (a line for a nominal without tolerance), the true band as a full bar, and the
 * setting as a pointer. It is hidden from screen readers, since the row has the same figures as text.
 */
export function torqueDrawing({ stated, trueBand, setting }: TorqueDrawing): Element {
  const values = [stated.low, stated.high, stated.aim, trueBand.low, trueBand.high, setting].filter(
    (value) => value !== undefined,
  )
  const lowest = Math.min(...values)
  const span = Math.max(...values) - lowest || 1
  const xOf = (value: number) =>
    Number((MARGIN + ((value - lowest) / span) * (WIDTH - 2 * MARGIN)).toFixed(1))
  const path = (d: string, attributes: Properties) => element('path', { d, ...attributes })
  const stroke = (strokeWidth: string) => ({ stroke: 'currentColor', strokeWidth })
  const bar = (from: number, y: string, width: number, height: string, attributes: Properties) =>
    element('rect', { x: String(from), y, width: width.toFixed(1), height, ...attributes })
  const { low, aim, high } = stated
  const left = low === undefined ? 2 : xOf(low)
  const right = high === undefined ? WIDTH - 2 : xOf(high)
  const hasBand = low !== undefined || high !== undefined
  const hasLine = aim !== undefined && low === undefined
  const settingX = xOf(setting)
  const [from, to] = [xOf(trueBand.low), xOf(trueBand.high)]
  return element(
    'svg.scale',
    { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, ariaHidden: 'true', focusable: 'false' },
    path(`M2 24H${WIDTH - 2}`, { ...stroke('1'), fill: 'none' }),
    path([left, right].map((x) => `M${x} 21V27`).join(''), stroke('1')),
    hasBand ? bar(left, '9', right - left, '12', { fill: 'none', ...stroke('1.5') }) : undefined,
    hasLine ? path(`M${xOf(aim)} 7V23`, stroke('2.5')) : undefined,
    bar(from, '13', Math.max(1, to - from), '4', { fill: 'currentColor' }),
    path(`M${settingX - 4} 1H${settingX + 4}L${settingX} 8Z`, { fill: 'currentColor' }),
  )
}

/** The three signs of the drawing with their words. */
export function torqueLegend(legend: { allowed: string; trueBand: string; setting: string }): Element {
  const sign = (d: string, fill: boolean, word: string) => {
    const [inside, strokeWidth] = fill ? ['currentColor', '0'] : ['none', '1.5']
    const path = element('path', { d, fill: inside, stroke: 'currentColor', strokeWidth })
    const svg = element('svg', { viewBox: '0 0 24 12', ariaHidden: 'true', focusable: 'false' }, path)
    return tag('span.sign', svg, word)
  }
  return tag(
    'p.legend',
    sign('M1 1H23V11H1Z', false, legend.allowed),
    sign('M1 4H23V8H1Z', true, legend.trueBand),
    sign('M7 2H17L12 10Z', true, legend.setting),
  )
}
