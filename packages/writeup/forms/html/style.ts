import { type Palette, palettes } from '@fettle/drawing/tokens.ts';

const inks = (palette: Palette): string =>
  Object.entries(palette)
    .map(([name, colour]) => `--drawn-${name}:${colour}`)
    .join(';');

/** The look of what stands in a page, by the inks of the page round it. */
export const contentStyle = `
*{box-sizing:border-box}
.level-1{font-size:1.9rem;line-height:1.2;margin:0 0 .3rem}
.level-2{font-size:1.35rem;line-height:1.25;margin:2.6rem 0 .7rem;padding-top:.7rem;border-top:2px solid var(--drawn-ink)}
.level-3{font-size:1.05rem;margin:1.6rem 0 .4rem}
p,ul,ol,dl,figure{margin:.7rem 0}
li{margin:.3rem 0}
.subtitle,.soft,.note,.us,figcaption,footer{color:var(--drawn-softInk)}
.lead{font-size:1.13rem}
.figures{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(11rem,100%),1fr));gap:1px;background:var(--drawn-softInk);border:1px solid var(--drawn-softInk)}
.figure{display:flex;flex-direction:column-reverse;justify-content:flex-end;background:var(--drawn-paper);padding:.7rem .8rem}
.figure dt{font-size:.9rem}
.figure dd{margin:0;display:flex;flex-direction:column}
.figure strong{font-size:1.45rem;line-height:1.2}
.figure .note,.figure .us{font-size:.9rem}
.scrolls{overflow-x:auto;margin:1.1rem 0}
.scrolls:focus-visible{outline:3px solid var(--drawn-water);outline-offset:2px}
table{border-collapse:collapse;width:100%;font-size:.92rem}
caption{text-align:start;font-weight:600;padding:.2rem 0 .4rem}
th,td{text-align:start;vertical-align:top;padding:.35rem .6rem .35rem 0;border-bottom:1px solid var(--drawn-softInk);font-weight:400}
thead th,tfoot th,tfoot td{font-weight:600}
thead th{border-bottom:2px solid var(--drawn-ink)}
.right{text-align:end}
div.photographs{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(18rem,100%),1fr));gap:1rem;align-items:start}
.photographs figure{margin:0}
.photographs img{display:block;width:100%;height:auto}
figure.half svg{max-width:26rem!important}
figure svg{display:block;height:auto;font-family:inherit}
figure:not(.true) svg{width:100%}
.caution{display:flex;gap:.8rem;border:2px solid var(--drawn-fault);padding:.6rem .8rem}
.mark{flex:none;width:1.6rem;height:1.6rem;fill:var(--drawn-fault)}
.blanks{list-style:none;padding:0}
.blanks li{border-bottom:1px solid var(--drawn-ink);padding-top:1.4rem}
footer{margin-top:2.5rem;font-size:.85rem}
@media print{
.level-2,.level-3{break-after:avoid}
figure,.caution,tr,.figure{break-inside:avoid}
.scrolls{overflow:visible}
}
`.trim();

/** The look of a page by itself: paper by day, dark at night, black on white in print; drawings follow it. */
export const style = `
:root{color-scheme:light dark;${inks(palettes.light)}}
@media (prefers-color-scheme:dark){:root{${inks(palettes.dark)}}}
@media print{:root{color-scheme:light;${inks(palettes.print)}}}
body{margin:0;background:var(--drawn-paper);color:var(--drawn-ink);font:1rem/1.55 'IBM Plex Sans','DejaVu Sans',Verdana,system-ui,sans-serif;font-variant-numeric:tabular-nums}
main{max-width:50rem;margin:0 auto;padding:1.5rem 1rem 3rem}
${contentStyle}
@media print{
@page{margin:16mm 15mm}
body{font-size:10pt}
main{max-width:none;padding:0}
}
`.trim();
