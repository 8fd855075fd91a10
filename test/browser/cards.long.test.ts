import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { expect, it } from 'vitest'
import { hasChromium, judgeCards } from './judgeCards.js'

it('the cards lay out in Chromium: nothing clipped at 320 px, no more printed pages than each may have', async (context) => {
  if (!hasChromium()) {
    expect(process.env['DRIVETRAIN_REQUIRE_TOOLS']).not.toBe('1')
    console.log('outside tool skipped: chromium')
    context.skip()
  }
  const folder = mkdtempSync(join(tmpdir(), 'cards-'))
  try {
    const { cards, complaints } = await judgeCards({
      write: () => undefined,
      page: (name, html) => {
        writeFileSync(join(folder, name), html)
        return pathToFileURL(join(folder, name)).href
      },
    })
    expect(complaints).toEqual([])
    expect(cards.find(({ name }) => name === 'tind-4/log')).toEqual({ name: 'tind-4/log', a4: 2, letter: 2 })
    expect(cards.length).toBeGreaterThan(10)
  } finally {
    rmSync(folder, { recursive: true })
  }
})
