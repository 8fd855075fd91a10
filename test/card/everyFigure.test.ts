import type { Element, Nodes, Root } from 'hast'
import { fromHtml } from 'hast-util-from-html'
import { describe, expect, it } from 'vitest'
import type { Reason } from '../../src/base/finding.js'
import { readPointer } from '../../src/base/pointers.js'
import { shortenCard } from '../../src/card/shortenCard.js'
import { en } from '../../src/message/en/index.js'
import { renderHtml } from '../../src/v1/card.js'
import { renderMessage } from '../../src/v1/message.js'
import { cardOf, type JudgedPlan } from '../support/planExample.js'
import { planExamples } from './planExamples.js'
import { PLAN_WITHOUT_VARIANT, SKARNFELL_PLAN } from './skarnfellPlan.js'

/** Step numbers are the only digits on a card that are not in the plan. */
const NUMBERS_OF_THEIR_OWN = 'number'

const textOf = (node: Nodes): string =>
  node.type === 'text' ? node.value : 'children' in node ? node.children.map(textOf).join('') : ''

/** Numerals as shown, without group marks; one entry for each group of digits with its decimals. */
function numeralsIn(text: string): string[] {
  return text.replace(/(?<=[0-9])\u202f(?=[0-9]{3})/g, '').match(/[0-9]+(?:\.[0-9]+)?/g) ?? []
}

/** Every number in a value of the plan: its JSON numbers, and the numerals inside its strings. */
function numbersIn(value: unknown): string[] {
  if (typeof value === 'number') return [String(Math.abs(value))]
  if (typeof value === 'string') return numeralsIn(value)
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(numbersIn)
}

function countDecimals(numeral: string): number {
  return numeral.split('.')[1]?.length ?? 0
}

/** A shown numeral is a printed one, or a number of the plan rounded to the shown decimals. */
function comesFrom(numeral: string, numbers: readonly string[]): boolean {
  return numbers.some(
    (number) =>
      number === numeral ||
      Math.abs(Number(number) - Number(numeral)) <= 0.5000001 * 10 ** -countDecimals(numeral),
  )
}

/** `1 h 2 min 5 s` in seconds, for waiting times and minutes of work, which are one number in the plan. */
function secondsShown(text: string): number | undefined {
  const parts = [...text.matchAll(/([0-9]+)\u00a0(h|min|s)(?=$| )/g)]
  if (parts.length === 0 || parts.map(([part]) => part).join(' ') !== text) return undefined
  const size = { h: 3600, min: 60, s: 1 } as const
  return parts.reduce((sum, [, count, unit]) => sum + Number(count) * size[unit as keyof typeof size], 0)
}

function wrongFigures(root: Root, plan: JudgedPlan): string[] {
  const wrongFigures: string[] = []
  const visit = (node: Nodes): void => {
    if (node.type === 'text') {
      if (/[0-9]/.test(node.value)) wrongFigures.push(`no pointer: ${node.value}`)
      return
    }
    if (node.type === 'element') {
      if (node.tagName === 'style' || node.tagName === 'title') return
      const from = node.properties['dataFrom']
      if (typeof from === 'string') {
        const problem = judge(textOf(node), from, plan)
        if (problem !== undefined) wrongFigures.push(problem)
        return
      }
      const classes = node.properties['className']
      if (Array.isArray(classes) && classes.includes(NUMBERS_OF_THEIR_OWN)) return
    }
    if ('children' in node) node.children.forEach(visit)
  }
  visit(root)
  return wrongFigures
}

function judge(text: string, from: string, plan: JudgedPlan): string | undefined {
  const value = readPointer(plan, from)
  if (value === undefined) return `${from} leads nowhere: ${text}`
  const seconds = secondsShown(text)
  if (seconds !== undefined && typeof value === 'number') {
    // a pour is printed in whole minutes, at least one
    const inMinutes = /^\/waits\/[0-9]+\/seconds$/.test(from) && seconds % 60 === 0
    const heldText =
      from === '/time/minutes'
        ? Math.round(value) * 60
        : inMinutes
          ? Math.max(1, Math.round(value / 60)) * 60
          : Math.round(value)
    return seconds === heldText ? undefined : `${from} is ${value}, not ${text}`
  }
  // The sentence of a reason is the catalogue's text of that reason, with a capital first letter.
  if (typeof value === 'object' && value !== null && 'code' in value) {
    const reasonText = renderMessage(value as Reason, en)
    const sentence = reasonText.charAt(0).toUpperCase() + reasonText.slice(1)
    return text === sentence ? undefined : `${from} says “${sentence}”, not “${text}”`
  }
  const numbers = numbersIn(value)
  const unknownNumerals = numeralsIn(text).filter((numeral) => !comesFrom(numeral, numbers))
  return unknownNumerals.length === 0
    ? undefined
    : `${from}: ${unknownNumerals.join(', ')} of “${text}” is not in the plan`
}

const elements = (root: Nodes, found: Element[] = []): Element[] => {
  if (root.type === 'element') found.push(root)
  if ('children' in root) for (const child of root.children) elements(child, found)
  return found
}
const figuresOn = (html: string) =>
  elements(fromHtml(html)).filter(
    (node) => typeof node.properties['dataFrom'] === 'string' && /[0-9]/.test(textOf(node)),
  )

const PLANS: readonly (readonly [string, JudgedPlan])[] = [
  ['the plan with everything', SKARNFELL_PLAN],
  ['the plan without a variant', PLAN_WITHOUT_VARIANT],
  ...planExamples(),
]

describe('every figure on the card', () => {
  it.each(PLANS)('%s: is in the plan at its pointer', (_name, plan) => {
    const html = renderHtml(cardOf(plan))
    expect(wrongFigures(fromHtml(html), plan)).toEqual([])
    expect(figuresOn(html).length).toBeGreaterThan(30)
  })

  it.each(PLANS)('%s: so do those of the short card', (_name, plan) => {
    const html = renderHtml(shortenCard(cardOf(plan)))
    expect(wrongFigures(fromHtml(html), plan)).toEqual([])
    expect(figuresOn(html).length).toBeGreaterThan(8)
  })

  it('fails this test when it is changed', () => {
    const html = renderHtml(cardOf(SKARNFELL_PLAN))
    const forgedHtml = html.replace('>22.5\u00a0N·m</span>', '>25.5\u00a0N·m</span>')
    expect(forgedHtml).not.toBe(html)
    expect(wrongFigures(fromHtml(forgedHtml), SKARNFELL_PLAN).length).toBeGreaterThan(0)
    const withBareFigure = html.replace('</main>', '<p>34 N·m</p></main>')
    expect(wrongFigures(fromHtml(withBareFigure), SKARNFELL_PLAN)).toEqual(['no pointer: 34 N·m'])
  })

  it('shows every stated torque, refill and seal size of the work with its own digits', () => {
    for (const [, plan] of PLANS) {
      const html = renderHtml(cardOf(plan))
      for (const [index, { role, resolved }] of plan.figures.entries()) {
        if (!['refill', 'tightening'].includes(role) || resolved.kind !== 'stated') continue
        expect(html).toContain(`data-from="/figures/${index}/resolved/value`)
      }
    }
  })
})
