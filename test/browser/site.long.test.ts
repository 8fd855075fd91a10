import { existsSync, readdirSync } from 'node:fs'
import axe from 'axe-core'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { CHROMIUM, hasChromium } from './judgeCards.js'

// `.ci/run` builds the site before the long runs; here it is only looked at, from the disk and without a network.
const SITE = `${process.cwd()}/docs/site`
const isBuilt = existsSync(`${SITE}/index.html`)
let browser: Browser | undefined

beforeAll(async () => {
  if (isBuilt && hasChromium()) {
    browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox', '--disable-gpu'] })
    return
  }
  expect(process.env['DRIVETRAIN_REQUIRE_TOOLS'], 'npm run docs has not run').not.toBe('1')
  console.log(`outside tool skipped: ${isBuilt ? 'chromium' : 'npm run docs'}`)
})
afterAll(async () => browser?.close())

async function open(path: string, width = 1280) {
  if (browser === undefined) throw new Error('no browser')
  const context = await browser.newContext({ viewport: { width, height: 900 }, offline: true })
  const page = await context.newPage()
  const problems: string[] = []
  page.on('pageerror', (error) => problems.push(error.message))
  page.on('request', (request) => {
    if (!/^(file|data|blob):/.test(request.url())) problems.push(request.url())
  })
  await page.goto(`file://${SITE}/${path}`)
  return { page, problems }
}

it('the search finds a guide by a word of its text, without a network', async (ctx) => {
  if (browser === undefined) return ctx.skip()
  const { page, problems } = await open('index.html')
  await page.locator('#tsd-search-trigger').click()
  await page.locator('#tsd-search-input').pressSequentially('baseline', { delay: 5 })
  const results = page.locator('#tsd-search-results li')
  // The list changes with each letter.
  await results.filter({ hasText: 'Check sheets in CI' }).first().waitFor()
  expect(problems).toEqual([])
})

it.for(['index.html', 'documents/Torque.html', 'documents/All_fields.html', 'documents/Architecture.html'])(
  '%s: axe finds nothing serious, and nothing is wider than a phone',
  async (path, ctx) => {
    if (browser === undefined) return ctx.skip()
    const { page, problems } = await open(path, 390)
    expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390)
    await page.evaluate(axe.source)
    const { violations } = await page.evaluate<axe.AxeResults>("axe.run('.col-content')")
    const serious = violations.filter(({ impact }) => impact === 'critical' || impact === 'serious')
    expect(serious.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([])
    expect(problems).toEqual([])
  },
)

it('no guide is wider than a phone, and each begins with its heading', async (ctx) => {
  if (browser === undefined) return ctx.skip()
  const guides = readdirSync(`${SITE}/documents`).filter((file) => file.endsWith('.html'))
  expect(guides.length).toBeGreaterThan(30)
  const { page, problems } = await open('index.html', 390)
  const bad: string[] = []
  for (const guide of guides) {
    await page.goto(`file://${SITE}/documents/${guide}`)
    const width = await page.evaluate<number>('document.documentElement.scrollWidth')
    if (width > 390) bad.push(`${guide}: ${width} px`)
    if ((await page.locator('.col-content h1').count()) === 0) bad.push(`${guide}: no heading`)
  }
  expect(bad).toEqual([])
  expect(problems).toEqual([])
})
