/** The layout of papers that are also read on a screen: banner, sections, tables, lists, boxes to tick. `&` is the paper. */
export const SHEET_STYLE = `
&{max-width:1120px;margin:0 auto;padding:0 30px 28px}
h1{font-size:var(--name);line-height:1.05;letter-spacing:-.01em}
h2{font-size:var(--head);line-height:1.2;color:var(--deep);border-bottom:var(--thick) solid var(--deep);padding-bottom:3px;margin:var(--gap) 0 10px}
h3{font-size:1.05em;line-height:1.25;margin:0 0 4px}
tr,li,.blanks,.plate,.caution{break-inside:avoid}
.note,.about,.facts,.legend,thead th,.header-note,.label{font-size:var(--small);line-height:1.3}
.note,.about,.facts,.legend,thead th{color:var(--soft)}
.label{font-weight:700}
.computed{font-style:italic}
.also,td .printed,td .computed{display:inline-block;max-width:100%}
.number,.figures,table,.row .main{font-variant-numeric:tabular-nums}
header{display:grid;grid-template-columns:1fr minmax(240px,36%);gap:12px 26px;border-top:var(--band) solid var(--deep);padding-top:14px}
.title{font-weight:700;color:var(--deep)}
.variant{border:var(--thick) solid var(--ink);border-radius:var(--corner);padding:8px 16px 10px;align-self:start}
.variant .main{font-size:var(--head);font-weight:700;line-height:1.2}
.variant.unknown{border-style:dashed}
.variant.unknown .main+.main{font-size:var(--small);font-weight:400}
.facts{grid-column:1/-1;display:flex;flex-wrap:wrap;gap:2px 24px}
.facts div{display:flex;gap:7px}
.facts dd{color:var(--ink);font-weight:700}
.header-note{grid-column:1/-1}
.authority{grid-column:1/-1;border-inline-start:8px solid var(--ink);padding:2px 0 2px 12px;font-weight:700;display:flex;flex-wrap:wrap;gap:0 10px}
.authority:empty{display:none}
.cautions,.caution{display:flex;gap:9px;align-items:center;background:var(--warn);color:var(--ink);border:2px solid var(--ink);padding:4px 9px;margin:3px 0 5px;line-height:1.25}
.cautions{margin-top:14px}
.caution.notice{background:none}
.sign-caution{width:1.4em;height:1.3em}
table{margin-bottom:10px}
caption{text-align:start;font-weight:700;padding:2px 0 4px}
th,td{padding:6px 14px 6px 0;border-top:var(--thin) solid var(--rule)}
th:last-child,td:last-child{padding-inline-end:0}
thead th{border-top:0;padding-bottom:2px;vertical-align:bottom}
thead th{overflow-wrap:normal}
[data-from$="/setting"]{white-space:nowrap}
tbody th .note{font-weight:400}
.legend{display:flex;flex-wrap:wrap;gap:2px 18px;margin-bottom:8px}
.sign svg{width:24px;height:12px;margin-inline-end:5px}
.scale{display:block;width:170px;max-width:100%;height:auto}
.plate{border:var(--thick) solid var(--ink);border-radius:var(--corner);padding:10px 18px 12px}
.plate-head{display:flex;justify-content:space-between;align-items:center;gap:12px;border-bottom:2px solid var(--ink);padding-bottom:6px}
.plate-head h3{font-size:var(--title);line-height:1.1;margin:0}
.picture{width:96px;height:67px;flex:none}
.picture.wheel-marks{width:150px;height:50px}
.list li{padding:2px 0}
.list+.list{margin-top:.4em}
.boxed>li label{display:flex;gap:9px}
.box{appearance:none;display:inline-block;width:1em;height:1em;margin:.15em 0 0;border:2px solid var(--ink);border-radius:2px;flex:none;background:var(--paper);font:inherit}
.box:checked{background:linear-gradient(45deg,transparent 42%,var(--ink) 42% 58%,transparent 58%),linear-gradient(-45deg,transparent 42%,var(--ink) 42% 58%,transparent 58%)}
input:focus-visible,summary:focus-visible{outline:3px solid var(--deep);outline-offset:2px}
.number{flex:none;min-width:1.5em;text-align:end;font-weight:700}
.blanks{margin-bottom:10px}
.fields{display:flex;flex-wrap:wrap;gap:10px 28px}
.blank{display:flex;flex:1 1 230px;align-items:flex-end;gap:7px;min-height:1.9em}
.blank.ticks{flex:0 1 auto;flex-wrap:wrap;gap:2px 11px;align-items:center;border:0;margin:0;padding:0}
.write{flex:1;min-width:60px;width:60px;height:1.7em;border:0;border-bottom:2px solid var(--ink);border-radius:0;background:none;color:var(--ink);font:inherit;padding:0}
.choice{display:inline-flex;gap:5px;align-items:center}
@media screen and (max-width:760px){
&{padding:0 14px 20px;--name:2rem}
header{grid-template-columns:1fr}
table,caption,tbody,tr,th,td{display:block;width:100%}
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
tbody tr{border-top:2px solid var(--rule);padding:5px 0}
tbody th,td{border:0;padding:1px 0}
tbody th{font-size:1.1em}
td{display:grid;grid-template-columns:minmax(92px,34%) 1fr;gap:8px}
td.empty{display:none}
td .printed,td .computed{display:inline}
td::before{content:attr(data-label);color:var(--soft);font-size:var(--small)}
.boxed .box,.step .box,.choice .box{width:1.5em;height:1.5em;margin:0}
}
@media print{
&{line-height:1.13;max-width:none;padding:0}
h2{padding-bottom:1px;margin-bottom:2px}
h3{margin-bottom:1px}
header{grid-template-columns:1fr 38%;padding-top:3px;gap:2px 16px}
.variant{padding:1px 10px 2px}
.note,.about,.facts,.legend,thead th,.header-note,.label{line-height:1.13}
.facts{gap:0 14px}
.authority{padding:0 0 0 8px;border-inline-start-width:5px}
.cautions,.caution{background:none;border-width:1.2px;padding:1px 5px;margin:1px 0;gap:5px;line-height:1.14}
.cautions{margin-top:3px}
th,td{padding:1px 8px 1px 0}
table{margin-bottom:2px}
caption{padding:1px 0}
.scale{width:118px}
.plate{padding:2px 10px}
.plate-head{padding-bottom:1px}
.picture{width:46px;height:32px}
.picture.wheel-marks{width:84px;height:28px}
.list li{padding:.5px 0}
.list+.list{margin-top:0}
.boxed>li label{gap:5px}
.box{border-width:1.3px;width:.95em;height:.95em}
.blanks{margin-bottom:0}
.fields{gap:0 14px}
.blank{min-height:6mm}
.write{border-bottom-width:1px;height:5.4mm}
}
`
