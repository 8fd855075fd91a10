import type { CardModel } from '../cardParts.js'
import { HIDDEN_STYLE, type SizedPaper, writeBaseStyle } from './baseStyle.js'
import { SHEET_STYLE } from './sheetStyle.js'
import { VISIT_STYLE } from './visitStyle.js'
import { WALL_STYLE } from './wallStyle.js'

/** The cue sheet: across the page, spoken words large enough to read from a stand. */
const CUES_STYLE = `
.scenes{display:grid;gap:14px}
.scene{display:grid;grid-template-columns:minmax(0,22%) minmax(0,1fr) minmax(0,24%);gap:4px 22px;border-top:var(--thick) solid var(--ink);padding:6px 0 8px}
.scene-head{grid-column:1/-1;display:flex;justify-content:space-between;gap:16px;align-items:baseline}
.scene-head h3{font-size:1.35em;margin:0}
.scene .label{color:var(--soft);margin-bottom:2px}
.show li{padding:1px 0}
.mark{display:block;border-inline-start:6px solid var(--ink);padding-inline-start:6px}
.say p{font-size:1.3em;line-height:1.32;margin-bottom:.45em}
.say p.label{font-size:var(--small);margin-bottom:2px}
.say .spoken-caution,.screen li{font-weight:700}
.screen li,.hold li{padding:2px 0}
.hold{border:2px solid var(--ink);background:var(--warn);padding:4px 9px;margin-top:8px}
#filming .parts{columns:300px 3;column-gap:30px}
#filming .main,#filming .note{display:block}
@media screen and (max-width:760px){
.scene{grid-template-columns:minmax(0,1fr)}
}
@media print{
@page service-card{size:landscape;margin:10mm}
&{line-height:1.22}
.scenes{gap:6px}
.scene{break-inside:avoid}
.scene-head h3,.say p{font-size:var(--figure);line-height:1.26}
.say p.label{font-size:var(--small)}
.hold{background:none}
#filming{break-before:page}
#filming .parts{columns:3}
}
`

/** One page with large type. */
const PAGE_STYLE = `
#chart caption,#intervals caption,#differences caption{${HIDDEN_STYLE}}
#picks>.parts,#tools>.parts{columns:300px 2;column-gap:30px}
label .main,label .note{display:block}
@media print{
&{--gap:12px;line-height:1.3}
th,td{padding:4px 8px 4px 0}
.list li{padding:2px 0}
.blanks{margin-bottom:10px}
.blanks h3{margin:0 0 2px;border-bottom:1px solid var(--rule)}
.fields{gap:9px 18px}
.blank{flex-basis:42mm}
.blank.ticks{flex:0 0 auto;max-width:100%}
.box{width:1em;height:1em}
}
`

/** A label has the name of the machine and the next readings, nothing else. */
const LABEL_STYLE = `
&{padding:6px 10px;max-width:360px}
header{display:block;border:0;padding:0}
.title,.about,.variant,.header-note,.plate-head .picture{display:none}
h2{${HIDDEN_STYLE}}
h1{font-size:1.2rem;line-height:1.1}
.plate{border:0;padding:0;border-radius:0}
.plate-head{padding:0;border-width:1px}
.plate-head h3{font-size:var(--small)}
.plate dl{display:flex;flex-wrap:wrap;gap:0 12px}
.row{display:flex;gap:5px;padding:0}
.row dt{font-weight:700;font-size:var(--small)}
.row dd .main{font-weight:700;margin:0}
.row.large dt{${HIDDEN_STYLE}}
.row.large .main{font-size:1.25rem}
.row.small,.row.small .main{display:block;flex-basis:100%;font-size:var(--small)}
.row.small dt,.row.small dd,.row.small .main{display:inline}
.row.small dt{margin-inline-end:5px}
@media print{
&,h1,.plate-head h3{line-height:1}
&{padding:0;max-width:none}
h1{font-size:var(--name)}
.row.large .main{font-size:var(--figure);line-height:1}
}
`

/** The layout of each paper and the sizes that it has. */
const STYLES: { readonly [Extent in CardModel['extent']]: readonly [sizes: SizedPaper, layout: string] } = {
  full: ['visit', SHEET_STYLE + VISIT_STYLE],
  short: ['visit', SHEET_STYLE + VISIT_STYLE],
  slip: ['slip', SHEET_STYLE + VISIT_STYLE],
  wall: ['wall', WALL_STYLE],
  cues: ['cues', SHEET_STYLE + CUES_STYLE],
  label: ['label', `${SHEET_STYLE + LABEL_STYLE}@page service-card{size:62mm 29mm;margin:1.5mm 2mm}`],
  'label-upright': [
    'label',
    `${SHEET_STYLE + LABEL_STYLE}@page service-card{size:29mm 62mm;margin:1.5mm 1.5mm}`,
  ],
  chart: ['page', `${SHEET_STYLE + PAGE_STYLE}@page service-card{size:landscape;margin:10mm}`],
  picks: ['page', SHEET_STYLE + PAGE_STYLE],
  differences: ['columns', SHEET_STYLE + PAGE_STYLE],
  record: ['page', SHEET_STYLE + PAGE_STYLE],
}

/** The whole style of a paper, not yet scoped. */
export function styleOfPaper(extent: CardModel['extent']): string {
  const [sizes, layout] = Object.hasOwn(STYLES, extent) ? STYLES[extent] : STYLES.full
  return writeBaseStyle(sizes) + layout
}
