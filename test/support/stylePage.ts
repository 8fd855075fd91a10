import type { CardModel, CardPart, CardPicture, Line } from '../../src/card/cardParts.js'
import { DARK, LIGHT, LINES, PAPER_SIZES, SCREEN_SIZES } from '../../src/card/html/baseStyle.js'
import { cardStyle, renderHtml } from '../../src/v1/card.js'

/** The file of the page. */
export const STYLE_PAGE = 'docs/style.html'

const line = (text: string): Line => [{ text }]
const printed = (text: string): Line => [{ text, from: '/figure', tone: 'printed' }]
const also = (text: string): Line => [{ text, from: '/figure', tone: 'also printed' }]
const gap: Line = [{ text: 'not stated: see the manual', from: '/figure', tone: 'gap' }]
const computed: Line = [{ text: '31 N·m', from: '/figure', tone: 'computed' }]

const picture = (name: string, drawing: CardPicture['drawing'], ...text: string[]): CardPicture => ({
  kind: 'picture',
  name: line(name),
  drawing,
  text: text.map(line),
})

const SCALE = picture(
  'Wrench, 20–30 N·m',
  {
    kind: 'scale',
    scale: { lowest: 20, highest: 30, graduation: 0.5 },
    settings: [
      { label: 'D1 22.5', value: 22.5 },
      { label: 'F1 28', value: 28 },
    ],
  },
  'D1 22.5, F1 28',
)
const POUR = picture(
  'Pouring',
  {
    kind: 'pour',
    start: '0:00',
    bars: [
      {
        label: '0 °C',
        end: '3:20',
        ends: [40, 150, 200].map((seconds) => ({ seconds, clock: `${seconds} s` })),
      },
      { label: '20 °C', end: 'until nothing drips' },
    ],
  },
  '0 °C: 3:20',
)
const JUG = picture(
  'Jug',
  { kind: 'jug', size: 1000, graduation: 100, marks: [{ value: 450, label: '450' }] },
  '450',
)
const SIZES = picture(
  'True sizes only if this line is 50 mm',
  {
    kind: 'true sizes',
    labels: 'below',
    checkLine: { millimetres: 50, label: 'True sizes only if this line is 50 mm' },
    shapes: [
      { kind: 'ring', insideDiameter: 14, outsideDiameter: 18, labels: ['D1 · 1 ×', '14 × 18 mm'] },
      { kind: 'hexagon', acrossFlats: 10, labels: ['F1', 'hex 10 mm'] },
    ],
  },
  'D1: ring, 14 × 18 mm; F1: hexagon, 10 mm',
)
const CASE = picture(
  'Case with its plugs, not to scale',
  {
    kind: 'case',
    ends: ['front', 'rear'],
    parts: [
      { label: 'F1', at: 'face', x: 0.4, y: 0, isBreather: false },
      { label: 'D1', at: 'bottom', x: 0, y: 1, isBreather: false },
    ],
  },
  'F1: left face; D1: bottom',
)
const WHEEL = picture(
  'Wheel',
  { kind: 'wheel', positions: [{ label: 'drain', mark: 'mark down' }] },
  'drain: mark down',
)
const BOLTS = picture(
  'Bolts of a cover',
  { kind: 'bolts', numbers: [1, 4, 2, 3], layout: 'circle' },
  'crosswise: 1, 4, 2, 3 clockwise',
)

/** Every piece of a paper that has a layout of its own. */
const PIECES: readonly (readonly [CardModel['extent'], CardModel['sections']])[] = [
  [
    'full',
    [
      makeSection('due', 'Table with bars of limits', {
        kind: 'table',
        caption: line('Service — due'),
        columns: ['Counted by', 'Limit', 'Used', 'State'],
        rows: [80, 220, 400].map((used) => [
          { lines: [line('hours')] },
          { lines: [printed('200 h')] },
          { lines: [line(`${used} h`)], bar: { fraction: used / 200, text: `${used} h of 200 h` } },
          {
            lines: [line(used < 200 ? 'not due' : 'due'), ...(used < 200 ? [] : [line('◀ governing limit')])],
          },
        ]),
      }),
      makeSection('tightening', 'Table with torques', {
        kind: 'table',
        caption: line('Torques'),
        columns: ['Part', 'Manual', 'Setting', 'Actual torque'],
        rows: [
          [
            { lines: [line('Drain plug')] },
            { lines: [printed('28–34 N·m')] },
            { lines: [computed] },
            {
              lines: [line('29.8–32.3 N·m')],
              drawing: {
                unit: 'N.m',
                stated: { low: 28, high: 34 },
                trueBand: { low: 29.8, high: 32.3 },
                setting: 31,
              },
            },
          ],
        ],
      }),
      makeSection(
        'ready',
        'Lists',
        {
          kind: 'list',
          heading: 'To tick',
          box: true,
          items: [{ line: line('1 × crush washer'), notes: [line('drain plug · buy: 1')] }],
        },
        { kind: 'list', heading: 'Plain', box: false, picture: 'pour', items: [{ line: gap, notes: [] }] },
      ),
      makeSection('figures', 'Figures of a gearcase', {
        kind: 'plate',
        name: line('Rear gearcase'),
        rows: [
          { label: line('Refill'), value: printed('950 mL'), size: 'large', notes: [also('1.0 US qt')] },
          { label: line('Torque'), value: gap, size: 'small', notes: [] },
        ],
      }),
      makeSection('steps', 'Order of work', {
        kind: 'steps',
        groups: [
          {
            heading: line('Rear gearcase'),
            steps: [
              {
                number: 1,
                steps: ['drain'],
                cautions: [
                  { line: line('CAUTION: Hot oil burns. Keep face and hands clear.') },
                  { notice: true, line: line('NOTICE: Chips in the oil mean damage.') },
                ],
                full: line('Take out the drain plug.'),
                short: line('Drain plug out'),
                figures: [printed('28–34 N·m'), computed],
              },
            ],
          },
        ],
      }),
      makeSection('record', 'Fields to fill in', {
        kind: 'blanks',
        heading: line('Rear gearcase'),
        fields: [{ label: 'Drained' }, { label: 'Level', choices: ['right', 'low', 'high'] }],
      }),
    ],
  ],
  [
    'wall',
    [
      makeSection('panels', 'Panels', {
        kind: 'panel',
        name: line('1 Rear gearcase'),
        access: line('from the ground'),
        quantity: printed('950 mL'),
        oil: line('SAE 80W-90, API GL-5'),
        notes: [line('Loosen F1, D1. Tighten D1, F1')],
        columns: { tool: 'tool', manual: 'manual', setting: 'set the wrench to' },
        drawings: [CASE, WHEEL, BOLTS],
        rows: [
          {
            mark: line('D1'),
            name: line('Drain plug'),
            tool: line('10 mm'),
            toolForm: line('hex key'),
            manual: printed('28–34 N·m'),
            manualNotes: [{ text: '21–25 lbf·ft' }],
            setting: line('31 N·m'),
            wrench: line('half-inch click wrench'),
            notes: [line('crush washer')],
          },
        ],
      }),
      makeSection('job', 'The job', {
        kind: 'list',
        box: false,
        numbered: true,
        items: ['Warm the oil.', 'Crack the fill plug loose first.'].map((text) => ({
          line: line(text),
          notes: [],
        })),
      }),
      makeSection('settings', 'Wrench settings', SCALE),
      makeSection('pours', 'Pouring', POUR, JUG),
      makeSection('sizes', 'True sizes', SIZES),
    ],
  ],
  [
    'cues',
    [
      makeSection('scenes', 'Scenes', {
        kind: 'scenes',
        columns: { show: 'Show', say: 'Say', screen: 'On screen', hold: 'Hold' },
        scenes: [
          {
            number: 1,
            title: line('Drain'),
            time: '12 s',
            shots: [{ text: 'Oil runs into the pan', marks: ['cannot be repeated'] }],
            say: [
              { text: 'Hot oil burns.', isCaution: true },
              { text: 'Take out the drain plug.', isCaution: false },
            ],
            screen: [printed('28–34 N·m')],
            hold: [{ line: line('CAUTION: Hot oil burns.') }],
          },
        ],
      }),
    ],
  ],
]

function makeSection(
  id: CardModel['sections'][number]['id'],
  heading: string,
  ...parts: readonly CardPart[]
): CardModel['sections'][number] {
  return { id, heading, parts }
}

const makeCard = (extent: CardModel['extent'], sections: CardModel['sections']): CardModel => ({
  kind: 'service-card',
  version: '1.0',
  language: 'en',
  direction: 'ltr',
  extent,
  title: 'Pieces of a paper',
  shortTitle: 'Pieces of a paper',
  machine: line(`Paper: ${extent}`),
  about: line('Every piece with made-up values'),
  variant: { known: true, label: 'Variant', lines: [line('Long bed')] },
  facts: [{ label: 'Date', value: line('2031-10-06'), large: true }],
  authority: ['The machine’s own manual comes first.'],
  cautions: {
    label: 'Caution',
    cautions: [{ word: 'WARNING', line: line('The machine can roll. Chock it first.') }],
  },
  sections,
  marks: {
    computed: 'calculated',
    inFull: 'In full',
    pictures: { washer: 'Washer', 'wheel marks': 'Wheel marks', pour: 'A funnel' },
    legend: { allowed: 'permitted', trueBand: 'actual', setting: 'setting' },
  },
})

const row = (cells: readonly string[], tag = 'td') =>
  `<tr>${cells.map((cell) => `<${tag}>${cell}</${tag}>`).join('')}</tr>`
const table = (caption: string, head: readonly string[], rows: readonly (readonly string[])[]) =>
  `<table><caption>${caption}</caption><thead>${row(head, 'th')}</thead><tbody>\n${rows.map((cells) => row(cells)).join('\n')}\n</tbody></table>`

/** The style page of all papers: the tables of {@link PAPER_SIZES} and its neighbours, then every piece as it is drawn. */
export function renderStylePage(): string {
  const papers = Object.entries(PAPER_SIZES)
  const sizes = Object.keys(SCREEN_SIZES) as (keyof typeof SCREEN_SIZES)[]
  const swatch = (colour: string) => `<span class="swatch" style="background:${colour}"></span>${colour}`
  const pieces = PIECES.map(([extent, sections]) => {
    const card = makeCard(extent, sections)
    // Each style keeps to its own paper, since they are on one page.
    const style = cardStyle(card).replaceAll('.service-card', `.service-card.${extent}`)
    return { style, html: renderHtml(card, { form: 'fragment' }) }
  })
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Style of the papers</title><style>
body{margin:0;background:#d9e0e1}
.tables{font:1rem/1.4 sans-serif;max-width:1120px;margin:0 auto;padding:1rem 30px;background:#fff;color:#000}
.tables table{border-collapse:collapse;margin:1rem 0}
.tables th,.tables td{border-top:1px solid;padding:.2rem 1rem .2rem 0;text-align:start}
.tables caption{font-weight:700;text-align:start}
.swatch{display:inline-block;width:3em;height:1em;border:1px solid;margin-inline-end:.5em}
${pieces.map(({ style }) => style).join('\n')}</style></head><body>
<section class="tables"><h1>Style of the papers</h1>
<p>Generated from <code>src/card/html/baseStyle.ts</code> by <code>npm run generate</code>. All values below are made up.</p>
${table(
  'Type sizes: screen, and points on each paper',
  ['size', 'screen', ...papers.map(([name]) => name)],
  sizes.map((size) => [size, SCREEN_SIZES[size], ...papers.map(([, points]) => `${points[size]}`)]),
)}
${table(
  'Colours',
  ['colour', 'light', 'dark'],
  (Object.keys(LIGHT) as (keyof typeof LIGHT)[]).map((name) => [
    name,
    swatch(LIGHT[name]),
    swatch(DARK[name]),
  ]),
)}
${table(
  'Lines, corners and distances',
  ['use', 'screen', 'paper'],
  (Object.keys(LINES.screen) as (keyof typeof LINES.screen)[]).map((name) => [
    name,
    LINES.screen[name],
    LINES.paper[name],
  ]),
)}
</section>
${pieces.map(({ html }) => html).join('')}</body></html>
`
}
