import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { buildCase, type PartOnCase } from '../../src/card/buildCase.js'
import type { CaseDrawing } from '../../src/card/cardParts.js'
import { joinSpans } from '../../src/card/spans.js'
import { FACE_HEIGHTS } from '../../src/spec/leaf.js'
import { renderHtml, renderMarkdown, renderText, wallModel } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { wallFacts } from '../../src/v1/service.js'
import type { CasePosition } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { readExample } from '../support/readExample.js'

const context = { catalogue: en, words: en.card, form: 'written' } as const
const makePart = (label: string, position: Omit<CasePosition, 'kind'>, isBreather = false): PartOnCase => ({
  label: [{ text: label }],
  pointer: '/figures/0',
  figure: {
    role: 'position',
    leaf: 'position',
    part: { path: '/gearcases/rear' },
    path: '/gearcases/rear/openings/fill/position',
    resolved: {
      kind: 'stated',
      value: { kind: 'position', ...position },
      trace: { path: '/gearcases/rear/openings/fill/position', reasons: [] },
    },
  } as PartOnCase['figure'],
  isBreather,
})
const drawingOf = (...parts: readonly PartOnCase[]) => buildCase(context, parts)?.drawing as CaseDrawing

describe('a gearcase from the positions of its plugs', () => {
  it('is seen from the side where most plugs are, with the ends of the machine where they are', () => {
    // From the left side of a machine its front is on the left; from the front, its left is on the right.
    expect(drawingOf(makePart('F1', { face: 'left' })).ends).toEqual(['front', 'rear'])
    expect(drawingOf(makePart('F1', { face: 'right' })).ends).toEqual(['rear', 'front'])
    expect(drawingOf(makePart('F1', { face: 'rear' })).ends).toEqual(['left', 'right'])
    expect(drawingOf(makePart('F1', { face: 'front' })).ends).toEqual(['right', 'left'])
    const picture = buildCase(context, [makePart('F1', { face: 'left' }), makePart('D1', { face: 'bottom' })])
    expect(joinSpans(picture?.name ?? [])).toBe('Seen from the left, not to scale')
    expect(picture?.text.map(joinSpans)).toEqual(['F1: left face', 'D1: bottom face'])
  })

  it('shows plugs on the face, on its edges and behind it', () => {
    const { parts } = drawingOf(
      makePart('F1', { face: 'rear', across: 'left', height: 'high' }),
      makePart('L1', { face: 'rear', height: 'low' }),
      makePart('D1', { face: 'bottom', across: 'right' }),
      makePart('P1', { face: 'left' }),
      makePart('P2', { face: 'front', across: 'left' }),
      makePart('Breather', { face: 'top' }, true),
    )
    expect(parts.map(({ at, x, y }) => [at, x, y])).toEqual([
      ['face', -1, -1],
      ['face', 0, 1],
      ['bottom', 1, 1],
      ['left', -1, 0],
      ['behind', -1, 0],
      ['top', 0, -1],
    ])
  })

  it('is not drawn without the position of a plug', () => {
    expect(drawingOf()).toBeUndefined()
    expect(drawingOf(makePart('Breather', { face: 'top' }, true))).toBeUndefined()
    expect(buildCase(context, [{ ...makePart('F1', { face: 'left' }), figure: undefined }])).toBeUndefined()
  })

  it('is mirrored if the machine is', () => {
    const oppositeSides = { left: 'right', right: 'left' } as const
    const mirror = ({ across, ...others }: Omit<CasePosition, 'kind'>) => ({
      ...others,
      ...(across && { across: across === 'left' || across === 'right' ? oppositeSides[across] : across }),
    })
    const position = fc.record(
      {
        face: fc.constantFrom('front', 'rear', 'top', 'bottom'),
        across: fc.constantFrom('left', 'right', 'middle'),
        height: fc.constantFrom(...FACE_HEIGHTS),
      },
      { requiredKeys: ['face'] },
    )
    law(200, fc.array(position, { minLength: 1, maxLength: 5 }), (positions) => {
      const ownDrawing = drawingOf(...positions.map((one, at) => makePart(String(at), one)))
      const mirroredDrawing = drawingOf(...positions.map((one, at) => makePart(String(at), mirror(one))))
      expect(mirroredDrawing.ends).toEqual(ownDrawing.ends)
      expect(mirroredDrawing.parts.map(({ x }) => x)).toEqual(ownDrawing.parts.map(({ x }) => -x + 0))
      expect(mirroredDrawing.parts.map(({ at, y }) => [at, y])).toEqual(
        ownDrawing.parts.map(({ at, y }) => [at, y]),
      )
    })
  })
})

it('a wall card draws what its sheet states: the case, the wheel, the bolts of a cover; nothing without data', () => {
  const drawingsOf = (folder: string, identity = {}) => {
    const facts = wallFacts({ sheet: readExample(folder, 'sheet'), identity }, { iso6789: '2017' })
    if (!facts.ok) throw new Error(JSON.stringify(facts.findings))
    const card = wallModel(facts.value, en)
    const drawings = card.sections
      .flatMap(({ parts }) => parts)
      .flatMap((part) => (part.kind === 'panel' ? part.drawings : []))
    for (const written of [renderMarkdown(card), renderText(card)])
      for (const { text } of drawings)
        for (const line of text)
          expect(written.replaceAll(/\s+/g, ' ')).toContain(
            joinSpans(line).replaceAll(/\s+/g, ' ').slice(0, 30),
          )
    // Each drawing says its values to readers who cannot see it.
    for (const { text } of drawings)
      for (const line of text) expect(renderHtml(card)).toContain(joinSpans(line).replaceAll('&', '&#x26;'))
    return drawings.map(({ drawing }) => drawing.kind)
  }
  expect(drawingsOf('tind-4', { variant: 'long' })).toEqual(['case'])
  expect(drawingsOf('acre-26')).toEqual(['case', 'wheel'])
  expect(drawingsOf('bud-3', { variant: 'locking' })).toEqual(['bolts'])
  expect(drawingsOf('kvist-2')).toEqual([])
})
