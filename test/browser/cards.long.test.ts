import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright-core'
import { expect, it } from 'vitest'
import { cardStyle, renderHtml } from '../../src/v1/card.js'
import { SKARNFELL_PLAN } from '../card/skarnfellPlan.js'
import { cardOf } from '../support/planExample.js'
import { CHROMIUM, CHROMIUM_ARGUMENTS, hasChromium, judgeCards, pagesOf } from './judgeCards.js'
import { listPapers } from './listPapers.js'

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

it('a card keeps its style in an app that forbids styles in a page, and changes nothing of the app', async (context) => {
  if (!hasChromium()) {
    expect(process.env['DRIVETRAIN_REQUIRE_TOOLS']).not.toBe('1')
    console.log('outside tool skipped: chromium')
    context.skip()
  }
  const card = cardOf(SKARNFELL_PLAN)
  const fragment = renderHtml(card, { form: 'fragment' })
  const files: Readonly<Record<string, readonly [type: string, text: string]>> = {
    '/card.css': ['text/css', cardStyle(card)],
    '/app': [
      'text/html',
      `<!doctype html><html lang="en"><head><title>App</title><link rel="stylesheet" href="/card.css"></head><body><h2 id="own">App</h2>${fragment}</body></html>`,
    ],
    '/page': ['text/html', renderHtml(card, { stylesheet: '/card.css' })],
    '/inline': ['text/html', renderHtml(card)],
  }
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox', '--disable-gpu'] })
  try {
    const page = await browser.newPage()
    const errors: string[] = []
    page.on('console', (message) => {
      if (message.type() === 'error') errors.push(message.text())
    })
    await page.route('http://app.test/**', (route) => {
      const [contentType = 'text/plain', body = ''] = files[new URL(route.request().url()).pathname] ?? []
      const headers = { 'content-security-policy': "default-src 'none'; style-src 'self'" }
      return route.fulfill({ status: body === '' ? 404 : 200, contentType, body, headers })
    })
    const colourOf = (selector: string) =>
      page
        .locator(selector)
        .first()
        .evaluate((element) => {
          const read = (globalThis as unknown as { getComputedStyle: (at: unknown) => { color: string } })
            .getComputedStyle
          return read(element).color
        })
    const deepColour = 'rgb(11, 72, 81)'
    for (const path of ['app', 'page']) {
      await page.goto(`http://app.test/${path}`)
      expect(await colourOf('.service-card h2')).toBe(deepColour)
      await page.locator('.step input').first().check()
      await page.locator('#record input[type=text]').first().fill('2031-10-06')
      expect(await page.locator('.step input').first().isChecked()).toBe(true)
    }
    expect(errors).toEqual([])
    await page.goto('http://app.test/app')
    expect(await colourOf('#own')).toBe('rgb(0, 0, 0)')
    await page.emulateMedia({ colorScheme: 'dark' })
    expect(await colourOf('.service-card h2')).toBe('rgb(143, 211, 220)')
    // The check can fail: a style in the page is refused.
    await page.goto('http://app.test/inline')
    expect(await colourOf('.service-card h2')).not.toBe(deepColour)
    expect(errors.join()).toContain('style')
  } finally {
    await browser.close()
  }
})

it("the browser's own print command prints the pages of page.pdf at margins of 0, 7, 12.7 and 25 mm", async (context) => {
  if (!hasChromium()) {
    expect(process.env['DRIVETRAIN_REQUIRE_TOOLS']).not.toBe('1')
    console.log('outside tool skipped: chromium')
    context.skip()
  }
  const folder = mkdtempSync(join(tmpdir(), 'print-'))
  const chosen = listPapers().filter(({ name }) => /^(wall card of tind-4 long|tind-4\/log)$/.test(name))
  expect(chosen.length).toBe(2)
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: CHROMIUM_ARGUMENTS.split(' ') })
  try {
    const page = await browser.newPage()
    const counts: string[] = []
    for (const [place, { name, card, most }] of chosen.entries())
      for (const margin of [0, 7, 12.7, 25]) {
        const style = `<style>@page service-card{size:A4;margin:${margin}mm}</style></body>`
        // The card forbids styles that it does not know; the test prints it with a margin of its own.
        const html = renderHtml(card)
          .replace(/<meta http-equiv="content-security-policy"[^>]*>/i, '')
          .replace('</body>', style)
        const [file, pdf] = [join(folder, `${place}.html`), join(folder, `${place}.pdf`)]
        writeFileSync(file, html)
        const address = pathToFileURL(file).href
        const options = [...CHROMIUM_ARGUMENTS.split(' '), '--no-pdf-header-footer', `--print-to-pdf=${pdf}`]
        execFileSync(CHROMIUM, [...options, address], { stdio: 'ignore' })
        await page.goto(address)
        const own = await page.pdf({ preferCSSPageSize: true })
        const printed = pagesOf(readFileSync(pdf))
        expect(printed, `${name} at ${margin} mm`).toBe(pagesOf(own))
        expect(printed, `${name} at ${margin} mm`).toBeLessThanOrEqual(
          most + (margin > 20 ? 2 : margin > 10 ? 1 : 0),
        )
        counts.push(`${name} at ${margin} mm: ${printed}`)
      }
    console.log(counts.join('; '))
  } finally {
    await browser.close()
    rmSync(folder, { recursive: true })
  }
})
