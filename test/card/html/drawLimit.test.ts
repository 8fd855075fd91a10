import fc from 'fast-check'
import { expect, it } from 'vitest'
import { drawLimit } from '../../../src/card/html/drawLimit.js'
import { renderHtml } from '../../../src/v1/card.js'
import { law } from '../../support/law.js'
import { cardOf, planExample } from '../../support/planExample.js'
import { planExamples } from '../planExamples.js'

/** The place of the due point in every bar, and the width of the drawing. */
const [DUE_AT, WIDTH] = [16, 20]

/** Where the filled part of a bar ends. */
const endOf = (svg: string) => Number(/ d="M0 1H([0-9.]+)V/.exec(svg)?.[1])
const hasArrow = (svg: string) => /V\.2L/.test(svg)
const draw = (fraction: number) => drawLimit({ fraction, text: 'used' }).html

it('fills a limit bar as far as the limit is used, and shows what is over it', () => {
  expect([0, 0.25, 0.5, 1, 1.25].map((fraction) => endOf(draw(fraction)))).toEqual([0, 4, 8, DUE_AT, WIDTH])
  expect(hasArrow(draw(1.25))).toBe(false)
  expect(hasArrow(draw(1.26))).toBe(true)
  expect(hasArrow(draw(Infinity))).toBe(true)
  expect(endOf(draw(-0.5))).toBe(0)
})

it('more use never gives a shorter bar, and no bar leaves its drawing', () => {
  law(200, fc.double({ noNaN: true }), fc.double({ noNaN: true }), (one, two) => {
    const [less, more] = [Math.min(one, two), Math.max(one, two)].map(draw) as [string, string]
    expect(hasArrow(less) && !hasArrow(more)).toBe(false)
    if (!hasArrow(more)) expect(endOf(less)).toBeLessThanOrEqual(endOf(more))
    for (const svg of [less, more]) {
      expect(endOf(svg)).toBeGreaterThanOrEqual(0)
      expect(endOf(svg)).toBeLessThanOrEqual(WIDTH)
    }
  })
})

it('every limit of the chosen services has a bar as long as used ÷ (used + left)', () => {
  let count = 0
  for (const [, plan] of planExamples()) {
    const svgs = renderHtml(cardOf(plan)).match(/<svg class="limit".*?<\/svg>/g) ?? []
    const lines = cardOf(plan)
      .sections.filter(({ id }) => id === 'due')
      .flatMap(({ parts }) => parts.flatMap((part) => (part.kind === 'table' ? part.rows : [])))
      .filter((row) => row.some(({ bar }) => bar !== undefined))
    expect(svgs.length).toBe(lines.length)
    const ends = plan.due
      .filter(({ taken }) => taken)
      .flatMap(({ lines }) => lines)
      .flatMap(({ used, left }) =>
        used === undefined || left === undefined
          ? []
          : [Math.min(used.value / (used.value + left.value), WIDTH / DUE_AT) * DUE_AT],
      )
    for (const svg of svgs.filter((svg) => !hasArrow(svg)))
      expect(Math.min(...ends.map((end) => Math.abs(end - endOf(svg))))).toBeLessThan(0.05)
    count += svgs.length
  }
  expect(count).toBeGreaterThan(12)
})

it('says its values to readers who cannot see it', () => {
  const titles = renderHtml(cardOf(planExample('tind-4'))).match(
    /<svg class="limit".*?<title>(.*?)<\/title>/g,
  )
  expect(titles?.map((text) => text.replace(/.*<title>|<\/title>/g, '').replaceAll('\u00a0', ' '))).toEqual([
    'hours; Used: 211.2 h; Limit: 200 h; Left: 11.2 h over',
    'distance; Used: 1755 km; Limit: 1200 mi; Left: 176.2 km',
    'calendar; Used: 320 d; Limit: 12 months; Left: 45 d',
  ])
})
