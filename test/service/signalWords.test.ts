import { describe, expect, it } from 'vitest'
import { renderHtml } from '../../src/card/renderHtml.js'
import { renderMarkdown } from '../../src/card/renderMarkdown.js'
import { renderText } from '../../src/card/renderText.js'
import { Z535_GREATEST, Z535_SYMBOL } from '../published/signalWords.js'
import { add, patched } from '../support/patched.js'
import { cardOf, planExample } from '../support/planExample.js'

const planAt = (temperature: object) =>
  planExample('kvist-2', {
    sheet: patched(
      add('/gearcases/bevel/drainTemperature', {
        ...temperature,
        source: { ref: 'manual', page: '12', confidence: 'read' },
      }),
    ),
  })

const wordsOfHotOil = (plan: ReturnType<typeof planExample>) =>
  plan.steps.flatMap(({ cautions }) =>
    cautions.flatMap(({ code, params }) => (code === 'procedure/caution-hot-oil' ? [params['signal']] : [])),
  )

describe('signal words', () => {
  it.each([
    ['to 59 °C', { kind: 'limits', min: '40', max: '59', unit: 'degC' }, 'caution'],
    ['to 60 °C', { kind: 'limits', min: '40', max: '60', unit: 'degC' }, 'warning'],
    ['at 140 °F, which is 60 °C', { kind: 'nominal', value: '140', unit: 'degF' }, 'warning'],
    ['at 139 °F', { kind: 'nominal', value: '139', unit: 'degF' }, 'caution'],
  ])('hot oil drained %s has one word at every step', (_, temperature, word) => {
    const words = wordsOfHotOil(planAt(temperature))
    expect(words.length).toBeGreaterThan(0)
    expect(new Set(words)).toEqual(new Set([word]))
  })

  it('the greatest harm decides the word of a hazard that can do several', () => {
    const hot = { kind: 'nominal', value: '80', unit: 'degC' }
    const words = [planExample('kvist-2'), planAt(hot)].map((plan) => [...new Set(wordsOfHotOil(plan))])
    expect(words.flat()).toEqual(Z535_GREATEST.could)
    expect(words[1]).toEqual([Z535_GREATEST.word])
  })

  it('is caution where no drain temperature is stated', () => {
    expect(new Set(wordsOfHotOil(planExample('kvist-2')))).toEqual(new Set(['caution']))
  })

  it('used oil is a notice in the head of the card and at its step', () => {
    const card = renderText(cardOf(planExample('kvist-2')))
    expect(card).toMatch(/^-- NOTICE: Take used oil/m)
    expect(card).toMatch(/^ {2}-- NOTICE: Used oil spoils/m)
    expect(card).not.toMatch(/!! NOTICE|Caution:/)
    expect(card).toMatch(/!! WARNING/)
  })

  it('a notice has no alert symbol; a caution and a warning have', () => {
    const html = renderHtml(cardOf(planExample('kvist-2')))
    const boxes = html.match(/<div class="caution.*?<\/div>/gs) ?? []
    const withWords = (words: readonly string[]) =>
      boxes.filter((box) => words.some((word) => box.includes(`${word}:`)))
    const notices = withWords(Z535_SYMBOL.without)
    const boxesWithWords = withWords(Z535_SYMBOL.withSymbol)
    expect(notices.length).toBeGreaterThan(0)
    expect(boxesWithWords.length).toBeGreaterThan(0)
    expect(notices.filter((box) => box.includes('sign-caution'))).toEqual([])
    expect(boxesWithWords.filter((box) => !box.includes('sign-caution'))).toEqual([])
    const head = html.match(/<aside class="cautions".*?<\/aside>/s)?.[0] ?? ''
    expect(head).toMatch(/NOTICE:/)
    expect(head).not.toMatch(/sign-caution/)
    expect(renderMarkdown(cardOf(planExample('kvist-2')))).toMatch(/^> NOTICE: Take used oil/m)
  })
})
