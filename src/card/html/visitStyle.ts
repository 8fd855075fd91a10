/** The layout of the visit sheet, the short card and the slip. */
export const VISIT_STYLE = `
#tightening caption{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
#tightening td:nth-child(2) .main,#tightening .setting .main{font-size:1.25em;line-height:1.15;font-weight:700}
#tightening td .main .gap{font-size:1rem}
#figures>.parts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,430px),1fr));gap:18px}
.plate dl{display:grid;grid-template-columns:1fr 1fr;gap:0 20px}
.row{padding:8px 0 6px}
.row dt{font-weight:700;color:var(--soft);font-size:var(--small)}
.row dd .main{font-weight:700;line-height:1.15}
.row.large .main,.row.middle .main{font-size:var(--figure)}
.row.small .main{font-size:1.1em}
#ready>.parts{columns:290px 3;column-gap:30px}
.drawn{margin-top:8px}
.drawn figure{margin:0;font-size:var(--small)}
.list>.picture{float:inline-end;margin-inline-start:8px}
label .main,label .note{display:block}
.group{margin-bottom:12px}
.group h3{background:var(--tint);border-inline-start:8px solid var(--deep);padding:3px 10px}
.steps li{padding:4px 0}
.step{font-size:var(--line)}
.step label{display:flex;gap:8px}
.step .text{flex:1;display:grid;grid-template-columns:minmax(0,1fr) minmax(130px,24%);gap:2px 16px}
.step>.note,.step details{padding-inline-start:3.4em}
.step .printed,.step .computed,.step [data-from$="/setting"]{font-weight:700}
.step .figures{border-inline-start:3px solid var(--deep);padding-inline-start:10px;align-self:start}
.step .figures>span{display:block}
.step .figures [data-from]{font-size:1.15em;font-weight:700}
summary{color:var(--deep);font-size:var(--small);width:max-content;cursor:pointer}
#due th,#due td{overflow-wrap:break-word}
.limit{display:block;width:100px;height:20px}
#due .list .note{display:block}
@media screen and (max-width:760px){
.plate dl{grid-template-columns:1fr}
.step .text{grid-template-columns:minmax(0,1fr)}
.blank{flex-basis:100%}
}
@media print{
#figures .drawn figure{display:none}
#figures .drawn,#figures .drawn .note{display:inline}
#figures .drawn .note::before{content:" · "}
#figures>.parts{display:block;columns:2;column-gap:14px}
.plate{border:0;border-radius:0;padding:0;margin-bottom:1px}
.plate-head,.plate-head h3,.plate dl,.row,.row dt,.row dd,.row div{display:inline;font-size:inherit;padding:0;border:0}
.plate-head h3,#tightening th .main{font-size:var(--line)}
.row.large .main,.row.middle .main,.row.small .main{font-size:var(--line)}
.row dt{margin-inline:6px 3px}
.row+.row::before{content:" · "}
.row .note::before{content:" "}
#figures .picture,#ready .picture,#waits .picture,#tightening .legend,#tightening .scale{display:none}
#tightening thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
#tightening table{display:block;columns:2;column-gap:14px}
#tightening tbody{display:block}
#tightening tr{display:block;border-top:1px solid var(--rule)}
#tightening th,#tightening td,#tightening td div,#tightening th div{display:inline;border:0;padding:0}
#tightening td div{font-size:var(--small)}
#tightening td:nth-child(2) .main{font-size:var(--small)}
#tightening h2{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
#tightening .note::before,#tightening td:not(.empty)::before{content:" "}
#tightening td:not(.empty):nth-last-child(-n+2)::before{content:" · " attr(data-label) " "}
#tightening .printed,#tightening .also,.figures>span{white-space:nowrap}
#ready>.parts{columns:3;column-gap:14px}
#record{break-inside:avoid}
#record .label,#record h3{white-space:nowrap}
.blanks{display:flex;flex-wrap:wrap;gap:0 12px;align-items:flex-end}
.blanks h3{font-size:var(--line);min-height:5.6mm;align-self:flex-end}
.fields{display:contents}
.blank{flex:1 1 auto}
.blank.ticks{flex:0 1 auto;gap:0 7px;min-height:4.6mm}
.choice{gap:3px}
.write{min-width:14mm;width:14mm}
#due .list ul{flex:1 1 60%}
#due td div{display:inline;margin-inline-end:4px}
#due .list .note{display:inline}
.limit{display:inline-block;width:11mm;height:2.2mm}
#due th,#due td{padding-inline-end:5px}
#due .list,#due .list ul,#tightening .list ul,#missing .list ul{display:flex;flex-wrap:wrap;gap:0 14px}
.steps li{padding:.7px 0}
.before{display:flex;flex-wrap:wrap;gap:0 12px;border:1.2px solid var(--ink);padding:1px 5px;margin:1px 0;break-inside:avoid;break-after:avoid}
.before .caution{border:0;margin:0;padding:0}
.steps{columns:2;column-gap:5mm}
.step label{gap:4px}
.step .text{display:block}
.step>.note{padding-inline-start:9.5mm}
.step .number{min-width:4.2mm}
.step details{display:none}
.step .figures{float:inline-end;border:0;padding:0;text-align:end;line-height:1.12}
.step .figures>span{display:inline-block;margin-inline-start:2.5mm}
.step .figures [data-from]{font-size:var(--head)}
.group{margin-bottom:0}
.group h3{padding:0 6px;font-size:var(--line)}
#waits h2,#sources h2{font-size:var(--small);border:0;margin:0}
#waits,#sources{margin-top:3px}
#waits h2,#waits div,#waits ul,#sources h2,#sources div,#sources ul,#waits li,#waits li *,#sources li,#sources li *{display:inline}
#waits li::before,#sources li::before{content:" · "}
#waits .note::before{content:": "}
#waits li:not(:has(.note)):not(:has([data-from^="/time"])){display:none}
.group h3{margin:1px 0 0;line-height:1.1}
&.full #tightening td:nth-child(2):not(:has(.gap)),&.full #tightening td:nth-child(5){display:none}
&.slip{--gap:10px}
&:not(:lang(en)),&:not(:lang(en)) :is(.note,.about,.facts,.legend,.label,.cautions,.caution,.step .figures,.row dd .main){line-height:1.04}
&:not(:lang(en)) .authority{display:block}
&:not(:lang(en)) .authority p{display:inline}
&:not(:lang(en)) .authority p+p::before{content:" "}
@media (min-width:650px){
&:not(:lang(en)) #due td:nth-child(n+3):nth-child(-n+4){white-space:nowrap}
}
&:not(:lang(en)) h2{margin-top:4px;padding-bottom:0;line-height:1.1}
&:not(:lang(en)) .blank{min-height:5.6mm}
&:not(:lang(en)) .blanks{gap:0 8px}
&:not(:lang(en)) .blank.ticks{gap:0 5px;min-height:4.4mm}
&:not(:lang(en)) :is(.steps li,.before){padding-block:0}
&:not(:lang(en)) .steps{column-gap:4mm}
&:not(:lang(en)) .step label{gap:3px}
}
`
