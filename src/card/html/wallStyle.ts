import { HIDDEN_STYLE, inPoints, PAPER_SIZES } from './baseStyle.js'

/** The layout of a wall card: one colour, and the sizes of the paper also on a screen. */
export const WALL_STYLE = `
&{${inPoints(PAPER_SIZES.wall)}line-height:1.22}
.page{max-width:194mm;margin:0 auto}
header{display:grid;grid-template-columns:auto 1fr;gap:.6mm 6mm;align-items:end;border-bottom:1mm solid;padding-bottom:1mm}
h1{font-size:var(--name);line-height:1;display:inline}
.variant{display:inline-block;font-size:var(--head);font-weight:700;line-height:1.1;margin-inline-start:2mm}
.variant.unknown{display:block;font-size:var(--body);margin:0}
header dt,header dd{display:inline}
dd{font-weight:700}
dl.large{text-align:end}
dl.large div{font-size:var(--head);line-height:1.15}
dl.large dt{font-size:var(--body)}
dl.other{grid-column:1/-1;font-size:var(--body);line-height:1.2}
dl.other div{display:inline;margin-inline-end:3mm}
.authority{margin:.8mm 0}
h2{font-size:var(--line);line-height:1.15;border-bottom:.3mm solid;margin:1.1mm 0 .6mm}
section#panels>h2{${HIDDEN_STYLE}}
.cautions{display:flex;gap:3mm;align-items:center;border:.6mm solid;padding:.4mm 2.5mm;font-size:var(--line);line-height:1.18}
.cautions p:first-child{font-weight:700}
.sign-caution{width:9mm;height:8mm}
#wallMissing ul{columns:2;column-gap:6mm}
#wallMissing li::before{content:"• "}
#panels>.parts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,88mm),1fr));gap:2mm;margin-top:1.2mm}
.panel,#settings,#pours,#wallMissing{font-size:var(--small)}
.panel{border:.5mm solid;border-radius:2mm;padding:1mm 1.6mm .8mm;break-inside:avoid}
.panel:only-child{grid-column:1/-1}
.panel-head{display:flex;justify-content:space-between;align-items:baseline;gap:2mm;border-bottom:.3mm solid;padding-bottom:.5mm}
.panel h3{font-size:var(--title);line-height:1.1}
.access{font-weight:700;text-align:end}
.fill{display:flex;flex-wrap:wrap;gap:0 4mm;align-items:baseline;margin:.4mm 0}
.quantity{font-size:var(--lead);font-weight:700;line-height:1.1}
.oil{font-size:var(--head);font-weight:700;line-height:1.1}
.panel table{margin-top:.8mm;font-variant-numeric:tabular-nums;table-layout:fixed}
.panel thead th{font-weight:400;padding:0 1.5mm 0 0;line-height:1.1;vertical-align:bottom}
.panel thead th{font-weight:700}
.panel thead td:first-child{width:16%}
.panel thead th:nth-child(2){width:19%}
.panel thead th:nth-child(4){width:36%}
.big .printed,.setting .big,.small .also{white-space:nowrap}
.big .gap,.quantity .gap{display:inline-block;white-space:normal;font-size:var(--body);line-height:1.2}
.panel tbody{border-top:.3mm solid}
.panel tbody th,.panel tbody td{padding:.5mm .8mm .4mm 0}
.mark{font-size:var(--title);font-weight:700;line-height:1}
.big{font-size:var(--head);font-weight:700;line-height:1.05}
.small{font-size:var(--small);line-height:1.1;font-weight:400}
.panel .tool .big{font-size:var(--title)}
.setting .big{font-size:var(--figure);line-height:1}
.panel td.setting{border:.8mm solid;padding-inline-start:1.2mm}
.panel tr.more td{padding-top:0;padding-bottom:.5mm}
.note{font-size:var(--small);line-height:1.18}
ol.numbered{columns:2;column-gap:6mm;counter-reset:line;font-size:var(--line);line-height:1.16}
ol.numbered>li{counter-increment:line;display:flex;gap:2mm;break-inside:avoid;padding-bottom:.4mm}
ol.numbered>li::before{content:counter(line);font-size:var(--title);font-weight:700;line-height:1;min-width:6mm;text-align:end}
figcaption{font-weight:700;line-height:1.15}
.drawing{display:block}
#settings,#pours,#sizes,#job,#wallSources{break-inside:avoid}
#settings>.parts,#pours>.parts{display:flex;flex-wrap:wrap;gap:1mm 2.5mm}
#settings .list,#pours .list{flex-basis:100%}
#settings figure:first-child+.list{flex:1 1 70mm;align-self:center}
#settings .list ul,#pours .list ul{display:flex;flex-wrap:wrap;gap:0 3mm}
.panel figure{float:inline-end;clear:inline-end;margin-inline-start:2mm;text-align:end}
.panel figure .drawing{margin-inline-start:auto}
.panel figcaption,.setting .small{text-wrap:balance}
.panel figcaption{font-weight:400;max-width:32mm;margin-inline-start:auto}
figure.scale,figure.pour{width:92mm}
figure.pour:not(:last-child){width:67mm}
figure.jug{width:26mm}
figure.jug figcaption,figure.true-sizes figcaption{display:none}
footer{margin-top:1.2mm;font-size:var(--small);line-height:1.15}
#wallSources{border-top:.3mm solid;padding-top:.6mm}
#wallSources h2{${HIDDEN_STYLE}}
#wallSources ul{display:inline}
#wallSources li{display:inline}
#wallSources li>div,#wallSources li .main{display:inline}
#wallSources li+li::before{content:" · "}
&:not(:lang(en)),&:not(:lang(en)) :is(.note,dl.other,ol.numbered,footer){line-height:1.08}
&:not(:lang(en)) .cautions{line-height:1.12}
&:not(:lang(en)) :is(ol.numbered>li,.panel tr.more td){padding-bottom:.2mm}
@media print{
/* One gearcase with two plugs leaves room for larger type, in a language of short words. */
&:lang(en) .panel:only-child:has(tbody:nth-child(-n+3):last-child){--small:var(--line);--head:var(--title)}
}
@media screen{.page{padding:6mm 0}}
@media screen and (max-width:760px){.page{padding:4mm}.panel figure{float:none;margin:0;text-align:start}.panel figure .drawing,.panel figcaption{margin:0}header{grid-template-columns:1fr}.panel table{table-layout:auto}.big .printed,.setting .big{white-space:normal}.big{font-size:var(--line)}.setting .big{font-size:var(--head)}ol.numbered,#wallMissing ul{columns:1}dl.large{text-align:start}.drawing{height:auto}}
`
