import type { JudgedPlan } from '../support/planExample.js'
import { SKARNFELL_PLAN } from './skarnfellPlan.js'

/** Names that try to break out of HTML, Markdown, captions, a terminal, or the reading direction. */
export const HOSTILE_NAMES = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  '</style><h1>forged</h1>',
  '| a | b |\n|---|---|\n# Heading',
  '[link](https://evil.example) ![x](y) **bold** `code` https://evil.example www.evil.example a@evil.example',
  '\u202egnorw\u202c \u2066x\u2069',
  '\u001b[31mred\u0007',
  '00:00:00.000 --> 99:00:00.000\n\nNOTE',
  '1. first\n2. second',
  '- [x] done',
  '~~gone~~ <!-- --> &amp; &#x202e;',
  '\ue000\ue100\ue001',
  '\ud800',
] as const

/** Keys of the plan whose strings come from documents and may contain anything. */
const FREE_TEXT = new Set([
  'name',
  'make',
  'model',
  'type',
  'header',
  'serial',
  'market',
  'serviceName',
  'gearcase',
  'part',
  'text',
  'note',
  'choice',
  'partNumber',
  'product',
  'title',
  'edition',
  'page',
  'designation',
  'asPrinted',
  'grade',
  'category',
])

/** The plan with one name instead of every free text. */
export function withHostileNames(name: string, plan: JudgedPlan = SKARNFELL_PLAN): JudgedPlan {
  const replace = (value: unknown, key: string): unknown => {
    if (typeof value === 'string') return FREE_TEXT.has(key) ? name : value
    if (Array.isArray(value)) return value.map((item) => replace(item, ''))
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(Object.entries(value).map(([inner, item]) => [inner, replace(item, inner)]))
  }
  return replace(plan, '') as JudgedPlan
}
