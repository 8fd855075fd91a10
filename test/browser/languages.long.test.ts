import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { expect, it } from 'vitest'
import { de } from '../../src/v1/message/de.js'
import { es } from '../../src/v1/message/es.js'
import { fr } from '../../src/v1/message/fr.js'
import { hasChromium, judgeCards } from './judgeCards.js'

/** The fullest wall card of each example, its visit sheet and its labels. */
const CHOSEN =
  /^(wall card of (tind-4 long|acre-26|bud-3 locking|reach-55|kvist-2)|(tind-4|acre-26|bud-3|reach-55|kvist-2)\/log|(upright )?label of (tind-4|acre-26)\/log)$/

it.for(Object.entries({ de, fr, es }))(
  '%s: longer words keep the pages, the boxes and 9 pt of wall cards, visit sheets and labels',
  async ([tag, catalogue], context) => {
    if (!hasChromium()) {
      expect(process.env['DRIVETRAIN_REQUIRE_TOOLS']).not.toBe('1')
      console.log('outside tool skipped: chromium')
      context.skip()
    }
    const folder = mkdtempSync(join(tmpdir(), `cards-${tag}-`))
    try {
      const { cards, complaints } = await judgeCards(
        {
          write: (name, bytes) => writeFileSync(join(folder, name), bytes),
          page: (name, html) => {
            writeFileSync(join(folder, name), html)
            return pathToFileURL(join(folder, name)).href
          },
        },
        { catalogue, isChosen: (name) => CHOSEN.test(name), axe: false },
      )
      expect(complaints).toEqual([])
      expect(cards.length).toBe(14)
    } finally {
      rmSync(folder, { recursive: true })
    }
  },
)
