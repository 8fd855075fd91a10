import { describe, expect, it } from 'vitest'
import { readPointer } from '../../src/base/pointers.js'
import { en } from '../../src/message/en/index.js'
import { cueList, renderWebVtt } from '../../src/v1/card.js'
import { HOSTILE_NAMES, withHostileNames } from './hostilePlan.js'
import { planExamples } from './planExamples.js'
import { SKARNFELL_PLAN } from './skarnfellPlan.js'

const cues = cueList(SKARNFELL_PLAN, en)
const cue = (id: string) => cues.find((entry) => entry.id === id)

describe('cueList', () => {
  it('opens with the machine and what comes before the script', () => {
    expect(cues[0]).toMatchObject({ id: 'opening', kind: 'opening', from: '/machine' })
    expect(cues[0]?.say).toContain("The machine's own manual")
  })

  it('has a cue for every line in order, and cautions before theirs', () => {
    const steps = cues.filter(({ kind }) => kind === 'step').map(({ id }) => id)
    expect(steps).toEqual(SKARNFELL_PLAN.lines.map((line) => line.steps[0]))
    const ids = cues.map(({ id }) => id)
    expect(ids.indexOf('raise-caution-1')).toBe(ids.indexOf('raise') - 1)
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('says values in words and puts them on the screen as printed', () => {
    expect(cue('old-seal')?.say).toBe(
      'Remove the old crush washer: leave none of it on the case. If it sticks to the plug or the case, scrape it off. Do not scratch the face. Wipe the drain plug of the front differential and its seat clean. Fit the drain plug of the front differential with a new crush washer and turn it in by hand until it is finger tight. Tighten it to twenty to twenty-five newton metres: set twenty-two point five newton metres on the small click wrench.',
    )
    expect(cue('old-seal')?.screen.map(({ text }) => text)).toEqual(['20–25\u00a0N·m', '22.5\u00a0N·m'])
    expect(cue('seal-hub')?.say).toContain(
      'Tighten the hub plug (left) of the hub reduction two to three turns past finger tight.',
    )
    expect(cue('measure')?.say).toContain(
      'Wait until nothing drips from the hose: about six minutes from the start of the pour.',
    )
    expect(cue('measure')?.say).toContain('four hundred and fifty plus or minus twenty millilitres')
    expect(cue('cover-bead')?.say).toContain(
      'fifteen newton metres, then thirty plus three minus two newton metres, then forty-five degrees',
    )
    expect(cue('pan')?.show).toBe(
      'The pan, centred under the drain plug of the front differential. The drain plug of the front differential as it comes out. The stream of oil, until it only drips.',
    )
  })

  it('leaves no digit in what is said, but in names', () => {
    for (const { say, kind } of cues) {
      if (kind !== 'step') continue
      expect(say.replace(/SAE 80W-90, API GL-5|station sealant 5/g, '')).not.toMatch(/[0-9]/)
    }
  })

  it('points every value on the screen into the plan, for every example too', () => {
    for (const plan of [SKARNFELL_PLAN, ...planExamples().map(([, example]) => example)]) {
      for (const { screen, from, seconds } of cueList(plan, en)) {
        expect(readPointer(plan, from)).toBeDefined()
        for (const span of screen) {
          if (span.from !== undefined) expect(readPointer(plan, span.from)).toBeDefined()
        }
        expect(seconds).toBeGreaterThanOrEqual(3)
      }
    }
  })

  it('gives each sentence its time: 140 words a minute, three seconds at least', () => {
    // 9 words × 60 ÷ 140 = 3.9 s; 12 words = 5.1 s
    expect(cue('skid-off')).toMatchObject({
      say: 'Take off the skid plate. Keep its fasteners together.',
      seconds: 4,
    })
    expect(cue('suck')).toMatchObject({ seconds: 6 })
  })

  it('throws for what is no plan', () => {
    expect(() => cueList({} as never, en)).toThrow('plan must be a visit plan')
  })
})

describe('renderWebVtt', () => {
  it('writes one cue after the other', () => {
    const first = { id: 'a', kind: 'step' as const, show: '', say: 'One.', screen: [], from: '', seconds: 3 }
    const second = { ...first, id: 'b', say: 'Two & <b>.', screen: [{ text: '20\u00a0N·m' }], seconds: 3600 }
    expect(renderWebVtt([first, second])).toBe(
      'WEBVTT\n\na\n00:00:00.000 --> 00:00:03.000\nOne.\n\nb\n00:00:03.000 --> 01:00:03.000\nTwo &amp; &lt;b&gt;.\n20\u00a0N·m\n',
    )
    expect(renderWebVtt([])).toBe('WEBVTT\n')
  })

  it.each(HOSTILE_NAMES)('has as many cues as the list, whatever the sheet calls things: %j', (name) => {
    const hostile = cueList(withHostileNames(name), en)
    const written = renderWebVtt(hostile)
    expect(written.match(/^[0-9:.]+ --> [0-9:.]+$/gm)).toHaveLength(hostile.length)
    expect(written.split('\n\n')).toHaveLength(hostile.length + 1)
    const texts = written.replace(/^[0-9:.]+ --> [0-9:.]+$/gm, '')
    expect(texts).not.toMatch(/[<>\u202a-\u202e]/)
  })

  it('throws for a time that is no whole number from 1 on', () => {
    const [first] = cues
    for (const seconds of [0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => renderWebVtt([{ ...(first as (typeof cues)[number]), seconds }])).toThrow(RangeError)
    }
  })
})
