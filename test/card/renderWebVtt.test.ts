import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { type Cue, cueList, renderWebVtt } from '../../src/v1/card.js'
import { law } from '../support/law.js'
import { HOSTILE_NAMES, withHostileNames } from './hostilePlan.js'
import { SKARNFELL_PLAN } from './skarnfellPlan.js'

const makeCue = (...texts: readonly string[]): Cue => ({
  ...{ id: 'a', kind: 'fill', title: [], shots: [], hold: [], screen: [], from: '/lines/0', seconds: 3 },
  say: texts.map((text) => ({ kind: 'step', text, from: '/lines/0' })),
})

interface ReadCaption {
  readonly from: number
  readonly to: number
  readonly lines: readonly string[]
}

/** Reads a file back according to the format, not with the code under test. */
function readCaptions(file: string): readonly ReadCaption[] {
  const [head, ...blocks] = file.trimEnd().split('\n\n')
  expect(head).toBe('WEBVTT')
  return blocks.map((block) => {
    const [, times = '', ...lines] = block.split('\n')
    const match = /^(\d{2,}):([0-5]\d):([0-5]\d)\.(\d{3}) --> (\d{2,}):([0-5]\d):([0-5]\d)\.(\d{3})$/.exec(
      times,
    )
    if (match === null) throw new Error(`no times: ${times}`)
    const [h1 = 0, m1 = 0, s1 = 0, f1 = 0, h2 = 0, m2 = 0, s2 = 0, f2 = 0] = match.slice(1).map(Number)
    const unescapeLine = (line: string) =>
      line.replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&amp;/g, '&')
    return {
      from: ((h1 * 60 + m1) * 60 + s1) * 1000 + f1,
      to: ((h2 * 60 + m2) * 60 + s2) * 1000 + f2,
      lines: lines.map(unescapeLine),
    }
  })
}

/** At most two lines of 42 characters, 17 characters a second, and no caption before the previous one ends. */
function expectLimits(captions: readonly ReadCaption[]): void {
  let end = 0
  for (const { from, to, lines } of captions) {
    expect(lines.length).toBeGreaterThanOrEqual(1)
    expect(lines.length).toBeLessThanOrEqual(2)
    for (const line of lines) expect(Array.from(line).length).toBeLessThanOrEqual(42)
    expect(Array.from(lines.join(' ')).length).toBeLessThanOrEqual(((to - from) / 1000) * 17)
    expect(from).toBeGreaterThanOrEqual(end)
    end = to
  }
}

const words = fc.array(fc.stringMatching(/^[!-~äöüßØ漢字]{1,60}$/), { minLength: 1, maxLength: 40 })
const scenes = fc.array(words, { minLength: 1, maxLength: 5 })

describe('renderWebVtt', () => {
  it('keeps the limits, loses no word and never overlaps, however tight the scenes are', () => {
    law(
      200,
      scenes,
      fc.array(fc.integer({ min: 0, max: 5000 }), { minLength: 5, maxLength: 5 }),
      (texts, gaps) => {
        const cues = texts.map((text) => makeCue(text.join(' ')))
        // The earliest starts that the function accepts, plus a random gap.
        const starts: number[] = [0]
        for (const [index, cue] of cues.entries()) {
          const characters = readCaptions(renderWebVtt([cue], [0])).map(
            ({ lines }) => Array.from(lines.join(' ')).length,
          )
          const shortest = characters.reduce(
            (sum, character) => sum + Math.max(1000, Math.ceil((character * 1000) / 17)),
            0,
          )
          starts.push((Math.round((starts[index] ?? 0) * 1000) + shortest + (gaps[index] ?? 0)) / 1000)
        }
        const captions = readCaptions(renderWebVtt(cues, starts.slice(0, cues.length)))
        expectLimits(captions)
        const joinedText = (parts: readonly string[]) => parts.join('').replace(/\s/g, '')
        expect(joinedText(captions.flatMap(({ lines }) => lines))).toBe(joinedText(texts.flat()))
        for (const [index, start] of starts.slice(0, cues.length).entries())
          expect(
            captions.map(({ from }) => from),
            `scene ${index + 1}`,
          ).toContain(Math.round(start * 1000))
      },
    )
  })

  it('captions the example in one file by the starts of its scenes, and each scene alone', () => {
    const cues = cueList(SKARNFELL_PLAN, en)
    const starts = cues.map((_cue, index) =>
      cues.slice(0, index).reduce((sum, { seconds }) => sum + seconds + 2, 0),
    )
    const film = readCaptions(renderWebVtt(cues, starts))
    expectLimits(film)
    const singleCaption = cues.map((cue) => readCaptions(renderWebVtt([cue], [0])))
    for (const captions of singleCaption) expectLimits(captions)
    expect(film.map(({ lines }) => lines)).toEqual(singleCaption.flat().map(({ lines }) => lines))
    expect(renderWebVtt([], [])).toBe('WEBVTT\n')
  })

  it('says what time a scene needs, and refuses starts that are no times', () => {
    const cues = [makeCue('One two three four five six seven.'), makeCue('Two.')]
    expect(() => renderWebVtt(cues, [0, 1.5])).toThrow(
      'starts[1] must be at least 2 for the captions of scene 1, got 1.5',
    )
    expect(() => renderWebVtt(cues, [5, 5])).toThrow('starts[1] must be after starts[0], got 5')
    expect(() => renderWebVtt(cues, [0])).toThrow('starts must have a time for each of the 2 scenes, got 1')
    for (const start of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => renderWebVtt(cues, [start, 60])).toThrow(RangeError)
    expect(() => renderWebVtt(cues, ['0', 60] as never)).toThrow(TypeError)
  })

  it.each(HOSTILE_NAMES)('keeps its form with any names in the sheet: %j', (name) => {
    const hostileCues = cueList(withHostileNames(name), en)
    const written = renderWebVtt(
      hostileCues,
      hostileCues.map((_cue, index) => index * 400),
    )
    expectLimits(readCaptions(written))
    expect(written.replace(/^[0-9:.]+ --> [0-9:.]+$/gm, '')).not.toMatch(/[<>\u202a-\u202e]|-->/)
  })
})
