/**
 * The type, lines, distances and colours of all papers. The other style files have only the layout of their papers, in these
 * sizes and colours. No meaning depends on colour alone, tints are not printed, and no text on paper is smaller than 9 pt.
 */

/** Names of type sizes: notes, text, the order of work, headings, panels, figures, quantities, the machine. */
export type TypeSize = 'small' | 'body' | 'line' | 'head' | 'title' | 'figure' | 'lead' | 'name'

/** On a screen, so that a reader's own size counts. */
export const SCREEN_SIZES: Readonly<Record<TypeSize, string>> = {
  small: '.9rem',
  body: '1rem',
  line: '1rem',
  head: '1.2rem',
  title: '1.5rem',
  figure: '1.9rem',
  lead: '1.9rem',
  name: '2.6rem',
}

/** The kinds of papers that differ in size. */
export type SizedPaper = 'visit' | 'slip' | 'page' | 'columns' | 'cues' | 'label' | 'wall'

const VISIT_SIZES = { small: 9, body: 9, line: 10, head: 11, title: 10, figure: 14, lead: 14, name: 19 }
const PAGE_SIZES = { ...VISIT_SIZES, body: 11, head: 13, title: 16, name: 22 }

/** On paper, in points. */
export const PAPER_SIZES: Readonly<Record<SizedPaper, Readonly<Record<TypeSize, number>>>> = {
  visit: VISIT_SIZES,
  slip: { ...VISIT_SIZES, small: 10, body: 12, head: 14 },
  page: PAGE_SIZES,
  columns: { ...PAGE_SIZES, body: 13, title: 19 },
  cues: { ...VISIT_SIZES, body: 10, head: 13 },
  label: { ...VISIT_SIZES, figure: 12.5, name: 11 },
  wall: { small: 9, body: 9.5, line: 11, head: 13, title: 14, figure: 19, lead: 21, name: 26 },
}

/** Colours: text, second text, rules, tinted rows, headings, warnings, background. */
export type Colour = 'ink' | 'soft' | 'rule' | 'tint' | 'deep' | 'warn' | 'paper'

export const LIGHT: Readonly<Record<Colour, string>> = {
  ink: '#12181b',
  soft: '#46525a',
  rule: '#86929a',
  tint: '#eaf0f0',
  deep: '#0b4851',
  warn: '#fff1c4',
  paper: '#fff',
}

export const DARK: Readonly<Record<Colour, string>> = {
  ink: '#eef3f4',
  soft: '#b4c0c5',
  rule: '#7d8a91',
  tint: '#22303a',
  deep: '#8fd3dc',
  warn: '#4a3a00',
  paper: '#10171b',
}

/** Darker on paper, where grey is a pattern of dots. */
const PRINTED = { ink: '#000', soft: '#2c363c' }

/** Lines: between rows, around boxes, above a paper; the corner of a box; the distance between sections. */
export const LINES = {
  screen: { thin: '1px', thick: '3px', band: '14px', corner: '12px', gap: '26px' },
  paper: { thin: '1px', thick: '2px', band: '5px', corner: '10px', gap: '5px' },
} as const

/** For headings that only screen readers need. */
export const HIDDEN_STYLE = 'position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)'

const write = (values: Readonly<Record<string, string>>): string =>
  Object.entries(values)
    .map(([name, value]) => `--${name}:${value};`)
    .join('')

/** Sizes in points as declarations. */
export const inPoints = (sizes: Readonly<Record<string, number>>): string =>
  write(Object.fromEntries(Object.entries(sizes).map(([name, points]) => [name, `${points}pt`])))

/** Type and colours on which each paper builds, and what all papers have: gaps, notes, warnings, lists, drawings. */
export const writeBaseStyle = (paper: SizedPaper): string => `
&{${write({ ...LIGHT, ...SCREEN_SIZES, ...LINES.screen })}color-scheme:light dark;background:var(--paper);color:var(--ink);font:var(--body)/1.4 "Segoe UI",Roboto,"Helvetica Neue",Arial,"Liberation Sans",sans-serif;font-size:var(--body);overflow-wrap:anywhere}
&,*{box-sizing:border-box}
h1,h2,h3,p,ul,ol,dl,dd,figure{margin:0;padding:0}
ul,ol{list-style:none}
h2,h3,caption{break-after:avoid}
figure{break-inside:avoid}
.gap{font-weight:700;text-decoration:underline dashed 1.5px;text-underline-offset:2px}
strong,.strong{font-weight:700}
.sign-caution{flex:none}
table{width:100%;border-collapse:collapse}
th,td{text-align:start;vertical-align:top}
.drawing{max-width:100%;font-family:inherit}
@media screen and (prefers-color-scheme:dark){
&{${write(DARK)}}
}
@page service-card{margin:7mm}
@media print{
&{page:service-card;${write({ ...PRINTED, ...LINES.paper })}${inPoints(PAPER_SIZES[paper])}color-scheme:light}
}
`
