import type { Element } from 'hast'
import type { TorqueDrawing } from '../../service/index.js'
import { element } from './element.js'

const WIDTH = 180
const HEIGHT = 30
const MARGIN = 10

/**
 * The permitted torque as an open bar (a line, for a bare nominal), the true band as a full bar, the setting as a
 * pointer, all on one axis. The row has the same figures as text, so it is hidden from a screen reader.
 */
export function torqueDrawing({ stated, trueBand, setting }: TorqueDrawing): Element {
  const values = [stated.low, stated.high, stated.aim, trueBand.low, trueBand.high, setting].filter(
    (value) => value !== undefined,
  )
  const lowest = Math.min(...values)
  const span = Math.max(...values) - lowest || 1
  const at = (value: number) => Number((MARGIN + ((value - lowest) / span) * (WIDTH - 2 * MARGIN)).toFixed(1))
  const axis = element('path', {
    d: `M2 24H${WIDTH - 2}`,
    stroke: 'currentColor',
    strokeWidth: '1',
    fill: 'none',
  })
  const { low, aim, high } = stated
  const left = low === undefined ? 2 : at(low)
  const right = high === undefined ? WIDTH - 2 : at(high)
  const band =
    low === undefined && high === undefined
      ? []
      : [
          element('rect', {
            x: String(left),
            y: '9',
            width: (right - left).toFixed(1),
            height: '12',
            fill: 'none',
            stroke: 'currentColor',
            strokeWidth: '1.5',
          }),
        ]
  const line =
    aim === undefined || low !== undefined
      ? []
      : [element('path', { d: `M${at(aim)} 7V23`, stroke: 'currentColor', strokeWidth: '2.5' })]
  const bar = element('rect', {
    x: String(at(trueBand.low)),
    y: '13',
    width: Math.max(1, at(trueBand.high) - at(trueBand.low)).toFixed(1),
    height: '4',
    fill: 'currentColor',
  })
  const set = at(setting)
  const pointer = element('path', { d: `M${set - 4} 1H${set + 4}L${set} 8Z`, fill: 'currentColor' })
  const ticks = element('path', {
    d: [left, right].map((x) => `M${x} 21V27`).join(''),
    stroke: 'currentColor',
    strokeWidth: '1',
  })
  return element(
    'svg',
    { className: ['scale'], viewBox: `0 0 ${WIDTH} ${HEIGHT}`, ariaHidden: 'true', focusable: 'false' },
    axis,
    ticks,
    ...band,
    ...line,
    bar,
    pointer,
  )
}

/** The three signs of the drawing with their words. */
export function torqueLegend(legend: { allowed: string; trueBand: string; setting: string }): Element {
  const sign = (d: string, fill: boolean, word: string) =>
    element(
      'span',
      { className: ['sign'] },
      element(
        'svg',
        { viewBox: '0 0 24 12', ariaHidden: 'true', focusable: 'false' },
        element('path', {
          d,
          fill: fill ? 'currentColor' : 'none',
          stroke: 'currentColor',
          strokeWidth: fill ? '0' : '1.5',
        }),
      ),
      word,
    )
  return element(
    'p',
    { className: ['legend'] },
    sign('M1 1H23V11H1Z', false, legend.allowed),
    sign('M1 4H23V8H1Z', true, legend.trueBand),
    sign('M7 2H17L12 10Z', true, legend.setting),
  )
}
