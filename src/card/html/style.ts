/** The style of the card. No meaning depends on colour alone. Tints are not printed. */
export const CARD_STYLE = `
:root{--ink:#12181b;--soft:#46525a;--line:#86929a;--tint:#eaf0f0;--deep:#0b4851;--warn:#fff1c4;color-scheme:light}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:#d9e0e1;color:var(--ink);font:16px/1.4 "Segoe UI",Roboto,"Helvetica Neue",Arial,"Liberation Sans",sans-serif;overflow-wrap:anywhere}
.sheet{max-width:1120px;margin:0 auto;background:#fff;padding:0 30px 28px}
h1,h2,h3,p,ul,ol,dl,dd{margin:0;padding:0}
ul,ol{list-style:none}
h1{font-size:2.7rem;line-height:1.05;letter-spacing:-.01em}
h2{font-size:1.2rem;line-height:1.2;color:var(--deep);border-bottom:3px solid var(--deep);padding-bottom:3px;margin:26px 0 10px}
h3{font-size:1.05rem;line-height:1.25;margin:0 0 4px}
.note,.about,.facts,.legend{color:var(--soft);font-size:.9rem;line-height:1.32}
.gap{font-weight:700;text-decoration:underline dashed 1.5px;text-underline-offset:2px}
.computed{font-style:italic}
.also,td .printed,td .computed{display:inline-block;max-width:100%}
header{display:grid;grid-template-columns:1fr minmax(240px,36%);gap:12px 26px;border-top:14px solid var(--deep);padding-top:14px}
.title{font-weight:700;color:var(--deep)}
.variant{border:3px solid var(--ink);border-radius:12px;padding:8px 16px 10px;align-self:start}
.variant .label{font-size:.9rem;font-weight:700;color:var(--soft)}
.variant .main{font-size:1.4rem;font-weight:700;line-height:1.2}
.variant.unknown{border-style:dashed}
.variant.unknown .main+.main{font-size:.95rem;font-weight:400;margin-top:4px}
.facts{grid-column:1/-1;display:flex;flex-wrap:wrap;gap:4px 24px}
.facts div{display:flex;gap:7px}
.facts dd{color:var(--ink);font-weight:700}
.header-note{grid-column:1/-1;font-size:.9rem}
.authority{grid-column:1/-1;border-inline-start:8px solid var(--ink);padding:2px 0 2px 12px;font-weight:700}
.cautions{display:flex;gap:12px;align-items:center;background:var(--warn);border:2px solid var(--ink);padding:8px 12px;margin-top:14px}
.sign-caution{width:1.4em;height:1.3em;flex:none}
.cautions .sign-caution{width:34px;height:31px}
table{width:100%;border-collapse:collapse;margin-bottom:10px;font-variant-numeric:tabular-nums}
caption{text-align:start;font-weight:700;padding:2px 0 4px}
#tightening caption,#waits caption{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
th,td{text-align:start;vertical-align:top;padding:6px 14px 6px 0;border-top:1px solid var(--line)}
th:last-child,td:last-child{padding-inline-end:0}
thead th{font-size:.85rem;color:var(--soft);border-top:0;padding-bottom:2px;vertical-align:bottom}
tbody th .note{font-weight:400}
#tightening td:nth-child(2) .main,.full #tightening td:nth-child(5) .main,.short #tightening td:nth-child(4) .main{font-size:1.25rem;line-height:1.15;font-weight:700}
.scale{display:block;width:170px;max-width:100%;height:auto}
.legend{display:flex;flex-wrap:wrap;gap:2px 18px;margin-bottom:8px}
.sign svg{width:24px;height:12px;margin-inline-end:5px}
#tightening td .main .gap{font-size:1rem}
#figures>.parts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,430px),1fr));gap:18px}
.plate{border:3px solid var(--ink);border-radius:16px;padding:10px 18px 12px}
.plate-head{display:flex;justify-content:space-between;align-items:center;gap:12px;border-bottom:2px solid var(--ink);padding-bottom:6px}
.plate-head h3{font-size:1.5rem;line-height:1.1;margin:0}
.picture{width:96px;height:67px;flex:none}
.picture.wheel-marks{width:150px;height:50px}
.plate dl{display:grid;grid-template-columns:1fr 1fr;gap:0 20px}
.row{padding:8px 0 6px;border-bottom:1px solid var(--line)}
.row dt{font-weight:700;color:var(--soft);font-size:.95rem}
.row dd .main{font-weight:700;line-height:1.15;font-variant-numeric:tabular-nums;margin-bottom:2px}
.row.large .main{font-size:1.9rem}
.row.middle .main{font-size:1.9rem}
.row.small .main{font-size:1.1rem}
#ready>.parts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,290px),1fr));gap:16px 30px}
.list>.picture{float:inline-end;margin-inline-start:8px}
.list li{padding:2px 0}
#due .list+.list,#missing .list+.list{margin-top:.6em}
.boxed>li{display:flex;gap:9px}
li>.box{margin-top:.2em}
#after>.parts,#missing>.parts{display:block}
.box{display:inline-block;width:1em;height:1em;border:2px solid var(--ink);border-radius:2px;flex:none;background:#fff}
.steps{columns:2;column-gap:34px}
.group{margin-bottom:12px}
.group h3{break-after:avoid;background:var(--tint);border-inline-start:8px solid var(--deep);padding:3px 10px}
.steps li{break-inside:avoid;padding:3px 0}
.step{display:flex;gap:8px}
.step .box{margin-top:.2em}
.number{flex:none;min-width:1.5em;text-align:end;font-weight:700;font-variant-numeric:tabular-nums}
.step .printed,.step .computed,.step [data-from$="/setting"]{font-weight:700}
.caution{display:flex;gap:9px;background:var(--warn);border:2px solid var(--ink);padding:4px 9px;margin:3px 0 5px}
.caution.notice{background:none}
.blanks{margin-bottom:10px}
.fields{display:flex;flex-wrap:wrap;gap:10px 28px}
.blank{display:flex;flex:1 1 150px;align-items:flex-end;gap:7px;min-height:1.9em}
.blank.ticks{flex:0 1 auto;flex-wrap:wrap;gap:2px 11px;align-items:center}
.blank .line{flex:1;border-bottom:2px solid var(--ink);min-width:60px;height:1.5em}
.blank .label{font-weight:700}
.choice{display:inline-flex;gap:5px;align-items:center}
@media print,(min-width:761px){
#ready .list:nth-child(4){grid-column:1/-1;display:flex;gap:12px}
#ready .list:nth-child(4) ul{display:flex;flex-wrap:wrap;gap:0 14px}
table{overflow-wrap:break-word}
.short #tightening th:first-child{width:24%}
#due th:first-child{width:11%}
#due td{width:14%}
#due td:nth-child(3){width:20%}
.full #tightening th:first-child{width:21%}
.full #tightening td:nth-child(2){width:13%}
.full #tightening td:nth-child(3){width:15%}
.full #tightening td:nth-child(4){width:25%}
.full #tightening td:nth-child(5){width:11%}
.short .steps{columns:3}
}
@media screen and (max-width:760px){
.sheet{padding:0 14px 20px}
header{grid-template-columns:1fr}
h1{font-size:2.1rem}
.steps{columns:1}
table,caption,tbody,tr,th,td{display:block;width:100%}
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
tbody tr{border-top:2px solid var(--line);padding:5px 0}
tbody th,td{border:0;padding:1px 0}
tbody th{font-size:1.1rem}
td{display:grid;grid-template-columns:minmax(92px,34%) 1fr;gap:8px}
td.empty{display:none}
td::before{content:attr(data-label);color:var(--soft);font-size:.9rem}
.plate dl{grid-template-columns:1fr}
}
@media print{
@page{margin:7mm 8mm}
body{background:#fff;font-size:7.8pt;line-height:1.15}
.sheet{max-width:none;padding:0 1px}
h1{font-size:19pt}
h2{font-size:9.5pt;margin:5px 0 2px;padding-bottom:1px;border-bottom-width:2px;break-after:avoid}
h3{font-size:8.5pt;margin-bottom:1px}
header{grid-template-columns:1fr 38%;border-top-width:6px;padding-top:4px;gap:2px 16px}
.title,.about{font-size:8pt}
.variant{padding:2px 10px 3px;border-width:2px}
.variant .main{font-size:12pt}
.variant.unknown .main+.main{font-size:8pt;margin-top:0}
.note,.about,.facts,.legend,thead th,.variant .label,.header-note,.row dt{font-size:7.4pt;line-height:1.18;color:#2c363c}
.facts{gap:0 14px}
.authority{display:flex;flex-wrap:wrap;gap:0 10px;padding:0 0 0 8px;border-inline-start-width:6px}
.plate{padding:2px 10px 2px;border-width:2px;border-radius:10px;break-inside:avoid}
.plate-head{padding-bottom:1px}
.plate-head h3{font-size:12pt}
.picture{width:46px;height:32px}
.picture.wheel-marks{width:84px;height:28px}
.plate dl{grid-template-columns:1fr 1fr;gap:0 12px}
.row{padding:2px 0 1px}
.row dd .main{margin-bottom:0}
.row.large .main,.row.middle .main{font-size:14pt}
.row.small .main{font-size:8.5pt}
#figures>.parts{grid-template-columns:1fr 1fr;gap:7px}
#ready>.parts{grid-template-columns:1.15fr 1.2fr 1fr;gap:2px 14px}
#ready .list>.picture{width:52px;height:36px;margin:0}
th,td{padding:1px 8px 1px 0}
#tightening td:nth-child(2) .main,.full #tightening td:nth-child(5) .main,.short #tightening td:nth-child(4) .main{font-size:10.5pt}
#tightening td .main .gap{font-size:8pt}
#record{padding-top:3px}
.scale{width:118px}
table{margin-bottom:3px}
caption{padding:1px 0}
tr,.list li,.blanks{break-inside:avoid}
.list li{padding:.5px 0}
.boxed>li{gap:5px}
.steps{columns:3;column-gap:12px}
.short{font-size:7.7pt}
.short .steps{columns:4;column-gap:10px}
.short .caution{font-size:6.9pt}
.short .plate dl{grid-template-columns:repeat(4,auto)}
.short #figures>.parts{grid-template-columns:1fr}
.short .plate-head .picture{display:none}
.short tbody .scale{display:inline-block;margin-inline-start:8px;vertical-align:middle}
.short #tightening td:last-child .main{display:inline-block}
.steps li{padding:.6px 0}
.step{gap:3px}
.number{min-width:1.3em}
.group{margin-bottom:3px}
.group h3{padding:0 6px}
.caution,.cautions{background:none;border-width:1.2px;padding:1.2px 4px .6px;margin:1px 0;gap:4px;font-size:7.3pt;line-height:1.12}
.cautions{margin-top:4px;font-size:8pt}
.cautions .sign-caution{width:16px;height:15px}
.box{border-width:1.3px;width:.95em;height:.95em}
#waits{float:left;width:62%}
#after,#missing{float:right;width:36%}
#missing{clear:right}
#record,#sources{clear:both}
.short #missing{float:none;width:auto}
#due .list{display:flex;flex-wrap:wrap;gap:0 12px}
#due .list ul{display:flex;flex-wrap:wrap;gap:0 14px}
#tightening .parts{display:flow-root}
#tightening .legend{float:left;margin:0 16px 0 0}
#tightening .list ul{display:flex;flex-wrap:wrap;gap:0 12px}
#sources ul{display:flex;flex-wrap:wrap;gap:0 16px}
#waits .picture{display:none}
#waits td:nth-child(2),#waits th{white-space:nowrap}
#waits td{font-size:7.4pt}
.blanks{display:flex;gap:10px;margin-bottom:3px;align-items:center}
.blanks h3{flex:none;width:26mm;margin:0}
.fields{flex:1;gap:1px 14px}
.blank{flex-basis:26mm;min-height:1.6em}
body.slip,.slip .cautions{font-size:10pt;line-height:1.25}
.slip h2{font-size:12pt;margin-top:10px}
.slip .note,.slip .about,.slip .facts,.slip .header-note,.slip .label{font-size:9pt}
}
@media print and (max-height:288mm){
@page{margin:6mm 7mm}
body:not(.slip){font-size:7.5pt}
.short{font-size:7pt}
.short .row.large .main,.short .row.middle .main{font-size:12pt}
.short .caution{font-size:6.6pt}
h1{font-size:17pt}
.row.large .main,.row.middle .main{font-size:13.5pt}
.note,.about,.facts,.legend,thead th,.variant .label,.header-note,.row dt,#waits td{font-size:7pt}
.caution{font-size:6.9pt}
}
`
