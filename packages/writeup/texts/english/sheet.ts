/** Sentences of the sheet: what was found, what was done, what it does now. */
export const sheetSentences: Readonly<Record<string, string>> = {
  'sheet.title': '{filter}',
  'sheet.subtitle': 'What was found and what it does now: {family}, for a tank of {volume}.',
  'sheet.description': '{filter}, opened, followed, measured and re-packed: figures in metric and US units.',
  'sheet.foot': '{filter}{number}{by}. Model edition {edition}.',
  'sheet.received': 'It came in on {received}.',
  'sheet.left': 'It was handed over as it is on {left}.',
  'sheet.by': ', by {by}',
  'sheet.number': ', job {number}',

  'who.named': '{filter} ({family})',
  'who.unnamed': 'This {family}',

  'summary.found.timed.none': '{who} gave {flow} as found, and nothing was wrong with it.',
  'summary.found.timed.one': '{who} gave {flow} as found, with one fault: {worst}.',
  'summary.found.timed.many':
    '{who} gave {flow} as found, with {count} faults, of which the worst is this: {worst}.',
  'summary.found.computed.none': '{who} was looked over, and nothing was found wrong with it.',
  'summary.found.computed.one': '{who} was looked over, and one fault was found: {worst}.',
  'summary.found.computed.many':
    '{who} was looked over, and {count} faults were found, of which the worst is this: {worst}.',
  'summary.changed.nothing': 'Nothing has been changed so far.',
  'summary.changed.planned.free': 'It can be re-packed with what is in it, for no money.',
  'summary.changed.planned.bought': 'It can be re-packed for {cost} of media and parts.',
  'summary.changed.planned.renewed':
    'It can be re-packed for no money beyond {renewed} of media that every cleaning replaces.',
  'summary.changed.planned.bought-and-renewed':
    'It can be re-packed for {cost} of media and parts, {renewed} of it for media that every cleaning replaces.',
  'summary.changed.planned.same': 'It is to be packed as it was.',
  'summary.changed.left.free': 'It was re-packed with what was in it, for no money.',
  'summary.changed.left.bought': 'It was re-packed for {cost} of media and parts.',
  'summary.changed.left.renewed':
    'It was re-packed for no money beyond {renewed} of media that every cleaning replaces.',
  'summary.changed.left.bought-and-renewed':
    'It was re-packed for {cost} of media and parts, {renewed} of it for media that every cleaning replaces.',
  'summary.changed.left.same': 'It was packed again as it was.',
  'summary.now.found':
    'As it is, and clean, {flow} should flow; {day} after a cleaning it carries {feed} of dry feed, which is a tank of {heavy} with a heavy stock to {light} with a light one.',
  'summary.now.planned':
    'Then, and clean, {flow} should flow; {day} after a cleaning it would carry {feed} of dry feed, which is a tank of {heavy} with a heavy stock to {light} with a light one.',
  'summary.now.left':
    'Now, and clean, {flow} should flow; {day} after a cleaning it carries {feed} of dry feed, which is a tank of {heavy} with a heavy stock to {light} with a light one.',

  'summary.now.left.timed':
    'Now it gives {flow}, as timed; {day} after a cleaning it carries {feed} of dry feed, which is a tank of {heavy} with a heavy stock to {light} with a light one.',
  'summary.cleaned': 'Cleaning alone had brought it to {flow}.',
  'summary.left-over.one': 'One fault is left: {worst}.',
  'summary.left-over.many': '{count} faults are left, of which the worst is this: {worst}.',

  'summary.now.found.none': 'By the models no water flows as it is, so that it carries nothing.',
  'summary.now.planned.none': 'By the models no water would flow then, so that it would carry nothing.',
  'summary.now.left.none': 'By the models no water flows now, so that it carries nothing.',

  'figure.flow': 'flow at the tank, clean',
  'figure.flow-timed': 'flow at the tank, timed',
  'figure.before-timed': 'as found, timed: {before}',
  'figure.feed': 'dry feed that it carries',
  'figure.interval': 'until it wants cleaning',
  'figure.bypass': 'of the water meets no mechanical medium at all',
  'figure.before': 'cleaned, packed as before: {before}',
  'figure.as-before': 'cleaned, packed as before: the same',
  'figure.no-mechanical': 'no such media',
  'figure.no-water': 'no water flows',
  'doubt.computed':
    'Figures after ± are doubts: 95 of 100 such ranges hold the true value. Computed flows are taken to be good to 15 % (from memory); the other computed figures stand here without their ranges, so they are rounded to two figures.',
  'doubt.computed.drawn':
    'Figures after ± are doubts: 95 of 100 such ranges hold the true value. Computed flows are taken to be good to 15 % (from memory); the ranges of the other computed figures, which are rounded to two figures, stand in a table at the end.',
  'doubt.interval': 'That time is good to a factor of three either way.',
  'doubt.carries':
    'No range was computed of this figure: take it as a guide, and let tests of ammonia and nitrite decide.',
  'doubt.carries.drawn': 'Take this as a guide, and let tests of ammonia and nitrite decide.',

  'heading.water-path': 'The way of the water',
  'drawing.found':
    'Packed as found: a section through the filter, with the water as it runs when all is clean.',
  'drawing.state.found': 'Packed as found',
  'drawing.state.planned': 'Packed as planned',
  'drawing.state.left': 'Packed as left',
  'drawing.before-after':
    'Before and after, at one scale: a section through the filter, with the water as it runs when all is clean.',
  'path.found': 'Packed as found, and clean: {path}',
  'path.planned': 'Packed as planned, and clean: {path}',
  'path.left': 'Packed as left, and clean: {path}',
  'path.misses.found': 'Clean, {mechanical} of the water misses the mechanical media.',
  'path.misses.planned': 'As planned {mechanical} of the water would miss the mechanical media.',
  'path.misses.left': 'Now, and clean, {mechanical} of the water misses the mechanical media.',

  'heading.photographs': 'Photographs',
  'photograph.unnamed': 'Photograph {number}',

  'heading.findings': 'What was found',
  'heading.strengths': 'What is right',
  'findings.none': 'No fault was found that costs anything worth a word.',
  'finding.numbered': '{number}. {severity}, {place}.',
  'finding.cure': 'Cure: {cure}',
  'heading.faults-left': 'Faults that remain',
  'finding.left': '{severity}, {place}: {says}',
  'finding.left.with-effect':
    '{severity}, {place}: {says} Curing it alone: flow {flow}; feed carried {feed}; cleaning after {interval}.',
  'severity.grave': 'Grave',
  'severity.marked': 'Marked',
  'severity.slight': 'Slight',
  'table.effects': 'What curing each fault alone does, {day} after every bed was cleaned',
  'effect.from-to': '{before} → {after}',
  'effect.same': 'stays {value}',

  'place.test': 'test of {kind}, {state}',
  'heading.changes.planned': 'What is to be changed',
  'heading.changes.left': 'What was changed',
  'changes.why.planned':
    'Faults as it was packed: {found}; as planned: {after}. What is in the filter is used again before anything is bought, but not what is used up.',
  'changes.why.left':
    'Faults as it was packed: {found}; as left: {after}. What was in the filter is reckoned as used again, but for what was used up; what was short was bought.',
  'changes.added.planned': 'To be put in: {media}.',
  'changes.added.left': 'Put in: {media}.',
  'changes.removed.planned': 'To be taken out: {media}.',
  'changes.removed.left': 'Taken out: {media}.',
  'changes.order.planned': 'The water is to meet the media in another order: {media}.',
  'changes.order.left': 'The water now meets the media in another order: {media}.',
  'alteration.made': '{says}',
  'alteration.to-bore': '{says}, to {size} of bore',
  'alteration.to-length': '{says}, to {size} each',
  'table.packing': 'Packing, in the order of the water',
  'chamber.empty': 'empty',
  'bed.of-depth': '{depth} of {medium}',

  'heading.media': 'Media',
  'media.none': 'There are no media in the filter.',
  'table.media': 'Media in the order in which the water meets them',
  'medium.with-stage': '{medium}, {stage}',
  'price.there': 'was there',
  'table.parts': 'Parts',
  'media.total-with-parts': 'media and parts together',
  'media.renewed': 'Media that are used up, {media}, are counted as fresh: every cleaning replaces them.',
  'media.total': 'together',
  'media.dry-mass': 'Volumes are of the bed with its pores; masses are dry.',

  'heading.site': 'In the room and in the tank',
  'table.pressures': 'Pressure against the air outside, clean, pump running',
  'table.levels': 'Water in the box over its floor, clean',
  'column.place': 'place',
  'column.above-surface': 'over the tank’s surface',
  'column.pressure': 'pressure',
  'column.leak': 'a leak',
  'column.running': 'pump running',
  'column.stopped': 'stopped',
  'column.edge': 'next edge at',
  'column.over': 'edge',
};
