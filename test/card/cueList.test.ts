import { describe, expect, it } from 'vitest'
import { readPointer } from '../../src/base/pointers.js'
import { joinSpans } from '../../src/card/spans.js'
import { de } from '../../src/message/de/index.js'
import { en } from '../../src/message/en/index.js'
import { listVariantDifferences } from '../../src/service/index.js'
import { type Cue, cueList, paperModel, renderHtml, renderMarkdown, renderText } from '../../src/v1/card.js'
import { planExample } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'
import { planExamples } from './planExamples.js'
import { SKARNFELL_PLAN } from './skarnfellPlan.js'

const EXAMPLES = planExamples().map(([name, plan]) => {
  const [folder = ''] = name.split('/')
  const differences = listVariantDifferences(readExample(folder, 'sheet'))
  return { name, plan, differences, cues: cueList(plan, en, differences) }
})
const tindExample = EXAMPLES.find(({ name }) => name === 'tind-4/log')
if (tindExample === undefined) throw new Error('no example tind-4')
const skarnfellCues = cueList(SKARNFELL_PLAN, en)

const textOf = ({ say }: Cue) => say.map(({ text }) => text).join(' ')
const find = (title: string) => tindExample.cues.find((cue) => joinSpans(cue.title) === title) as Cue

describe('cueList', () => {
  it('in German keeps the capitals of nouns in what other variants have', () => {
    const written = EXAMPLES.flatMap(({ plan, differences }) =>
      cueList(plan, de, differences)
        .filter(({ kind }) => kind === 'variants')
        .flatMap(({ screen, say }) => [...screen.map(joinSpans), ...say.map(({ text }) => text)]),
    ).join('\n')
    expect(written).toMatch(/Drehmoment|Öl|Füllmenge/)
    expect(written).not.toMatch(/(?<!\p{L})(drehmoment|öl|füllmenge|dichtung|werkzeuggröße)(?!\p{L})/u)
  })

  it('has a row a scene: 9 to 16 of them for every example', () => {
    const counts = EXAMPLES.map(({ cues }) => cues.length)
    console.log(`scenes: ${EXAMPLES.map(({ name, cues }) => `${name} ${cues.length}`).join(', ')}`)
    expect(Math.max(...counts)).toBeLessThanOrEqual(16)
    expect(Math.min(...counts)).toBeGreaterThanOrEqual(9)
    expect(tindExample.cues.map(({ kind }) => kind)).toEqual([
      ...['opening', 'interval', 'tools', 'variants', 'ready', 'open', 'inside', 'fill'],
      ...['open', 'inside', 'fill', 'check', 'run', 'closing'],
    ])
  })

  it('says every line of the plan once, in order, and shows every step', () => {
    for (const { plan, cues } of [...EXAMPLES, { plan: SKARNFELL_PLAN, cues: skarnfellCues }]) {
      const lines = cues.flatMap(({ say }) =>
        say.filter(({ kind, from }) => kind === 'step' && from.startsWith('/lines/')).map(({ from }) => from),
      )
      expect([...new Set(lines)]).toEqual(plan.lines.map((_line, index) => `/lines/${index}`))
      expect(new Set(cues.map(({ id }) => id)).size).toBe(cues.length)
    }
  })

  it('speaks each caution before its action, and holds it on the screen', () => {
    for (const { plan, cues } of EXAMPLES)
      for (const [stepIndex, step] of plan.steps.entries())
        for (const cautionIndex of step.cautions.keys()) {
          const from = `/steps/${stepIndex}/cautions/${cautionIndex}`
          const line = plan.lines.findIndex(({ steps }) => steps.includes(step.id))
          const cue = cues.find(({ say }) => say.some((speech) => speech.from === `/lines/${line}`)) as Cue
          const caution = step.cautions[cautionIndex]
          const spoken = cue.say.findIndex(
            (speech) =>
              speech.kind === 'caution' &&
              JSON.stringify(readPointer(plan, speech.from)) === JSON.stringify(caution),
          )
          expect(spoken, from).toBeGreaterThanOrEqual(0)
          const action = cue.say.findIndex(
            (speech) => speech.kind === 'step' && speech.from === `/lines/${line}`,
          )
          expect(spoken).toBeLessThan(action)
          const heldTexts = cue.hold.flatMap((item) =>
            item.line.map((span) => readPointer(plan, span.from ?? '')),
          )
          expect(heldTexts.map((item) => JSON.stringify(item))).toContain(JSON.stringify(caution))
        }
  })

  it('says figures as people do, and shows them as printed, in the other units too', () => {
    const close = find('Rear gearcase: inspect and close')
    expect(textOf(close)).toContain('Rear gearcase, figures for the Tind four L, long bed.')
    expect(textOf(close)).toContain(
      'Tighten it to twenty-eight to thirty-four newton metres: set thirty-one newton metres on the half-inch click wrench.',
    )
    expect(close.screen.map(joinSpans)).toEqual([
      'Tind 4 L, long bed',
      'Drain plug: 28–34\u00a0N·m (2.9–3.5\u00a0kgf·m · 21–25\u00a0lbf·ft) · set 31\u00a0N·m, half-inch click wrench',
    ])
    expect(textOf(find('How often'))).toBe(
      'Gear oil change: every two hundred hours, one thousand two hundred miles or twelve months, whichever comes first.',
    )
    expect(textOf(find('Other variants'))).toContain(
      'On the Tind four S, short bed, the refill of the rear gearcase is seven hundred millilitres.',
    )
    // Only a caution may have a figure of the log, such as a date.
    const spoken = EXAMPLES.flatMap(({ cues }) => cues.flatMap(({ say }) => say))
    for (const { kind, text } of spoken) if (kind !== 'caution') expect(text).not.toMatch(/[0-9]|\u00a0/)
  })

  it('speaks one unit: a setting in another unit is only on the screen', () => {
    const plan = planExample('tind-4')
    const tightenings = plan.tightenings.map((tightening) =>
      tightening.setting === undefined
        ? tightening
        : { ...tightening, setting: { value: 23, unit: 'lbf.ft' as const } },
    )
    const cue = cueList({ ...plan, tightenings }, en).find(({ kind }) => kind === 'inside') as Cue
    expect(textOf(cue)).toMatch(/Tighten it to twenty-eight to thirty-four newton metres\./)
    expect(cue.screen.map(joinSpans).join()).toContain('set 23\u00a0lbf·ft')
  })

  it('says cc where the sheet prints cc', () => {
    const plan = planExample('tind-4')
    const asCc = JSON.parse(
      JSON.stringify(plan).replaceAll('"value":"950","unit":"mL"', '"value":"950","unit":"cm3"'),
    )
    expect(cueList(asCc, en).map(textOf).join(' ')).toContain('Measure nine hundred and fifty cc of')
  })

  it('marks waits as cuts, and the shots with one chance once for each part', () => {
    const shots = tindExample.cues.flatMap((cue) => cue.shots)
    expect(shots.filter(({ once }) => once === 'first crack')).toHaveLength(4)
    expect(shots.filter(({ once }) => once === 'first oil')).toHaveLength(2)
    expect(shots.filter(({ once }) => once === 'magnet')).toHaveLength(2)
    const cutShots = shots.filter(({ isCut }) => isCut).map(({ text }) => text)
    expect(cutShots).toContain('The stream of oil, until it only drips.')
    expect(cutShots).toContain('The lower end of the hose, until the last drip.')
    expect(find('Rear gearcase: fill').screen.map(joinSpans)).toContain('6\u00a0min later')
  })

  it('gives for every value on the screen its pointer into the plan or the differences', () => {
    for (const { plan, cues, differences } of EXAMPLES)
      for (const { screen, say, hold, from, seconds } of cues) {
        const pointers = [
          from,
          ...say.map((speech) => speech.from),
          ...[...screen, ...hold.map(({ line }) => line)].flatMap((line) => line.map((span) => span.from)),
        ]
        for (const pointer of pointers)
          if (pointer !== undefined)
            expect(readPointer({ ...plan, differences }, pointer), pointer).toBeDefined()
        expect(seconds).toBeGreaterThanOrEqual(3)
      }
  })

  it('gives each scene its time: 140 words a minute', () => {
    const [opening] = cueList({ ...SKARNFELL_PLAN, work: [], cautions: [], lines: [] }, en)
    // 33 words × 60 ÷ 140 = 14.1 s
    expect(textOf(opening as Cue).split(' ')).toHaveLength(33)
    expect(opening?.seconds).toBe(15)
  })

  it('throws for an invalid plan', () => {
    expect(() => cueList({} as never, en)).toThrow('plan must be a visit plan')
  })
})

describe('the cue sheet', () => {
  const paper = paperModel({ kind: 'cues', plan: tindExample.plan, cues: tindExample.cues }, en)

  it('has every spoken word, shot and screen text in HTML, Markdown and text', () => {
    const joinLines = (text: string) => text.replace(/\s+/g, ' ')
    const outputs = [
      joinLines(renderText(paper).replace(/^ !! /gm, '    ')),
      joinLines(renderMarkdown(paper).replace(/\\/g, '').replace(/^> /gm, '')),
      joinLines(renderHtml(paper).replace(/<[^>]*>/g, '')),
    ]
    for (const cue of tindExample.cues)
      for (const text of [
        ...cue.say.map((speech) => speech.text),
        ...cue.shots.map((shot) => shot.text),
        ...cue.screen.map(joinSpans),
      ])
        for (const written of outputs) expect(written).toContain(joinLines(text))
  })

  it('lists the shots in filming order: pieces to camera, the work, the end; one-chance shots are under their scene', () => {
    const lists = paper.sections.find(({ id }) => id === 'filming')?.parts ?? []
    const items = lists.flatMap((part) => (part.kind === 'list' ? [part.items] : []))
    expect(items.map((list) => list.length)).toEqual([4, 9, 1])
    const notes = items.flat().flatMap((item) => item.notes.map(joinSpans))
    expect(notes).toHaveLength(8)
    expect(notes[0]).toBe('The bar on the fill plug, and its first small turn. (first crack: one chance)')
  })
})
