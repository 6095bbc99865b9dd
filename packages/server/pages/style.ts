/** The style of every page without script: paper ground, ink lines, one accent for water and one for faults. */
export const style = `:root {
  color-scheme: light dark;
  --paper: #fbf8f0;
  --ink: #22272c;
  --soft: #55595d;
  --line: #8b8d88;
  --water: #0f627e;
  --fault: #a0331a;
  --field: #ffffff;
}
@media (prefers-color-scheme: dark) {
  :root {
    --paper: #171b1f;
    --ink: #ece7da;
    --soft: #b3b5ab;
    --line: #7c8079;
    --water: #6cc5e0;
    --fault: #ff9d80;
    --field: #0f1215;
  }
}
@media print {
  :root {
    --paper: #ffffff;
    --ink: #000000;
    --soft: #3c3c3c;
    --line: #6a6a6a;
    --water: #000000;
    --fault: #000000;
    --field: #ffffff;
  }
}
* { box-sizing: border-box; }
html { background: var(--paper); color: var(--ink); }
body {
  margin: 0 auto;
  padding: 0 1rem 3rem;
  max-width: 68rem;
  font: 1rem/1.5 'DejaVu Sans', Verdana, 'Segoe UI', system-ui, sans-serif;
  overflow-wrap: break-word;
}
a { color: var(--water); text-underline-offset: 0.18em; }
a:hover { text-decoration-thickness: 0.14em; }
:focus-visible { outline: 3px solid var(--water); outline-offset: 2px; }
h1 { font-size: 1.4rem; line-height: 1.25; margin: 1.4rem 0 0.8rem; }
h2 { font-size: 1.1rem; margin: 2rem 0 0.6rem; }
p { margin: 0.3rem 0; }
header.top { border-bottom: 2px solid var(--ink); padding: 0.7rem 0; }
.name { margin: 0; font-weight: bold; letter-spacing: 0.04em; }
.name a { color: var(--ink); text-decoration: none; }
time { white-space: nowrap; }
.soft { color: var(--soft); }
.fault, .error { color: var(--fault); }
.number { font-variant-numeric: tabular-nums; color: var(--soft); margin-right: 0.4rem; }
label { display: block; margin: 0.8rem 0 0.25rem; }
input, select, textarea, button {
  font: inherit;
  color: var(--ink);
  background: var(--field);
  border: 1px solid var(--line);
  border-radius: 2px;
  padding: 0.5rem 0.6rem;
  min-height: 2.75rem;
  max-width: 100%;
}
button { background: var(--ink); border-color: var(--ink); color: var(--paper); cursor: pointer; padding: 0.5rem 1.1rem; }
.search { margin-top: 1rem; }
.search div { display: flex; gap: 0.5rem; }
.search input { flex: 1 1 auto; min-width: 0; }
.jobs, .findings, .tags, .links { list-style: none; margin: 0; padding: 0; }
.jobs > li { border-top: 1px solid var(--line); padding: 0.6rem 0; }
.jobs > li:last-child { border-bottom: 1px solid var(--line); }
.job { display: flex; font-weight: bold; padding: 0.15rem 0; }
.facts { color: var(--soft); font-size: 0.92rem; }
.tags, .links { display: flex; flex-wrap: wrap; gap: 0.4rem; margin-top: 0.3rem; }
.tag { display: inline-block; border: 1px solid var(--line); border-radius: 2px; padding: 0.1rem 0.5rem; font-size: 0.88rem; text-decoration: none; }
.links { gap: 1rem; margin-top: 1.2rem; }
.turning { display: flex; gap: 1.5rem; margin-top: 1rem; }
.sheet { display: grid; gap: 1.5rem; }
.sheet > * { min-width: 0; }
figure { margin: 0; border: 1px solid var(--line); }
.drawing { display: block; width: 100%; height: auto; }
.photographs { list-style: none; margin: 0; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(min(9.5rem, 100%), 1fr)); gap: 0.8rem; }
.photographs img { display: block; width: 100%; height: auto; }
.photographs figcaption { border-top: 1px solid var(--line); padding: 0.3rem 0.5rem; font-size: 0.92rem; }
.photographs figcaption .soft { display: block; }
.facts-list { margin: 0 0 1rem; border-top: 1px solid var(--line); }
.facts-list > div { display: grid; grid-template-columns: minmax(7rem, 2fr) 3fr; gap: 0.8rem; border-bottom: 1px solid var(--line); padding: 0.3rem 0; }
dt { color: var(--soft); }
dd { margin: 0; }
.notes { white-space: pre-wrap; }
.findings > li { border-left: 4px solid var(--line); padding: 0.2rem 0 0.2rem 0.8rem; margin: 0.9rem 0; max-width: 46rem; }
.findings > .grave, .findings > .marked { border-left-color: var(--fault); }
.findings > .grave strong, .findings > .marked strong { color: var(--fault); }
.findings > .strength { border-left-color: var(--water); }
.findings > .strength strong { color: var(--water); }
footer { margin-top: 2.5rem; border-top: 1px solid var(--line); padding-top: 0.6rem; font-size: 0.92rem; }
code { font-family: 'DejaVu Sans Mono', Consolas, monospace; font-size: 0.92em; }
table { border-collapse: collapse; width: 100%; max-width: 46rem; }
th, td { border-bottom: 1px solid var(--line); padding: 0.35rem 0.6rem 0.35rem 0; text-align: left; vertical-align: top; }
th { font-weight: normal; color: var(--soft); }
td.amount, th.amount { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
tfoot td { font-weight: bold; }
td.day { white-space: nowrap; }
.scroll { overflow-x: auto; }
.scroll th, .scroll td { padding-right: 1.2rem; }
td.note { min-width: 10rem; }
.narrow { max-width: 26rem; }
.plain { padding-left: 1.2rem; margin: 0.3rem 0; max-width: 46rem; }
.plain > li { margin: 0.3rem 0; }
.entry { max-width: 30rem; }
.entry label { font-weight: bold; margin-bottom: 0; }
.entry .hint { display: block; color: var(--soft); font-size: 0.92rem; }
.entry p.field > .fault { display: block; }
.entry input, .entry textarea { width: 100%; margin-top: 0.25rem; }
.entry input[type='date'] { width: auto; }
.entry [aria-invalid='true'] { border: 2px solid var(--fault); }
.entry button { margin-top: 1rem; }
.done { border-left: 4px solid var(--water); padding: 0.3rem 0 0.3rem 0.8rem; }
p.fault[role='alert'] { border-left: 4px solid var(--fault); padding: 0.3rem 0 0.3rem 0.8rem; }
@media (min-width: 56rem) {
  .sheet { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); align-items: start; }
}
@media print {
  .search, footer, .links, .turning { display: none; }
  body { padding: 0; max-width: none; }
  .findings > li, .photographs > li { break-inside: avoid; }
}
`;
