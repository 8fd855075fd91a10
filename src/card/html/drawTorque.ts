import type { TorqueDrawing } from '../../service/index.js'
import { createElement, createTag, type Html, type HtmlAttributes } from './createElement.js'

const WIDTH = 180
const HEIGHT = 30
const MARGIN = 10

/**
 * Draws the permitted torque as an open bar (a line for a nominal without tolerance), the actual torque as a solid
 * bar, and the setting as a triangle. Hidden from screen readers, since the row has the same figures as text.
 */
export function drawTorque({ stated, trueBand, setting }: TorqueDrawing): Html {
  const values = [stated.low, stated.high, stated.aim, trueBand.low, trueBand.high, setting].filter(
    (value) => value !== undefined,
  )
  const lowest = Math.min(...values)
  const range = Math.max(...values) - lowest || 1
  const toX = (value: number) =>
    Number((MARGIN + ((value - lowest) / range) * (WIDTH - 2 * MARGIN)).toFixed(1))
  const drawPath = (d: string, attributes: HtmlAttributes) => createElement('path', { d, ...attributes })
  const makeStroke = (strokeWidth: string) => ({ stroke: 'currentColor', 'stroke-width': strokeWidth })
  const drawBar = (x: number, y: string, width: number, height: string, attributes: HtmlAttributes) =>
    createElement('rect', { x: String(x), y, width: width.toFixed(1), height, ...attributes })
  const { low, aim, high } = stated
  const left = low === undefined ? 2 : toX(low)
  const right = high === undefined ? WIDTH - 2 : toX(high)
  const hasBand = low !== undefined || high !== undefined
  const hasLine = aim !== undefined && low === undefined
  const settingX = toX(setting)
  const [bandStart, bandEnd] = [toX(trueBand.low), toX(trueBand.high)]
  return createElement(
    'svg.scale',
    { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, 'aria-hidden': 'true', focusable: 'false' },
    drawPath(`M2 24H${WIDTH - 2}`, { ...makeStroke('1'), fill: 'none' }),
    drawPath([left, right].map((x) => `M${x} 21V27`).join(''), makeStroke('1')),
    hasBand ? drawBar(left, '9', right - left, '12', { fill: 'none', ...makeStroke('1.5') }) : undefined,
    hasLine ? drawPath(`M${toX(aim)} 7V23`, makeStroke('2.5')) : undefined,
    drawBar(bandStart, '13', Math.max(1, bandEnd - bandStart), '4', { fill: 'currentColor' }),
    drawPath(`M${settingX - 4} 1H${settingX + 4}L${settingX} 8Z`, { fill: 'currentColor' }),
  )
}

/** The three signs of the drawing and their meaning. */
export function drawTorqueLegend(legend: { allowed: string; trueBand: string; setting: string }): Html {
  const drawSign = (d: string, isFilled: boolean, word: string) => {
    const [inside, strokeWidth] = isFilled ? ['currentColor', '0'] : ['none', '1.5']
    const path = createElement('path', {
      d,
      fill: inside,
      stroke: 'currentColor',
      'stroke-width': strokeWidth,
    })
    const svg = createElement(
      'svg',
      { viewBox: '0 0 24 12', 'aria-hidden': 'true', focusable: 'false' },
      path,
    )
    return createTag('span.sign', svg, word)
  }
  return createTag(
    'p.legend',
    drawSign('M1 1H23V11H1Z', false, legend.allowed),
    drawSign('M1 4H23V8H1Z', true, legend.trueBand),
    drawSign('M7 2H17L12 10Z', true, legend.setting),
  )
}
