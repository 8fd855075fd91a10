import { createElement, type Html } from './createElement.js'

/** A length in a drawing, to a hundredth of a millimetre. */
export const roundOff = (value: number): number => Number(value.toFixed(2))

/** Attributes of a drawing whose unit is a millimetre on paper. */
export const inMillimetres = (width: number, height: number) => ({
  viewBox: `0 0 ${roundOff(width)} ${roundOff(height)}`,
  width: `${roundOff(width)}mm`,
  height: `${roundOff(height)}mm`,
  role: 'img',
  focusable: 'false',
})

export const drawLine = (x1: number, y1: number, x2: number, y2: number, width: number): Html =>
  createElement('path', {
    d: `M${roundOff(x1)} ${roundOff(y1)}L${roundOff(x2)} ${roundOff(y2)}`,
    stroke: 'currentColor',
    'stroke-width': width,
  })

/** Upright lines that begin at the same height, such as the marks of a scale: one path, since a scale has a hundred. */
export const drawMarks = (
  marks: readonly { readonly x: number; readonly length: number }[],
  y: number,
  width: number,
): Html =>
  createElement('path', {
    d: marks.map(({ x, length }) => `M${roundOff(x)} ${roundOff(y)}v${-length}`).join(''),
    stroke: 'currentColor',
    'stroke-width': width,
  })

/** A text with its middle at `x` and its base line at `y`; the size is in millimetres. */
export const drawText = (
  x: number,
  y: number,
  text: string,
  size: number,
  weight?: 'bold',
  anchor: 'middle' | 'start' | 'end' = 'middle',
): Html =>
  createElement(
    'text',
    {
      x: roundOff(x),
      y: roundOff(y),
      'font-size': size,
      'font-weight': weight,
      'text-anchor': anchor,
      fill: 'currentColor',
    },
    text,
  )

export const drawBox = (x: number, y: number, width: number, height: number, fill = 'none'): Html =>
  createElement('rect', {
    x: roundOff(x),
    y: roundOff(y),
    width: roundOff(Math.max(0, width)),
    height: roundOff(height),
    fill,
    stroke: 'currentColor',
    'stroke-width': 0.35,
  })
