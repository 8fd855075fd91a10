/** The card's whole style. Nothing in it depends on colour alone, and print drops the tints. */
export const CARD_STYLE = `
:root{--ink:#12181b;--soft:#4a565d;--line:#7b878e;--tint:#eef2f2;--deep:#0b4851;--warn:#fff2c9;color-scheme:light}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:#dfe5e6;color:var(--ink);font:16px/1.42 "Segoe UI",Roboto,"Helvetica Neue",Arial,"Liberation Sans",sans-serif;overflow-wrap:anywhere}
.sheet{max-width:1120px;margin:0 auto;background:#fff;padding:20px 28px 28px}
h1,h2,h3,p,ul,ol,dl,dd{margin:0;padding:0}
ul,ol{list-style:none}
h1{font-size:2.5rem;line-height:1.05;letter-spacing:-.01em}
h2{font-size:1.15rem;color:var(--deep);border-bottom:3px solid var(--deep);padding-bottom:2px;margin:22px 0 10px}
h3{font-size:1.02rem;margin:0 0 4px}
.note,.about,.facts,.legend{color:var(--soft);font-size:.9rem}
.main{overflow-wrap:anywhere}
.gap{font-weight:700;border-bottom:2px dashed currentColor}
.computed{font-style:italic}
header{display:grid;grid-template-columns:1fr minmax(240px,38%);gap:10px 24px;border-top:10px solid var(--deep);padding-top:12px}
.title{font-weight:700;color:var(--deep)}
.variant{border:3px solid var(--ink);border-radius:10px;padding:8px 14px;align-self:start}
.variant .label{font-size:.85rem;font-weight:700;color:var(--soft)}
.variant .main{font-size:1.3rem;font-weight:700;line-height:1.2}
.variant.unknown{border-style:dashed}
.variant.unknown .main+.main{font-size:.95rem;font-weight:400}
.facts{grid-column:1/-1;display:flex;flex-wrap:wrap;gap:4px 22px}
.facts div{display:flex;gap:6px}
.facts dd{color:var(--ink);font-weight:700}
.header-note{grid-column:1/-1;font-size:.9rem}
.authority{grid-column:1/-1;border-left:8px solid var(--ink);padding:2px 0 2px 12px;font-weight:700}
.cautions{display:flex;gap:12px;background:var(--warn);border:2px solid var(--ink);padding:8px 12px;margin-top:14px}
.sign-caution{width:1.5em;height:1.4em;flex:none}
.cautions .sign-caution{width:34px;height:31px}
table{width:100%;border-collapse:collapse;margin-bottom:10px;font-variant-numeric:tabular-nums}
caption{text-align:start;font-weight:700;padding:2px 0 4px}
#tightening caption{display:none}
th,td{text-align:start;vertical-align:top;padding:5px 10px 5px 0;border-top:1px solid var(--line)}
thead th{font-size:.85rem;color:var(--soft);border-top:0;padding-bottom:2px}
tbody th{font-weight:700}
tbody th .note{font-weight:400}
#tightening td:nth-child(2) .main,#tightening td:nth-child(5) .main{font-size:1.2rem;font-weight:700;white-space:nowrap}
.scale{display:block;width:180px;max-width:100%;height:30px}
.legend{display:flex;flex-wrap:wrap;gap:2px 18px;margin-bottom:8px}
.sign svg{width:24px;height:12px;margin-inline-end:5px}
#figures>.parts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,330px),1fr));gap:16px}
.plate{border:3px solid var(--ink);border-radius:14px;padding:10px 16px 8px}
.plate-head{display:flex;justify-content:space-between;align-items:center;gap:12px;border-bottom:2px solid var(--ink);padding-bottom:6px}
.plate-head h3{font-size:1.35rem;line-height:1.15}
.picture{width:96px;height:68px;flex:none}
.picture.wheel-marks{width:140px;height:48px}
.row{display:grid;grid-template-columns:minmax(84px,30%) 1fr;gap:2px 12px;padding:6px 0;border-bottom:1px solid var(--line);align-items:baseline}
.row:last-child{border-bottom:0}
.row dt{font-weight:700}
.row dd .main{font-weight:700;line-height:1.15;font-variant-numeric:tabular-nums}
.row.large .main{font-size:1.75rem}
.row.middle .main{font-size:1.4rem}
.row .note{line-height:1.3}
#ready>.parts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,300px),1fr));gap:14px 26px}
.list{position:relative}
.list>.picture{float:inline-end;margin-inline-start:8px}
li>.box{margin-top:.2em}
.list li{display:flex;gap:9px;padding:2px 0}
.list:not(#ready .list) ul:not(.boxed)>li{display:block}
.box{display:inline-block;width:1em;height:1em;border:2px solid var(--ink);border-radius:2px;flex:none;background:#fff}
.steps{columns:2;column-gap:30px}
.group{margin-bottom:10px}
.group h3{break-after:avoid;background:var(--tint);border-left:8px solid var(--deep);padding:2px 8px}
.steps li{break-inside:avoid;padding:3px 0}
.step{display:flex;gap:8px}
.step .box{margin-top:.22em}
.number{flex:none;min-width:1.5em;text-align:end;font-weight:700;font-variant-numeric:tabular-nums}
.step .printed,.step .computed{font-weight:700}
.caution{display:flex;gap:8px;background:var(--warn);border:2px solid var(--ink);padding:3px 8px;margin:2px 0 4px}
.blanks{margin-bottom:8px}
.fields{display:flex;flex-wrap:wrap;gap:10px 26px}
.blank{display:flex;flex:1 1 150px;align-items:flex-end;gap:6px;min-height:1.9em}
.blank.ticks{flex:0 1 auto;flex-wrap:wrap;gap:2px 10px;align-items:center}
.blank .line{flex:1;border-bottom:2px solid var(--ink);min-width:60px;height:1.5em}
.blank .label{font-weight:700}
.choice{display:inline-flex;gap:5px;align-items:center}
@media (max-width:760px){
.sheet{padding:14px 14px 20px}
header{grid-template-columns:1fr}
h1{font-size:2rem}
.steps{columns:1}
table,caption,tbody,tr,th,td{display:block;width:100%}
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
tbody tr{border-top:2px solid var(--line);padding:5px 0}
tbody th,td{border:0;padding:1px 0}
td{display:grid;grid-template-columns:minmax(92px,34%) 1fr;gap:8px}
td.empty{display:none}
td::before{content:attr(data-label);color:var(--soft);font-size:.9rem}
.row{grid-template-columns:1fr}
}
@media print{
@page{margin:9mm 10mm}
body{background:#fff;font-size:8.6pt;line-height:1.25}
.sheet{max-width:none;padding:0}
h1{font-size:20pt}
h2{font-size:10.5pt;margin:7px 0 4px;border-bottom-width:2px;break-after:avoid}
h3{font-size:9pt;margin-bottom:1px}
header{border-top-width:6px;padding-top:5px;gap:4px 16px}
.variant{padding:4px 10px}
.variant .main{font-size:12pt}
.note,.about,.facts,.legend,thead th,.variant .label{font-size:7.8pt}
.note,.about,.facts,.legend,thead th{color:#333}
.plate{padding:4px 10px 2px;border-width:2px;break-inside:avoid}
.plate-head{padding-bottom:2px}
.plate-head h3{font-size:12pt}
.picture{width:64px;height:44px}
.picture.wheel-marks{width:108px;height:36px}
.row{padding:2px 0}
.row.large .main{font-size:15pt}
.row.middle .main{font-size:12.5pt}
#figures>.parts{grid-template-columns:1fr 1fr;gap:8px}
#ready>.parts{grid-template-columns:1fr 1fr 1fr;gap:4px 14px}
th,td{padding:2px 8px 2px 0}
#tightening td:nth-child(2) .main,#tightening td:nth-child(5) .main{font-size:10.5pt}
.scale{height:22px;width:132px}
table{margin-bottom:4px}
tr,.list li,.blanks{break-inside:avoid}
.steps{columns:2;column-gap:18px}
.steps li{padding:1px 0}
.group{margin-bottom:4px}
.caution,.cautions{background:none;padding:1px 6px;margin:1px 0 2px}
.cautions{margin-top:5px}
.fields{gap:3px 16px}
.box{border-width:1.5px}
}
`
