import { chromium } from 'playwright-core'
import { expect, it } from 'vitest'
import { cardModel, cueList, paperModel, renderHtml } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { kitContents } from '../../src/v1/service.js'
import { HOSTILE_NAMES, withHostileNames } from '../card/hostilePlan.js'
import { CHROMIUM, CHROMIUM_ARGUMENTS, hasChromium } from './judgeCards.js'

it('hostile names run no script and request nothing in Chromium, on the card and on papers of its plan', async (context) => {
  if (!hasChromium()) {
    expect(process.env['DRIVETRAIN_REQUIRE_TOOLS']).not.toBe('1')
    console.log('outside tool skipped: chromium')
    context.skip()
  }
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: CHROMIUM_ARGUMENTS.split(' ') })
  try {
    const page = await browser.newPage()
    const events: string[] = []
    page.on('dialog', (dialog) => {
      events.push(`dialog ${dialog.message()}`)
      dialog.dismiss().catch(() => undefined)
    })
    page.on('request', (request) => events.push(`request ${request.url()}`))
    page.on('pageerror', (error) => events.push(`error ${error.message}`))
    let count = 0
    for (const name of HOSTILE_NAMES) {
      const { findings, ...plan } = withHostileNames(name)
      const papers = [
        cardModel({ value: plan, findings }, en),
        paperModel({ kind: 'cues', plan, cues: cueList(plan, en) }, en),
        paperModel({ kind: 'record', plan }, en),
        paperModel({ kind: 'picks', kits: [kitContents(plan)], today: plan.today }, en),
      ]
      for (const paper of papers) {
        await page.setContent(renderHtml(paper), { waitUntil: 'load' })
        // The names are on the page as text, and it has only elements of papers.
        expect(await page.locator('script, img, iframe, object, a, form').count(), name).toBe(0)
        expect(await page.locator('h1').count(), name).toBe(1)
        count += 1
      }
    }
    expect(count).toBe(4 * HOSTILE_NAMES.length)
    expect(events).toEqual([])
  } finally {
    await browser.close()
  }
})
