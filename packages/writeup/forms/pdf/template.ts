/**
 * The typesetter's template: everything that is said comes in as data, so that no text is ever taken for a command.
 * Colours and measures are those of a page printed in one colour.
 */
export const template = `
#let data = json(bytes(sys.inputs.data))
#let soft = luma(74)
#let hair = 0.4pt + luma(120)
// How close everything is set: 1 as a rule, less where that spares a page that would be nearly blank.
#let close = data.arranged.closeness

#set document(title: data.title, description: data.description, date: none)
#set page(
  paper: data.paper,
  margin: (x: 18mm, top: data.margins.top * 1mm, bottom: data.margins.bottom * 1mm),
  footer: context [
    #set text(8pt, fill: soft)
    #grid(columns: (1fr, auto), gutter: 8mm, data.foot, [#counter(page).display() / #counter(page).final().first()])
  ],
)
#set text(font: ("IBM Plex Sans", "DejaVu Sans"), size: (0.7 + 0.3 * close) * 9.6pt, lang: data.language, number-width: "tabular", hyphenate: false)
#set par(leading: close * 0.62em, spacing: close * 0.95em, justify: false)
#set list(indent: 0.2em, spacing: close * 0.65em, marker: [–])
#set enum(spacing: close * 0.75em)
#show heading: set block(sticky: true)
#show heading.where(level: 2): it => block(width: 100%, above: close * 1.9em, below: close * 0.85em, sticky: true, stroke: (top: 1.2pt), inset: (top: 0.55em), text(13pt, weight: 700, it.body))
#show heading.where(level: 3): it => block(above: close * 1.4em, below: close * 0.7em, sticky: true, text(10.5pt, weight: 600, it.body))
#show figure: set align(start)
#show figure.caption: set align(start)
#show figure.caption: set text(9pt, fill: soft)
#show figure.where(kind: table): set figure.caption(position: top)
#show figure.where(kind: table): set figure(numbering: none, supplement: none, gap: 0.5em)
// The words over a table that goes over pages stay with its first rows.
#show figure.caption.where(kind: table): it => block(sticky: true, it)
#show figure.where(kind: image): set figure(numbering: none, supplement: none)

#let marks = (
  mains: polygon(fill: black, (60%, 0%), (10%, 58%), (46%, 58%), (38%, 100%), (92%, 38%), (54%, 38%)),
)
#let mark(danger) = box(width: 4.4mm, height: 4.4mm, stroke: 1pt, radius: if danger in ("water", "skin", "bacteria") { 50% } else { 0.6mm }, align(center + horizon, text(9pt, weight: 700)[!]))

// Says where a block ends: by that the drawings are fitted to their pages.
#let ends(item) = context [#metadata((id: item.id, page: here().page(), y: here().position().y / 1mm)) <end>]

#let cell(content, bold: false) = if bold { text(weight: 600, content) } else { content }

#let draw-table(made) = {
  // A short table stays whole: its caption must not be left behind at the foot of a page.
  show figure: set block(breakable: made.rows.len() > 12)
  figure(
  kind: table,
  caption: text(weight: 600, fill: black, made.caption),
  {
    set text(8.4pt)
    set par(leading: 0.5em)
    table(
      columns: made.columns.map(c => c.at("share", default: 1) * 1fr),
      align: made.columns.map(c => if c.align == "right" { end + top } else { start + top }),
      inset: (x: 3pt, y: close * if made.at("roomy", default: false) { 8.5pt } else { 3.6pt }),
      stroke: (x, y) => (bottom: if y == 0 { 0.9pt } else { hair }),
      table.header(..made.columns.map(c => cell(c.head, bold: true))),
      ..made.rows.flatten(),
      ..if "foot" in made { (table.footer(repeat: false, ..made.foot.map(c => cell(c, bold: true))),) } else { () },
    )
    ends(made)
  },
)
}

#let draw-figures(made) = grid(
  columns: (1fr,) * calc.min(4, made.figures.len()),
  gutter: 0pt,
  stroke: hair,
  inset: 7pt,
  ..made.figures.map(one => [
    #set par(leading: 0.45em, spacing: 0.55em)
    #text(15pt, weight: 700, one.metric) \\
    #if "us" in one [#text(9pt, fill: soft, one.us) \\ ]
    #text(8.6pt, one.label)
    #if "note" in one [\\ #text(8.2pt, fill: soft, one.note)]
  ]),
)

#let draw(item) = {
  let kind = item.kind
  if kind == "heading" { heading(level: item.level, item.text) }
  else if kind == "paragraph" {
    let tone = item.at("tone", default: "")
    let label = if "label" in item { strong(item.label) + [ ] } else { [] }
    if tone == "lead" { par(text(11pt, label + item.text + ends(item))) }
    else if tone == "soft" { par(text(8.6pt, fill: soft, label + item.text + ends(item))) }
    else { par(label + item.text + ends(item)) }
  }
  else if kind == "list" { list(..item.items.slice(0, -1), item.items.last() + ends(item)) }
  else if kind == "steps" { enum(start: item.first, ..item.items.slice(0, -1), item.items.last() + ends(item)) }
  else if kind == "caution" {
    block(width: 100%, breakable: false, above: close * 0.6em, below: close * 0.6em, stroke: 1pt, inset: close * 6pt, grid(columns: (auto, 1fr), gutter: 7pt, mark(item.danger), item.text + ends(item)))
  }
  else if kind == "figures" { block(width: 100%, breakable: false, draw-figures(item) + ends(item)) }
  else if kind == "table" { draw-table(item) }
  else if kind == "drawing" {
    figure(
      block(width: 100%, align(start, image(bytes(data.drawings.at(item.drawing)), format: "svg", width: data.arranged.widths.at(item.id) * 1mm, alt: item.alternative))),
      caption: item.caption + ends(item),
      placement: if item.id in data.arranged.floating { top } else { none },
    )
  }
  else if kind == "photographs" {
    let one(of) = block(breakable: false, figure(image(of.photograph, width: 100%, alt: of.caption), caption: of.caption))
    grid(columns: (1fr, 1fr), column-gutter: 6mm, row-gutter: 5mm, ..item.shown.map(one))
    ends(item)
  }
  else if kind == "blanks" {
    let blank(label) = grid(columns: (auto, 1fr), gutter: 3mm, align: bottom, label, line(length: 100%, stroke: 0.5pt))
    block(width: 100%, breakable: false, above: close * 2em, below: close * 1.6em, grid(
      columns: if item.labels.len() < 3 and item.labels.any(label => label.len() > 30) { (1fr,) } else { (1fr, 1fr) },
      column-gutter: 9mm,
      row-gutter: close * 6.5mm,
      ..item.labels.map(blank),
    ) + ends(item))
  }
}

#block(below: close * 0.95em, heading(level: 1, text(19pt, weight: 700, data.title)))
#block(below: close * 1.3em, text(10.5pt, fill: soft, data.subtitle))

// Cautions stay with what they warn of; the first of many may stand on the page before.
#let clings(at) = {
  let next = data.blocks.slice(at + 1).find(one => one.kind != "caution")
  let others = data.blocks.slice(at + 1, calc.min(at + 4, data.blocks.len()))
  next != none and not (next.kind == "drawing" and next.width == "true") and others.any(one => one.kind != "caution")
}

#let narrow(item) = item.kind == "drawing" and item.width == "true" and data.arranged.widths.at(item.id) < 87

#let at = 0
#while at < data.blocks.len() {
  let item = data.blocks.at(at)
  let next = data.blocks.at(at + 1, default: (kind: "end"))
  let warns = item.kind == "caution" and clings(at)
  at += 1
  if narrow(item) and narrow(next) {
    block(breakable: false, grid(columns: (1fr, 1fr), draw(item), draw(next)))
    at += 1
  } else if item.kind == "paragraph" and item.at("tone", default: "") != "soft" and next.kind in ("blanks", "table") { block(sticky: true, draw(item)) }
  else if warns { block(sticky: true, width: 100%, draw(item)) }
  else if item.kind == "table" and item.rows.len() <= 12 and next.kind == "paragraph" and next.at("tone", default: "") == "soft" { block(sticky: true, width: 100%, draw(item)) }
  else { draw(item) }
}
`;
