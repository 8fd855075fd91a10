import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { answerDue, answerFigures, answerVisit, answerWall, isLogOfSheet } from '../../docs/page/answer.js'
import { pageLabels } from '../../docs/page/labels/en.js'
import { checkTexts, MAX_TEXT_LENGTH, readTexts, type Texts } from '../../docs/page/readTexts.js'
import { summariseVisit } from '../../src/card/summariseVisit.js'
import { en } from '../../src/v1/message/en.js'
import { planRequest, requestExample, TODAY } from '../support/planExample.js'

const textsOf = (folder: string): Texts => {
  const read = (name: string) =>
    readFileSync(new URL(`../../examples/${folder}/${name}.yaml`, import.meta.url), 'utf8')
  return { sheet: read('sheet'), log: read('log'), toolbox: read('toolbox') }
}
const tind = textsOf('tind-4')

/** The findings of texts, each with the characters that it marks. */
const marksOf = (texts: Texts) =>
  checkTexts(readTexts(texts), TODAY, en, pageLabels).map(({ name, from, to, line, fixes }) => ({
    name,
    line,
    text: texts[name].slice(from, to),
    fixes,
  }))

const questionOf = (texts: Texts) => {
  const { sheet, log, toolbox } = readTexts(texts)
  if (sheet === undefined || log === undefined || toolbox === undefined) throw new Error('not readable')
  return { sheet, log, toolbox, today: TODAY, ambient: 6 }
}

describe('findings at their characters', () => {
  it.each(['tind-4', 'bud-3', 'kvist-2'])('%s, to start from, has none', (folder) => {
    expect(marksOf(textsOf(folder))).toEqual([])
  })

  it('a bad unit, a bad word and an unknown key', () => {
    const sheet = tind.sheet
      .replace('mass: 640 kg', 'mass: 640kg')
      .replace('kind: spec-sheet\n', 'kind: spec-sheet\nmood: good\n')
      .replace('tightening: 28–34 N·m', 'tightening: 28–34 Nx')
    const marks = marksOf({ ...tind, sheet })
    expect(marks.map(({ text }) => text)).toContain('mood: good')
    expect(marks.some(({ text, fixes }) => text.startsWith('640kg') && fixes[0]?.startsWith('640 kg'))).toBe(
      true,
    )
    for (const { name, line, text } of marks) {
      expect(name).toBe('sheet')
      expect(sheet.split('\n')[line - 1]).toContain(text.split('\n')[0])
    }
  })

  it('a text that is no YAML, a document under another heading, and too long a text', () => {
    expect(marksOf({ sheet: 'a: [', log: '', toolbox: '' }).map(({ name }) => name)).toEqual(['sheet'])
    expect(marksOf({ sheet: tind.sheet, log: tind.toolbox, toolbox: '' })).toMatchObject([
      { name: 'log', line: 1, text: 'kind: toolbox' },
    ])
    const [finding, ...others] = checkTexts(
      readTexts({ sheet: '# long\n'.repeat(MAX_TEXT_LENGTH), log: '', toolbox: '' }),
      TODAY,
      en,
      pageLabels,
    )
    expect(finding?.message).toContain('at most 200000')
    expect(others).toEqual([])
  })

  it.each([
    '&a [*a, *a]',
    '{{{{',
    '- - - -',
    'kind: !!js/function x',
    '\u0000',
    '? {a: b} : c',
    '"',
    'kind: spec-sheet\nkind: x',
    '[]',
    '1',
  ])('hostile text %j is findings, no exception', (sheet) => {
    expect(marksOf({ sheet, log: sheet, toolbox: sheet }).length).toBeGreaterThan(0)
  })
})

describe('the answers', () => {
  it('are those of the library: the lines of plan, and what is due first', () => {
    const question = questionOf(tind)
    const { stock: _stock, ...request } = requestExample('tind-4')
    const planned = planRequest(request as ReturnType<typeof requestExample>)
    if (!planned.ok) throw new Error('no plan')
    expect(answerVisit(question, en)).toEqual(summariseVisit(planned, en))
    expect(answerDue(question, en).map(({ verdict }) => verdict)).toEqual([
      'overdue',
      'overdue',
      'due',
      'due',
    ])
    expect(isLogOfSheet(question)).toBe(true)
    const otherLog = { ...question.log, sheet: { id: 'other', revision: '1' } }
    expect(isLogOfSheet({ ...question, log: otherLog })).toBe(false)
  })

  it('need no log for the wall card', () => {
    const { sheet } = questionOf(textsOf('kvist-2'))
    expect(answerWall({ sheet, today: TODAY }, en)?.card.title).toBe('Gear oil, wall card')
    expect(answerDue({ sheet, today: TODAY }, en)).toEqual([])
    expect(answerVisit({ sheet, today: TODAY }, en)).toEqual([])
  })

  it('show a figure in the chosen units: the printed one if the manual has it, else converted inside the band', () => {
    const wall = answerWall(questionOf(tind), en)
    const kvist = answerWall(questionOf(textsOf('kvist-2')), en)
    if (wall === undefined || kvist === undefined) throw new Error('no card')
    expect(answerFigures(wall.figures, 'printed', en).some(({ other }) => other !== undefined)).toBe(false)
    const drain = answerFigures(wall.figures, 'US', en).find(({ part }) =>
      part.includes('rear gearcase, drain plug'),
    )
    expect(drain?.other?.isConverted).toBe(false)
    // 28 to 34 N·m are 20.65 to 25.08 lbf·ft (1 lbf·ft = 1.3558179483314004 N·m, NIST SP 811).
    expect(drain?.other?.text).toBe('21–25\u00a0lbf·ft')
    const [refill] = answerFigures(kvist.figures, 'metric', en)
    expect(refill).toMatchObject({
      printed: '300\u00a0mL · 10.1\u00a0US\u00a0fl\u00a0oz',
      other: { isConverted: false },
    })
    const sheet = tind.sheet.replace(/tightening: 28–34 N·m[^\n]*/, 'tightening: 28–34 N·m')
    const plain = answerWall(questionOf({ ...tind, sheet }), en)
    const converted = answerFigures(plain?.figures ?? [], 'US', en).filter(({ other }) => other?.isConverted)
    expect(converted.map(({ printed, other }) => [printed, other?.text])).toContainEqual([
      '28–34\u00a0N·m',
      '21–25\u00a0lbf·ft',
    ])
  })
})
