import { describe, expect, it } from 'vitest'
import { shortenCard } from '../../src/card/shortenCard.js'
import { en } from '../../src/message/en/index.js'
import { cueList, renderText } from '../../src/v1/card.js'
import { checkDocuments } from '../../src/v1/rules.js'
import type { SpecSheet } from '../../src/v1/spec.js'
import { add, patched, replace } from '../support/patched.js'
import { cardOf, planExample } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

// The oil work on printed cards as a technician reads it; one case for each mistake that a card had.

type Change = (sheet: SpecSheet) => SpecSheet

/** The card as one text, with spaces instead of line breaks. */
const textOf = (folder: string, sheet: Change, services?: readonly string[]): string => {
  const plan = planExample(folder, { sheet, ...(services && { services }) })
  return renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
}

describe('an additive', () => {
  const additive = { name: 'slip additive', volume: { kind: 'nominal', value: '100', unit: 'mL' } }
  const oils = (more: object) => ({
    kind: 'oils',
    choices: [
      {
        kind: 'grade',
        grade: '80W-90',
        system: 'SAE J306',
        category: 'GL-5',
        limitedSlip: 'required',
        additive: { ...additive, ...more },
      },
    ],
  })
  /** The rear gearcase of the Tind 4 is filled to its level hole, the front differential by quantity. */
  const withAdditive = (gearcase: 'front' | 'rear', more: object) =>
    textOf(
      'tind-4',
      patched(
        replace('/overrides', []),
        replace(`/gearcases/${gearcase}/oilSpace/oils`, oils(more)),
        replace(`/gearcases/${gearcase}/oilSpace/fill/drainAndRefill`, {
          kind: 'nominal',
          value: '1.4',
          unit: 'L',
        }),
      ),
    )

  it('in the refill makes it together with the oil: 1.3 L are poured, never 1.4 L', () => {
    const text = withAdditive('front', { includedInRefill: true })
    expect(text).toContain(
      'Measure 1.3 L of SAE 80W-90, API GL-5 in a clean jug. Together with the additive this is the refill of 1.4 L.',
    )
    expect(text).toContain('Pour the 1.3 L of oil in slowly')
    expect(text).not.toContain('Pour the 1.4 L')
  })

  it('goes in before the oil at a level hole where the manual gives no order, and oil fills to the hole', () => {
    const text = withAdditive('rear', { includedInRefill: true })
    const first = text.indexOf('Pour 100 mL of slip additive in through the fill opening, before the oil.')
    const restart = text.indexOf(
      'Pour oil in slowly through the hole of the fill plug up to the level hole: about 1.3 L.',
    )
    expect(first).toBeGreaterThan(0)
    expect(restart).toBeGreaterThan(first)
  })

  it('goes in after the oil where the manual says so', () => {
    const text = withAdditive('rear', { includedInRefill: true, order: 'oil first' })
    const oil = text.indexOf('Pour the 1.3 L of oil in slowly through the hole of the fill plug.')
    const last = text.indexOf('Pour 100 mL of slip additive in through the fill opening, after the oil.')
    expect(oil).toBeGreaterThan(0)
    expect(last).toBeGreaterThan(oil)
  })

  it('added to the refill does not reduce the oil', () => {
    const text = withAdditive('front', { includedInRefill: false })
    expect(text).toContain('Pour the 1.4 L of oil in slowly')
  })
})

describe('a refill for both hubs', () => {
  it('is measured by its share at each of them, with its share of the additive', () => {
    const plan = planExample('acre-26', {
      sheet: patched(
        replace('/gearcases/hub/oilSpace/fill/per', 'all instances'),
        replace('/gearcases/hub/oilSpace/fill/drainAndRefill', { kind: 'nominal', value: '0.9', unit: 'L' }),
      ),
      services: ['front-axle-oil-change'],
    })
    const text = renderText(shortenCard(cardOf(plan))).replace(/\n +/g, ' ')
    expect(text).toMatch(
      /Measure and pour .+: hub plug \(left\); hose empty when nothing drips · 0\.45\u00a0L/,
    )
    expect(text).not.toMatch(/(Measure|pour) 0\.9\u00a0L/)
  })
})

describe('several drains', () => {
  const second = {
    name: 'rear drain plug',
    uses: [{ role: 'drain' }],
    drive: { kind: 'internal hex', size: '10 mm' },
    tightening: { kind: 'not stated', threadCondition: 'not stated' },
    seals: [],
    place: { kind: 'not stated' },
  }
  const withSecond = (additionalServices?: readonly string[]) =>
    patched(
      add('/gearcases/front/openings/second', second),
      ...(additionalServices === undefined
        ? []
        : [add('/gearcases/front/emptying/0/also', additionalServices)]),
    )

  it('of one gearcase are all opened and refitted before the refill', () => {
    const plan = planExample('tind-4', {
      sheet: withSecond(['second']),
    })
    const at = (action: string, part: string) =>
      plan.steps.findIndex((step) => step.do === action && step.part?.path.endsWith(`front/openings/${part}`))
    const pour = at('pour the oil', 'fill')
    for (const drain of ['drain', 'second'])
      for (const action of ['place the pan', 'crack loose', 'take out', 'let drain', 'fit', 'tighten']) {
        expect(at(action, drain), `${action}, ${drain}`).toBeGreaterThan(0)
        expect(at(action, drain)).toBeLessThan(pour)
      }
    expect(plan.findings.map(({ code }) => code)).not.toContain('procedure/drain-left-out')
    const document = withSecond(['second'])(readExample('tind-4', 'sheet'))
    const sheets = [{ name: 'sheet.json', document }]
    const found = checkDocuments({
      sheets,
      logs: [],
      toolboxes: [],
      stocks: [],
      procedures: [],
      records: [],
    })
    expect(found.map(({ code }) => code)).not.toContain('spec/dangling-reference')
    expect(found.map(({ code }) => code)).not.toContain('spec/drain-not-named')
  })

  it('the one that no way to empty names is reported', () => {
    const plan = planExample('tind-4', { sheet: withSecond() })
    expect(plan.findings).toContainEqual(
      expect.objectContaining({
        code: 'procedure/drain-left-out',
        severity: 'warning',
        path: '/gearcases/front/openings/second',
        params: { part: 'rear drain plug', gearcase: 'front differential' },
      }),
    )
  })
})

describe('a variant that is not known', () => {
  // The short bed has its drain plug at the side, the long bed at the bottom.
  const [shortVariant, longVariant] = Object.keys(readExample('tind-4', 'sheet').machine.variants)
  const drain = (name: string, variant: string | undefined) => ({
    name,
    uses: [{ role: 'drain' }],
    appliesTo: { variants: [variant] },
    drive: { kind: 'internal hex', size: '10 mm' },
    tightening: { kind: 'not stated', threadCondition: 'not stated' },
    seals: [],
    place: { kind: 'not stated' },
  })
  const plan = planExample('tind-4', {
    sheet: patched(
      add('/gearcases/rear/openings/drain', drain('side drain plug', shortVariant)),
      add('/gearcases/rear/openings/bottom', drain('bottom drain plug', longVariant)),
      replace('/gearcases/rear/emptying', [
        { kind: 'drain plug', opening: 'drain' },
        { kind: 'drain plug', opening: 'bottom' },
      ]),
      replace('/overrides', []),
    ),
    log: (log) => ({ ...log, identity: {} }),
  })
  const [first, ...others] = renderText(cardOf(plan)).replaceAll(/\s+/g, ' ').split('[ ] 1. ').slice(1)
  const text = [first, ...others].join(' ')

  it('is found first', () => {
    expect(first).toMatch(/^Find out which variant this machine is/)
  })

  it('shows each of the drains, each with the machines that have it', () => {
    expect(text).toContain(
      'Only on Tind 4 S, short bed: Put the drain pan in place. Clean around the side drain plug,',
    )
    expect(text).toContain(
      'Only on Tind 4 L, long bed: Put the drain pan in place. Clean around the bottom drain plug,',
    )
    for (const step of plan.steps)
      if (/drain plug/.test(step.part?.part ?? '') && step.part?.gearcase === 'rear gearcase')
        expect(step.onlyIf?.code, step.id).toBe('service/only-on-some-machines')
  })

  it('warns of hot oil on a step that is not left out: what is left out is not read', () => {
    const out = plan.steps.filter(
      ({ do: action, part }) => action === 'take out' && part?.gearcase === 'rear gearcase',
    )
    const cautionByPart = out.map(({ part, cautions }) => [part?.part, cautions.map(({ code }) => code)[0]])
    expect(cautionByPart.slice(0, 3)).toEqual([
      ['side drain plug', 'procedure/caution-hot-oil'],
      ['fill plug', 'procedure/caution-hot-oil'],
      ['bottom drain plug', undefined],
    ])
  })

  it('is spoken too', () => {
    const spokenTexts = cueList(plan, en).flatMap(({ say }) => say.map(({ text }) => text))
    expect(spokenTexts).toContainEqual(
      expect.stringMatching(/^Only on Tind 4 L, long bed: .*around the bottom drain plug/),
    )
  })
})

describe('a level', () => {
  const level = (method: object, more: object = {}) =>
    patched(
      replace('/overrides', []),
      replace('/gearcases/rear/oilSpace/fill/method', method),
      add('/gearcases/rear/oilSpace/fill/level', {
        attitude: 'level on its wheels',
        engine: 'stopped',
        recheckAfterRun: false,
        ...more,
      }),
    )
  const hole = { kind: 'to level hole', opening: 'fill' }

  it('says where the oil must stand, in which attitude, how warm and how long after the stop', () => {
    const text = textOf(
      'tind-4',
      level(
        { ...hole, below: { kind: 'limits', min: '0', max: '5', unit: 'mm' } },
        {
          temperature: { kind: 'limits', min: '40', max: '50', unit: 'degC' },
          minutesAfterStop: { kind: 'nominal', value: '10', unit: 'min' },
        },
      ),
    )
    expect(text).toContain(
      'Check the oil level at the fill plug: it must be 0–5 mm below the lower edge of the hole, with the machine level on its wheels, the oil at 40–50 °C, 10 min after the stop.',
    )
  })

  it.each([
    ['screwed in', 'Screw it in fully. Take it out. Read the oil between its marks.'],
    ['resting', 'Rest it on its thread. Do not screw it in. Read the oil between its marks.'],
  ])('a dipstick is read %s', (reading, spokenTexts) => {
    expect(textOf('tind-4', level({ kind: 'dipstick', opening: 'fill', reading }))).toContain(spokenTexts)
  })

  it('after filling, a tenth too much stops the work, and clearly too little is questioned', () => {
    const text = textOf('tind-4', level(hole))
    expect(text).toContain(
      'If it is low, top up with the same oil. If more than 770 mL has gone in, stop the work. If much less went in than stated, make sure that the machine is level and the case was fully drained.',
    )
    expect(text).toContain('If it is high, let the excess run out.')
  })

  it('if the checked level is high, the card asks about water and a neighbouring gearcase before draining', () => {
    const plan = planExample('tind-4', { sheet: level(hole), services: ['gear-oil-check'] })
    const text = renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
    expect(text).toContain(
      'If it is high and was not overfilled, stop: water or the oil of another gearcase may be in it. If it was overfilled, let the excess run out.',
    )
  })

  it('with an opening of its own can be topped up through the fill plug, which is opened only if it is low', () => {
    const plan = planExample('tind-4', {
      sheet: (sheet) =>
        patched(
          add('/gearcases/rear/openings/level', {
            ...sheet.gearcases['rear']?.openings['fill'],
            name: 'level plug',
            uses: [{ role: 'level' }],
          }),
          replace('/gearcases/rear/openings/fill/uses', [{ role: 'fill' }]),
        )(level({ kind: 'to level hole', opening: 'level' })(sheet)),
      services: ['gear-oil-check'],
    })
    const text = renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
    const check = text.indexOf('Check the oil level at the level plug')
    const openingIndex = text.indexOf('Only if the level is low: Clean around the fill plug,')
    const topUp = text.indexOf('If the level is low, top up through the fill plug. Take the same oil.')
    const closingIndex = text.search(/Only if the level is low: [^\]]*the fill plug with a new/)
    expect([check, openingIndex, topUp, closingIndex].every((place) => place > 0)).toBe(true)
    expect([check, openingIndex, topUp, closingIndex]).toEqual(
      [check, openingIndex, topUp, closingIndex].toSorted((a, b) => a - b),
    )
    expect(text).not.toMatch(/Only if the level is low: [^\]]*level plug/)
  })
})

describe('what the old oil shows', () => {
  it.each([
    'If it contains chips, flakes or pieces, stop: close the case. Do not refill. Tag the machine out.',
    'If it contains only grey paste or some glitter at a first service, go on.',
    "If it is milky, stop: find where the water came in. Flush a case that had milky oil before you refill it. Fill it with the manual's oil. Run the machine briefly. Let it cool. Drain the oil.",
  ])('is judged at the oil too, without a magnet: %s', (sentence) => {
    expect(textOf('bud-3', (sheet) => sheet, ['transfer-oil-change'])).toContain(sentence)
  })
})

describe('hot oil', () => {
  it('is warned of before the first exposed step of each gearcase', () => {
    const { steps } = planExample('tind-4')
    for (const gearcase of ['front', 'rear']) {
      const exposed = steps.filter(
        ({ do: action, part }) => part?.path.startsWith(`/gearcases/${gearcase}/`) && action === 'take out',
      )
      expect(exposed[0]?.cautions.map(({ code }) => code)).toContain('procedure/caution-hot-oil')
    }
  })
})

describe('a cover', () => {
  const cover = (more: object) =>
    textOf(
      'bud-3',
      (sheet) => {
        const path = '/gearcases/rear/covers/rear-cover'
        return patched(replace(path, { ...sheet.gearcases['rear']?.covers?.['rear-cover'], ...more }))(sheet)
      },
      ['rear-oil-change'],
    )

  it('that is upright keeps two loose bolts at the top until the oil is out', () => {
    expect(cover({ position: 'upright' })).toContain(
      'Slacken all bolts of the rear cover. Leave two loose bolts in at the top. Take out the others. Break the seal at the bottom.',
    )
  })

  it('that is a bottom pan is let down on one side last', () => {
    expect(cover({ position: 'bottom' })).toContain(
      'Leave the bolts of one side in, loosened. Take out the others. Break the seal on the open side.',
    )
  })

  it('that carries bearings is removed and refitted only by the manual', () => {
    const text = cover({ carriesBearings: true })
    expect(text).toContain("Take off the rear cover only by the machine's manual: it carries bearings.")
    expect(text).toContain("Fit the rear cover only by the machine's manual: its shims set the bearings.")
  })

  it('prints the order of its bolts, its bead and its stages', () => {
    const text = cover({})
    expect(text).toContain('Tighten the bolts of the rear cover crosswise to 25 ± 3 N·m.')
    expect(text).toContain('to the clean face of the rear cover, 3 mm thick.')
    const { bolts } = readExample('bud-3', 'sheet').gearcases['rear']?.covers?.['rear-cover'] ?? {}
    const stages = [{ kind: 'nominal', value: '10', unit: 'N.m' }]
    expect(cover({ bolts: { ...bolts, tightening: { ...bolts?.tightening, stages } } })).toContain(
      'Set the small click wrench to 25 N·m for the last stage. Tighten the bolts of the rear cover crosswise to 10 N·m, then 25 ± 3 N·m.',
    )
  })
})

describe('what a technician reads at a plug', () => {
  const textOf = (folder: string) =>
    renderText(
      cardOf(planExample(folder, { services: Object.keys(readExample(folder, 'sheet').services) })),
    ).replaceAll(/\s+/g, ' ')

  it('a cap for the hand is unscrewed and tightened by hand, not cracked loose', () => {
    const text = textOf('reach-55')
    expect(text).toContain(
      'Clean around the dipstick plug, unscrew it and turn it back in by hand. If it stays tight, leave the oil in.',
    )
    expect(text).toContain('Turn the dipstick plug in and tighten it by hand.')
    expect(text).not.toMatch(/dipstick plug, crack|Crack the dipstick plug/)
  })

  it('only the fill plug loosened first says not to drain if it cannot be loosened', () => {
    const text = textOf('tind-4')
    expect(text).toContain(
      'Clean around the fill plug, crack it loose with the 10 mm hex bit socket and turn it back in by hand. If it stays tight, leave the oil in.',
    )
    // Each gearcase once: when it is opened again after the run, nothing is drained.
    expect(text.match(/If it stays tight/g)).toHaveLength(2)
    expect(text).not.toMatch(/around the drain plug,[^.]*\. If it stays tight/)
  })

  it('the leak check and wiping name the side, and no seal is helped by more torque', () => {
    const text = textOf('acre-26')
    for (const side of ['left', 'right']) {
      expect(text).toContain(`Wipe off all spilt oil (${side}).`)
      expect(text).toMatch(
        /Check each plug and joint that you opened for oil: [^.]*hub reduction \(right\)\. If one weeps, replace its seal\. Do not turn it past the manual's figure\./,
      )
      expect(text).toMatch(new RegExp(`opened for oil: [^.]*hub reduction \\(${side}\\)`))
    }
  })

  it('the key of this variant is in the line, and both where the variant is not known', () => {
    const drive = { kind: 'internal hex', size: '8 mm' }
    const sheet = patched(
      add('/overrides/-', {
        when: { variants: ['long'] },
        set: [{ kind: 'drive', path: '/gearcases/rear/openings/drain/drive', to: drive }],
      }),
    )
    const lineOf = (log: 'known' | 'not known') => {
      const plan = planExample('tind-4', {
        sheet,
        ...(log === 'not known' && { log: (candidate) => ({ ...candidate, identity: {} }) }),
      })
      const text = renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
      return text.slice(text.indexOf('Rear gearcase [ ]')).match(/Clean around the drain plug,[^.]*\./)?.[0]
    }
    expect(lineOf('known')).toBe(
      'Clean around the drain plug, crack it loose with the 8 mm hex bit socket and take it out.',
    )
    expect(lineOf('not known')).toBe(
      'Clean around the drain plug, crack it loose with the 10 mm hex bit socket or 8 mm hex bit socket and take it out.',
    )
  })

  it('says how to pull a torque wrench only where one is used', () => {
    expect(textOf('kvist-2')).not.toContain('stop at the first click')
    expect(textOf('tind-4')).toContain('stop at the first click')
  })
})
