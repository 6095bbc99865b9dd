/** Sentences of the talking sheet and of the text under a recording. */
export const talkSentences: Readonly<Record<string, string>> = {
  'talk.title': '{filter}: talking sheet',
  'talk.subtitle': 'Facts for a recorded walk-through, in the order of the work',
  'talk.description':
    'What can be said of {filter}, in the order of the work, with its figures in metric and US units.',
  'talk.lead':
    'Say it in your own words; the figures are these. Times are for {rate} words a minute (common practice, no source). No people, no addresses and no maker’s marks in the picture without consent.',
  'talk.heading': '{heading}, {time}',
  'table.talk': 'Running order, in minutes and seconds',
  'column.from': 'from',
  'column.lasts': 'lasts',

  'heading.talk-facts': 'What there is to say',
  'heading.talk-filter': 'The filter',
  'heading.talk-as-found': 'As it came',
  'heading.talk-opened': 'Opened: the way of the water',
  'heading.talk-wrong': 'What is wrong',
  'heading.talk-cleaned': 'Cleaned, before anything is changed',
  'heading.talk-changed': 'What is changed',
  'heading.talk-packed': 'Packed, in the order of the water',
  'heading.talk-leak': 'Leak test',
  'heading.talk-as-left': 'As it is left',
  'heading.talk-does': 'What it does',
  'heading.talk-costs': 'What it costs',
  'heading.talk-limits': 'What this does not show',

  'talk.filter': '{filter}: {family}, on a tank of {volume}.',
  'talk.rated.air': 'Bubbles lift its water: the tube alone would lift {flow}, which is computed.',
  'talk.rated': 'Its pump is rated at {flow}.',
  'talk.safe': 'Everything in the tank is unplugged before a hand goes into the water.',
  'talk.timed': '{state}: {flow}; {runs} runs into {vessel}.',
  'talk.chamber': '{chamber}: {media}.',
  'talk.altered': '{item}.',
  'talk.cuts': 'Lines in the cut list: {count}; the build sheet draws each to scale.',
  'talk.leak':
    'It stands on dry paper, full and running, for 30 minutes (common practice, no source); any damp fails it.',
  'talk.clean.found': 'Clean, and packed as it is, {flow} should flow; that is computed.',
  'talk.clean.planned': 'Clean, and packed as planned, {flow} should flow; that is computed.',
  'talk.clean.left': 'Clean, and packed as it is now, {flow} should flow; that is computed.',
  'talk.misses': '{share} of the water misses the mechanical media.',
  'talk.carries':
    '{day} after a cleaning it carries {feed} of dry feed: a tank of {heavy} with a heavy stock to {light} with a light one.',
  'talk.interval': 'It wants cleaning after about {interval}, good to a factor of three either way.',
  'talk.before':
    'Cleaned, and packed as before, it carried {feed} {day} after a cleaning; time until it wants cleaning: {interval}.',
  'talk.year':
    'To run it costs {cost} a year: electricity, media that are used up, its price spread over its life.',

  'description.medium': '{amount} of {medium}, {price}',
  'description.part': '{count} × {part}, {price}',
  'description.parts': 'Parts and media:',
  'description.chapters': 'Chapters:',
  'description.safety':
    'Before a hand goes into the water, everything in the tank is unplugged; local codes and a licensed electrician decide on wiring.',
};
