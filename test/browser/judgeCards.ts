import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type Browser, chromium } from 'playwright-core'
import { renderHtml } from '../../src/v1/card.js'
import type { Catalogue } from '../../src/v1/message.js'
import { type ListedPaper, listPapers } from './listPapers.js'

export const CHROMIUM = '/usr/bin/chromium'
export const hasChromium = () => existsSync(CHROMIUM)

export const CHROMIUM_ARGUMENTS =
  '--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync'

/** Margins of a print dialog in millimetres, for the longest cards; 12.7 mm may need one page more, 25 mm two. */
const MARGINS = [0, 7, 12.7, 25]
const WITH_ALL_MARGINS: ReadonlySet<string> = new Set(['tind-4/log', 'acre-26/log'])
/** Labels have a page size of their own, in millimetres. */
const LABEL_SIZES: {
  readonly [extent: string]: { readonly width: number; readonly margin: number }
} = {
  label: { width: 62, margin: 2 },
  'label-upright': { width: 29, margin: 1.5 },
}
/** Papers that are printed across the page. */
const LANDSCAPE: ReadonlySet<string> = new Set(['cues', 'chart'])
const PAPER_WIDTHS = { A4: 210, Letter: 215.9 } as const
/** The smallest text, in points. */
const SMALLEST = 9

export interface JudgedCard {
  readonly name: string
  readonly a4: number
  readonly letter: number
}

/** Which papers are judged; by default each in English. Without `axe` it takes half the time. */
interface Choice {
  readonly catalogue?: Catalogue
  readonly isChosen?: (name: string) => boolean
  readonly axe?: boolean
}

interface Output {
  readonly write: (name: string, bytes: Uint8Array) => void
  /** Saves a page for the browser, and returns its address. */
  readonly page: (name: string, html: string) => string
}

/** Runs in the page: names every element that is outside the window or its box, or is clipped. */
const FIND_OVERFLOW = `(() => {
  const found = []
  const root = document.documentElement
  const width = root.clientWidth
  if (root.scrollWidth > width) found.push('the page scrolls sideways: ' + root.scrollWidth + ' px of ' + width + ' px')
  const isHidden = (element) => {
    for (let at = element; at !== null; at = at.parentElement) {
      if (getComputedStyle(at).clipPath === 'inset(50%)') return true
    }
    return false
  }
  for (const element of document.body.querySelectorAll('*')) {
    if (element.closest('svg') !== null && element.tagName !== 'svg') continue
    if (isHidden(element)) continue
    const box = element.getBoundingClientRect()
    if (box.width === 0 && box.height === 0) continue
    const label = element.tagName.toLowerCase() + ' "' + (element.textContent ?? '').slice(0, 40) + '"'
    if (box.left < -0.5 || box.right > width + 0.5) found.push(label + ' stands past the window')
    const style = getComputedStyle(element)
    if (style.display !== 'inline' && element.scrollWidth > element.clientWidth + 1) found.push(label + ' is wider than its box')
    const clips = style.overflowX !== 'visible' || style.overflowY !== 'visible'
    if (clips && element.scrollHeight > element.clientHeight + 1) found.push(label + ' is clipped')
  }
  return found
})()`

/** Runs in the page: the size of the smallest visible text, in points. */
const FIND_SMALLEST_TYPE = `(() => {
  const sizes = [...document.body.querySelectorAll('*')]
    .filter((element) => element.getClientRects().length > 0 && [...element.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== ''))
    // Type in a drawing is as large as the drawing is scaled.
    .map((element) => Number.parseFloat(getComputedStyle(element).fontSize) * 0.75 * (element.closest('svg') === null ? 1 : element.getScreenCTM().a))
  return Math.min(...sizes)
})()`

/** Runs in the page: the size of the smallest text of the warnings above a wall card, in points. */
const FIND_SMALLEST_WARNING = `Math.min(...[...document.querySelectorAll('aside.cautions p')]
  .map((element) => Number.parseFloat(getComputedStyle(element).fontSize) * 0.75))`

/** Runs in the page: figures that the screen shows and the paper does not. */
const FIND_UNPRINTED = `(() => {
  const isShown = (element) => element.getClientRects().length > 0
  const figures = [...document.querySelectorAll('.printed,.computed,[data-from$="/setting"]')]
  const printed = new Set(figures.filter(isShown).map(({ textContent }) => textContent))
  return [...new Set(figures.map(({ textContent }) => textContent))].filter((text) => !printed.has(text))
})()`

/** Runs in the page: lines whose text and figures do not fit on one phone screen. */
const FIND_TALL_STEPS = `(() => [...document.querySelectorAll('.step label')]
  .filter((element) => element.getBoundingClientRect().height > innerHeight)
  .map((element) => 'a line is higher than the screen: ' + element.textContent.slice(0, 40)))()`

/** A general checker of accessibility; its rules for WCAG and its own best practices. */
const AXE = readFileSync(
  createRequire(`${process.cwd()}/package.json`).resolve('axe-core/axe.min.js'),
  'utf8',
)

/** Runs in the page, after {@link AXE}: each rule that is broken, with the first element that breaks it. */
const FIND_BARRIERS = `axe.run({ resultTypes: ['violations'] }).then(({ violations }) =>
  violations.map(({ id, nodes }) => id + ': ' + nodes[0].html.slice(0, 120)))`

const VIEWS = {
  light: { width: 1180, media: 'screen', colorScheme: 'light' },
  dark: { width: 1180, media: 'screen', colorScheme: 'dark' },
  phone: { width: 320, media: 'screen', colorScheme: 'light' },
  print: { width: 740, media: 'print', colorScheme: 'light' },
} as const

/** What keeps a reader out of a paper in light, dark, on a phone and as it is printed. */
async function findBarriers(browser: Browser, html: string): Promise<string[]> {
  // The card forbids scripts, and the checker is one.
  const context = await browser.newContext({ bypassCSP: true })
  const page = await context.newPage()
  await page.setContent(html)
  await page.evaluate(AXE)
  const found: string[] = []
  for (const [name, { width, media, colorScheme }] of Object.entries(VIEWS)) {
    await page.setViewportSize({ width, height: 900 })
    await page.emulateMedia({ media, colorScheme })
    const barriers = await page.evaluate<string[]>(FIND_BARRIERS)
    found.push(...barriers.map((text) => `${name}: ${text}`))
  }
  await context.close()
  return found
}

/** Heights of the pages in millimetres, without margins of 7 mm. */
const PAGE_HEIGHTS = { A4: 297 - 14, Letter: 279.4 - 14 } as const

/** Pages of a PDF, counted in its own objects. */
export const pagesOf = (pdf: Uint8Array) =>
  Buffer.from(pdf)
    .toString('latin1')
    .match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0

async function judgeCard(browser: Browser, { name, card }: ListedPaper, output: Output, axe: boolean) {
  const html = renderHtml(card)
  const label = LABEL_SIZES[card.extent]
  const file = name.replace(/[^a-z0-9]+/g, '-')
  const page = await browser.newPage({ viewport: { width: 1180, height: 900 } })
  const failures: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error') failures.push(`${name}: the browser says: ${message.text()}`)
  })
  await page.goto(output.page(`${file}.html`, html))
  output.write(`${file}-desktop.png`, await page.screenshot({ fullPage: true }))
  const found: string[] = []
  // 590 px is a window of 1180 px at 200 % zoom.
  for (const width of [1180, 768, 590, 320]) {
    await page.setViewportSize({ width, height: 700 })
    found.push(
      ...(await page.evaluate<string[]>(FIND_OVERFLOW)).map((text) => `${name} at ${width} px: ${text}`),
    )
  }
  found.push(...(await page.evaluate<string[]>(FIND_TALL_STEPS)).map((text) => `${name}: ${text}`))
  output.write(`${file}-320px.png`, await page.screenshot({ fullPage: true }))
  const printWith = async (format: 'A4' | 'Letter', margin?: number) => {
    // Without a margin, and a label always: the paper's own.
    const isOwn = margin === undefined || label !== undefined
    const content = `@page service-card{${isOwn ? '' : `margin:${margin}mm`}}`
    const style = await page.addStyleTag({ content })
    const size = label === undefined ? { format } : { preferCSSPageSize: true }
    const landscape = label === undefined && LANDSCAPE.has(card.extent)
    const pdf = await page.pdf({ ...size, landscape, printBackground: false, tagged: true, outline: true })
    await style.evaluate((element) => (element as unknown as { remove: () => void }).remove())
    return pdf
  }
  const [a4, letter] = [await printWith('A4'), await printWith('Letter')]
  output.write(`${file}-a4.pdf`, a4)
  if (card.extent === 'wall')
    for (const [format, pdf] of [
      ['A4', a4],
      ['Letter', letter],
    ] as const) {
      // If two thirds of a page fit behind the last line, the last page is less than a third full.
      const height = (PAGE_HEIGHTS[format] * 2) / 3
      await page.evaluate(`document.querySelector('footer').insertAdjacentHTML('beforeend',
        '<div id="filler" style="break-inside:avoid;height:${height}mm"></div>')`)
      if (pagesOf(pdf) > 1 && pagesOf(await printWith(format)) === pagesOf(pdf))
        found.push(`${name}: the last page of ${format} is less than a third full`)
      await page.evaluate(`document.querySelector('#filler').remove()`)
    }
  const isWhole = a4.includes('/StructTreeRoot') && a4.includes('/Outlines') && a4.includes('/Title')
  if (!isWhole) found.push(`${name}: the PDF has no tags, outline or title`)
  if (WITH_ALL_MARGINS.has(name))
    for (const margin of MARGINS)
      for (const [format, standard] of [
        ['A4', a4],
        ['Letter', letter],
      ] as const) {
        const count = pagesOf(await printWith(format, margin))
        const most = pagesOf(standard) + (margin > 20 ? 2 : margin > 10 ? 1 : 0)
        if (count > most) found.push(`${name}: ${count} pages of ${format} at ${margin} mm, at most ${most}`)
      }
  await page.emulateMedia({ media: 'print', forcedColors: 'none' })
  for (const paper of label === undefined ? Object.values(PAPER_WIDTHS) : [label.width])
    for (const margin of label === undefined ? MARGINS : [label.margin]) {
      await page.setViewportSize({ width: Math.floor(((paper - 2 * margin) * 96) / 25.4), height: 1000 })
      const problems = await page.evaluate<string[]>(FIND_OVERFLOW)
      found.push(...problems.map((text) => `${name} on paper at ${margin} mm: ${text}`))
    }
  const smallest = await page.evaluate<number>(FIND_SMALLEST_TYPE)
  if (smallest < SMALLEST - 0.01) found.push(`${name}: type of ${smallest} pt on paper`)
  const smallestWarning = await page.evaluate<number>(FIND_SMALLEST_WARNING)
  if (card.extent === 'wall' && smallestWarning < 11 - 0.01)
    found.push(`${name}: a warning of ${smallestWarning} pt on paper`)
  const unprintedTexts = await page.evaluate<string[]>(FIND_UNPRINTED)
  found.push(...unprintedTexts.map((text) => `${name}: ${text} is not on paper`))
  await page.setViewportSize({ width: 794, height: 1123 })
  await page.addStyleTag({
    content:
      'html{filter:grayscale(1)}*{background-color:transparent!important}html{background:#fff!important}',
  })
  output.write(`${file}-print-grey.png`, await page.screenshot({ fullPage: true }))
  await page.close()
  if (axe) found.push(...(await findBarriers(browser, html)).map((text) => `${name}, ${text}`))
  return { judged: { name, a4: pagesOf(a4), letter: pagesOf(letter) }, complaints: [...failures, ...found] }
}

/**
 * Renders the card of every example in Chromium. Nothing may be outside its box at 320, 768 and 1180 px, and no card
 * may need too many printed pages.
 */
export async function judgeCards(
  output: Output,
  { catalogue, isChosen = () => true, axe = true }: Choice = {},
): Promise<{ cards: JudgedCard[]; complaints: string[] }> {
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: CHROMIUM_ARGUMENTS.split(' ') })
  const cards: JudgedCard[] = []
  const complaints: string[] = []
  try {
    for (const paper of listPapers(catalogue).filter(({ name }) => isChosen(name))) {
      const { name, most } = paper
      const { judged, complaints: found } = await judgeCard(browser, paper, output, axe)
      cards.push(judged)
      complaints.push(...found)
      for (const [format, count] of [
        ['A4', judged.a4],
        ['Letter', judged.letter],
      ] as const) {
        if (count < 1 || count > most)
          complaints.push(`${name}: ${count} pages of ${format}, at most ${most} expected`)
      }
    }
  } finally {
    await browser.close()
  }
  return { cards, complaints }
}
