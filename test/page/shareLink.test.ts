import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readFragment, type Shared, writeFragment } from '../../docs/page/shareLink.js'
import { lawAsync } from '../support/law.js'

const TEXTS = { sheet: 'kind: spec-sheet', log: '', toolbox: '' }

describe('the text in a link', () => {
  it('is read back as it was written', async () => {
    const text = fc.oneof(
      fc.string(),
      fc.string({ unit: 'binary' }),
      fc.constant('tightening: 30 ± 3 N·m\n'.repeat(500)),
    )
    const shared: fc.Arbitrary<Shared> = fc.record(
      {
        texts: fc.record({ sheet: text, log: text, toolbox: text }),
        today: fc.constantFrom('2023-10-06', '1999-12-31'),
        ambient: fc.integer({ min: -60, max: 60 }),
        units: fc.constantFrom('printed', 'metric', 'US'),
        language: fc.constantFrom('en', 'de'),
      },
      { requiredKeys: ['texts'] },
    )
    await lawAsync(200, shared, async (one) => {
      const fragment = await writeFragment(one)
      expect(fragment).toMatch(/^#s=[\w-]+$/)
      expect(await readFragment(fragment)).toEqual(one)
    })
  })

  it('is never half a text: a link that was cut or changed is broken', async () => {
    const fragment = await writeFragment({ texts: TEXTS })
    await lawAsync(
      200,
      fc.nat({ max: fragment.length - 4 }),
      fc.constantFrom('', 'A', '_', 'ü'),
      async (at, letter) => {
        const changed = `${fragment.slice(0, 3 + at)}${letter}${letter === '' ? '' : fragment.slice(4 + at)}`
        const read = await readFragment(changed)
        // The same letter again, or one whose bits are not used, is no change.
        if (typeof read !== 'string') expect(Object.keys(read.texts)).toEqual(['sheet', 'log', 'toolbox'])
        else expect(read).toBe('broken')
      },
    )
    expect(await readFragment('#s=')).toBe('broken')
  })

  it('is not there without a fragment of its own', async () => {
    expect(await readFragment('')).toBe('none')
    expect(await readFragment('#findings')).toBe('none')
  })

  it('refuses another form, and a small link with a huge text', async () => {
    const write = (value: unknown) => writeFragment(value as Shared)
    for (const value of [
      null,
      [],
      {},
      { texts: {} },
      { texts: { ...TEXTS, log: 1 } },
      { texts: TEXTS, today: '6.10.' },
    ])
      expect(await readFragment(await write(value))).toBe('broken')
    const huge = await write({ texts: { ...TEXTS, sheet: 'a'.repeat(3_000_000) } })
    expect(huge.length).toBeLessThan(10_000)
    expect(await readFragment(huge)).toBe('broken')
  })
})
